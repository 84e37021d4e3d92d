package check

import (
	"slices"
	"strings"
	"testing"

	"strake/lay"
	"strake/plane"
)

// emptied is a floor of rows, one for each word: "-" is a row of one run, "x"
// one without boards; several letters are the runs of one row.
func emptied(rows string) *site {
	s := &site{tape: styleFor(newBench().stock)}
	z := &zone{Zone: lay.Zone{Ahead: 1, Kind: lay.Field}}
	s.zones = []*zone{z}
	for i, word := range strings.Fields(rows) {
		for j, c := range word {
			n := lay.Run{ID: len(s.runs), Row: i + 1, Low: in(5 * float64(i)), High: in(5 * float64(i+1)), Unfilled: c == 'x'}
			if len(word) > 1 {
				n.Part = j + 1
			}
			n.Outline = plane.Rect(plane.P(in(40*float64(j)), n.Low), plane.P(in(40*float64(j)+30), n.High))
			r := &run{Run: n, zone: z}
			z.runs, s.runs = append(z.runs, r), append(s.runs, r)
		}
	}
	return s
}

func TestRowsAreNamedShortly(t *testing.T) {
	for rows, want := range map[string]string{
		"- x -":                   "row 2",
		"- x x":                   "rows 2 and 3",
		"x x x -":                 "rows 1 to 3",
		"- -x - xx xx x x":        "rows 2b and 4 to 7",
		"x x x - x x-x - -x xx x": "rows 1 to 3, 5, 6a, 6c, 8b, 9 and 10",
		"x - x - x":               "rows 1, 3 and 5",
		"x--":                     "row 1a",
		"- -":                     "",
	} {
		got := emptied(rows).rowList(func(n *run) bool { return n.Unfilled })
		if got != want {
			t.Errorf("%s: %q, want %q", rows, got, want)
		}
	}
}

// However many runs the boards did not reach, it is one finding, with the
// length that is missing.
func TestUnfilledRunsAreOneFinding(t *testing.T) {
	s := emptied("- xx -x x x x x x x")
	fs := holdUnfilled(Rule{Name: "unfilled run"}, s)
	if len(fs) != 1 || fs[0].Where != "rows 2, 3b and 4 to 9" || fs[0].Measured != `no boards for 9 runs, 270" in all` {
		t.Errorf("got %v", fs)
	}
}

// Each zone's rows are named with the zone.
func TestRowsOfSeveralZones(t *testing.T) {
	b := splineRoom()
	s := survey(b.lay, b.at, b.lim, b.stock)
	if got, want := s.rowList(func(n *run) bool { return n.Row == 2 || n.zone.Ahead < 0 }), "row 2 of the field 1; rows 1 and 2 of the field 2"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Runs relaxed to one figure for one reason are one finding.
func TestRelaxedRunsAreOneFinding(t *testing.T) {
	s := emptied("x x x x")
	s.lim.JointMin.Value = in(6)
	for i, to := range []float64{0, 5, 5, 5} {
		s.lay.Relaxed = append(s.lay.Relaxed, lay.Relaxation{Rule: jointRule, Run: s.runs[i].ID, To: in(to), Why: "short boards"})
	}
	var got []string
	for _, f := range holdJoint(Rule{Name: jointRule}, s) {
		got = append(got, f.Where+" "+f.Measured+" "+f.Do)
	}
	if want := []string{`row 1 relaxed to 0" short boards`, `rows 2 to 4 relaxed to 5" short boards`}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}
