package check

import (
	"strake/plane"
	"strake/tape"
)

// box is an upright rectangle.
type box struct{ lo, hi plane.Pt }

func boxOf(r plane.Ring) box {
	lo, hi := r.Box()
	return box{lo, hi}
}

func boxOfRegion(g plane.Region) box {
	lo, hi := g.Box()
	return box{lo, hi}
}

func (b box) x() plane.Span { return plane.Span{From: b.lo.X, To: b.hi.X} }
func (b box) y() plane.Span { return plane.Span{From: b.lo.Y, To: b.hi.Y} }

// meet is what b and c share; false when that has no area.
func (b box) meet(c box) (box, bool) {
	x, y := b.x().Meet(c.x()), b.y().Meet(c.y())
	return box{plane.P(x.From, y.From), plane.P(x.To, y.To)}, !x.Empty() && !y.Empty()
}

// near tells whether b and c are no further than d apart each way.
func (b box) near(c box, d tape.Length) bool {
	return b.lo.X-d <= c.hi.X && c.lo.X-d <= b.hi.X && b.lo.Y-d <= c.hi.Y && c.lo.Y-d <= b.hi.Y
}

// covers tells whether c lies in b, sides counted.
func (b box) covers(c box) bool {
	return b.lo.X <= c.lo.X && b.lo.Y <= c.lo.Y && c.hi.X <= b.hi.X && c.hi.Y <= b.hi.Y
}

func (b box) ring() plane.Ring { return plane.Rect(b.lo, b.hi) }
