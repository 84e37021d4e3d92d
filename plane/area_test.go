package plane_test

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"strake/plane"
	"strake/tape"
)

// trapezoids is twice the area of a ring by the other of the two textbook
// formulas: what lies between each side and the X axis, added up. Big numbers,
// so that nothing can overflow.
func trapezoids(r plane.Ring) *big.Int {
	sum := new(big.Int)
	for i, a := range r {
		b := r[(i+1)%len(r)]
		w := big.NewInt(int64(a.X - b.X))
		sum.Add(sum, w.Mul(w, big.NewInt(int64(a.Y+b.Y))))
	}
	return sum
}

// Area2 takes the corners two by two (shoelace, from the first corner); the
// trapezoid sum must give the same number to the last tick, for any ring that
// fits on a floor, wherever that lies.
func TestAreaByTwoFormulas(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Int64Range(-int64(tape.Longest), int64(tape.Longest))
		size := rapid.Int64Range(0, rapid.SampledFrom([]int64{5, 1000, int64(tape.Longest)}).Draw(t, "size"))
		x, y := at.Draw(t, "x"), at.Draw(t, "y")
		r := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) plane.Pt {
			return plane.P(tape.Length(x+size.Draw(t, "dx")), tape.Length(y+size.Draw(t, "dy")))
		}), 3, 12).Draw(t, "ring")
		got, want := big.NewInt(int64(plane.Ring(r).Area2())), trapezoids(r)
		if got.Cmp(want) != 0 {
			t.Fatalf("shoelace %v, trapezoids %v", got, want)
		}
	})
}

// Figures worked by hand: a right triangle of 3 by 4 is 6; a room of 12 by 10
// ft less a corner of 4 by 3 is 108 sq ft; the same room as a hole is negative.
func TestAreaByHand(t *testing.T) {
	const ft = tape.Foot
	l := plane.Ring{{X: 0, Y: 0}, {X: 12 * ft, Y: 0}, {X: 12 * ft, Y: 7 * ft}, {X: 8 * ft, Y: 7 * ft}, {X: 8 * ft, Y: 10 * ft}, {X: 0, Y: 10 * ft}}
	for _, c := range []struct {
		ring plane.Ring
		want tape.Area // doubled, in square feet
	}{
		{plane.Ring{{X: 0, Y: 0}, {X: 3 * ft, Y: 0}, {X: 0, Y: 4 * ft}}, 12},
		{l, 216},
		{l.Reverse(), -216},
	} {
		want := c.want * tape.Area(ft) * tape.Area(ft)
		if got := c.ring.Area2(); got != want {
			t.Errorf("%v: doubled area %d, want %d", c.ring, got, want)
		}
		if got := trapezoids(c.ring); got.Cmp(big.NewInt(int64(want))) != 0 {
			t.Errorf("%v: trapezoids %v, want %d", c.ring, got, want)
		}
	}
}
