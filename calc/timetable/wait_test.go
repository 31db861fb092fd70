package timetable

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestAppendWait(t *testing.T) {
	for n, want := range map[int]string{0: "0:00", 9: "0:09", 65: "1:05", 3599: "59:59", 3600: "1:00:00", 3665: "1:01:05", 86400: "24:00:00", 360000: "100:00:00"} {
		assert.Equal(t, want, string(AppendWait(nil, n)))
	}
}
