package paper

import (
	"sort"
	"strings"

	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/saw"
	"strake/tape"
	"strake/words"
)

// Row is one run as it is listed; on paper a run is a row 12, or 12a and 12b.
type Row struct {
	Name        string
	Order       int // in the order of laying, 1 first
	Length      tape.Length
	Left, Right End
	WidthLeft   tape.Length // on the floor
	WidthRight  tape.Length
	Kind        string      // "full width", "rip", "taper", "ripped in part"
	Face        tape.Length // of its boards, where the job has several face widths; else 0
	Fasten      string      // how, and to where from its left end
	Field       int         // which field of the floor it lies in
	Turned      bool        // laid backwards from a spline
	Closes      string      // how it closes where board lengths may be off; empty: they are exact
	Unfilled    bool        // no boards left
	Pieces      []Piece
}

// End is an end of a row.
type End struct {
	At      tape.Length // from the left-most place that boards reach
	Edge    string      // what it meets
	Meets   string      // and how
	InPlace bool        // cut measured in place
}

// Piece is one piece of a row, from the left.
type Piece struct {
	Row     string
	Order   int
	No      int
	Name    string // "row 12a piece 2"
	Board   string
	Whole   bool
	Cuts    saw.Cuts
	SawRip  [2]tape.Length // what the saw is set to at the rip's left and right end
	InPlace bool           // an end of it is cut to a measure taken in place
	Sawn    [2]bool        // its left and its right end are made by the saw
	From    string         // where it comes from
	Rest    []string       // where the rest of its board goes
	Marks   []string       // what is known of its board besides, and what to do about it
	Face    tape.Length    // of its board, where the job has several face widths; else 0
	Lay     lay.Piece
}

// Rows are the rows of p in the order of laying.
func Rows(p plan.Plan) []Row {
	l := newLister(p)
	runs := append([]lay.Run(nil), p.Lay.Runs...)
	sort.SliceStable(runs, func(i, j int) bool { return runs[i].Order < runs[j].Order })
	var out []Row
	for _, r := range runs {
		out = append(out, l.row(r))
	}
	return out
}

// lister holds what is looked up while listing.
type lister struct {
	p    plan.Plan
	say  words.Lengths
	zero tape.Length // X of the left-most place that boards reach, in the field at hand
	at   floor.Aligned
	part floor.Aligned
	runs map[int]lay.Run
}

func newLister(p plan.Plan) *lister {
	l := &lister{p: p, say: words.In(p.Job.Unit), runs: map[int]lay.Run{}}
	l.in(0)
	for _, r := range p.Lay.Runs {
		l.runs[r.ID] = r
	}
	return l
}

// in turns to a field: places along its rows count from its own left end.
func (l *lister) in(field int) {
	f := l.p.Field(field)
	lo, _ := f.Part.Reach.Box()
	l.zero, l.at, l.part = lo.X, f.Aligned, f.Part
}

func (l *lister) row(r lay.Run) Row {
	l.in(l.p.FieldOf(r.Zone))
	lo, hi := r.Outline.Box()
	out := Row{Field: l.p.FieldOf(r.Zone), Name: words.Row(r), Order: r.Order, Length: hi.X - lo.X, Fasten: l.nailing(r.Nailing, lo.X), Unfilled: r.Unfilled, Turned: words.Turned(l.p, r)}
	out.Left, out.Right = l.end(lo.X, r, r.LeftEnd), l.end(hi.X, r, r.RightEnd)
	for i := range r.Pieces {
		out.Pieces = append(out.Pieces, l.piece(r, i))
	}
	l.width(&out, r)
	out.Closes = closes(l.p, r)
	return out
}

// nailing is how the row is fastened, and to where, from its own left end.
func (l *lister) nailing(ss []lay.Stretch, left tape.Length) string {
	var out []string
	for i, s := range ss {
		to := ""
		switch {
		case i+1 < len(ss):
			to = " to " + l.say.Of(s.Along.To-left)
			if len(out) == 0 {
				to += " from its left end"
			}
		case len(out) > 0:
			to = " to the right end"
		}
		if i+1 < len(ss) && l.say.Of(s.Along.To-left) == l.say.Of(0) {
			continue // a hair at the left end
		}
		out = append(out, words.Fasten(s.By)+to)
	}
	return strings.Join(out, ", ")
}

// bareWidth is the width of a row without boards, as it was set out.
func (l *lister) bareWidth(out *Row, r lay.Run) {
	for _, q := range l.p.Field(out.Field).Layout.Runs {
		if q.Row != r.Row || q.Part != r.Part || q.Narrowest == r.High-r.Low {
			continue
		}
		out.WidthLeft, out.WidthRight, out.Kind = q.WidthLeft, q.WidthRight, "rip"
		switch {
		case q.Widest == r.High-r.Low:
			out.Kind = "ripped in part"
		case l.say.Rip(q.WidthLeft) != l.say.Rip(q.WidthRight):
			out.Kind = "taper"
		}
	}
}

// width says how wide the row is at its ends and of what kind that makes it.
func (l *lister) width(out *Row, r lay.Run) {
	full := r.High - r.Low
	out.Face = l.face(r)
	out.WidthLeft, out.WidthRight, out.Kind = full, full, "full width"
	if len(out.Pieces) == 0 {
		l.bareWidth(out, r)
		return
	}
	ripped, taper := 0, false
	for _, p := range out.Pieces {
		if p.Cuts.Rip.Done {
			ripped++
			taper = taper || l.say.Rip(p.Cuts.Rip.Left) != l.say.Rip(p.Cuts.Rip.Right)
		}
	}
	out.WidthLeft = endWidth(out.Pieces[0], false)
	out.WidthRight = endWidth(out.Pieces[len(out.Pieces)-1], true)
	taper = taper || l.say.Rip(out.WidthLeft) != l.say.Rip(out.WidthRight)
	switch {
	case ripped == 0:
	case ripped < len(out.Pieces):
		out.Kind = "ripped in part"
	case taper:
		out.Kind = "taper"
	default:
		out.Kind = "rip"
	}
}

// face is the face width of a row's boards, 0 where all boards are alike.
func (l *lister) face(r lay.Run) tape.Length {
	if len(l.p.Job.Boards.Widths) == 0 {
		return 0
	}
	return words.Face(l.p, r.High-r.Low)
}

// endWidth is how wide a piece is at an end, notches counted; at a mitred end,
// where the mitre leaves off.
func endWidth(p Piece, right bool) tape.Length {
	lo, hi := p.Lay.Outline.Box()
	x := lo.X + p.Cuts.Left.Abs()
	if right {
		x = hi.X - p.Cuts.Right.Abs()
	}
	var w tape.Length
	for _, s := range (plane.Region{p.Lay.Outline}).Section(x, right) {
		w += s.Len()
	}
	return w
}

func (l *lister) sawn(p lay.Piece, left bool) bool {
	return saw.SawnEnd(p, left, l.p.Lay.Boards[p.Board].Length, l.p.Job.Boards.Hand)
}

func (l *lister) piece(r lay.Run, i int) Piece {
	p := l.p.Lay.Pieces[r.Pieces[i]]
	out := Piece{Row: words.Row(r), Order: r.Order, No: i + 1, Name: words.Piece(r, i+1), Board: words.Board(p.Board),
		Cuts: saw.Of(p), Lay: p, Whole: l.whole(p)}
	boards, _ := l.p.Job.Boards.OfPitch(r.High - r.Low)
	air := boards.Air()
	out.Face = l.face(r)
	if rip := out.Cuts.Rip; rip.Done {
		out.SawRip = [2]tape.Length{saw.Figure(rip.Left, rip.Keeps, air), saw.Figure(rip.Right, rip.Keeps, air)}
	}
	for k, left := range []bool{true, false} {
		out.Sawn[k] = l.sawn(p, left)
	}
	out.InPlace = i == 0 && r.LeftEnd.InPlace && out.Sawn[0] ||
		i == len(r.Pieces)-1 && r.RightEnd.InPlace && out.Sawn[1]
	out.From, out.Rest, out.Marks = l.from(p), l.rest(p), l.marks(p)
	return out
}

// whole tells whether a piece is all of its board.
func (l *lister) whole(p lay.Piece) bool {
	b := l.p.Lay.Boards[p.Board]
	return p.InBoard.Area2() == 2*tape.Area(b.Length)*tape.Area(b.Width)
}
