package drawing

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"strake/sheet"
)

// Looked up by squares, or one by one, the same lies over the same: small boxes, long
// lines, what comes to more squares than are kept, and some given back.
func TestPlacesBySquares(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	outline := func() []sheet.Pt {
		long := []float64{4, 30, 1500}[r.IntN(3)]
		a := sheet.Pt{X: r.Float64()*3000 - 500, Y: r.Float64()*3000 - 500}
		s, c := math.Sincos(r.Float64() * 2 * math.Pi)
		return strip(a, a.Add(sheet.Pt{X: c, Y: s}.Times(long)), 0.5+r.Float64()*3)
	}
	var taken places
	met := 0
	for range 900 {
		o := outline()
		want := slices.ContainsFunc(taken.all, func(p place) bool { return sheet.Overlap(p.outline, o) })
		if got := taken.over(o); got != want {
			t.Fatalf("%v: %v, want %v", o, got, want)
		}
		if want {
			met++
		}
		taken.add(o)
		if r.IntN(5) == 0 { // some are given back, as if they had never been taken
			taken.giveBack(len(taken.all) - r.IntN(min(4, len(taken.all))))
		}
	}
	if met < 100 || met > 890 || len(taken.large) < 10 {
		t.Errorf("%d met, %d large: the case shows little", met, len(taken.large))
	}
}
