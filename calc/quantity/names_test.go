package quantity

import (
	"hash/fnv"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestNames(t *testing.T) {
	var n Names
	assert.Equal(t, -1, n.Find("", ""))
	assert.Equal(t, -1, n.Find("", "a"))
	for i := range 2000 {
		n.Add("name." + strconv.Itoa(i))
	}
	for i := range 2000 {
		s := strconv.Itoa(i)
		assert.Equal(t, i, n.Find("", "name."+s))
		assert.Equal(t, i, n.Find("name.", s))
		assert.Equal(t, i, n.Find("name."+s, ""))
	}
	for _, no := range [][2]string{{"", ""}, {"", "name."}, {"name.", ""}, {"name.", "2000"}, {"nam", "1"}, {"name.1", "name.1"}, {"name.12345", ""}} {
		assert.Equal(t, -1, n.Find(no[0], no[1]), "%q", no)
	}
	n.Add("name.7")
	assert.Equal(t, 7, n.Find("name.", "7"), "the first of two")
}

// The hash against Go's own hash/fnv.
func TestNamesStart(t *testing.T) {
	for _, s := range [][2]string{{"", ""}, {"", "a"}, {"foo", "bar"}, {"name.", "clamp.finished"}, {"µ", "·"}} {
		h := fnv.New32a()
		h.Write([]byte(s[0] + s[1]))
		assert.Equal(t, int(h.Sum32()^h.Sum32()>>16)%len(Names{}.at), start(s[0], s[1]), "%q", s)
	}
}
