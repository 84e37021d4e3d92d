package jobfile_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/stock"
	"strake/tape"
)

const several = `strake: 1
rooms:
  den: {corners: [A, B, C, D], walk: counter-clockwise}
readings: {A-B: 144, B-C: 100, C-D: 144, D-A: 100, A-C: 175.3, B-D: 175.3}
doorways:
  out: {wall: A-B, from: A, at: 40, width: 30, thickness: 5, ends: 1, beyond: stair}
stays:
  stone: {kind: hearth, wall: C-D, from: C, at: 40, width: 40, depth: 12}
boards:
  thickness: 3/4
  widths:
    - {face: 5, ten_boards: 50-1/4, lengths: {tally: [20 x 48, 12 x 60]}}
    - {face: 2, lengths: {tally: [40 x 48, 24 x 60], read_to: 1/8}}
    - {face: 3, lengths: {one: 48, count: 60}}
  pattern: [2, 3, 5, 3]
`

// Boards of several widths are read each with its own; the widest stands for
// all where one figure is wanted.
func TestSeveralWidths(t *testing.T) {
	j, odd, err := jobfile.ReadJob("job.yaml", []byte(several))
	if err != nil {
		t.Fatal(err)
	}
	b := j.Boards
	if b.Face != 5*tape.Inch || b.Known != stock.Tallied || j.Limits.NarrowestRip.Value != 2*tape.Inch || j.Limits.Widest != b.Pitch() {
		t.Errorf("stands for all: %v, %s, rip %v, widest %v", b.Face, b.Known, j.Limits.NarrowestRip.Value, j.Limits.Widest)
	}
	each := b.Each()
	if len(each) != 3 || each[0].Face != 2*tape.Inch || each[2].TenBoards == 0 || each[1].Known != stock.OneSize || each[0].ReadTo != tape.Eighth || each[0].Thickness != b.Thickness {
		t.Errorf("each: %+v", each)
	}
	want := []tape.Length{2 * tape.Inch, 3 * tape.Inch, each[2].Pitch(), 3 * tape.Inch}
	if got := b.Pitches(); !slices.Equal(got, want) {
		t.Errorf("rows of %v, want %v", got, want)
	}
	for _, f := range odd {
		t.Errorf("odd: %s", f)
	}
	j, _, err = jobfile.ReadJob("job.yaml", []byte(strings.Replace(several, "  pattern: [2, 3, 5, 3]\n", "", 1)))
	if err != nil || len(j.Boards.Pattern) != 0 || len(j.Boards.Faces()) < 4 {
		t.Errorf("no pattern: %v, %v", err, j.Boards.Faces())
	}
}

// Each mistake with widths is one error, at its place, with what to write.
func TestSeveralWidthsMistakes(t *testing.T) {
	for _, c := range []struct{ old, new, at, what, accept string }{
		{"pattern: [2, 3, 5, 3]", "pattern: [2, 4, 5, 3]", "4, 5", "no boards of this face", "2\""},
		{"pattern: [2, 3, 5, 3]", "pattern: []", "[]", "from 1 to 60 rows", "a list of face widths"},
		{"pattern: [2, 3, 5, 3]", "pattern: [two]", "two", "", ""},
		{"  thickness: 3/4\n", "  thickness: 3/4\n  face: 3\n", "3\n", "stands under widths", "widths: [{face"},
		{"  thickness: 3/4\n", "  thickness: 3/4\n  lengths: {one: 48}\n", "{one", "stands under widths", "widths: [{face"},
		{"{face: 3, lengths: {one: 48, count: 60}}\n  pattern: [2, 3, 5, 3]", "{face: 5, lengths: {one: 48, count: 60}}", "5, lengths: {one", "of this face are there already", "each face once"},
		{"{face: 3, lengths: {one: 48, count: 60}}\n  pattern: [2, 3, 5, 3]", "{face: 2.1, ten_boards: 20, lengths: {one: 48, count: 60}}", "20, lengths: {one", "take up what those of", "measured anew"},
		{"{face: 2, lengths", "{lengths", "{lengths", "“face” is missing", "face"},
		{"face: 2, lengths: {tally: [40 x 48, 24 x 60], read_to: 1/8}}", "face: 2}", "{face: 2}", "“lengths” is missing", "tally"},
		{"ten_boards: 50-1/4", "ten_boards: 61", "61", "cannot measure this", "near 50"},
		{"{one: 48, count: 60}", "{}", "{}", "nothing says how long", "tally"},
		{"face: 3, lengths: {one: 48, count: 60}", "face: 3, lenghts: {one: 48}", "lenghts", "not a key", "did you mean “lengths”"},
		{"{one: 48, count: 60}}\n  pattern: [2, 3, 5, 3]", "{one: 48}}", "{one: 48}", "no pattern can be proposed", "pattern: "},
		{"{one: 48, count: 60}}\n  pattern: [2, 3, 5, 3]", "{mix: {least: 12, most: 60, mean: 30}}}", "{mix", "no pattern can be proposed", "a tally"},
		{"{one: 48, count: 60}", "{one: 48, count: 60, shift: 1/3}", "1/3", "a shift goes through rows of all widths", "no shift"},
		{"kind: hearth, wall", "kind: hearth, frame: mitred, wall", "mitred", "no frame goes with", "no frame"},
	} {
		text := strings.Replace(several, c.old, c.new, 1)
		if text == several {
			t.Fatalf("%q is not there", c.old)
		}
		_, _, err := jobfile.ReadJob("job.yaml", []byte(text))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || len(errs) != 1 {
			t.Errorf("%s: %v", c.new, err)
			continue
		}
		e := errs[0]
		if !strings.HasPrefix(rest(text, e.Line, e.Column), c.at) || !strings.Contains(e.What, c.what) || !strings.Contains(e.Accept, c.accept) {
			t.Errorf("%s: at %d:%d (want %q): %s; accepted: %s", c.new, e.Line, e.Column, c.at, e.What, e.Accept)
		}
	}
	for _, c := range []struct{ widths, what string }{
		{"widths: [{face: 3, lengths: {one: 48, count: 9}}]", "from 2 to 8 face widths"},
		{"face: 3\n  lengths: {one: 48}\n  pattern: [3]", "goes with boards of several face widths"},
	} {
		i := strings.Index(several, "  widths:")
		_, _, err := jobfile.ReadJob("job.yaml", []byte(several[:i]+"  "+c.widths+"\n"))
		if err == nil || !strings.Contains(err.Error(), c.what) {
			t.Errorf("%s: %v", c.widths, err)
		}
	}
}

// Rows cannot change at a doorway between two rooms.
func TestSeveralWidthsAtADoorway(t *testing.T) {
	text := strings.Replace(several, "  den: {", "  hall: {corners: [K, L, M, N], walk: counter-clockwise}\n  den: {", 1)
	text = strings.Replace(text, "ends: 1, beyond: stair}", "rows: turn, beyond: {wall: M-N, from: N, at: 20}}", 1)
	text = strings.Replace(text, "B-D: 175.3}", "B-D: 175.3, K-L: 144, L-M: 60, M-N: 144, N-K: 60, K-M: 156, L-N: 156}", 1)
	_, _, err := jobfile.ReadJob("job.yaml", []byte(text))
	if err == nil || !strings.Contains(err.Error(), "cannot change at a doorway") || strings.Contains(err.Error(), "2 errors") {
		t.Errorf("%v", err)
	}
}
