package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/book"
	"strake/plan"
	"strake/tape"
	"strake/words"
)

// ListBook writes lists.xlsx: pieces, rows and cuts as tables of real numbers, in the
// inches or mm of the job, each with its totals as formulas.
func ListBook(w io.Writer, p plan.Plan) error {
	l := lists{p: p, say: words.In(p.Job.Unit), rows: Rows(p)}
	return book.Write(w, []book.Sheet{l.pieces(), l.rowSheet(), l.cuts(), l.boards()})
}

// lists are the tables of a plan.
type lists struct {
	p    plan.Plan
	say  words.Lengths
	rows []Row
}

func text(s string) book.Cell { return book.T(s, book.Plain) }

func whole(n int) book.Cell { return book.N(float64(n), book.Plain) }

// long is a length along the boards, fine a width for the saw.
func (l lists) long(x tape.Length) book.Cell { return book.N(asNumber(x, l.p), l.style(false)) }

func (l lists) fine(x tape.Length) book.Cell { return book.N(asNumber(x, l.p), l.style(true)) }

func (l lists) style(fine bool) book.Style {
	switch {
	case l.p.Job.Unit.Imperial() && fine:
		return book.ThirtySeconds
	case l.p.Job.Unit.Imperial():
		return book.Sixteenths
	case fine:
		return book.Tenths
	}
	return book.Whole
}

// heads are those of a table, lengths with their unit.
func (l lists) heads(names ...string) []book.Cell {
	unit, _ := unitOf(l.p)
	for i, n := range names {
		names[i] = strings.ReplaceAll(n, "#", unit)
	}
	return heads(names...)
}

// total puts the sum of a column under a table.
func (l lists) total(s *book.Sheet, name string, col int, is float64, st book.Style) {
	last := len(s.Rows)
	row := make([]book.Cell, col+1)
	row[0] = book.T(name, book.Head)
	row[col] = book.F(fmt.Sprintf("SUM(%s2:%s%d)", book.Column(col), book.Column(col), last), is, st)
	s.Rows = append(s.Rows, row)
}

// pieces has a line for each piece in the order of laying.
func (l lists) pieces() book.Sheet {
	s := book.Sheet{Name: "Pieces", Widths: []float64{8, 8, 8, 8, 13, 13, 13, 13, 13, 26, 40}}
	s.Rows = append(s.Rows, l.heads("order", "row", "piece", "board", "length, #", "rip left, #", "rip right, #", "saw left, #", "saw right, #", "from", "what to do"))
	sum := 0.0
	for _, r := range l.rows {
		for _, q := range r.Pieces {
			line := []book.Cell{whole(r.Order), text(r.Name), whole(q.No), text(q.Board), l.long(q.Cuts.Long())}
			if c := q.Cuts.Rip; c.Done {
				line = append(line, l.fine(c.Left), l.fine(c.Right), l.fine(q.SawRip[0]), l.fine(q.SawRip[1]))
			} else {
				line = append(line, make([]book.Cell, 4)...)
			}
			s.Rows = append(s.Rows, append(line, text(q.From), text(strings.Join(Work(q, l.say), "; "))))
			sum += asNumber(q.Cuts.Long(), l.p)
		}
	}
	l.total(&s, "all pieces", 4, sum, l.style(false))
	return s
}

// rowSheet has a line for each row in the order of laying.
func (l lists) rowSheet() book.Sheet {
	s := book.Sheet{Name: "Rows", Widths: []float64{8, 8, 9, 14, 14, 14, 18, 34, 34, 34}}
	s.Rows = append(s.Rows, l.heads("order", "row", "pieces", "length, #", "wide left, #", "wide right, #", "kind", "left end at", "right end at", "fastening"))
	pieces, sum := 0, 0.0
	for _, r := range l.rows {
		s.Rows = append(s.Rows, []book.Cell{whole(r.Order), text(r.Name), whole(len(r.Pieces)), l.long(r.Length), l.fine(r.WidthLeft), l.fine(r.WidthRight),
			text(r.Kind), text(EndText(r.Left)), text(EndText(r.Right)), text(r.Fasten)})
		pieces, sum = pieces+len(r.Pieces), sum+asNumber(r.Length, l.p)
	}
	last := len(s.Rows)
	s.Rows = append(s.Rows, []book.Cell{book.T("all rows", book.Head), {},
		book.F(fmt.Sprintf("SUM(C2:C%d)", last), float64(pieces), book.Plain), book.F(fmt.Sprintf("SUM(D2:D%d)", last), sum, l.style(false))})
	return s
}

// cuts has a line for each cut; what one pass of the blade makes twice counts once.
func (l lists) cuts() book.Sheet {
	s := book.Sheet{Name: "Cuts", Widths: []float64{14, 8, 8, 8, 13, 13, 13, 9, 50}}
	s.Rows = append(s.Rows, l.heads("kind", "row", "piece", "board", "length, #", "saw left, #", "saw right, #", "passes", "what"))
	n := 0
	for _, c := range CutList(l.p) {
		line := []book.Cell{text(string(c.Kind)), text(c.Piece.Row), whole(c.Piece.No), text(c.Piece.Board), l.long(c.Piece.Cuts.Long())}
		if c.Kind == Rip {
			line = append(line, l.fine(c.Piece.SawRip[0]), l.fine(c.Piece.SawRip[1]))
		} else {
			line = append(line, make([]book.Cell, 2)...)
		}
		passes := 1
		if c.Same {
			passes = 0
		}
		s.Rows = append(s.Rows, append(line, whole(passes), text(strings.Join(CutWords(c, l.say), ", "))))
		n += passes
	}
	l.total(&s, "all cuts", 7, float64(n), book.Plain)
	return s
}

// boards has a line for each board that is used.
func (l lists) boards() book.Sheet {
	s := book.Sheet{Name: "Boards", Widths: []float64{10, 14, 14}}
	s.Rows = append(s.Rows, l.heads("board", "length, #", "row width, #"))
	sum := 0.0
	for _, b := range l.p.Lay.Boards {
		s.Rows = append(s.Rows, []book.Cell{text(words.Board(b.ID)), l.long(b.Length), l.fine(b.Width)})
		sum += asNumber(b.Length, l.p)
	}
	l.total(&s, "all boards", 1, sum, l.style(false))
	return s
}
