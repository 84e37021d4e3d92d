package section

import (
	"cmp"
	"math"
	"slices"

	"strake/sheet"
)

// Side is a side of a drawing.
type Side int

// The sides.
const (
	Above Side = iota
	Under
	Leftward
	Rightward
)

// dim is a dimension to be placed outside the drawing.
type dim struct {
	side     Side
	from, to sheet.Pt // in paper mm: what is measured
	text     string
}

// Dim measures from a to b on a side of the drawing: across it above and under it,
// upright to its left and right. Extension lines lead from both places to the
// line, which has a slanting stroke at both ends and its figure above it.
func (c *Canvas) Dim(side Side, a, b XY, text string) {
	c.dims = append(c.dims, dim{side, c.paper(a), c.paper(b), text})
}

const (
	first = 5.0 // of the nearest line of dimensions, from the drawing
	apart = 6.2 // of lines of dimensions
	clear = 0.8 // of an extension line from what it belongs to; of figures from their line
	slash = 1.1 // half of a stroke's reach
)

// level reports whether a dimension on this side lies level.
func (s Side) level() bool { return s == Above || s == Under }

// out is how a place lies along a side and outwards from it.
func (s Side) out(p sheet.Pt) (along, out float64) {
	switch s {
	case Above:
		return p.X, -p.Y
	case Under:
		return p.X, p.Y
	case Leftward:
		return -p.Y, -p.X // figures read from below upwards
	}
	return -p.Y, p.X
}

// back is out the other way round.
func (s Side) back(along, out float64) sheet.Pt {
	switch s {
	case Above:
		return sheet.Pt{X: along, Y: -out}
	case Under:
		return sheet.Pt{X: along, Y: out}
	case Leftward:
		return sheet.Pt{X: -out, Y: -along}
	}
	return sheet.Pt{X: out, Y: -along}
}

// set is a dimension in its place, along and outwards of its side.
type set struct {
	dim
	a, b       float64 // what is measured
	outA, outB float64 // how far out that lies
	line       int     // of the lines of dimensions, 0 the nearest
	lo, hi     float64 // what its line and figures take up
	t0, t1     float64 // its figures
}

// placeDims puts each dimension on the nearest line that is free, the short ones
// first, and makes the box of the drawing larger by them. What is upright moves
// out beyond what is level where figures would meet at a corner.
func (c *Canvas) placeDims(b *box) []sheet.Item {
	var out []sheet.Item
	grown := *b
	for _, side := range []Side{Above, Under, Leftward, Rightward} {
		its := drawn(side, *b, c.dims)
		if meet(its, out) {
			its = drawn(side, grown, c.dims)
		}
		k := boxOf(its)
		if len(its) > 0 {
			grown.take(sheet.Pt{X: k.x0, Y: k.y0}, sheet.Pt{X: k.x1, Y: k.y1})
		}
		out = append(out, its...)
	}
	*b = grown
	return out
}

// drawn are the dimensions of one side of a box.
func drawn(side Side, b box, all []dim) []sheet.Item {
	base := map[Side]float64{Above: -b.y0, Under: b.y1, Leftward: -b.x0, Rightward: b.x1}[side]
	var out []sheet.Item
	for _, s := range arrange(side, all) {
		out = append(out, s.draw(base)...)
	}
	slices.SortStableFunc(out, func(a, b sheet.Item) int { return lineFirst(a) - lineFirst(b) })
	return out
}

// lineFirst sorts lines before the writing that stands on white over them.
func lineFirst(it sheet.Item) int {
	if _, line := it.(sheet.Polyline); line {
		return 0
	}
	return 1
}

// meet tells whether a text of one lies on a text or a line of the other.
func meet(a, b []sheet.Item) bool {
	return textsMeet(a, b) || textsMeet(b, a)
}

func textsMeet(a, b []sheet.Item) bool {
	for _, x := range a {
		t, ok := x.(sheet.Text)
		if !ok {
			continue
		}
		p := t.Box()
		for _, y := range b {
			switch y := y.(type) {
			case sheet.Text:
				q := y.Box()
				if sheet.Overlap(p[:], q[:]) {
					return true
				}
			case sheet.Polyline:
				for i := 1; i < len(y.Points); i++ {
					if passes(y.Points[i-1], y.Points[i], t) {
						return true
					}
				}
			}
		}
	}
	return false
}

// arrange gives the dimensions of a side their lines.
func arrange(side Side, all []dim) []set {
	var todo, done []set
	for _, d := range all {
		if d.side != side {
			continue
		}
		s := set{dim: d}
		s.a, s.outA = side.out(d.from)
		s.b, s.outB = side.out(d.to)
		if s.a > s.b {
			s.a, s.b, s.outA, s.outB = s.b, s.a, s.outB, s.outA
		}
		todo = append(todo, s)
	}
	slices.SortStableFunc(todo, func(p, q set) int { return cmp.Compare(p.b-p.a, q.b-q.a) })
	for i, s := range todo {
		done = append(done, s.placed(done, todo[i+1:]))
	}
	return done
}

// placed finds a line and a place for the figures that nothing else needs: for
// each line in turn, in the middle where they fit between the strokes, else beyond
// one end or the other; first where no later dimension will pass over them. Where
// every line would be crossed, figures stand on white and interrupt the extension
// line.
func (s set) placed(done, later []set) set {
	for _, strict := range []int{2, 1, 0} {
		for line := range len(done) + 1 {
			s.line = line
			for _, x := range s.figures() {
				if x.fits(done, strict > 0) && (strict < 2 || !x.passed(later)) {
					return x
				}
			}
		}
	}
	return s // not reached: the line above all others is free
}

// figures are the dimension with its figures in each place they may have.
func (s set) figures() []set {
	wide := sheet.Text{Text: s.text, Size: Small}.Width()
	mid := (s.a + s.b) / 2
	if wide+1.6 <= s.b-s.a {
		s.t0, s.t1 = mid-wide/2, mid+wide/2
		s.lo, s.hi = s.a-over, s.b+over
		return []set{s}
	}
	after, before := s, s
	after.t0, after.t1 = s.b+2.2, s.b+2.2+wide
	after.lo, after.hi = s.a-3.5, after.t1+0.6
	before.t0, before.t1 = s.a-2.2-wide, s.a-2.2
	before.lo, before.hi = before.t0-0.6, s.b+3.5
	return []set{after, before}
}

// passed tells whether extension lines of dimensions that are longer, and so lie
// farther out, would pass over the figures.
func (s set) passed(later []set) bool {
	for _, d := range later {
		if within(d.a, s.t0, s.t1) || within(d.b, s.t0, s.t1) {
			return true
		}
	}
	return false
}

// fits tells whether nothing placed is in the way: nothing on the same line and,
// strictly, no figures where the extension lines pass and no extension line where
// figures stand.
func (s set) fits(done []set, strict bool) bool {
	for _, d := range done {
		switch {
		case d.line == s.line && s.lo < d.hi && d.lo < s.hi:
			return false
		case !strict:
		case d.line < s.line && (within(s.a, d.t0, d.t1) || within(s.b, d.t0, d.t1)):
			return false
		case d.line > s.line && (within(d.a, s.t0, s.t1) || within(d.b, s.t0, s.t1)):
			return false
		}
	}
	return true
}

func within(x, lo, hi float64) bool { return x > lo-0.4 && x < hi+0.4 }

// draw draws a dimension whose side begins so far out.
func (s set) draw(base float64) []sheet.Item {
	at := base + first + apart*float64(s.line)
	pt := func(along, out float64) sheet.Pt { return s.side.back(along, out) }
	var out []sheet.Item
	line := func(pen sheet.Pen, ps ...sheet.Pt) { out = append(out, sheet.Polyline{Points: ps, Pen: pen}) }
	line(Thin, pt(s.a, s.outA+clear), pt(s.a, at+over))
	line(Thin, pt(s.b, s.outB+clear), pt(s.b, at+over))
	lo, hi := s.a-over, s.b+over
	if s.t1 < s.a || s.t0 > s.b {
		lo, hi = min(lo, s.t0), max(hi, s.t1)
	}
	line(Thin, pt(lo, at), pt(hi, at))
	for _, x := range []float64{s.a, s.b} {
		line(Visible, pt(x-slash, at-slash), pt(x+slash, at+slash))
	}
	t := sheet.Text{Text: s.text, Size: Small, Ink: sheet.Black, Anchor: sheet.Middle}
	mid := (s.t0 + s.t1) / 2
	above := clear
	switch s.side { // figures stand above their line, read from below or from the right
	case Under, Rightward:
		above = -clear
	}
	t.At = pt(mid, at+above)
	if !s.side.level() {
		t.Turn = -90
	}
	ground := t.Box()
	return append(out, sheet.Polygon{Rings: [][]sheet.Pt{ground[:]}, Fill: sheet.White}, t)
}

// Angle writes an angle at a corner, between the direction a (degrees
// counter-clockwise from the right) and b, at so many mm of paper from it.
func (c *Canvas) Angle(at XY, a, b, radius float64, text string) {
	p := c.paper(at)
	var arc []sheet.Pt
	n := max(4, int(math.Abs(b-a)/4))
	for i := range n + 1 {
		s, co := math.Sincos((a + (b-a)*float64(i)/float64(n)) * math.Pi / 180)
		arc = append(arc, sheet.Pt{X: p.X + float64(radius*co), Y: p.Y - float64(radius*s)})
	}
	c.items = append(c.items, sheet.Polyline{Points: arc, Pen: Thin})
	s, co := math.Sincos((a + b) / 2 * math.Pi / 180)
	t := sheet.Text{Text: text, Size: Small, Ink: sheet.Black, Anchor: sheet.Middle}
	far := radius + t.Width()/2 + 1.2
	t.At = sheet.Pt{X: p.X + float64(far*co), Y: p.Y - float64(far*s) + 0.36*Small}
	q := t.Box()
	c.words = append(c.words, sheet.Polygon{Rings: [][]sheet.Pt{q[:]}, Fill: sheet.White}, t)
}
