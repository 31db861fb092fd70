package site

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"strings"
)

// The icon is the page's own thread: a fibre that hangs straight, coils, and
// hangs straight again, on paper. Front turns lie over back turns.
//
// It is painted in samples, side samples to a pixel's edge, and each pixel is
// the mean of its samples. Positions are whole steps of a sample, so that the
// picture does not depend on how a machine rounds.

// ink is what one sample shows.
type ink uint8

const (
	paper ink = iota
	back
	front
	inks
)

var paint = [inks]color.RGBA{
	paper: {0xf7, 0xf4, 0xec, 0xff},
	back:  {0x8f, 0xa3, 0xad, 0xff},
	front: {0x1d, 0x3b, 0x4a, 0xff},
}

const (
	side    = 2           // samples along a pixel's edge; with more the colours no longer fit in half a byte
	samples = side * side // samples in a pixel
	step    = 16          // steps in a sample
)

// The icons: lines, for any size, and a picture for where lines are not taken.
const (
	iconName  = "icon.svg"
	touchName = "icon-180.png"
	touchSize = 180 // pixels
)

// Height of the drawing over that of the icon; above 1 the fibre runs off it. In lines it is kept inside the circle of 0.8 of the width that no
// mask may cut (W3C, Web Application Manifest, icon masks).
const (
	tallLines   = 0.72
	tallPicture = 1.1
)

func drawIcons() ([]File, error) {
	var b bytes.Buffer
	e := png.Encoder{CompressionLevel: png.BestCompression}
	if err := e.Encode(&b, drawIcon(touchSize, tallPicture)); err != nil {
		return nil, err
	}
	return []File{{iconName, drawLines()}, {touchName, b.Bytes()}}, nil
}

// drawLines draws the icon as an SVG of a width of 512.
func drawLines() []byte {
	const width = 512
	var b bytes.Buffer
	place := func(x, y float64) string {
		return fmt.Sprintf("%d %d", int(math.Round(width/2+x*tallLines*width)), int(math.Round(width/2+(y-0.5)*tallLines*width)))
	}
	line := func(i ink, thickness float64, points ...string) {
		fmt.Fprintf(&b, `<path stroke="%s" stroke-width="%d" d="M%s"/>`, hue(i), int(math.Round(thickness*tallLines*width)), strings.Join(points, " "))
	}
	coil := func(from, to float64) (points []string) {
		for k := range int((to-from)*16) + 1 {
			points = append(points, place(along(from+float64(k)/16)))
		}
		return points
	}
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %[1]d" fill="none" stroke-linejoin="round" stroke-linecap="round"><path fill="%s" d="M0 0h%[1]dv%[1]dH0z"/>`, width, hue(paper))
	line(back, thick, coil(0, turns)...)
	line(front, thick, place(0, 0), place(0, from))
	line(front, thick, place(0, to), place(0, 1))
	for t := range int(turns) {
		line(paper, thick+2*gap, coil(float64(t)+0.3125, float64(t)+0.6875)...)
		line(front, thick, coil(float64(t)+0.25, float64(t)+0.75)...)
	}
	b.WriteString("</svg>\n")
	return b.Bytes()
}

func hue(i ink) string {
	c := paint[i]
	return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B)
}

// The fibre in units of the drawing's height, from its top: the coil stands
// between from and to.
const (
	from, to = 0.17, 0.83
	turns    = 4.0
	radius   = 0.215 // of the coil, to the middle of the fibre
	thick    = 0.088 // of the fibre
	gap      = 0.022 // paper left beside a front turn
)

// drawIcon paints the fibre centred on a square of size pixels.
func drawIcon(size int, tall float64) image.Image {
	c := canvas{width: size * side, at: make([]ink, size*size*samples)}
	width := float64(c.width)
	dot := func(x, y, r float64, i ink) {
		c.dot(width/2+x*tall*width, width/2+(y-0.5)*tall*width, r*tall*width, i)
	}
	const dots = 1200 // along a stretch
	coil := func(from, to float64, r float64, i ink) {
		for k := range dots {
			turn := from + (to-from)*float64(k)/dots
			x, y := along(turn)
			dot(x, y, r, i)
		}
	}
	straight := func(a, b float64) {
		for k := range dots {
			dot(0, a+(b-a)*float64(k)/dots, thick/2, front)
		}
	}
	// A turn starts at the middle of its back, runs left over the front and ends at the back again.
	coil(0, turns, thick/2, back)
	straight(0, from)
	straight(to, 1)
	for t := range int(turns) {
		t := float64(t)
		coil(t+0.3, t+0.7, thick/2+gap, paper)
		coil(t+0.25, t+0.75, thick/2, front)
	}
	return c.picture(size)
}

// along gives the fibre's place at a number of turns; whole turns are at the
// middle of the back, on the axis.
func along(turn float64) (x, y float64) {
	return radius * math.Sin(2*math.Pi*turn), from + (to-from)*turn/turns
}

type canvas struct {
	width int // samples
	at    []ink
}

// dot paints a disc, x, y and r in samples.
func (c *canvas) dot(x, y, r float64, i ink) {
	cx, cy, cr := steps(x), steps(y), steps(r)
	for sy := max(0, (cy-cr)/step-1); sy <= min(c.width-1, (cy+cr)/step+1); sy++ {
		for sx := max(0, (cx-cr)/step-1); sx <= min(c.width-1, (cx+cr)/step+1); sx++ {
			dx, dy := sx*step+step/2-cx, sy*step+step/2-cy
			if dx*dx+dy*dy <= cr*cr {
				c.at[sy*c.width+sx] = i
			}
		}
	}
}

func steps(x float64) int { return int(math.Round(x * step)) }

// picture averages the samples. A pixel's colour is fixed by how many of its
// samples are back and front, so a palette holds every colour there can be.
func (c *canvas) picture(size int) *image.Paletted {
	var palette color.Palette
	var place [samples + 1][samples + 1]uint8
	for b := 0; b <= samples; b++ {
		for f := 0; b+f <= samples; f++ {
			place[b][f] = uint8(len(palette))
			palette = append(palette, mix(b, f))
		}
	}
	img := image.NewPaletted(image.Rect(0, 0, size, size), palette)
	for y := range size {
		for x := range size {
			var n [inks]int
			for sy := range side {
				row := (y*side+sy)*c.width + x*side
				for _, i := range c.at[row : row+side] {
					n[i]++
				}
			}
			img.SetColorIndex(x, y, place[n[back]][n[front]])
		}
	}
	return img
}

func mix(b, f int) color.Color {
	of := func(p, k, i uint8) uint8 {
		return uint8((int(p)*(samples-b-f) + int(k)*b + int(i)*f + samples/2) / samples)
	}
	p, k, i := paint[paper], paint[back], paint[front]
	return color.RGBA{of(p.R, k.R, i.R), of(p.G, k.G, i.G), of(p.B, k.B, i.B), 0xff}
}
