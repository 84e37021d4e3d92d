package paper

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/internal/sample"
	"strake/lay"
	"strake/limits"
	"strake/plan"
	"strake/plane"
	"strake/stock"
	"strake/tape"
	"strake/words"
)

const in = tape.Inch

// two is a plan by hand: board 0 of 60 in is cut at 40 and at 12 in, 1/8 in of
// kerf between, 7-3/4 in kept; row 1 is 40 in and board 1 whole, row 2 the
// 12 in piece and board 2, its end tongue taken off.
func two() plan.Plan {
	p := plan.Plan{}
	p.Job.Unit, p.Job.Name = tape.UnitInch, "two rows"
	p.Job.Boards = stock.Boards{Face: 5 * in, TenBoards: 50*in + 10*in/32, EndTongue: in / 4, SideTongue: in / 4}
	p.Job.Limits = limits.Default(5*in, 3*in/4)
	w := p.Job.Boards.Pitch()
	p.Layout.Pitch = w
	p.Lay.Kerf = in / 8
	p.Lay.Zones = []lay.Zone{{Kind: lay.Field, Width: w, Ahead: 1}}
	add := func(run, board int, x0, x1, y, from tape.Length, ends [4]lay.Profile) {
		id := len(p.Lay.Pieces)
		pc := lay.Piece{ID: id, Run: run, Board: board, Outline: plane.Rect(plane.P(x0, y), plane.P(x1, y+w)), How: lay.Slid,
			InBoard: plane.Rect(plane.P(from, 0), plane.P(from+x1-x0, w)), Left: ends[0], Right: ends[1], Behind: ends[2], Ahead: ends[3]}
		p.Lay.Pieces = append(p.Lay.Pieces, pc)
		p.Lay.Boards[board].Parts = append(p.Lay.Boards[board].Parts, lay.Part{Kind: lay.IsPiece, Piece: id, Outline: pc.InBoard})
		p.Lay.Runs[run].Pieces = append(p.Lay.Runs[run].Pieces, id)
	}
	p.Lay.Boards = []lay.Board{{ID: 0, Length: 60 * in, Width: w}, {ID: 1, Length: 30 * in, Width: w}, {ID: 2, Length: 58 * in, Width: w}}
	along := func(a, b tape.Length, by lay.Fasten) lay.Stretch {
		return lay.Stretch{Along: plane.Span{From: a, To: b}, By: by}
	}
	ways := [][]lay.Stretch{{along(0, 70*in, lay.FaceNail)}, {along(0, 20*in, lay.HandNail), along(20*in, 50*in, lay.Nailer), along(50*in, 70*in, lay.FaceNail)}}
	for i := range 2 {
		y := tape.Length(i) * w
		p.Lay.Runs = append(p.Lay.Runs, lay.Run{ID: i, Row: i + 1, Order: i + 1, Low: y, High: y + w, Nailing: ways[i],
			Outline: plane.Rect(plane.P(0, y), plane.P(70*in, y+w))})
	}
	g, tg, cut, off := lay.Groove, lay.Tongue, lay.Cut, lay.TongueOff
	add(0, 1, 0, 30*in, 0, 0, [4]lay.Profile{g, tg, g, tg})
	add(0, 0, 30*in, 70*in, 0, 0, [4]lay.Profile{g, cut, g, tg})
	add(1, 0, 0, 12*in, w, 40*in+in/8, [4]lay.Profile{cut, cut, g, tg})
	add(1, 2, 12*in, 70*in, w, 0, [4]lay.Profile{g, off, g, tg})
	part := func(k lay.PartKind, a, b tape.Length) {
		p.Lay.Boards[0].Parts = append(p.Lay.Boards[0].Parts, lay.Part{Kind: k, Piece: -1, Outline: plane.Rect(plane.P(a, 0), plane.P(b, w))})
	}
	part(lay.IsKerf, 40*in, 40*in+in/8)
	part(lay.IsKerf, 52*in+in/8, 52*in+in/4)
	part(lay.IsOffcut, 52*in+in/4, 60*in)
	p.Aligned.Reach = plane.Region{plane.Rect(plane.P(0, 0), plane.P(70*in, 2*w))}
	p.Aligned.Need = p.Aligned.Reach
	return p
}

func TestRowsTellWhereBoardsGo(t *testing.T) {
	rows := Rows(two())
	cut, later, whole := rows[0].Pieces[1], rows[1].Pieces[0], rows[0].Pieces[0]
	if !whole.Whole || cut.Whole || later.Whole {
		t.Error("only the first piece is a whole board")
	}
	if cut.From != "board 1" || !slices.Equal(cut.Rest, []string{`12" to row 2 piece 1`}) {
		t.Errorf("row 1 piece 2: from %q, rest %q", cut.From, cut.Rest)
	}
	if later.From != "rest of board 1, from row 1 piece 2" || !slices.Equal(later.Rest, []string{`offcut 7-3/4"`}) {
		t.Errorf("row 2 piece 1: from %q, rest %q", later.From, later.Rest)
	}
	if r := rows[1]; r.Length != 70*in || r.Left.At != 0 || r.Right.At != 70*in || r.Kind != "full width" || rows[0].Fasten != "face-nailed" ||
		r.Fasten != `hand-nailed to 20" from its left end, nailer to 50", face-nailed to the right end` {
		t.Errorf("row 2: %+v", r)
	}
}

// One pass of the saw makes row 1's last end and row 2's first: it is one
// measured crosscut. The end of the 12 in piece is a second. A tongue taken
// off is none.
func TestCountCrosscuts(t *testing.T) {
	p := two()
	if n := Count(p); n.Crosscuts != 2 || n.TonguesOff != 1 || n.Boards != 3 || n.Pieces != 4 || n.Rows != 2 {
		t.Errorf("got %+v", n)
	}
	cuts := CutList(p)
	if c := cuts[0]; c.Other == nil || c.Other.Name != "row 2 piece 1" || c.Same {
		t.Errorf("the first cut makes row 2 piece 1 too: %+v", c)
	}
	if !cuts[1].Same || cuts[2].Same {
		t.Error("only the second line is the other side of a cut listed before")
	}
	// A wider space between the two is two cuts.
	p.Lay.Pieces[2].InBoard = p.Lay.Pieces[2].InBoard.Move(plane.P(in, 0))
	if n := Count(p); n.Crosscuts != 3 {
		t.Errorf("with an inch between them there are 3 cuts, not %d", n.Crosscuts)
	}
}

// Turned by half a turn, a piece's right end lies at its board's low end.
func TestCountCrosscutsTurned(t *testing.T) {
	p := two()
	pc := &p.Lay.Pieces[2]
	pc.Turned, pc.Right = true, lay.Tongue
	if n := Count(p); n.Crosscuts != 2 {
		t.Errorf("its left end is now at the far side of the board: 2 cuts, not %d", n.Crosscuts)
	}
	pc.Left, pc.Right = lay.Tongue, lay.Cut
	if n := Count(p); n.Crosscuts != 1 {
		t.Errorf("its right end is the other side of the first cut: 1, not %d", n.Crosscuts)
	}
}

func TestCountJointsAndWaste(t *testing.T) {
	p := two()
	n := Count(p)
	if n.Nearest != 18*in || n.UnderPreferred != 0 || !n.Joints {
		t.Errorf("joints at 30 and 12 in are 18 in apart: %+v", n)
	}
	w := p.Layout.Pitch
	if want := tape.Area(in/4) * tape.Area(w); n.Kerf != want || n.Scrap != 0 || n.Need != 140*tape.Area(in)*tape.Area(w) {
		t.Errorf("kerf %v, want %v", n.Kerf, want)
	}
	if want := tape.Area(7*in+3*in/4) * tape.Area(w); n.Over != want { // the offcut of board 1
		t.Errorf("left over %v, want %v", n.Over, want)
	}
	p.Job.Limits.JointPreferred.Value = 20 * in
	if n := Count(p); n.UnderPreferred != 1 {
		t.Errorf("18 in is under 20 in: %d", n.UnderPreferred)
	}
	p.Lay.Runs[1].Low += 1 // no longer against each other
	if n := Count(p); n.Joints {
		t.Error("rows that do not touch have no joints to compare")
	}
}

// The joint's air lies at the tongue edge: 3 in on the floor is sawn at 2-31/32
// in where the tongue is kept, at 3 in where the groove is (pitch 5-1/32 in).
func TestSawFigures(t *testing.T) {
	for _, tt := range []struct {
		behind, ahead lay.Profile
		low, high     tape.Length
		saw           string
	}{{lay.Ripped, lay.Tongue, 2*in + in/32, 5*in + in/32, `2-31/32"`}, {lay.Groove, lay.Ripped, 0, 3 * in, `3"`}} {
		p := two()
		pc := &p.Lay.Pieces[0]
		pc.Behind, pc.Ahead = tt.behind, tt.ahead
		pc.Outline = plane.Rect(plane.P(0, tt.low), plane.P(30*in, tt.high))
		pc.InBoard = pc.Outline
		got := Rows(p)[0]
		if f := words.In(tape.UnitInch).Rip(got.Pieces[0].SawRip[0]); f != tt.saw || got.Kind != "ripped in part" {
			t.Errorf("%s kept: saw at %s, want %s; row is %s", got.Pieces[0].Cuts.Rip.Keeps, f, tt.saw, got.Kind)
		}
	}
}

func TestWork(t *testing.T) {
	p := two()
	pc := &p.Lay.Pieces[3]
	pc.Off = []plane.Span{{From: 20 * in, To: 30 * in}}
	pc.How = lay.Dropped
	p.Lay.Runs[0].RightEnd.InPlace = true
	var b bytes.Buffer
	if err := RowsText(&b, p); err != nil {
		t.Fatal(err)
	}
	got := strings.Join(strings.Fields(b.String()), " ")
	for _, want := range []string{
		"crosscut the right end, measured in place;", "crosscut both ends; rest of board 1, from row 1 piece 2",
		`whole; take the tongue off the right end; take the side tongue off from 8" to 18" from the left; dropped in`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("nothing says %q in\n%s", want, b.String())
		}
	}
}

// Every list can be read back as CSV with as many cells in each line, one line
// a piece, and no cell that a spreadsheet would take for a formula.
func TestCSVReadsBack(t *testing.T) {
	p := sample.Hearth()
	p.Lay.Runs[3].LeftEnd.Edge = "=cmd()"
	for name, write := range map[string]func(io.Writer, plan.Plan) error{"rows": RowsCSV, "cuts": CutsCSV} {
		var b bytes.Buffer
		if err := write(&b, p); err != nil {
			t.Fatal(err)
		}
		lines, err := csv.NewReader(&b).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		want := map[string]int{"rows": len(p.Lay.Pieces), "cuts": len(CutList(p))}[name]
		if len(lines) != want+1 {
			t.Errorf("%s: %d lines, want %d", name, len(lines), want+1)
		}
		for _, l := range lines {
			for _, c := range l {
				if c != "" && strings.ContainsRune("=+-@", rune(c[0])) {
					t.Errorf("%s: cell %q", name, c)
				}
			}
		}
	}
}

func TestGuard(t *testing.T) {
	for in, want := range map[string]string{"": "", "12a": "12a", "=1+1": "'=1+1", "+1": "'+1", `-1/4"`: `'-1/4"`, "@x": "'@x", "\tx": "'\tx", "a=b": "a=b"} {
		if got := guard(in); got != want {
			t.Errorf("guard(%q) = %q", in, got)
		}
	}
}

func TestFindingsStopFirst(t *testing.T) {
	s := Findings(sample.Hearth())
	stop, warn, note := strings.Index(s, "Stop:"), strings.Index(s, "Warn:"), strings.Index(s, "Note:")
	if stop < 0 || stop > warn || warn > note {
		t.Errorf("order %d %d %d in\n%s", stop, warn, note, s)
	}
	p := plan.Plan{Findings: []finding.Finding{{Level: finding.Note, Rule: "lap", Source: "maker"}}}
	if s := Findings(p); strings.Contains(s, "Stop") || !strings.Contains(s, "Limit after: maker") {
		t.Error(s)
	}
}

// Every text keeps to the width of the page, and no line ends in a blank.
func TestTextWidth(t *testing.T) {
	for name, p := range plans() {
		for file, text := range papers(t, p) {
			if !strings.HasSuffix(file, ".txt") || file == "summary.txt" {
				continue
			}
			for _, l := range strings.Split(string(text), "\n") {
				if len([]rune(l)) > columns || strings.HasSuffix(l, " ") {
					t.Errorf("%s.%s: %q", name, file, l)
				}
			}
		}
	}
}

func TestSummarySquare(t *testing.T) {
	p := sample.Rectangle()
	p.Floor.Rooms[0].Corners[2].X += 12
	got := Summary(p)
	if !strings.Contains(got, "12 mm over 2480 mm") {
		t.Errorf("12 mm out at the top of B-C is not said:\n%s", got)
	}
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no space left") }

func TestWriteErrors(t *testing.T) {
	for name, write := range map[string]func(io.Writer, plan.Plan) error{"rows.csv": RowsCSV, "rows.txt": RowsText, "cuts.csv": CutsCSV, "cuts.txt": CutsText} {
		if write(full{}, sample.Rectangle()) == nil {
			t.Errorf("%s: a full disk went unnoticed", name)
		}
	}
}

func TestSameBytes(t *testing.T) {
	a, b := papers(t, sample.Hearth()), papers(t, sample.Hearth())
	for file := range a {
		if !bytes.Equal(a[file], b[file]) {
			t.Errorf("%s differs from one time to the next", file)
		}
	}
}

// What is less than half the saw's step is no cut: a slant, a notch, a tongue.
func TestTooSmallToCut(t *testing.T) {
	p := two()
	w := p.Layout.Pitch
	pc := &p.Lay.Pieces[1]
	pc.Outline = plane.Ring{{X: 30 * in, Y: 0}, {X: 70 * in, Y: 0}, {X: 70*in + in/100, Y: w}, {X: 40 * in, Y: w}, {X: 40 * in, Y: w - in/100}, {X: 30 * in, Y: w - in/100}}
	pc.Off = []plane.Span{{From: 31 * in, To: 31*in + in/100}}
	piece := Rows(p)[0].Pieces[1]
	if got := Work(piece, words.In(tape.UnitInch)); !slices.Equal(got, []string{"crosscut the right end"}) {
		t.Errorf("got %q", got)
	}
	if n := Count(p); n.Mitres != 0 || n.Notches != 0 || n.TonguesOff != 1 {
		t.Errorf("got %+v", n)
	}
	pc.Outline[2].X = 71 * in
	if n := Count(p); n.Mitres != 1 {
		t.Errorf("an inch of slant is a mitre: %+v", n)
	}
}
