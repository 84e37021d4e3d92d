package survey

import (
	"math"
	"testing"

	"strake/finding"
	"strake/room"
	"strake/tape"
)

// The table of readings is of the room that is built: what it calls fitted is
// the distance between the built corners, to the last figure.
func TestVerdictsAreOfTheBuiltRoom(t *testing.T) {
	m := Tape()
	m.NoScale = true
	s := room.Sketch{Rooms: []room.Room{{Name: "L", Corners: []string{"A", "B", "C", "D", "E", "F"}, Into: []string{"D"}}}}
	rs := []Reading{in("A", "B", 240), in("B", "C", 119), in("C", "D", 108.5), in("D", "E", 85), in("E", "F", 130.75), in("F", "A", 203.5),
		in("A", "C", 268.75), in("A", "D", 177.75), in("B", "D", 160)}
	r := Adjust(s, rs, m)
	for _, v := range r.Report(rs).Verdicts {
		is := r.Built.At[rs[v.Reading].To].Sub(r.Built.At[rs[v.Reading].From]).Len()
		if math.Abs(is-v.Adjusted) > 1e-6 || math.Abs(v.Adjusted-v.Residual-rs[v.Reading].Value.Millimetres()) > 1e-6 {
			t.Errorf("%s: table says %.4f and off %.4f, the built room has %.4f", rs[v.Reading].Name(), v.Adjusted, v.Residual, is)
		}
	}
}

// A forgotten inner corner, and a corner far from square, stop the job and name
// what to write; a corner a little off does not.
func TestCornersThatAreNotSquare(t *testing.T) {
	style := tape.Style{Unit: tape.UnitInch}
	stops := func(s room.Sketch, rs []Reading) map[string]bool {
		out := map[string]bool{}
		for _, f := range Adjust(s, rs, Tape()).Findings(rs, style) {
			if f.Level == finding.Stop {
				out[f.Rule+" "+f.Where] = true
			}
		}
		return out
	}
	six := room.Sketch{Rooms: []room.Room{{Name: "L", Corners: []string{"A", "B", "C", "D", "E", "F"}}}}
	if got := stops(six, []Reading{in("A", "B", 240), in("B", "C", 119)}); !got["corners that close L"] {
		t.Errorf("forgotten into: %v", got)
	}
	four := func(cd float64) []Reading { // A(0,0) B(180,0) D(0,144), C at height 144
		return []Reading{in("A", "B", 180), in("B", "C", math.Hypot(180-cd, 144)), in("C", "D", cd), in("D", "A", 144), in("A", "C", math.Hypot(cd, 144)), in("B", "D", math.Hypot(180, 144))}
	}
	if got := stops(quad(false), four(150)); !got["corners taken for square corner B"] || !got["corners taken for square corner C"] {
		t.Errorf("12 degrees off: %v", got)
	}
	if got := stops(quad(false), four(176)); len(got) != 0 {
		t.Errorf("1.6 degrees off: %v", got)
	}
}

// Corners all over the room that come out far from square have one cause, and
// are told once, together.
func TestManyCrookedCornersAreOneFinding(t *testing.T) {
	rs := []Reading{in("A", "B", 120), in("B", "C", 100), in("C", "D", 60), in("D", "A", 100)}
	var told []finding.Finding
	for _, f := range Adjust(quad(false), rs, Tape()).Findings(rs, inches16) {
		if f.Rule == "corners taken for square" {
			told = append(told, f)
		}
	}
	if len(told) != 1 || told[0].Level != finding.Stop || told[0].Where != "corners A, B, C, D" || told[0].Measured != "the readings make them 73, 73, 107, 107 degrees" {
		t.Errorf("told %v", told)
	}
}
