package plan_test

import (
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/lay"
	"strake/plan"
)

// Floors that were refused though nothing was wrong with the boards, or whose
// rows could not be laid as they were written.
func TestFloorsOnceRefused(t *testing.T) {
	for name, tt := range map[string]struct {
		text  string
		shows func(plan.Plan) bool // what the floor stands for
	}{
		// What is laid backwards beside a frame shifts with what is laid ahead of
		// it: the start that would have kept every rip did not exist.
		"a rip beside a butted frame": {besideButted, func(p plan.Plan) bool {
			return slices.ContainsFunc(p.Lay.Zones, func(z lay.Zone) bool { return z.Ahead < 0 }) && len(p.Lay.Exempt) > 0
		}},
		// The line to a pocket that is laid backwards meets a slanted wall beside an
		// undercut jamb: drawn out under the jamb, the zone's outline crossed itself.
		// And a row is nailed through the tongue only where the next one touches it.
		"a zone line beside an undercut jamb": {slantedJamb, func(p plan.Plan) bool {
			return slices.ContainsFunc(p.Lay.Zones, func(z lay.Zone) bool { return z.Ahead < 0 })
		}},
		// The rows come to the header from the room that the doorway leads to.
		"a header from the far room": {headerFromFar, func(p plan.Plan) bool {
			return slices.ContainsFunc(p.Lay.Zones, func(z lay.Zone) bool { return z.Kind == lay.Header }) && p.Fields[0].Name == "room far"
		}},
		// A header as wide as the wall is thick has no jamb beside it.
		"a header as wide as the wall": {strings.Replace(headerFromFar, "thickness: 140", "thickness: 90", 1), func(p plan.Plan) bool {
			f, ok := toldOf(p, "rows at a doorway")
			return ok && strings.Contains(f.Measured, "a header is 90 mm wide")
		}},
	} {
		p := planText(t, tt.text)
		if !tt.shows(p) {
			t.Errorf("%s: the floor no longer shows it", name)
		}
		for _, f := range p.Findings {
			if f.Level == finding.Stop {
				t.Errorf("%s: %v", name, f)
			}
		}
	}
}

const besideButted = `strake: 1
rooms: {den: {corners: [A, B, C, D]}}
readings: {A-B: 190-1/32, B-C: 157-1/16, C-D: 189-7/8, D-A: 157, A-C: 246-9/16, B-D: 246-5/8}
stays: {hearth: {kind: hearth, wall: A-B, from: A, at: 41, width: 63, depth: 27, frame: butted}}
boards: {face: 4, thickness: 3/4, lengths: {mix: {least: 14, most: 84, mean: 48}}}
base: 1/2
shoe: 3/4
`

const slantedJamb = `strake: 1
unit: mm
rooms:
  main: {corners: [A, B, C, D, E, F], into: [D], angles: {B: 81.6, C: 98.4}}
  second: {corners: [sA, sB, sC, sD]}
readings: {A-B: 2862, A-C: 3141, A-D: 2077, A-E: 3519, A-F: 3351, B-C: 1777, B-D: 2484, B-E: 3768, B-F: 4407, C-D: 1496, C-E: 2172, C-F: 3053, D-E: 1580, D-F: 1941, E-F: 1114,
  sA-sB: 1002, sA-sC: 2121, sA-sD: 1869, sB-sC: 1869, sB-sD: 2121, sC-sD: 1002}
doorways: {between: {wall: B-C, from: B, at: 397, width: 730, thickness: 95, undercut: yes, beyond: {wall: sD-sA, from: sA, at: 607}}}
boards: {face: 4 in, ten_boards: 40-7/8 in, thickness: 3/4 in, lengths: {mix: {least: 350, most: 2000, mean: 1100}}}
base: 1/2 in
`

const headerFromFar = `strake: 1
unit: mm
rooms: {near: {corners: [A, B, C, D]}, far: {corners: [E, F, G, H]}}
readings: {A-B: 2400, B-C: 2500, C-D: 2400, D-A: 2500, A-C: 3466, B-D: 3466, E-F: 5200, F-G: 2600, G-H: 5200, H-E: 2600, E-G: 5814, F-H: 5814}
doorways: {arch: {wall: B-C, from: B, at: 700, width: 800, thickness: 140, beyond: {wall: H-E, from: E, at: 900}, rows: header}}
boards: {face: 90, thickness: 20, lengths: {mix: {least: 400, most: 2200, mean: 1200}}}
base: 15
shoe: 15
`

// A pin on an edge that no row closes against in the direction of the rows is
// told once, with why, and left out: the floor holds without it.
func TestPinThatNothingKeeps(t *testing.T) {
	p := planText(t, closetJob(60, 48, "wishes: {rows_along: A-B}\npins: {full_board_at: B-C}"))
	told := 0
	for _, f := range p.Findings {
		switch {
		case f.Level == finding.Stop:
			t.Error(f)
		case f.Rule == "pin":
			told++
			if f.Level != finding.Warn || !strings.Contains(f.Measured, "no row closes against it") {
				t.Error(f)
			}
		}
	}
	if told != 1 {
		t.Errorf("told %d times", told)
	}
}

// A pin that the rows cannot keep is told once, as a warning with why, and left
// out; one that names a row that is not there stops.
func TestPinsThatCannotHold(t *testing.T) {
	for pin, why := range map[string]string{
		"full_board_at: B-C":          "no row closes against it",
		"rip: {at: B-C, width: 3}":    "no row closes against it",
		"stepped_at: B-C":             "none lies along it",
		"tongues_toward: B-C":         "no side tongue faces it",
		"spline_on: B":                "no row lies behind a line there",
		"spline_on: C":                "",
		"rip: {at: A-B, width: 0.05}": "a full board closes there",
		"boards: {77: [40, 30]}":      "there is no row 77",
	} {
		p := planText(t, closetJob(60, 48, "wishes: {rows_along: A-B}\npins: {"+pin+"}"))
		told := 0
		for _, f := range p.Findings {
			level := finding.Warn
			if strings.HasPrefix(pin, "boards") {
				level = finding.Stop
			}
			switch {
			case f.Rule == "pin" && f.Level == level && strings.Contains(f.Measured, why):
				told++
			case f.Level == finding.Stop || f.Rule == "pin":
				t.Errorf("%s: %s", pin, f)
			}
		}
		if want := min(1, len(why)); told != want {
			t.Errorf("%s: told %d times", pin, told)
		}
	}
}

// The comparison counts the rip along a frame too.
func TestRipAtAFrameIsScored(t *testing.T) {
	p := planText(t, besideButted)
	k := plan.Choose(p.Job).Candidates[0]
	want := p.Job.Boards.Face
	for _, r := range append(k.Layout.Rips, k.Layout.AtFrames...) {
		want = min(want, r.Narrowest)
	}
	if len(k.Layout.AtFrames) == 0 || k.Score.Narrowest != want {
		t.Errorf("scored %v, the narrowest of %d rips and %d at the frame is %v", k.Score.Narrowest, len(k.Layout.Rips), len(k.Layout.AtFrames), want)
	}
}
