package plan

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"strake/check"
	"strake/finding"
	"strake/floor"
	"strake/job"
	"strake/lay"
	"strake/plane"
	"strake/rack"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// CheckLaid holds the rows as laid of the job to the rules that bear on them
// alone.
func (p Plan) CheckLaid() []finding.Finding {
	style := tape.Paper(p.Job.Unit)
	f, fs := p.laid(style)
	return append(fs, check.Laid(f, p.Job.Limits, p.Job.Boards, style)...)
}

// LaidJoints are the rows as laid for going on from them: those that the job
// names by their joints, and those laid before the last of each field, of which
// nothing is known, as laid too. The findings are those that leave the place of
// a row in the dark.
func (p Plan) LaidJoints() ([]rack.Laid, []finding.Finding) {
	f, fs := p.laid(tape.Paper(p.Job.Unit))
	at := map[int][]tape.Length{}
	last := map[int]int{} // of each field
	order := rack.Order(p.AllFields())
	for _, r := range f.Rows {
		if r.Run < 0 {
			fs = append(fs, finding.Finding{Level: finding.Stop, Rule: "rows as laid", Where: "row " + r.Name,
				Measured: "the plan has no row of that name", Do: "Name it as the row list does."})
			continue
		}
		at[r.Run] = []tape.Length{}
		x := r.From
		for _, l := range r.Pieces[:len(r.Pieces)-1] {
			x += l
			at[r.Run] = append(at[r.Run], x)
		}
		k := order[r.Run].Field
		last[k] = max(last[k], r.Run)
	}
	var out []rack.Laid
	for i, o := range order {
		if end, any := last[o.Field]; any && i <= end {
			out = append(out, rack.Laid{Run: i, Joints: at[i]})
		}
	}
	return out, fs
}

// laidAside says that a plan of the whole floor does not go on from rows as
// laid.
func (p Plan) laidAside() []finding.Finding {
	if len(p.Job.Laid) == 0 {
		return nil
	}
	return []finding.Finding{{Level: finding.Note, Rule: "rows as laid", Measured: fmt.Sprintf("%d written in the job; this plan is of the whole floor and does not go on from them", len(p.Job.Laid)),
		Do: "strake rack proposes the next rows from the boards at hand; strake check --laid looks over those that lie."}}
}

// laid are the rows as laid of the job on the rows of the plan.
func (p Plan) laid(style tape.Style) (check.LaidFloor, []finding.Finding) {
	f := check.LaidFloor{At: map[int]floor.Aligned{}}
	first := map[int]int{} // zone of the first area of each field
	fields := p.AllFields()
	for k, g := range fields {
		first[k] = len(f.Zones)
		for _, a := range g.Layout.Areas {
			f.At[len(f.Zones)] = g.Part
			f.Zones = append(f.Zones, lay.Zone{ID: len(f.Zones), Kind: g.Kind, Dir: g.Layout.Dir, Width: g.Layout.Pitch, Offset: g.Layout.Offset, Pattern: g.Layout.Pattern,
				Ahead: a.Ahead, Hand: p.Job.Boards.Hand, Outline: a.Outline})
		}
	}
	order := rack.Order(fields)
	for i, o := range order {
		l := fields[o.Field].Layout
		r := l.Runs[o.Run]
		f.Runs = append(f.Runs, lay.Run{ID: i, Zone: first[o.Field] + l.AreaOf(r), Row: r.Row, Part: r.Part, Low: r.Low, High: r.High,
			Outline: r.Shape[0], Order: i + 1, Nailing: r.Nailing, LeftEnd: r.Left, RightEnd: r.Right})
	}
	var fs []finding.Finding
	for _, l := range p.Job.Laid {
		q := check.LaidRow{Name: l.Row, Run: -1, Pieces: l.Pieces,
			CutTold: l.Cut != job.CutUnknown, CutLeft: l.Cut == job.CutLeft || l.Cut == job.CutBoth, CutRight: l.Cut == job.CutRight || l.Cut == job.CutBoth}
		q.Run = slices.IndexFunc(f.Runs, func(r lay.Run) bool { return runName(r.Row, r.Part) == l.Row })
		if q.Run >= 0 {
			o := order[q.Run]
			g := laidOn{p, fields[o.Field], fields[o.Field].Layout.Runs[o.Run], style}
			fs = append(fs, g.start(l, &q)...)
			fs = append(fs, g.front(l, &q)...)
		}
		f.Rows = append(f.Rows, q)
	}
	return f, fs
}

// runName is a run as the row list names it: 12a.
func runName(row, part int) string {
	s := ""
	for ; part > 0; part = (part - 1) / 26 {
		s = string(rune('a'+(part-1)%26)) + s
	}
	return strconv.Itoa(row) + s
}

// laidOn is a run that rows as laid name, with where it lies.
type laidOn struct {
	p     Plan
	field row.Field
	run   row.Run
	style tape.Style
}

// start is where the first piece begins: as it was read, else as far out as it
// may and no farther than the far end asks.
func (g laidOn) start(l job.Laid, q *check.LaidRow) []finding.Finding {
	left, right := g.run.Left, g.run.Right
	var sum tape.Length
	for _, x := range l.Pieces {
		sum += x
	}
	q.From = min(max(left.Reach, right.Need-sum), max(left.Reach, left.Need))
	switch {
	case !l.Start.Told:
		return nil
	case l.Start.From == (room.Wall{}):
		least, slope, ok := g.leftEdge()
		if !ok {
			f := g.lost(l.Row, "start", "its left end comes to no edge that a gap can be read from")
			f.Do = `Read it from a wall that the rows end at, along the row, as in start: 3' 2" from D-A.`
			return []finding.Finding{f}
		}
		q.From, q.Told = left.Reach+tape.Length(math.Round(float64(l.Start.At-least)*slope)), true
		return nil
	}
	a, b, ok := g.wall(l.Start.From)
	mid := float64(g.run.Low+g.run.High) / 2
	if !ok || math.Abs(float64(b.Y-a.Y)) < math.Abs(float64(b.X-a.X)) {
		f := g.lost(l.Row, "start", "wall "+l.Start.From.String()+" lies along the rows")
		f.Do = "Read it from a wall that the rows end at."
		return []finding.Finding{f}
	}
	x := float64(a.X) + (mid-float64(a.Y))*float64(b.X-a.X)/float64(b.Y-a.Y)
	off := float64(l.Start.At)
	if float64(left.Reach)+float64(sum)/2 < x { // the row lies left of the wall
		off = -off
	}
	q.From, q.Told = tape.Length(math.Round(x+off)), true
	return nil
}

func (g laidOn) lost(row, key, what string) finding.Finding {
	return finding.Finding{Level: finding.Stop, Rule: "rows as laid", Where: "row " + row + ", " + key, Measured: what}
}

// leftEdge is the least gap at the edge that the left end comes to, and what a
// distance square to it measures along the row.
func (g laidOn) leftEdge() (least tape.Length, slope float64, ok bool) {
	best := tape.Longest
	for _, e := range g.field.Part.Edges {
		if e.Name != g.run.Left.Edge || e.To.Y >= e.From.Y {
			continue
		}
		if off := max(e.To.Y-g.run.High, g.run.Low-e.From.Y, 0); off < best {
			d := e.To.Sub(e.From)
			best, least, ok = off, e.Range.Least, true
			slope = math.Hypot(float64(d.X), float64(d.Y)) / math.Abs(float64(d.Y))
		}
	}
	return
}

// wall is a wall in the frame of the rows.
func (g laidOn) wall(w room.Wall) (a, b plane.Pt, ok bool) {
	p, okA := g.p.Built.At[w[0]]
	q, okB := g.p.Built.At[w[1]]
	return g.field.Layout.Dir.ToRow(p), g.field.Layout.Dir.ToRow(q), okA && okB
}

// front is where the tongue edge was read to lie, beside where it was planned.
func (g laidOn) front(l job.Laid, q *check.LaidRow) []finding.Finding {
	if !l.Tongue.Told {
		return nil
	}
	y := g.run.Front()
	if !g.fullFront(y) {
		f := g.lost(l.Row, "tongue", "the row is ripped at its tongue edge, so no tongue edge lies on its line")
		f.Level, f.Do = finding.Warn, "Leave it out; read the row before it instead."
		return []finding.Finding{f}
	}
	at := &check.LaidFront{Read: l.Tongue.At}
	if l.Tongue.From == (room.Wall{}) {
		i := slices.IndexFunc(g.field.Layout.Runs, func(r row.Run) bool { return r.Row == g.field.Layout.StartRow })
		if i < 0 {
			return nil
		}
		d := (y - g.field.Layout.Runs[i].Front()).Abs()
		at.From, at.Least, at.Most = fmt.Sprintf("the front of row %d", g.field.Layout.StartRow), d, d
		if len(g.field.Layout.Pattern) == 0 { // of one width, so that ten boards tell of it
			at.Rows = int(d / g.field.Layout.Pitch)
		}
		q.Front = at
		return nil
	}
	a, b, ok := g.wall(l.Tongue.From)
	if !ok || math.Abs(float64(b.Y-a.Y)) > math.Abs(float64(b.X-a.X)) {
		f := g.lost(l.Row, "tongue", "wall "+l.Tongue.From.String()+" lies across the rows")
		f.Do = "Read it from a wall beside the rows, or from the front of the first row, as the story stick has it."
		return []finding.Finding{f}
	}
	off := func(x tape.Length) tape.Length {
		at := float64(a.Y) + float64(x-a.X)*float64(b.Y-a.Y)/float64(b.X-a.X)
		return tape.Length(math.Round(math.Abs(float64(y) - at)))
	}
	from, to := off(g.run.Left.Reach), off(g.run.Right.Reach)
	at.From, at.Least, at.Most = "wall "+l.Tongue.From.String(), min(from, to), max(from, to)
	q.Front = at
	return nil
}

// fullFront tells whether the run reaches its tongue edge's line somewhere.
func (g laidOn) fullFront(y tape.Length) bool {
	lo, hi := g.run.Shape.Box()
	return lo.Y == y || hi.Y == y
}
