package fasten

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// meet is where a line along x at height y crosses a line through at with a direction:
// two lines of the plane, worked out apart from the code above.
func meet(d plane.Dir, y tape.Length, at, along plane.XY) float64 {
	// x*d + y*left(d) = at + t*along
	px, py := -d.Y*y.Millimetres(), d.X*y.Millimetres()
	det := d.X*-along.Y + along.X*d.Y
	return ((at.X-px)*-along.Y + along.X*(at.Y-py)) / det
}

// Every joist that the stretch crosses gets a nail within a tick or two; the ones at
// the ends stay; no two neighbours come farther apart than the spacing; no nail is
// lost.
func TestNailsOverJoists(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		turn := rapid.Float64Range(-math.Pi, math.Pi).Draw(t, "turn")
		d := plane.Dir{X: math.Cos(turn), Y: math.Sin(turn)}
		lean := turn + rapid.Float64Range(20, 160).Draw(t, "lean")*math.Pi/180
		j := Joists{At: plane.XY{X: rapid.Float64Range(-900, 900).Draw(t, "x"), Y: rapid.Float64Range(-900, 900).Draw(t, "y")},
			Along: plane.XY{X: math.Cos(lean), Y: math.Sin(lean)}, Spacing: tape.Length(rapid.IntRange(300, 620).Draw(t, "apart")) * tape.Millimetre}
		u := Use{Spacing: tape.Length(rapid.IntRange(150, 260).Draw(t, "spacing")) * tape.Millimetre, End: 50 * tape.Millimetre, PerBoard: 2, Joists: j}
		long := tape.Length(rapid.IntRange(200, 2500).Draw(t, "long")) * tape.Millimetre
		y := tape.Length(rapid.IntRange(-3000, 3000).Draw(t, "row")) * tape.Millimetre
		before := u.Along(long)
		after := placer{u: u}.overJoists(before, lay.Zone{Dir: d}, y)
		if len(after) < len(before) || after[0] != before[0] || after[len(after)-1] != before[len(before)-1] || !slices.IsSorted(after) {
			t.Fatalf("%v became %v", before, after)
		}
		for i := 1; i < len(after); i++ {
			if after[i]-after[i-1] > u.Spacing {
				t.Fatalf("nails %s apart, at most %s", after[i]-after[i-1], u.Spacing)
			}
		}
		n := j.Along.Left()
		for k := -60; k <= 60; k++ {
			x := meet(d, y, j.At.Add(n.Times(float64(k)*j.Spacing.Millimetres())), j.Along)
			if x <= after[0].Millimetres()+0.01 || x >= after[len(after)-1].Millimetres()-0.01 {
				continue
			}
			if !slices.ContainsFunc(after, func(a tape.Length) bool { return math.Abs(a.Millimetres()-x) < 0.01 }) {
				t.Fatalf("no nail over the joist at %.2f mm: %v", x, after)
			}
		}
	})
}

// Rows along the joists, and joists of no known place, leave nails where they were.
func TestNailsWithoutJoists(t *testing.T) {
	u := Use{Spacing: 200 * tape.Millimetre, End: 50 * tape.Millimetre, PerBoard: 2}
	xs := u.Along(1500 * tape.Millimetre)
	along := u
	along.Joists = Joists{Along: plane.XY{X: 1}, Spacing: 400 * tape.Millimetre}
	for _, u := range []Use{u, along} {
		if got := (placer{u: u}).overJoists(xs, lay.Zone{Dir: plane.Dir{X: 1}}, 0); !slices.Equal(got, xs) {
			t.Errorf("%v became %v", xs, got)
		}
	}
}
