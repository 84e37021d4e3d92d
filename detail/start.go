package detail

import (
	"fmt"
	"slices"
	"strings"

	"strake/fasten"
	"strake/floor"
	"strake/lay"
	"strake/row"
	"strake/section"
	"strake/setout"
	"strake/tape"
	"strake/words"
)

// start is the first row that is laid and the line that it keeps to.
type start struct {
	line  words.WorkingLine
	snap  setout.Line // its marks; Row 0: none
	sets  []string    // rows set from it from afar
	wall  bool        // the wall behind it is drawn: it lies close, one to three rows away
	rows  []startRow  // from the wall to the line; the last has its front at it
	gaps  [2]tape.Length
	turn  bool        // seen from above, the wall lies above the line: the drawing is turned round
	first string      // the row that is laid first
	afar  *setout.Set // it is set from the line from afar
	face  tape.Length // of the boards of the row at the line
	nails nails       // of the first row
}

// nails tells how a row is fastened, in parts of it or all along.
type nails struct{ face, hand, nailer bool }

// nailsOf is how a row of a field is fastened.
func nailsOf(f row.Field, name string) nails {
	var n nails
	for _, q := range f.Layout.Runs {
		if fmt.Sprint(q.Row) != trimLetters(name) {
			continue
		}
		for _, t := range q.Nailing {
			n.face, n.hand, n.nailer = n.face || t.By == lay.FaceNail, n.hand || t.By == lay.HandNail, n.nailer || t.By == lay.Nailer
		}
	}
	n.hand = n.hand || n.face // beside the face nails through the tongue by hand
	return n
}

// startRow is a row between wall and line: its name and what it takes up at both
// ends.
type startRow struct {
	name        string
	left, right tape.Length
	ripped      bool
	edge        section.Edge // towards the wall
}

// most is how far from a wall a line may lie to be drawn together with it.
const most = 18 * tape.Inch

// startOf is the start of the main field; false where nothing is laid out.
func (w work) startOf() (start, bool) {
	line, ok := words.Line(w.p)
	if !ok {
		return start{}, false
	}
	s := start{line: line, first: line.Row}
	lines, _ := setout.Lines(w.p)
	for _, l := range lines {
		if l.Start && words.RowPart(l.Row, l.Part) == line.Row || l.Start && s.snap.Row == 0 && fmt.Sprint(l.Row) == trimLetters(line.Row) {
			s.snap = l
		}
	}
	for _, x := range s.snap.Sets {
		where := "behind"
		if x.Behind < 0 {
			where = "ahead of"
		}
		s.sets = append(s.sets, fmt.Sprintf("The front of row %d lies %s %s this line.", x.Row, w.say.Rip(x.Behind.Abs()), where))
	}
	w.rowsToWall(&s)
	f := w.p.Field(0)
	if run, ok := runNamed(f, line.Row); ok && !s.wall && !run.First && len(s.snap.Sets) > 0 {
		s.afar = &s.snap.Sets[0]
		s.first = fmt.Sprint(s.afar.Row)
	}
	if s.wall {
		s.first = s.rows[0].name
	}
	s.nails = nailsOf(f, s.first)
	return s, true
}

func trimLetters(s string) string { return strings.TrimRight(s, "abcdefghijklmnopqrstuvwxyz") }

// rowsToWall finds the rows between the wall and the line, where it lies close.
func (w work) rowsToWall(s *start) {
	f := w.p.Field(0)
	run, ok := runNamed(f, s.line.Row)
	if !ok {
		return
	}
	s.face = words.Face(w.p, run.High-run.Low)
	if s.line.Wall == "" || max(s.line.Left, s.line.Right) > most {
		return
	}
	i := slices.IndexFunc(w.p.Aligned.Edges, func(e floor.AlignedEdge) bool { return e.Name == s.line.Wall || e.Name == "wall "+s.line.Wall })
	if i < 0 {
		return
	}
	e := w.p.Aligned.Edges[i]
	s.turn = (e.From.Y+e.To.Y)/2 > s.line.Y
	behind := tape.Length(1)
	if s.turn {
		behind = -1
	}
	if (run.Ahead > 0) == s.turn {
		return // the wall lies ahead of the row, not behind it
	}
	for _, r := range f.Layout.Rips {
		if r.Edge != e.Name || r.Above == s.turn {
			continue
		}
		n := (tape.Length(run.Row) - tape.Length(r.Row)) * behind
		if n < 0 || n > 2 {
			continue
		}
		w.stack(s, f, r, run, int(n))
		return
	}
}

// stack are the rows from a rip at the wall to the row at the line.
func (w work) stack(s *start, f row.Field, r row.Rip, run row.Run, n int) {
	widths := f.Layout.Courses()
	step := 1
	if s.turn {
		step = -1
	}
	edge := section.Square
	if r.Full() {
		edge = section.Grooved
	}
	rows := []startRow{{fmt.Sprint(r.Row), r.Left, r.Right, !r.Full(), edge}}
	left, right := r.Left, r.Right
	for k := 1; k <= n; k++ {
		no := r.Row + k*step
		width := widths.Width(widths.Row(run.Low) + (no - run.Row))
		rows = append(rows, startRow{fmt.Sprint(no), width, width, false, section.Grooved})
		left, right = left+width, right+width
	}
	s.gaps = [2]tape.Length{s.line.Left - left, s.line.Right - right}
	if s.gaps[0] < 0 || s.gaps[1] < 0 {
		return
	}
	s.rows, s.wall = rows, true
}

// runNamed is the run of a name, else of its row.
func runNamed(f row.Field, name string) (row.Run, bool) {
	for _, q := range f.Layout.Runs {
		if words.RowPart(q.Row, q.Part) == name {
			return q, true
		}
	}
	for _, q := range f.Layout.Runs {
		if fmt.Sprint(q.Row) == trimLetters(name) {
			return q, true
		}
	}
	return row.Run{}, false
}

// startLine is the detail of the first row.
func (w work) startLine() []Detail {
	s, ok := w.startOf()
	if !ok {
		return nil
	}
	_, u, nailed := w.p.Nailing().Use()
	notes := []string{words.LineText(s.line, w.say)}
	notes = append(notes, w.markNotes(s)...)
	notes = append(notes, s.sets...)
	if s.wall && s.rows[0].ripped {
		r := s.rows[0]
		what, where := "ripped", ""
		if q, ok := runNamed(w.p.Field(0), r.name); ok && q.Widest == q.High-q.Low {
			what, where = "cut back", " where the wall lies behind it, and keeps its width in openings"
		}
		notes = append(notes, fmt.Sprintf("MEASURE FIRST: row %s is %s to  ____________  (%s by this plan)%s, once the line is snapped and both distances are checked.", r.name, what, w.say.Rips(r.left, r.right), where))
	}
	if nailed {
		notes = append(notes, w.startNails(s, u))
	}
	notes = append(notes, "A row that is not straight here is not straight anywhere: sight along it before each nail, and keep the straightest boards for it.")
	if s.afar != nil {
		return []Detail{free("start-line", "The start line: front of row "+s.line.Row, w.startAfar(s), notes...)}
	}
	draw := func(scale float64) section.Figure {
		return section.Below(3,
			section.Caption("From above, 1:5", section.Middle, MostW-4, true), w.startPlan(s, u, nailed),
			section.Caption("Cut across", section.Middle, MostW-4, true), w.startSection(s, u, nailed, scale))
	}
	return []Detail{w.fitted("start-line", "The start line: row "+s.line.Row, 1, draw, notes...)}
}

// markNotes are where the two marks of the line are taped.
func (w work) markNotes(s start) []string {
	if s.snap.Row == 0 {
		return nil
	}
	var out []string
	for i, m := range []setout.Mark{s.snap.Left, s.snap.Right} {
		t := fmt.Sprintf("%s mark: %s, %s from %s", []string{"Left", "Right"}[i], m.On, w.say.Rip(m.At), m.From.Name)
		if m.Check.Name != "" {
			t += fmt.Sprintf("; check %s from %s", w.say.Of(m.CheckAt), m.Check.Name)
		}
		out = append(out, t+".")
	}
	return out
}

// startNails says how the first row is fastened.
func (w work) startNails(s start, u fasten.Use) string {
	edge := "its groove edge"
	if s.wall {
		edge = "the edge at the wall"
	}
	var how []string
	if s.nails.face {
		how = append(how, fmt.Sprintf("through its face %s from %s, holes drilled first, heads set", w.say.Rip(u.Edge), edge))
	}
	if s.nails.hand {
		how = append(how, "through its tongue by hand")
	}
	if s.nails.nailer {
		how = append(how, "with the nailer where that has room")
	}
	return fmt.Sprintf("Row %s is nailed %s: every %s at most, %s from each end of a board. Its row card says where along it which holds.", s.first, strings.Join(how, "; "), w.say.Of(u.Spacing), w.say.Of(u.End))
}

// key says what marks mean on the start from above.
func (s start) key(nailed bool) string {
	switch {
	case !nailed:
		return "How it is fastened is not told in the job."
	case s.nails.face:
		return "Dots: nails through the face, drilled first. Strokes: nails through the tongue, by hand."
	}
	return "Strokes: nails through the tongue."
}

// ends are what hold at the left and the right end as drawn, with the wall below.
func (s start) ends() (from [2]tape.Length, corner [2]string, mark [2]setout.Mark) {
	from, corner = [2]tape.Length{s.line.Left, s.line.Right}, [2]string{s.line.LeftCorner, s.line.RightCorner}
	mark = [2]setout.Mark{s.snap.Left, s.snap.Right}
	if s.turn {
		from[0], from[1] = from[1], from[0]
		corner[0], corner[1] = corner[1], corner[0]
		mark[0], mark[1] = mark[1], mark[0]
	}
	return from, corner, mark
}

// at is what a row takes up at the left end as drawn.
func (s start) at(r startRow) float64 {
	if s.turn {
		return r.right.Millimetres()
	}
	return r.left.Millimetres()
}
