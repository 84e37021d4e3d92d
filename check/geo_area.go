package check

import (
	"math/big"
	"slices"

	"strake/plane"
)

// common is the area that all of the regions share, in square ticks, exact.
//
// The inside of a region is a signed sum of what lies under its edges: plus
// under an edge run to the left (a top), minus under one run to the right (a
// bottom). So the shared area is the sum, over every choice of one edge from
// each region, of the area under the lowest of the chosen edges along the
// stretch they have in common, signed by the product. Nothing is cut, so
// nothing is rounded. Rings may touch and holes may run clockwise inside.
func common(gs ...plane.Region) *big.Rat {
	s := shared{whole: new(big.Int), parts: new(big.Rat)}
	for i, g := range gs {
		b, ok := boxOfRegion(g), true
		if i == 0 {
			s.window = b
		}
		if s.window, ok = s.window.meet(b); !ok {
			return s.parts
		}
	}
	choice := make([][]edge, len(gs))
	for i, g := range gs {
		choice[i] = s.seen(g)
	}
	s.choose(choice, make([]edge, 0, len(gs)), 1, s.window.x())
	return s.parts.Add(s.parts, new(big.Rat).SetInt(s.whole))
}

// shared adds up the area under chosen edges inside a window.
type shared struct {
	window box
	whole  *big.Int // from flat edges
	parts  *big.Rat // from slanted ones
}

// seen are the edges of g that matter in the window. Everything is cut off at
// the window's floor and ceiling: an edge below the floor has nothing under
// it, one above the ceiling is as good as the ceiling.
func (s *shared) seen(g plane.Region) []edge {
	var out []edge
	for _, r := range g {
		for i, a := range r {
			e := edge{a, r[(i+1)%len(r)]}
			y := e.y()
			if e.upright() || y.To <= s.window.lo.Y || e.x().Meet(s.window.x()).Empty() {
				continue
			}
			if y.From >= s.window.hi.Y {
				e.a.Y, e.b.Y = s.window.hi.Y, s.window.hi.Y
			}
			out = append(out, e)
		}
	}
	return out
}

// choose goes through every choice of one edge from each list.
func (s *shared) choose(rest [][]edge, chosen []edge, sign int64, along plane.Span) {
	if len(rest) == 0 {
		s.add(chosen, sign, along)
		return
	}
	for _, e := range rest[0] {
		x := along.Meet(e.x())
		if x.Empty() {
			continue
		}
		sg := sign
		if e.b.X > e.a.X {
			sg = -sg
		}
		s.choose(rest[1:], append(chosen, e), sg, x)
	}
}

// add counts the area under the lowest of the chosen edges along x.
func (s *shared) add(chosen []edge, sign int64, x plane.Span) {
	low := s.window.hi.Y
	for _, e := range chosen {
		if !e.flat() {
			v := s.under(chosen, x)
			s.parts.Add(s.parts, v.Mul(v, new(big.Rat).SetInt64(sign)))
			return
		}
		low = min(low, e.a.Y)
	}
	a := new(big.Int).Mul(bigInt(x.Len()), bigInt(low-s.window.lo.Y))
	s.whole.Add(s.whole, a.Mul(a, big.NewInt(sign)))
}

// under is the area between the window's floor and the lowest of the edges
// along x. Between two places where any two of the lines cross it is a
// trapezoid.
func (s *shared) under(es []edge, x plane.Span) *big.Rat {
	xs := s.breaks(es, x)
	sum, before := new(big.Rat), s.lowest(es, xs[0])
	for i := 1; i < len(xs); i++ {
		here := s.lowest(es, xs[i])
		t := new(big.Rat).Add(before, here)
		t.Mul(t, new(big.Rat).Sub(xs[i], xs[i-1]))
		sum.Add(sum, t)
		before = here
	}
	return sum.Quo(sum, big.NewRat(2, 1))
}

// lowest is the height over the window's floor of the lowest edge at x, held
// between floor and ceiling.
func (s *shared) lowest(es []edge, x *big.Rat) *big.Rat {
	y := rat(s.window.hi.Y)
	for _, e := range es {
		if v := e.at(x); v.Cmp(y) < 0 {
			y = v
		}
	}
	y.Sub(y, rat(s.window.lo.Y))
	if y.Sign() < 0 {
		return new(big.Rat)
	}
	return y
}

// breaks are the ends of x and the places between where two of the lines, the
// floor and the ceiling included, cross; in order.
func (s *shared) breaks(es []edge, x plane.Span) []*big.Rat {
	w := s.window
	lines := append(slices.Clone(es),
		edge{w.lo, plane.P(w.hi.X, w.lo.Y)}, edge{plane.P(w.lo.X, w.hi.Y), w.hi})
	from, to := rat(x.From), rat(x.To)
	xs := []*big.Rat{from, to}
	for i, e := range lines {
		for _, f := range lines[i+1:] {
			if c, ok := e.crossing(f); ok && c.Cmp(from) > 0 && c.Cmp(to) < 0 {
				xs = append(xs, c)
			}
		}
	}
	slices.SortFunc(xs, (*big.Rat).Cmp)
	return xs
}

// area is the area of a region in square ticks.
func area(g plane.Region) *big.Rat { return common(g) }

// one is a ring as a region.
func one(r plane.Ring) plane.Region { return plane.Region{r} }
