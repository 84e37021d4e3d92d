package paper

import (
	"strings"
	"testing"

	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// closing is a plan of one row of whole boards, each 50 in, whose faces may
// measure from 100 in less below to 100 in and above.
func closing(boards int, below, above tape.Length) plan.Plan {
	var p plan.Plan
	p.Job.Boards = stock.Boards{Face: 5 * in, Known: stock.Tallied, Slip: in / 16}
	p.Lay.Zones = []lay.Zone{{Kind: lay.Field, Width: 5 * in, Ahead: 1, Hand: stock.RightHand}}
	long := tape.Length(boards) * 50 * in
	r := lay.Run{Row: 1, Order: 1, High: 5 * in, Outline: plane.Rect(plane.P(0, 0), plane.P(long, 5*in)),
		RightEnd: lay.EndRange{Reach: long + above, Need: long - below}}
	for i := range boards {
		at := tape.Length(i) * 50 * in
		r.Pieces = append(r.Pieces, i)
		p.Lay.Pieces = append(p.Lay.Pieces, lay.Piece{ID: i, Board: i, Outline: plane.Rect(plane.P(at, 0), plane.P(at+50*in, 5*in)), Left: lay.Groove, Right: lay.Tongue})
		p.Lay.Boards = append(p.Lay.Boards, lay.Board{ID: i, Length: 50 * in, Width: 5 * in})
	}
	p.Lay.Runs = []lay.Run{r}
	return p
}

// The chance is that of the normal curve: 68.27 % within one standard deviation
// either way, 95.45 % within two, 84.13 % and 97.72 % beyond one side (any table
// of the standard normal distribution). Four boards with a slip of 1/16 in each
// have one of 1/8 in together.
func TestChanceThatRowsClose(t *testing.T) {
	for _, c := range []struct {
		below, above tape.Length
		want         string
	}{
		{in / 8, in / 8, "68 %"}, {in / 4, in / 4, "95 %"}, {in / 8, 4 * in, "84 %"}, {4 * in, in / 4, "97 %"}, {0, 4 * in, "50 %"},
	} {
		p := closing(4, c.below, c.above)
		if got := closes(p, p.Lay.Runs[0]); got != "closes uncut with a chance of "+c.want {
			t.Errorf("from %s short to %s long: %s, want %s", c.below, c.above, got, c.want)
		}
	}
	p := closing(4, 0, in/8)
	p.Lay.Runs[0].LeftEnd = lay.EndRange{Reach: 0, Need: in / 8} // play at the near end counts too
	if got := closes(p, p.Lay.Runs[0]); !strings.HasSuffix(got, " 68 %") {
		t.Errorf("with play at the near end: %s", got)
	}
	p.Lay.Runs[0].LeftEnd.Mitred = true // but not where that end is cut
	if got := closes(p, p.Lay.Runs[0]); !strings.HasSuffix(got, " 34 %") {
		t.Errorf("with a mitred near end: %s", got)
	}
	p.Lay.Pieces[3].Right = lay.Cut
	if got := closes(p, p.Lay.Runs[0]); got != "its last piece is cut to measure" {
		t.Errorf("cut: %s", got)
	}
	p.Job.Boards.Slip = 0
	if got := closes(p, p.Lay.Runs[0]); got != "" {
		t.Errorf("of exact boards: %s", got)
	}
}

// A rest of a board carries the error of the row it was cut to end: four boards
// there and three others here, and its own reading once.
func TestRestsCarryTheErrorOfTheirRow(t *testing.T) {
	p := closing(4, in, in)
	next := p.Lay.Runs[0]
	next.ID, next.Order, next.Pieces = 1, 2, []int{4, 5}
	for i, board := range []int{3, 4} { // the first is the rest of the last board
		p.Lay.Pieces = append(p.Lay.Pieces, lay.Piece{ID: 4 + i, Run: 1, Board: board, Outline: plane.Rect(plane.P(0, 0), plane.P(50*in, 5*in))})
	}
	p.Lay.Runs = append(p.Lay.Runs, next)
	if n := carried(p.Lay, next); n != 2+4 {
		t.Errorf("the error of %d boards, want 6", n)
	}
	if n := carried(p.Lay, p.Lay.Runs[0]); n != 4 {
		t.Errorf("the error of %d boards in the first row, want 4", n)
	}
}
