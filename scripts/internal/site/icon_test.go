package site

import (
	"bytes"
	"image/png"
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
	require.Len(t, files, len(icons))
	for i, f := range files {
		want := icons[i]
		img, err := png.Decode(bytes.NewReader(f.Data))
		require.NoError(t, err, f.Name)
		assert.Equal(t, want.size, img.Bounds().Dx(), f.Name)
		assert.Equal(t, want.size, img.Bounds().Dy(), f.Name)
		assert.Less(t, len(f.Data), 20_000, f.Name)

		// How far from the middle anything is drawn, as a share of the width;
		// and how much of the picture is fibre.
		mid := float64(want.size) / 2
		far, drawn := 0.0, 0
		for y := range want.size {
			for x := range want.size {
				if img.At(x, y) != mix(0, 0) {
					drawn++
					dx, dy := float64(x)+0.5-mid, float64(y)+0.5-mid
					far = max(far, (dx*dx+dy*dy)/float64(want.size*want.size))
				}
			}
		}
		share := float64(drawn) / float64(want.size*want.size)
		assert.Greater(t, share, 0.1, f.Name)
		assert.Less(t, share, 0.5, f.Name)
		if want.mark == "maskable" {
			// W3C Web Application Manifest: the safe zone is a circle of radius 0.4 of the width.
			assert.Less(t, far, 0.4*0.4, f.Name)
		}
	}
}
