package method

import (
	"math"

	"strake/section"
	"strake/sheet"
	"strake/tape"
)

// pic is one drawing in the making.
type pic struct {
	*section.Canvas
	f     facts
	p     section.Profile
	scale float64
}

// The scales of figures, with their names.
const (
	quarter       = 0.25
	half          = 0.5
	full          = 1.0
	threeQuarters = 0.75
	large         = 1.5
)

// at is a new drawing at a scale.
func (f facts) at(scale float64) pic {
	p := section.ProfileOf(f.Job.Boards)
	p.Face = f.face.Millimetres()
	return pic{section.New(scale), f, p, scale}
}

// detail is the scale of details of a joint: smaller for thick boards.
func (f facts) detail() float64 {
	if mm(f.thick) > 23 {
		return full
	}
	return large
}

// whole is the scale of drawings of a whole board: smaller for thick boards.
func (f facts) whole() float64 {
	if mm(f.thick) > 23 {
		return threeQuarters
	}
	return full
}

// named is how a scale is said.
func named(scale float64) string {
	switch scale {
	case full:
		return "full size"
	case threeQuarters:
		return "three quarters of full size"
	case half:
		return "half size"
	case large:
		return "one and a half times full size"
	case quarter:
		return "quarter size"
	}
	return "not to scale"
}

// true to scale, or not: then the drawing says so.
func (c pic) figure(title string, notes float64) Figure { return c.as(title, named(c.scale), notes) }

func (c pic) free(title string, notes float64) Figure { return c.as(title, "not to scale", notes) }

func (c pic) as(title, scale string, notes float64) Figure {
	d := c.Canvas.Figure(notes)
	return Figure{Title: title, Scale: scale, W: d.W, H: d.H, Items: d.Items}
}

// ground is the subfloor and what is rolled out on it, from x0 to x1; deep is how
// much of the subfloor is drawn, 0 all of it. Its underside is returned.
func (c pic) ground(x0, x1, deep float64) float64 {
	u := c.f.under.Millimetres()
	if u > 0 {
		c.Cut("", section.Solid, section.Rect(x0, -u, x1, 0), 0, 1, 2, 3)
	}
	open := []int{1, 3}
	base := c.f.base.Millimetres()
	switch {
	case deep > 0 && (base == 0 || deep < base):
		base, open = deep, []int{0, 1, 3}
	case base == 0:
		base, open = 18, []int{0, 1, 3}
	}
	c.Cut("", section.Plywood, section.Rect(x0, -u-base, x1, -u), open...)
	return -u - base
}

// left is a board that goes on to the left: cut off at x0, its tongue shoulder at x.
func (c pic) left(x0, x float64, right section.Edge) {
	c.Cut("", section.EndGrain, section.Shift(c.p.Ring(x-x0, section.Square, right), section.At(x0, 0)), c.last(right))
	c.Break(section.At(x0, -2), section.At(x0, c.p.Thick+2))
}

// last is the open side of a left board's ring: that from its upper left corner
// down.
func (c pic) last(right section.Edge) int {
	return len(c.p.Ring(50, section.Square, right)) - 2
}

// right is a board that goes on to the right: its groove edge at x, cut off at x1.
func (c pic) right(x, x1 float64, left section.Edge) {
	ring := c.p.Ring(x1-x, left, section.Square)
	c.Cut("", section.EndGrain, section.Shift(ring, section.At(x, 0)), 0)
	c.Break(section.At(x1, -2), section.At(x1, c.p.Thick+2))
}

// turned are places turned by degrees counter-clockwise about the origin, then
// moved.
func turned(ring []section.XY, degrees float64, to section.XY) []section.XY {
	s, co := math.Sincos(degrees * math.Pi / 180)
	out := make([]section.XY, len(ring))
	for i, p := range ring {
		out[i] = section.At(to.X+float64(co*p.X)-float64(s*p.Y), to.Y+float64(s*p.X)+float64(co*p.Y))
	}
	return out
}

// circle is a round ring.
func circle(at section.XY, r float64) []section.XY {
	const n = 40
	out := make([]section.XY, n)
	for i := range out {
		s, co := math.Sincos(2 * math.Pi * float64(i) / n)
		out[i] = section.At(at.X+float64(r*co), at.Y+float64(r*s))
	}
	return out
}

// bold is the pen of marks that are seen from afar.
var bold = sheet.Pen{Width: 1.2, Ink: sheet.Black}

// tick and cross are 6 mm of paper wide: right, and wrong.
func (c pic) tick(at section.XY) {
	k := c.Real(1)
	c.Line(bold, at.Add(section.At(-3*k, 0)), at.Add(section.At(-1*k, -2.4*k)), at.Add(section.At(3*k, 3*k)))
}

func (c pic) cross(at section.XY) {
	k := c.Real(2.4)
	c.Line(bold, at.Add(section.At(-k, -k)), at.Add(section.At(k, k)))
	c.Line(bold, at.Add(section.At(-k, k)), at.Add(section.At(k, -k)))
}

// mm is a length in real mm.
func mm(l tape.Length) float64 { return l.Millimetres() }

// ring is a ring of places, x and y in turn.
func ring(xy ...float64) []section.XY {
	out := make([]section.XY, len(xy)/2)
	for i := range out {
		out[i] = section.At(xy[2*i], xy[2*i+1])
	}
	return out
}

// shank is a fastener at 45 degrees back under its board whose tip lies below what
// is drawn: it is cut off level at y.
func (c pic) shank(k section.Fastener, at section.XY, y float64) { c.shankTo(k, at, y, -1) }

// shankRight is shank of a board that was turned: back under it is to the right.
func (c pic) shankRight(k section.Fastener, at section.XY, y float64) { c.shankTo(k, at, y, 1) }

func (c pic) shankTo(k section.Fastener, at section.XY, y, side float64) {
	c.Nail(k, at, 9, -90+45*side)
	w := max(0.8, c.Real(0.3)) * math.Sqrt2
	far := at.Y - y
	c.Area("", sheet.Black, sheet.Pen{}, ring(at.X+3*side-w, at.Y-3, at.X+3*side+w, at.Y-3, at.X+far*side+w, y, at.X+far*side-w, y)...)
}
