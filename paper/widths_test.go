package paper_test

import (
	"bytes"
	"context"
	"os"
	"regexp"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/paper"
	"strake/plan"
	"strake/tape"
	"strake/words"
)

func mixedWidths(t *testing.T) plan.Plan {
	t.Helper()
	data, err := os.ReadFile("../examples/cases/mixed-widths.yaml")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("mixed-widths", data)
	if err != nil {
		t.Fatal(err)
	}
	return plan.MakeWithin(context.Background(), j, 1_000_000)
}

// The row list says the face of each row's boards, in the order of the pattern.
func TestRowListSaysTheFace(t *testing.T) {
	p := mixedWidths(t)
	say := words.In(p.Job.Unit)
	turn := map[string]tape.Length{}
	c := p.Layout.Courses()
	for _, r := range p.Layout.Runs {
		turn[words.RowPart(r.Row, r.Part)] = words.Face(p, c.Width(c.Row(r.Low)))
	}
	seen := map[tape.Length]bool{}
	for _, r := range paper.Rows(p) {
		if r.Face == 0 || r.Face != turn[r.Name] {
			t.Errorf("row %s: boards of %v, want %v", r.Name, r.Face, turn[r.Name])
		}
		seen[r.Face] = true
		for _, q := range r.Pieces {
			if q.Face != r.Face || words.Face(p, p.Lay.Boards[q.Lay.Board].Width) != r.Face {
				t.Errorf("%s: of a board of %v", q.Name, q.Face)
			}
		}
	}
	if len(seen) != 4 {
		t.Errorf("faces %v", seen)
	}
	var text bytes.Buffer
	if err := paper.RowsText(&text, p); err != nil {
		t.Fatal(err)
	}
	heads := regexp.MustCompile(`(?m)^Row (\S+) .*(?:\n .*)?`).FindAllStringSubmatch(text.String(), -1)
	if len(heads) != len(turn) {
		t.Errorf("%d rows in the text, %d on the floor", len(heads), len(turn))
	}
	for _, h := range heads {
		if want := say.Rip(turn[h[1]]) + " boards"; !strings.Contains(strings.Join(strings.Fields(h[0]), " "), want) {
			t.Errorf("%q does not say %s", h[0], want)
		}
	}
}

// The cut list names the board of each cut by its face; what a rip leaves on
// the floor, its strips and its kerfs make up the width of that board.
func TestCutListSaysTheFace(t *testing.T) {
	p := mixedWidths(t)
	say := words.In(p.Job.Unit)
	rips := map[tape.Length]bool{}
	for _, c := range paper.CutList(p) {
		q := c.Piece
		b := p.Lay.Boards[q.Lay.Board]
		if words.Face(p, b.Width) != q.Face {
			t.Errorf("%s: cut from a board of %v, told %v", q.Name, b.Width, q.Face)
		}
		if r := q.Cuts.Rip; c.Kind == paper.Rip {
			rips[q.Face] = true
			for k, w := range []tape.Length{r.Left, r.Right} {
				if w <= 0 || w >= b.Width || q.SawRip[k] > q.Face {
					t.Errorf("%s: ripped to %v, saw at %v, of %v", q.Name, w, q.SawRip[k], b.Width)
				}
			}
		}
	}
	if len(rips) < 2 {
		t.Errorf("rips of %d widths only", len(rips))
	}
	var text, sum bytes.Buffer
	if err := paper.CutsText(&text, p); err != nil {
		t.Fatal(err)
	}
	for _, face := range []tape.Length{2 * tape.Inch, 3 * tape.Inch, 4 * tape.Inch, 5 * tape.Inch} {
		if !strings.Contains(text.String(), "right end, "+say.Rip(face)+" board") {
			t.Errorf("no crosscut of a board of %s", say.Rip(face))
		}
	}
	sum.WriteString(paper.Summary(p))
	if !strings.Contains(sum.String(), "Faces of the rows from row 1 on") {
		t.Errorf("the summary has no pattern: %s", sum.String())
	}
}

// The fewest boards that would do are counted for each width by itself: more
// than were all boards of one.
func TestFewestBoardsByWidth(t *testing.T) {
	p := mixedWidths(t)
	got := paper.YardsticksOf(p)
	p.Job.Boards.Widths = nil
	if one := paper.YardsticksOf(p); got.FewestBoards <= one.FewestBoards || got.FewestBoards > len(p.Lay.Boards) || got.LengthLaid != one.LengthLaid {
		t.Errorf("%d boards at the least by width, %d were all alike, %d used", got.FewestBoards, one.FewestBoards, len(p.Lay.Boards))
	}
}
