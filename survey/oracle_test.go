package survey

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/diff/fd"
	"gonum.org/v1/gonum/optimize"

	"strake/plane"
)

// oracleCost is the weighted square sum of a one-room network written anew from
// the stated model: distances with one shared scale (mm per m), corners
// square to half a degree. p is the corners but A (0, 0) and B (p[0], 0), then
// the scale. It shares no code with the survey.
func oracleCost(ring []string, reflex map[string]bool, rs []Reading) func(p []float64) float64 {
	place := func(p []float64) map[string][2]float64 {
		at := map[string][2]float64{ring[0]: {0, 0}, ring[1]: {p[0], 0}}
		for i, c := range ring[2:] {
			at[c] = [2]float64{p[1+2*i], p[2+2*i]}
		}
		return at
	}
	return func(p []float64) float64 {
		at, scale := place(p), p[len(p)-1]
		sum := math.Pow(scale/(0.2/math.Sqrt(3)), 2)
		for _, r := range rs {
			step := float64(r.Step) / 8000
			variance := 0.3*0.3/3 + 0.8*0.8 + step*step/12
			a, b := at[r.From], at[r.To]
			d := math.Hypot(a[0]-b[0], a[1]-b[1])*(1+scale/1000) - float64(r.Value)/8000
			sum += d * d / variance
		}
		n := len(ring)
		for i, c := range ring {
			a, b, d := at[ring[(i+n-1)%n]], at[c], at[ring[(i+1)%n]]
			out, in := math.Atan2(d[1]-b[1], d[0]-b[0]), math.Atan2(a[1]-b[1], a[0]-b[0])
			want := 90.0
			if reflex[c] {
				want = 270
			}
			off := (in-out)*180/math.Pi - want
			off -= 360 * math.Round(off/360)
			sum += off * off / 0.25
		}
		return sum
	}
}

// A general minimiser (BFGS of gonum/optimize) on the same cost, written anew,
// puts every corner within 0.01 mm of ours.
func TestOracle(t *testing.T) {
	sets := map[string][]string{
		"four": {"AB", "BC", "CD", "DA", "AC", "BD"}, "short": {"AB", "BC", "AC"},
		"L": {"AB", "BC", "CD", "DE", "EF", "FA", "AC", "AD", "BD", "DF", "AE"}, "L walls": {"AB", "BC", "CD", "DE", "EF", "FA"},
	}
	for name, pairs := range sets {
		for seed := range uint64(5) {
			s := fourWalls
			if name[0] == 'L' {
				s = lShape
			}
			f := newSimulated(seed+7000, s)
			rs := f.between(pairs...)
			rs[2].Value += 16_000 // a slip of 2 mm, so that residuals are large
			r := Adjust(s, rs, f.m)
			ring := s.Rooms[0].Corners
			cost := oracleCost(ring, map[string]bool{"D": name[0] == 'L'}, rs)
			got := minimise(t, cost, ring, f.at)
			for i, c := range ring[2:] {
				if d := r.Built.At[c].Sub(plane.XY{X: got[1+2*i], Y: got[2+2*i]}).Len(); d > 0.01 {
					t.Errorf("%s, seed %d: %s is %.4f mm off", name, seed, c, d)
				}
			}
			if d := math.Abs(r.Built.At[ring[1]].X - got[0]); d > 0.01 {
				t.Errorf("%s, seed %d: %s is %.4f mm off", name, seed, ring[1], d)
			}
		}
	}
}

// minimise starts from the true corners shifted by centimetres.
func minimise(t *testing.T, cost func([]float64) float64, ring []string, at map[string]plane.XY) []float64 {
	t.Helper()
	p := []float64{at[ring[1]].Sub(at[ring[0]]).Len() + 20}
	for i, c := range ring[2:] {
		p = append(p, at[c].X+10*float64(i), at[c].Y-15)
	}
	p = append(p, 0)
	problem := optimize.Problem{Func: cost, Grad: func(g, x []float64) { fd.Gradient(g, cost, x, &fd.Settings{Formula: fd.Central, Step: 1e-4}) }}
	for range 5 { // again from where the line search gave up
		res, err := optimize.Minimize(problem, p, &optimize.Settings{GradientThreshold: 1e-9, MajorIterations: 5000}, &optimize.BFGS{})
		if res == nil {
			t.Fatal(err)
		}
		p = res.X
	}
	return p
}
