package drawing

import (
	"math"
	"slices"

	"strake/sheet"
)

// places are what is taken, looked up by squares of the sheet: there is writing by the
// thousand on a large floor, and each word asks for a place of its own.
type places struct {
	all   []place
	at    map[square][]int // into all, by the squares that a box comes to
	large []int            // into all: boxes that come to too many squares
}

// place is a convex outline that is taken, and the upright box round it, which tells at
// once of most outlines that they do not meet.
type place struct {
	outline []sheet.Pt
	lo, hi  sheet.Pt
}

// square is one of a grid over the sheet.
type square struct{ x, y int }

// squareSide is the side of a square, mm; mostSquares is how many a box is kept or
// looked up by.
const (
	squareSide  = 25.0
	mostSquares = 400
)

func placeOf(o []sheet.Pt) place {
	lo, hi := bounds(o)
	return place{o, lo, hi}
}

// squares are those that the box comes to; false where they are too many.
func (p place) squares() (from, to square, ok bool) {
	down := func(v float64) float64 { return math.Floor(v / squareSide) }
	a, b := sheet.Pt{X: down(p.lo.X), Y: down(p.lo.Y)}, sheet.Pt{X: down(p.hi.X), Y: down(p.hi.Y)}
	if n := (b.X - a.X + 1) * (b.Y - a.Y + 1); !(n <= mostSquares) { // not a number is too many as well
		return from, to, false
	}
	return square{int(a.X), int(a.Y)}, square{int(b.X), int(b.Y)}, true
}

// add takes a convex outline.
func (s *places) add(o []sheet.Pt) {
	p, i := placeOf(o), len(s.all)
	s.all = append(s.all, p)
	from, to, ok := p.squares()
	if !ok {
		s.large = append(s.large, i)
		return
	}
	if s.at == nil {
		s.at = map[square][]int{}
	}
	for x := from.x; x <= to.x; x++ {
		for y := from.y; y <= to.y; y++ {
			s.at[square{x, y}] = append(s.at[square{x, y}], i)
		}
	}
}

// giveBack frees the places taken last, all but the first so many.
func (s *places) giveBack(first int) {
	for i := len(s.all) - 1; i >= first; i-- { // each is the last of its squares
		from, to, ok := s.all[i].squares()
		if !ok {
			s.large = s.large[:len(s.large)-1]
			continue
		}
		for x := from.x; x <= to.x; x++ {
			for y := from.y; y <= to.y; y++ {
				at := square{x, y}
				s.at[at] = s.at[at][:len(s.at[at])-1]
			}
		}
	}
	s.all = s.all[:first]
}

// over tells whether a convex outline lies over any that is taken.
func (s *places) over(o []sheet.Pt) bool {
	p := placeOf(o)
	meets := func(i int) bool { return s.all[i].meets(p) }
	from, to, ok := p.squares()
	if !ok {
		return slices.ContainsFunc(s.all, p.meets)
	}
	for x := from.x; x <= to.x; x++ {
		for y := from.y; y <= to.y; y++ {
			if slices.ContainsFunc(s.at[square{x, y}], meets) {
				return true
			}
		}
	}
	return slices.ContainsFunc(s.large, meets)
}

// meets tells whether two outlines share area.
func (p place) meets(q place) bool {
	return p.hi.X > q.lo.X && q.hi.X > p.lo.X && p.hi.Y > q.lo.Y && q.hi.Y > p.lo.Y && sheet.Overlap(p.outline, q.outline)
}
