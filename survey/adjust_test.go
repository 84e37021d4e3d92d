package survey

import (
	"math"
	"testing"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// plain is the model for published figures: no soft squares, no scale, every
// reading alike.
func plain() Model {
	m := Tape()
	m.NoSquares, m.NoScale, m.UnitWeights = true, true, true
	return m
}

func quad(clockwise bool) room.Sketch {
	return room.Sketch{Rooms: []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D"}, Clockwise: clockwise}}}
}

func in(from, to string, inches float64) Reading {
	return Reading{From: from, To: to, Value: tape.Length(math.Round(inches * float64(tape.Inch))), Step: tape.Sixteenth}
}

func area(b room.Built, ring []string) float64 {
	sum := 0.0
	for i := range ring {
		sum += b.At[ring[i]].Cross(b.At[ring[(i+1)%len(ring)]]) / 2
	}
	return sum
}

const inch2 = 25.4 * 25.4

// Brahmagupta's cyclic quadrilateral 39-60-52-25 with diagonals 63 and 56 has
// area 1764 (classic; figures from memory, verified by Ptolemy's theorem).
func TestCyclicQuadrilateral(t *testing.T) {
	rs := []Reading{in("A", "B", 39), in("B", "C", 60), in("C", "D", 52), in("D", "A", 25), in("A", "C", 63), in("B", "D", 56)}
	r := Adjust(quad(false), rs, plain())
	if !r.Converged || r.Redundant != 1 {
		t.Fatalf("converged %v, redundant %d", r.Converged, r.Redundant)
	}
	if a := area(r.Built, []string{"A", "B", "C", "D"}) / inch2; math.Abs(a-1764) > 1e-6 {
		t.Errorf("area %.9f, want 1764", a)
	}
	for i, v := range r.Residuals {
		if math.Abs(v) > 1e-6 {
			t.Errorf("residual %d is %g mm", i, v)
		}
	}
	want := map[string]plane.XY{"C": {X: 24.230769, Y: 58.153846}, "D": {X: -12.692308, Y: 21.538462}}
	for c, w := range want {
		if d := r.Built.At[c].Times(1 / 25.4).Sub(w).Len(); d > 1e-5 {
			t.Errorf("%s is %g in off", c, d)
		}
	}
	rs[4], rs[5] = in("A", "C", 56), in("B", "D", 63) // swapped: CD would be 58.57
	if r := Adjust(quad(false), rs, plain()); r.S0 < 20 {
		t.Errorf("swapped diagonals fit with s0 %.2f mm", r.S0)
	}
}

// The out-of-square room of ours: corners to 0.0001 in as a plain Python
// least-squares solution gives them (own figures, computed outside the
// project), with and without a blunder of 1 in.
func TestOutOfSquareRoom(t *testing.T) {
	rs := []Reading{in("A", "B", 180), in("B", "C", 144), in("C", "D", 184), in("D", "A", 144.5), in("A", "C", 232.875), in("B", "D", 231.625)}
	r := Adjust(quad(false), rs, plain())
	check := func(r Result, want map[string]plane.XY, areaWant, s0 float64) {
		t.Helper()
		for c, w := range want {
			if d := r.Built.At[c].Times(1 / 25.4).Sub(w).Len(); d > 1.5e-4 {
				t.Errorf("%s is %.5f in off", c, d)
			}
		}
		if a := area(r.Built, []string{"A", "B", "C", "D"}) / inch2; math.Abs(a-areaWant) > 0.06 {
			t.Errorf("area %.3f, want %.3f", a, areaWant)
		}
		if s := r.S0 / 25.4; math.Abs(s-s0) > 6e-4 {
			t.Errorf("s0 %.5f, want %.5f", s, s0)
		}
	}
	check(r, map[string]plane.XY{"B": {X: 180.0106}, "C": {X: 183.0168, Y: 143.9770}, "D": {X: -0.9929, Y: 144.5049}}, 26253.58, 0.0268)
	rs[5] = in("B", "D", 232.625)
	check(Adjust(quad(false), rs, plain()), map[string]plane.XY{"B": {X: 180.2084}, "C": {X: 182.5669, Y: 144.1444}, "D": {X: -1.6362, Y: 144.6538}}, 26310.4, 0.526)
}

// lroom is the L-shaped room of ours with 11 readings.
func lroom() (room.Sketch, []Reading) {
	s := room.Sketch{Rooms: []room.Room{{Name: "L", Corners: []string{"A", "B", "C", "D", "E", "F"}, Into: []string{"D"}}}}
	return s, []Reading{in("A", "B", 240), in("B", "C", 119), in("C", "D", 108.5), in("D", "E", 85), in("E", "F", 130.75), in("F", "A", 203),
		in("A", "C", 268.75), in("A", "D", 177.75), in("B", "D", 159+15.0/16), in("D", "F", 155+13.0/16), in("A", "E", 242+11.0/16)}
}

// The L-shaped room of ours, solved outside the project by plain Python least
// squares.
func TestLRoom(t *testing.T) {
	s, rs := lroom()
	r := Adjust(s, rs, plain())
	want := map[string]plane.XY{"B": {X: 239.994}, "C": {X: 240.991, Y: 118.989}, "D": {X: 132.507, Y: 118.447}, "E": {X: 132.356, Y: 203.435}, "F": {X: 1.614, Y: 202.989}}
	for c, w := range want {
		if d := r.Built.At[c].Times(1 / 25.4).Sub(w).Len(); d > 1.5e-3 {
			t.Errorf("%s is %.5f in off", c, d)
		}
	}
	if a := area(r.Built, []string{"A", "B", "C", "D", "E", "F"}) / inch2; math.Abs(a-39576.10) > 0.3 {
		t.Errorf("area %.2f", a)
	}
	if r.Redundant != 2 || math.Abs(r.S0/25.4-0.0278) > 5e-4 {
		t.Errorf("redundant %d, s0 %.5f in", r.Redundant, r.S0/25.4)
	}
}

// Length and width alone: a rectangle, and the shape rests on assumptions.
func TestLengthAndWidth(t *testing.T) {
	r := Adjust(quad(true), []Reading{in("A", "B", 180), in("B", "C", 144)}, Tape())
	if !r.Converged || r.Redundant != -3 {
		t.Fatalf("converged %v, redundant %d", r.Converged, r.Redundant)
	}
	if a := area(r.Built, []string{"A", "D", "C", "B"}) / inch2; math.Abs(a-180*144) > 0.01 {
		t.Errorf("area %.4f", a)
	}
}
