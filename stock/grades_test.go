package stock

import (
	"testing"

	"strake/tape"
)

// MFMA's limits on shorts, First to Third, as its rules print them: under 42, 30 and
// 18 in; and the averages of NOFMA's old oak rules, 3-3/4, 3-1/4 and 2-3/4 ft (2-1/4
// for No. 2 from memory).
func TestGrades(t *testing.T) {
	for name, want := range map[string][3]float64{
		"maple first": {55, 35, 10}, "maple second and better": {60, 42, 15}, "maple third and better": {70, 55, 25}, "maple third": {85, 75, 40},
	} {
		g, ok := FindGrade(name)
		if !ok {
			t.Fatal(name)
		}
		for i, under := range []tape.Length{42 * tape.Inch, 30 * tape.Inch, 18 * tape.Inch} {
			n, all := 0, 10_000
			var sum tape.Length
			for k := range all {
				l := g.Quantile((float64(k) + 0.5) / float64(all))
				sum += l
				if l < under {
					n++
				}
				if l < 9*tape.Inch || l > g.Most {
					t.Fatalf("%s: a piece of %s", name, l)
				}
			}
			if got := 100 * float64(n) / float64(all); got > want[i]+0.02 || got < want[i]-0.02 {
				t.Errorf("%s: %.2f %% under %s, the rule has %.0f", name, got, under, want[i])
			}
			if mean := sum / tape.Length(all); (mean - g.Mean).Abs() > tape.Sixteenth {
				t.Errorf("%s: mean %s, stated %s", name, mean, g.Mean)
			}
		}
	}
	for name, feet := range map[string]float64{"oak clear": 3.75, "oak select": 3.25, "oak no 1 common": 2.75, "oak no 2 common": 2.25} {
		if g, ok := FindGrade(name); !ok || g.Mean != tape.Length(feet*float64(tape.Foot)) {
			t.Errorf("%s: %+v", name, g)
		}
	}
	if _, ok := FindGrade("oak"); ok {
		t.Error("no grade of that name")
	}
}

// Board-measure factors for strip of 25/32 in without the 5 % for end-match and
// cutting: 2-1/4 in counts a third more than its face (from memory; 3/4 over the face).
func TestNominalMeasure(t *testing.T) {
	c := Carton{Area: 24 * 144 * tape.Area(tape.Inch) * tape.Area(tape.Inch), Nominal: true}
	if got := c.FaceArea(9 * tape.Inch / 4).SquareFeet(); got < 17.9999 || got > 18.0001 {
		t.Errorf("24 sq ft nominal of 2-1/4 in strip: %.4f sq ft of face, want 18", got)
	}
	c.Nominal = false
	if c.FaceArea(9*tape.Inch/4) != c.Area {
		t.Error("face measure is what lies on the floor")
	}
}

// Pieces in 1,000 sq ft of strip of 2-1/4 in: 1,422 of Clear, 1,939 of No. 1 by their
// averages; 12/w lineal feet a square foot: 5.333, 3.692 and 2.4 for 2-1/4, 3-1/4 and 5 in.
func TestPiecesAndLinealFeet(t *testing.T) {
	for name, want := range map[string]float64{"oak clear": 1422, "oak no 1 common": 1939} {
		g, _ := FindGrade(name)
		feet := 1000 * 12 / 2.25
		if got := feet / (g.Mean.Inches() / 12); got < want-0.5 || got > want+0.5 {
			t.Errorf("%s: %.1f pieces, want %.0f", name, got, want)
		}
	}
	foot := tape.Area(tape.Foot) * tape.Area(tape.Foot)
	for face, want := range map[tape.Length]float64{9 * tape.Inch / 4: 5.333, 13 * tape.Inch / 4: 3.692, 5 * tape.Inch: 2.4} {
		if got := float64((Carton{Area: foot}).FaceArea(face)) / float64(face) / float64(tape.Foot); got < want-0.0005 || got > want+0.0005 {
			t.Errorf("a square foot of %s: %.4f ft, want %.3f", face, got, want)
		}
	}
}
