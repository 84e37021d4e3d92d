package check

import (
	"math/big"
	"slices"

	"strake/plane"
	"strake/tape"
)

// mostCorners is more than any piece, part or zone outline can need: the test
// for crossing sides takes the square of it.
const mostCorners = 2000

// ringFault is what keeps a ring from being an outline, in words; empty when
// nothing does. Outer rings run counter-clockwise, holes clockwise.
func ringFault(r plane.Ring, outer bool) string {
	switch {
	case len(r) < 3:
		return "has fewer than three corners"
	case len(r) > mostCorners:
		return "has too many corners"
	case !fits(r):
		return "lies farther out than can be measured"
	case !simple(r):
		return "crosses or touches itself"
	case outer && area2(r).Sign() <= 0:
		return "runs clockwise"
	}
	return ""
}

// area2 is twice the area of r, positive when it runs counter-clockwise. Unlike
// plane's it cannot overflow, whatever is read.
func area2(r plane.Ring) *big.Int {
	sum := new(big.Int)
	for i := 1; i+1 < len(r); i++ {
		sum.Add(sum, cross(r[i].Sub(r[0]), r[i+1].Sub(r[0])))
	}
	return sum
}

// fits tells whether every corner is within tape.Longest of the origin, so
// that no difference of two overflows.
func fits(r plane.Ring) bool {
	for _, p := range r {
		// not Abs: the least int64 has none
		if p.X > tape.Longest || p.X < -tape.Longest || p.Y > tape.Longest || p.Y < -tape.Longest {
			return false
		}
	}
	return true
}

// regionHolds tells whether the rings of g, holes taken off, hold area.
func regionHolds(g plane.Region) bool {
	sum := new(big.Int)
	for _, r := range g {
		sum.Add(sum, area2(r))
	}
	return sum.Sign() > 0
}

func regionFits(g plane.Region) bool {
	return !slices.ContainsFunc(g, func(r plane.Ring) bool { return !fits(r) })
}

// simple tells whether no two sides of r meet but neighbours at their corner.
func simple(r plane.Ring) bool {
	es := sides(r)
	for i, e := range es {
		if e.a == e.b {
			return false
		}
		next := es[(i+1)%len(es)]
		if plane.Side(e.a, e.b, next.b) == 0 && dot(e.step(), next.step()).Sign() < 0 {
			return false // turns back on itself
		}
		for j := i + 2; j < len(es); j++ {
			if (i != 0 || j != len(es)-1) && meets(e, es[j]) {
				return false
			}
		}
	}
	return true
}

// meets tells whether two edges have a point in common, ends counted.
func meets(e, f edge) bool {
	if e.x().From > f.x().To || f.x().From > e.x().To || e.y().From > f.y().To || f.y().From > e.y().To {
		return false
	}
	return plane.Side(e.a, e.b, f.a)*plane.Side(e.a, e.b, f.b) <= 0 &&
		plane.Side(f.a, f.b, e.a)*plane.Side(f.a, f.b, e.b) <= 0
}

// normal is r without corners on straight sides, from its lowest corner (the
// leftmost of those) on: two rings of one shape and place have one normal.
func normal(r plane.Ring) plane.Ring {
	var out plane.Ring
	for i, p := range r {
		if plane.Side(r[(i+len(r)-1)%len(r)], r[(i+1)%len(r)], p) != 0 {
			out = append(out, p)
		}
	}
	at := 0
	for i, p := range out {
		if p.Y < out[at].Y || p.Y == out[at].Y && p.X < out[at].X {
			at = i
		}
	}
	return append(slices.Clone(out[at:]), out[:at]...)
}

func sameShape(a, b plane.Ring) bool { return slices.Equal(normal(a), normal(b)) }
