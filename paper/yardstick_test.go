package paper

import (
	"testing"

	"strake/lay"
	"strake/limits"
	"strake/plan"
	"strake/plane"
	"strake/tape"
)

// jointed is a layout of rows 100 in long and 5 in wide whose joints lie at
// these places (in inches), each piece a board of its own.
func jointed(rows ...[]tape.Length) plan.Plan {
	var p plan.Plan
	in := tape.Inch
	p.Layout.Pitch = 5 * in
	p.Job.Limits = limits.Default(5*in, in)
	p.Job.Limits.JointPreferred.Value = 10 * in
	for k, at := range rows {
		low := tape.Length(k) * 5 * in
		r := lay.Run{ID: k, Row: k + 1, Order: k + 1, Low: low, High: low + 5*in}
		ends := append(append([]tape.Length{0}, at...), 100)
		for i := 1; i < len(ends); i++ {
			id := len(p.Lay.Pieces)
			p.Lay.Pieces = append(p.Lay.Pieces, lay.Piece{ID: id, Run: k, Board: id, Outline: plane.Rect(plane.P(ends[i-1]*in, low), plane.P(ends[i]*in, low+5*in))})
			p.Lay.Boards = append(p.Lay.Boards, lay.Board{ID: id, Length: (ends[i] - ends[i-1]) * in})
			r.Pieces = append(r.Pieces, id)
		}
		p.Lay.Runs = append(p.Lay.Runs, r)
	}
	return p
}

// Each fault alone.
//
//	H        stairs      cluster of 3 (each 4 in from the next)
//	 |          |            |
//	    |     |             |
//	 |      |                |
func TestYardsticks(t *testing.T) {
	for _, c := range []struct {
		name               string
		rows               [][]tape.Length
		h, stairs, cluster int
	}{
		{"apart", [][]tape.Length{{20}, {50}, {80}}, 0, 0, 1},
		{"H-joint", [][]tape.Length{{20}, {50}, {21}}, 1, 0, 1},
		{"H-joint just missed", [][]tape.Length{{20}, {50}, {23}}, 0, 0, 1},
		{"stair-step", [][]tape.Length{{20}, {32}, {44}}, 0, 1, 1},
		{"step too large", [][]tape.Length{{20}, {40}, {60}}, 0, 0, 1},
		{"cluster", [][]tape.Length{{20}, {24}, {18}}, 1, 0, 3},
	} {
		y := YardsticksOf(jointed(c.rows...))
		if y.H != c.h || y.Stairs != c.stairs || y.Cluster != c.cluster || y.Joints != 3 {
			t.Errorf("%s: %+v", c.name, y)
		}
	}
}

func TestYardstickLengths(t *testing.T) {
	p := jointed([]tape.Length{60}, []tape.Length{30}, []tape.Length{60})
	y := YardsticksOf(p)
	if y.Mean != 30*tape.Inch || y.First != 50*tape.Inch || y.Last != 50*tape.Inch || y.LengthLaid != 300*tape.Inch {
		t.Errorf("%+v", y)
	}
	// 300 in of boards of 70, 60, 60, 40, 40, 30: all six, though the first five come to 270
	if y.FewestBoards != 6 {
		t.Errorf("fewest boards %d", y.FewestBoards)
	}
	// one board in rows 1 and 3, another in 2 and 3: both wait from row 2 on
	p.Lay.Pieces[5].Board, p.Lay.Pieces[4].Board = 0, 2
	if got := YardsticksOf(p).OffcutsAtOnce; got != 2 {
		t.Errorf("%d offcuts at once, want 2", got)
	}
}

// The play used is told from where rows end: 1/4 in given at each end, nothing
// used at the left, 1/8 in at the right.
func TestPlayUsed(t *testing.T) {
	row := lay.Run{Pieces: []int{0}, Outline: plane.Rect(plane.P(0, 0), plane.P(100*in-in/8, 5*in)),
		LeftEnd: lay.EndRange{Reach: 0, Need: in / 4}, RightEnd: lay.EndRange{Reach: 100 * in, Need: 100*in - in/4}}
	mitred := row
	mitred.RightEnd.Mitred = true
	u := playOf(lay.Lay{Runs: []lay.Run{row, mitred, {}}})
	if want := (playUsed{Ends: 3, Sum: in / 8, Most: in / 8, Given: 3 * in / 4}); u != want {
		t.Errorf("got %+v, want %+v", u, want)
	}
}
