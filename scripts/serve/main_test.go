package main

import (
	"net"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestListenFallsBack(t *testing.T) {
	one, err := listen("127.0.0.1", 0)
	require.NoError(t, err)
	defer one.Close()
	taken := one.Addr().(*net.TCPAddr).Port
	two, err := listen("127.0.0.1", taken)
	require.NoError(t, err)
	defer two.Close()
	assert.NotEqual(t, taken, two.Addr().(*net.TCPAddr).Port)
	assert.True(t, two.Addr().(*net.TCPAddr).IP.IsLoopback())

	_, err = listen("192.0.2.1", 0) // RFC 5737: an address nobody has
	assert.Error(t, err)
}

func TestAddress(t *testing.T) {
	assert.Equal(t, "http://localhost:8017/", address("localhost", 8017, "/"))
	assert.Equal(t, "http://10.0.0.2:80/some/where/", address("10.0.0.2", 80, "some/where"))
}
