package check

import (
	"math/big"
	"slices"

	"strake/plane"
	"strake/tape"
)

// band is what lies beside a row along its tongue edge: from y.From to y.To
// across the rows.
type band struct {
	of plane.Region
	y  plane.Span
}

// shut are the parts of a stretch along the rows where the band is not open
// from one side to the other: something of the region's outline crosses it
// there, or it lies outside. In order; neighbours are one.
func (b band) shut(on plane.Span) []plane.Span {
	es := sidesOf(b.of)
	xs := b.turns(on, es)
	var out []plane.Span
	for i, to := range xs[1:] {
		mid := new(big.Rat).Add(rat(xs[i]), rat(to))
		if b.open(mid.Quo(mid, big.NewRat(2, 1)), es) {
			continue
		}
		if n := len(out); n > 0 && out[n-1].To == xs[i] {
			out[n-1].To = to
			continue
		}
		out = append(out, plane.Span{From: xs[i], To: to})
	}
	return out
}

// turns are the places along the rows where the band may begin or end to be
// open, to the nearest tick, and the ends of the stretch.
func (b band) turns(on plane.Span, es []edge) []tape.Length {
	xs := []tape.Length{on.From, on.To}
	keep := func(x tape.Length) {
		if x > on.From && x < on.To {
			xs = append(xs, x)
		}
	}
	for _, e := range es {
		keep(e.a.X)
		for _, y := range []tape.Length{b.y.From, b.y.To} {
			if !e.flat() && e.y().From < y && y < e.y().To {
				keep(nearest(e.swap().at(rat(y))))
			}
		}
	}
	slices.Sort(xs)
	return slices.Compact(xs)
}

// open tells whether the band lies inside at one place along the rows.
func (b band) open(x *big.Rat, es []edge) bool {
	below := 0
	for _, e := range es {
		if e.upright() || rat(e.x().From).Cmp(x) >= 0 || rat(e.x().To).Cmp(x) < 0 {
			continue
		}
		switch y := e.at(x); {
		case y.Cmp(rat(b.y.From)) <= 0:
			below++
		case y.Cmp(rat(b.y.To)) < 0:
			return false
		}
	}
	return below%2 == 1
}

// clearance is how far the region reaches below and above a line at one place along
// the rows; nothing where the line does not lie inside.
func clearance(of plane.Region, line tape.Length, x tape.Length) (below, above tape.Length) {
	low, high := []tape.Length{}, []tape.Length{}
	for _, e := range sidesOf(of) {
		if e.upright() || e.x().From >= x || e.x().To < x {
			continue
		}
		if y := nearest(e.at(rat(x))); y <= line {
			low = append(low, line-y)
		} else {
			high = append(high, y-line)
		}
	}
	if len(low)%2 == 0 || len(high) == 0 {
		return 0, 0
	}
	return slices.Min(low), slices.Min(high)
}
