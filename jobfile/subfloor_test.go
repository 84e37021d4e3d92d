package jobfile_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"strake/fasten"
	"strake/job"
	"strake/jobfile"
	"strake/ready"
	"strake/room"
	"strake/subfloor"
	"strake/tape"
)

// under is a job with every key of what lies under the boards.
const under = `strake: 1
unit: in
rooms:
  den: {corners: [A, B, C, D]}
readings: {A-B: 144, B-C: 120, C-D: 144, D-A: 120, A-C: 187-7/16}
boards: {face: 5, thickness: 3/4, side_tongue: 1/4, lengths: {one: 48}}
subfloor:
  on: wood
  built: 1964
  layers:
    - {what: sheet vinyl}
    - {what: plywood, thickness: 5/8}
  flat: us strict
  flat_limits: [{under: 6', gap: 1/8}, {under: 10', gap: 3/16}]
  flat_limits_by: code
  flat_limits_from: by-law 12
  straightedge:
    - {place: by the door, under: 6', gap: 3/16, long: 30, wide: 20}
    - {place: at the window, under: 4', gap: 1/4, hump: yes}
  heights:
    wall: A-B
    from: B
    at: 6
    off: 8
    step: 12
    lines:
      - [0, 1/16, -1/8]
      - [0, x, 3/16]
  squeaks:
    - {place: in the middle, long: 48, wide: 36}
fasteners: {kind: staple, length: 1-1/2, spacing: 7, ends: 3, box: 5000, by: code, source: by-law 13}
keep_free:
  tube: {what: heating, wall: C-D, from: D, at: 10, off: 20, width: 90, depth: 3, below: 1-1/2, margin: 1/2}
  wire: {what: cable, wall: C-D, from: D, at: 10, width: 90, depth: 3}
`

func TestUnderTheBoards(t *testing.T) {
	j, _, err := jobfile.ReadJob("under.yaml", []byte(under))
	if err != nil {
		t.Fatal(err)
	}
	want := job.Subfloor{
		On: subfloor.OnWood, Built: 1964, Flat: "us strict", OwnBy: "code", OwnFrom: "by-law 12",
		Own:      []subfloor.Limit{{Length: 72 * in, Gap: in / 8}, {Length: 120 * in, Gap: 3 * in / 16}},
		Layers:   []subfloor.Layer{{Material: subfloor.Sheet}, {Material: subfloor.Plywood, Thickness: 5 * in / 8}},
		Readings: []subfloor.Reading{{Place: "by the door", Edge: 72 * in, Gap: 3 * in / 16, Long: 30 * in, Wide: 20 * in}, {Place: "at the window", Edge: 48 * in, Gap: in / 4, Hump: true}},
		Heights: job.Heights{Wall: room.Wall{"A", "B"}, From: "B", At: 6 * in, Off: 8 * in, Grid: subfloor.Grid{Step: 12 * in, Cols: 3, Rows: 2,
			Height: []tape.Length{0, in / 16, -in / 8, 0, 0, 3 * in / 16}, Hole: []bool{false, false, false, false, true, false}}},
		Squeaks: []subfloor.Squeak{{Place: "in the middle", Long: 48 * in, Wide: 36 * in}},
	}
	if !reflect.DeepEqual(j.Subfloor, want) {
		t.Errorf("read\n%+v\nwant\n%+v", j.Subfloor, want)
	}
	if n := (job.Fasteners{Told: true, Kind: fasten.Staple, Length: 3 * in / 2, Spacing: 7 * in, End: 3 * in, Box: 5000, By: "code", From: "by-law 13"}); j.Nails != n {
		t.Errorf("read %+v", j.Nails)
	}
	cd := room.Wall{"C", "D"}
	free := []job.KeepFree{
		{Name: "tube", What: "heating", Wall: cd, From: "D", At: 10 * in, Off: 20 * in, Width: 90 * in, Depth: 3 * in, Below: 3 * in / 2, Margin: in / 2, Known: true},
		{Name: "wire", What: "cable", Wall: cd, From: "D", At: 10 * in, Width: 90 * in, Depth: 3 * in, Margin: in},
	}
	if !reflect.DeepEqual(j.KeepFree, free) {
		t.Errorf("read %+v", j.KeepFree)
	}
	if r, by := j.Subfloor.Rule(2 * in); r.Name != "own" || by != ready.Code || r.Source != "by-law 12" {
		t.Errorf("rule %+v of %v", r, by)
	}
}

func TestMistakesUnderTheBoards(t *testing.T) {
	for _, tt := range []struct{ old, new, at, what, accept string }{
		{"on: wood", "on: timber", "timber", "“timber” is not known", "one of wood, slab"},
		{"on: wood\n  ", "", "built: 1964", "“on” is missing", "one of wood, slab"},
		{"subfloor:\n", "site: {subfloor: slab}\nsubfloor:\n", "wood\n", "under site the subfloor is another one: slab", "the same in both"},
		{"built: 1964", "built: 64", "64", "not such a number", "from 1500"},
		{"what: plywood", "what: ply", "ply, thick", "“ply” is not known", "plywood"},
		{"{what: sheet vinyl}", "{thickness: 1/8}", "{thickness", "“what” is missing", "one of"},
		{"thickness: 5/8}", "thickness: 5 ft}", "5 ft", "out of range", "from"},
		{"flat: us strict", "flat: din row 5", "din row 5", "is not known", "din row 3"},
		{"{under: 10', gap: 3/16}", "{under: 6', gap: 3/16}", "{under: 6', gap: 3", "from the shortest to the longest", "rising length"},
		{"{under: 10', gap: 3/16}", "{under: 10', gap: 1/16}", "{under: 10', gap: 1", "never shows less", `at least the 1/8"`},
		{"flat_limits: [{under: 6', gap: 1/8}, {under: 10', gap: 3/16}]\n  flat_limits_by: code\n  ", "", "by-law 12", "goes with flat_limits", "leave it out"},
		{"gap: 1/4, hump", "hump", "{place: at the window", "“gap” is missing", "a length"},
		{"[0, x, 3/16]", "[0, 3/16]", "[0, 3/16]", "has 2 heights, the first has 3", "x where one was not read"},
		{"[0, x, 3/16]", "[0, y, 3/16]", "y, 3/16", "", ""},
		{"- [0, 1/16, -1/8]\n      - [0, x, 3/16]", "- [0, 1/16]\n      - [0, x]", "- [0, 1/16]", "too small", "three marks"},
		{"- [0, 1/16, -1/8]\n      - [0, x, 3/16]", strings.Repeat("- [0]\n      ", 600) + "- [0]", "", "too many marks", "at most 600"},
		{"step: 12", "step: 80", "", "goes past the end of wall A-B", "at most"},
		{"wall: A-B\n", "wall: A-C\n", "A-C", "not neighbours", "A-B"},
		{"from: B\n", "from: C\n", "C\n", "not a corner of wall A-B", "A or B"},
		{"kind: staple", "kind: screw", "screw", "“screw” is not known", "cleat, staple"},
		{"spacing: 7", "spacing: 7 ft", "7 ft", "out of range", "from"},
		{"what: heating", "what: tube", "tube, wall", "is not known", "pipe, heating, cable, duct"},
		{"what: cable, wall: C-D", "what: cable, wall: C-E", "C-E", "is not a corner", "A-B"},
		{"at: 10, width: 90", "at: 100, width: 90", "90", "goes past the end of wall C-D", "at most"},
		{"width: 90, depth: 3}", "width: 90}", "{what: cable", "“depth” is missing", "a length"},
	} {
		text := strings.Replace(under, tt.old, tt.new, 1)
		if text == under {
			t.Fatalf("%q is not in the job", tt.old)
		}
		_, _, err := jobfile.ReadJob("job.yaml", []byte(text))
		var errs jobfile.Errors
		if !errors.As(err, &errs) {
			t.Errorf("%q: %v", tt.new, err)
			continue
		}
		e := errs[0]
		if tt.at != "" && !strings.HasPrefix(rest(text, e.Line, e.Column), tt.at) {
			t.Errorf("%q: the caret is not at %q\n%v", tt.new, tt.at, e)
		}
		if len(errs) != 1 || !strings.Contains(e.What, tt.what) || !strings.Contains(e.Accept, tt.accept) || e.Accept == "" {
			t.Errorf("%q: want %q and to accept %q\n%v", tt.new, tt.what, tt.accept, errs)
		}
	}
}
