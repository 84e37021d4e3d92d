package survey

import (
	"math"
	"strings"
	"testing"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

func metres(from, to string, m float64) Reading {
	return Reading{From: from, To: to, Value: tape.Length(math.Round(m * float64(tape.Metre))), Step: tape.Millimetre}
}

// The braced quadrilateral of a public university exercise in adjustment
// (Geodätische Auswertemethoden, UE 14; read in a public copy). Published: the
// two fixed points and the five observed distances. Computed outside the
// project: the coordinates, residuals and s0. Ours agree to the last figure
// given there.
func TestBracedQuadrilateral(t *testing.T) {
	m := plain()
	m.Fixed = map[string]plane.XY{"P3": {X: 82820, Y: 440630}, "P4": {X: 259390, Y: 448350}}
	s := room.Sketch{Rooms: []room.Room{{Name: "net", Corners: []string{"P1", "P2", "P4", "P3"}}}}
	rs := []Reading{metres("P1", "P3", 181.868), metres("P1", "P4", 268.869), metres("P1", "P2", 193.284),
		metres("P2", "P3", 258.015), metres("P2", "P4", 193.999)}
	r := Adjust(s, rs, m)
	want := map[string]plane.XY{"P1": {X: 68146.7, Y: 259357.2}, "P2": {X: 261364.1, Y: 254363.2}}
	for c, w := range want {
		if d := r.Built.At[c].Sub(w).Len(); d > 0.12 {
			t.Errorf("%s at %v, %.3f mm off", c, r.Built.At[c], d)
		}
	}
	for i, w := range []float64{-2.32, 3.21, -2.09, 3.06, -2.15} {
		if math.Abs(r.Residuals[i]-w) > 0.006 {
			t.Errorf("%s misses by %.3f mm, want %.2f", rs[i].Name(), r.Residuals[i], w)
		}
	}
	if math.Abs(r.S0-5.83) > 0.005 {
		t.Errorf("s0 %.4f mm, want 5.83", r.S0)
	}
	rep := r.Report(rs)
	if rep.Spare != 1 || rep.Assumed != 0 || math.Abs(rep.Variance-34.005) > 0.01 {
		t.Errorf("spare %d, assumed %d, variance factor %.3f (computed outside: 34.005)", rep.Spare, rep.Assumed, rep.Variance)
	}
	// With one reading to spare every test is the same, the root of the square
	// sum, and every pair is alike: theory.
	for _, v := range rep.Verdicts {
		if math.Abs(math.Abs(v.Test)-math.Sqrt(rep.Variance)) > 1e-3 {
			t.Errorf("%s: test %.4f, want %.4f either way", rs[v.Reading].Name(), v.Test, math.Sqrt(rep.Variance))
		}
	}
	if len(rep.Alike) != 1 || len(rep.Alike[0]) != 5 {
		t.Errorf("alike %v, want all five", rep.Alike)
	}
}

// A parallelogram of 180 by 144 with diagonals 231 and 230 is 0.25476 degrees
// out of square, 0.640 in over its shorter side: the law of cosines, worked out
// here: cos = (231^2-230^2)/(4 180 144).
func TestSquarenessFromDiagonals(t *testing.T) {
	rs := []Reading{in("A", "B", 180), in("B", "C", 144), in("C", "D", 180), in("D", "A", 144), in("A", "C", 231), in("B", "D", 230)}
	r := Adjust(quad(false), rs, plain())
	cos := func(b string, a, c string) float64 {
		u, v := r.Built.At[a].Sub(r.Built.At[b]).Unit(), r.Built.At[c].Sub(r.Built.At[b]).Unit()
		return u.Dot(v)
	}
	// The readings are not exactly a parallelogram's (2(a²+b²) is p²+q² plus
	// 11), so the angle agrees to what the residuals allow.
	off := 90 - math.Acos(math.Abs(cos("A", "B", "D")))*180/math.Pi
	if math.Abs(off-0.25476) > 2e-4 {
		t.Errorf("out of square by %.5f degrees, want 0.25476", off)
	}
	var told string
	for _, f := range r.Findings(rs, tape.Style{Unit: tape.UnitInch, Step: tape.SixtyFourth}) {
		if f.Rule == "out of square" {
			told = f.Measured
		}
	}
	if !strings.HasPrefix(told, `41/64" over 144"`) { // 0.640 in is 40.98/64
		t.Errorf("told as %q", told)
	}
}

// Swapped diagonals of the cyclic quadrilateral: refused, not fitted.
func TestSwappedDiagonalsRefused(t *testing.T) {
	rs := []Reading{in("A", "B", 39), in("B", "C", 60), in("C", "D", 52), in("D", "A", 25), in("A", "C", 56), in("B", "D", 63)}
	r := Adjust(quad(false), rs, Tape())
	rep := r.Report(rs)
	if !rep.Wrong || rep.Locatable || rep.Spare != 1 || rep.Chance > 1e-9 {
		t.Errorf("wrong %v, locatable %v, spare %d, chance %g", rep.Wrong, rep.Locatable, rep.Spare, rep.Chance)
	}
	fs := r.Findings(rs, tape.Paper(tape.UnitInch))
	if f, ok := first(fs, "readings that do not agree"); !ok || f.Level != "stop" || !strings.Contains(f.Do, `A-C and B-D fit with their figures swapped: A-C 63", B-D 56"?`) {
		t.Errorf("findings %v", fs)
	}
}
