package site

import (
	"bytes"
	"image/png"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestIcons(t *testing.T) {
	files, err := drawIcons()
	require.NoError(t, err)
	again, err := drawIcons()
	require.NoError(t, err)
	assert.Equal(t, files, again, "drawn twice, the bytes are the same")
	require.Len(t, files, 2)

	// In lines: as many paths as there are turns, twice, and the paper, the back and two straight ends; all of it in the safe zone of W3C Web
	// Application Manifest, a circle of radius 0.4 of the width.
	lines := string(files[0].Data)
	assert.Equal(t, 2*int(turns)+4, strings.Count(lines, "<path"))
	reach := 0.0
	for _, m := range regexp.MustCompile(`stroke-width="(\d+)" d="M([\d ]+)"`).FindAllStringSubmatch(lines, -1) {
		half, err := strconv.ParseFloat(m[1], 64)
		require.NoError(t, err)
		var at []float64
		for _, n := range strings.Fields(m[2]) {
			x, err := strconv.ParseFloat(n, 64)
			require.NoError(t, err)
			at = append(at, x-256)
		}
		require.Zero(t, len(at)%2)
		for i := 0; i < len(at); i += 2 {
			reach = max(reach, math.Hypot(at[i], at[i+1])+half/2)
		}
	}
	assert.Greater(t, reach, 0.3*512)
	assert.Less(t, reach, 0.4*512)

	// As a picture: how much of it is fibre.
	img, err := png.Decode(bytes.NewReader(files[1].Data))
	require.NoError(t, err)
	assert.Equal(t, touchSize, img.Bounds().Dx())
	assert.Equal(t, touchSize, img.Bounds().Dy())
	drawn := 0
	for y := range touchSize {
		for x := range touchSize {
			if img.At(x, y) != mix(0, 0) {
				drawn++
			}
		}
	}
	share := float64(drawn) / (touchSize * touchSize)
	assert.Greater(t, share, 0.1)
	assert.Less(t, share, 0.5)
}
