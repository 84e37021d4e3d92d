package section

import "strake/stock"

// Profile is a board cut across, in real mm.
type Profile struct {
	Face, Thick, Tongue, Air float64
	TongueTop, TongueLow     float64 // over its underside
	Deep                     float64 // of the groove
}

// What jobs do not tell of a profile: typical figures, from memory.
const (
	tongueTop  = 0.72 // of the thickness, over the underside: where fasteners enter
	tongueTall = 1.0 / 3
	deeper     = 0.8 // the groove is deeper than the tongue is long, mm
	wider      = 0.3 // and wider than it is thick, mm
	typical    = 6.35
	back       = 0.5 // what the lower lip stands back by, so that faces close first, mm
)

// ProfileOf is the profile of a job's boards. Face, thickness, tongue and the air
// of the joint are theirs; where a tongue's place is not known it is drawn with a
// typical shape.
func ProfileOf(b stock.Boards) Profile {
	p := Profile{Face: b.Face.Millimetres(), Thick: b.Thickness.Millimetres(), Tongue: b.SideTongue.Millimetres(), Air: b.Air().Millimetres()}
	if p.Thick == 0 {
		p.Thick = 19
	}
	if p.Tongue == 0 {
		p.Tongue = typical
	}
	p.TongueTop = float64(tongueTop * p.Thick)
	p.TongueLow = p.TongueTop - float64(tongueTall*p.Thick)
	p.Deep = p.Tongue + deeper
	return p
}

// Pitch is what a row takes up: face and air.
func (p Profile) Pitch() float64 { return p.Face + p.Air }

// Edge is what an edge of a board is like.
type Edge int

// The edges.
const (
	Square Edge = iota // ripped, or its tongue taken off
	Tongued
	Grooved
	GoesOn // not drawn to its end: no outline there, a break line belongs to it
)

// Ring is the board cut across with its underside at y 0, from x 0 to wide (its
// face without the tongue); its edges left and right.
func (p Profile) Ring(wide float64, left, right Edge) []XY {
	out := p.right(wide, right)
	for _, q := range reversed(p.right(0, left)) {
		out = append(out, XY{-q.X, q.Y})
	}
	return out
}

func reversed(in []XY) []XY {
	out := make([]XY, len(in))
	for i, q := range in {
		out[len(in)-1-i] = q
	}
	return out
}

// right is the right edge of a board at x, from below upwards.
func (p Profile) right(x float64, e Edge) []XY {
	lo, hi := p.TongueLow, p.TongueTop
	switch e {
	case Tongued:
		return []XY{{x - back, 0}, {x - back, lo}, {x + p.Tongue - 0.6, lo}, {x + p.Tongue, lo + 0.6}, {x + p.Tongue, hi - 0.6}, {x + p.Tongue - 0.6, hi}, {x, hi}, {x, p.Thick}}
	case Grooved:
		return []XY{{x - back, 0}, {x - back, lo - wider/2}, {x - p.Deep, lo - wider/2}, {x - p.Deep, hi + wider/2}, {x, hi + wider/2}, {x, p.Thick}}
	}
	return []XY{{x, 0}, {x, p.Thick}}
}

// Board cuts a board across on the canvas: its underside at y, its face from x on.
func (c *Canvas) Board(name string, p Profile, x, y, wide float64, left, right Edge) {
	ring := p.Ring(wide, left, right)
	var open []int
	if right == GoesOn {
		open = append(open, 0) // its right edge is the first side
	}
	if left == GoesOn {
		open = append(open, len(ring)-2) // the last corner is its lower left one
	}
	c.Cut(name, EndGrain, Shift(ring, XY{x, y}), open...)
}

// Pocket is the corner over a tongue where a fastener enters, of a board whose
// face ends at x.
func (p Profile) Pocket(x, y float64) XY { return XY{x + 0.5, y + p.TongueTop} }
