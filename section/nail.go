package section

import (
	"math"

	"strake/sheet"
)

// Fastener is how a fastener looks.
type Fastener int

// The fasteners.
const (
	Cleat  Fastener = iota // L-shaped, barbed: drawn with its short leg
	Staple                 // seen from the side: one leg
	Finish                 // a finish nail, its head set below the face
	Screw
)

// shank is how thick fasteners are drawn, real mm (16 gauge is 1.6 mm).
var shanks = map[Fastener]float64{Cleat: 1.6, Staple: 1.6, Finish: 1.8, Screw: 3.6}

// Nail draws a fastener from where it enters, so long, in a direction in degrees
// counter-clockwise from the right (-90: straight down; -135: at 45 degrees back
// under its board). All in real mm.
func (c *Canvas) Nail(f Fastener, at XY, long, degrees float64) {
	s, co := math.Sincos(degrees * math.Pi / 180)
	u := XY{co, s}
	v := XY{-s, co}
	on := func(along, off float64) XY {
		return XY{at.X + float64(u.X*along) + float64(v.X*off), at.Y + float64(u.Y*along) + float64(v.Y*off)}
	}
	w := max(shanks[f]/2, c.Real(0.3))
	body := []XY{on(0, w), on(long-3*w, w), on(long, 0), on(long-3*w, -w), on(0, -w)}
	switch f {
	case Cleat: // the head is a short leg to one side
		body = []XY{on(0, w), on(long-3*w, w), on(long, 0), on(long-3*w, -w), on(1.6*w, -w), on(1.6*w, -2.6*w), on(0, -2.6*w)}
	case Staple:
		body = []XY{on(0, 2*w), on(1.4*w, 2*w), on(1.4*w, w), on(long-3*w, w), on(long, 0), on(long-3*w, -w), on(1.4*w, -w), on(1.4*w, -2*w), on(0, -2*w)}
	case Finish:
		body = []XY{on(0, 1.5*w), on(2*w, 1.5*w), on(2.6*w, w), on(long-3*w, w), on(long, 0), on(long-3*w, -w), on(2.6*w, -w), on(2*w, -1.5*w), on(0, -1.5*w)}
	case Screw:
		body = []XY{on(0, 2*w), on(2*w, 0.6*w), on(long-3*w, 0.6*w), on(long, 0), on(long-3*w, -0.6*w), on(2*w, -0.6*w), on(0, -2*w)}
		for a := 0.35 * long; a < long-2*w; a += 2.4 {
			c.Line(Light, on(a, w), on(a+1.2, -w))
		}
	}
	c.items = append(c.items, sheet.Polygon{Rings: [][]sheet.Pt{c.papers(body)}, Fill: sheet.Black})
}

// Tip is where a fastener ends.
func Tip(at XY, long, degrees float64) XY {
	s, co := math.Sincos(degrees * math.Pi / 180)
	return XY{at.X + float64(long*co), at.Y + float64(long*s)}
}
