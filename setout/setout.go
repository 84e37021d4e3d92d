// Package setout is the chalk lines: where each line that rows keep to is
// snapped, as distances that one person can tape from places that stay
// visible: corners, jambs, corners of a hearth. Each mark has a check.
//
// The front of row 5 crosses wall F-A at 1' 9-3/8" from A and the side of the
// hearth at 8-1/2" from its front corner; from B across to the first mark the
// tape reads 18' 1-3/4". A mark that both tapes agree on is right.
package setout

import (
	"cmp"
	"math"
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// Mark is an end of a line: a place on a wall, in an opening or on the side of
// something that stands up.
type Mark struct {
	On   string // where it lies: "on wall A-B", "on hearth toward its front corner nearer C", "in the opening of west door"
	From Ref    // the tape runs from there along it
	At   tape.Length
	// Check is across from another place; an error in the mark shows in it by
	// half at least, or by the most that any place shows. Check.Name is empty
	// where nothing else is in sight.
	Check   Ref
	CheckAt tape.Length
	x       tape.Length // along the rows
	xy      plane.XY
}

// Place is the mark's place on the floor plan, mm.
func (m Mark) Place() plane.XY { return m.xy }

// Line is one line to snap in one room: the front edge of a row, without its
// tongue, from what stands up at one end to what stands up at the other.
type Line struct {
	Room        string
	Row, Part   int  // Part is 0 where more than one run keeps to it
	Start       bool // a first row, with none to go on from, is set to it or by it
	Sets        []Set
	Left, Right Mark
	first       bool // the row itself has none to go on from
}

// long is how far the line runs.
func (l Line) long() tape.Length { return l.Right.x - l.Left.x }

// None is a row that was due for a line and has none in a room.
type None struct {
	Room string
	Row  int
	Why  string // "it has boards along less than half of its line"
}

// every is how many rows lie between lines that are snapped ahead.
const every = 5

// shortest is the shortest line that is snapped.
const shortest = tape.Foot

// Lines are the lines of every room: each row that is set to a line, or the long
// one that it is set by, and every fifth row; the next row that can have one where
// such a row has none, and then why.
func Lines(p plan.Plan) ([]Line, []None) {
	var lines []Line
	var none []None
	for _, t := range tables(p) {
		lines, none = append(lines, t.lines...), append(none, t.none...)
	}
	slices.SortStableFunc(lines, func(a, b Line) int { // the rooms in the order of the job
		return roomOf(p, a.Room) - roomOf(p, b.Room)
	})
	return lines, none
}

// Begin is the row whose line the first run of the main field is set to or by;
// false where there is no such line.
func Begin(p plan.Plan) (int, bool) {
	for _, t := range tables(p) {
		if t.begun && t.field.Layout.Dir == p.Layout.Dir {
			return t.begin, true
		}
	}
	return 0, false
}

// tables are the lines of each field.
func tables(p plan.Plan) []table {
	views := make([]view, len(p.Built.Rooms))
	for i := range views {
		views[i] = viewOf(p, i)
	}
	var out []table
	for _, f := range p.AllFields() {
		if f.Kind != lay.Field {
			continue
		}
		t := table{field: f}
		for _, v := range views {
			if len(p.Fields) < 2 || slices.Contains(f.Rooms, v.room.Name) {
				t.add(v)
			}
		}
		t.starts()
		out = append(out, t)
	}
	return out
}

func roomOf(p plan.Plan, name string) int {
	return slices.IndexFunc(p.Built.Rooms, func(r room.Room) bool { return r.Name == name })
}

// lines are those of one field in the room of a view.
func (v view) lines(f row.Field, rows []rowHere) (out []Line, none []None) {
	if len(rows) == 0 {
		return nil, nil
	}
	anchor := slices.MinFunc(rows, func(a, b rowHere) int { return a.order - b.order }).row
	due := false
	for _, r := range rows {
		if r.last && !r.first { // nothing goes on from its front
			continue
		}
		want := r.first || (r.row-anchor)%every == 0
		if !want && !due {
			continue
		}
		ls, why := v.rowLines(f, r)
		out = append(out, ls...)
		if len(ls) == 0 && want {
			none = append(none, None{v.room.Name, r.row, why})
		}
		due = len(ls) == 0
	}
	return out, none
}

// rowHere is a row of a field in one room.
type rowHere struct {
	row, order  int
	runs        []row.Run
	first, last bool // last: nothing goes on from it in this room
}

// rowsHere are the rows of a field with runs in the room, from the lowest up.
func (v view) rowsHere(f row.Field) []rowHere {
	at := map[int]*rowHere{}
	here := placeIn(f, v.outline)
	for _, q := range f.Layout.Runs {
		if !here.holds(q) {
			continue
		}
		r := at[q.Row]
		if r == nil {
			r = &rowHere{row: q.Row, order: q.Order, last: true}
			at[q.Row] = r
		}
		r.runs, r.order, r.first = append(r.runs, q), min(r.order, q.Order), r.first || q.First
	}
	var out []rowHere
	for n, r := range at {
		for _, q := range r.runs {
			r.last = r.last && at[n+q.Ahead] == nil
		}
		out = append(out, *r)
	}
	slices.SortFunc(out, func(a, b rowHere) int { return a.row - b.row })
	return out
}

// rowLines are the lines of one row in the room: of each front that its runs
// have, the stretches between what stands up. why is told where there is none.
func (v view) rowLines(f row.Field, r rowHere) (out []Line, why string) {
	why = "its front lies outside the room"
	var done []tape.Length
	for _, q := range r.runs {
		y := q.Front()
		if !hasFront(q) {
			why = "its front is ripped away"
			continue
		}
		if slices.Contains(done, y) {
			continue
		}
		done = append(done, y)
		for _, s := range v.stretches(f.Layout.Dir, y) {
			l, bad := v.line(f, r, y, s)
			if bad != "" {
				why = bad
				continue
			}
			out = append(out, l)
		}
	}
	slices.SortStableFunc(out, func(a, b Line) int { return cmp.Compare(a.Left.x, b.Left.x) })
	return out, why
}

// line is the line along one stretch, or why there is none.
func (v view) line(f row.Field, r rowHere, y tape.Length, s stretch) (Line, string) {
	l := Line{Room: v.room.Name, Row: r.row}
	var laid tape.Length
	for _, q := range r.runs {
		over := min(q.Right.Reach, s.to.x) - max(q.Left.Reach, s.from.x)
		if q.Front() != y || over <= 0 || !hasFront(q) {
			continue
		}
		if laid == 0 {
			l.Part = q.Part
		} else {
			l.Part = 0
		}
		laid += over
		l.first = l.first || q.First
	}
	switch long := s.to.x - s.from.x; {
	case long < shortest:
		return l, "its line is only " + v.style.Of(long) + " long: set it by a straightedge from the row before"
	case 2*laid < long:
		return l, "it has boards along less than half of its line"
	}
	var ok1, ok2 bool
	if l.Left, ok1 = v.mark(s.from); !ok1 {
		return l, s.from.why()
	}
	if l.Right, ok2 = v.mark(s.to); !ok2 {
		return l, s.to.why()
	}
	return l, ""
}

// hasFront tells whether any of a run's front edge is left, not ripped away: it
// lies on the line of its row there.
func hasFront(q row.Run) bool {
	if len(q.Shape) == 0 {
		return true
	}
	lo, hi := q.Shape.Box()
	if q.Ahead < 0 {
		return lo.Y-q.Low < tape.Inch/64
	}
	return q.High-hi.Y < tape.Inch/64
}

// fronts are the lines that rows keep to, by row: the edge that the tongues of
// its boards lead, of those laid ahead where it has both kinds. A row whose front
// is ripped away has none.
func fronts(f row.Field) map[int]tape.Length {
	out := map[int]tape.Length{}
	for _, run := range f.Layout.Runs {
		if _, ok := out[run.Row]; hasFront(run) && (!ok || run.Ahead > 0) {
			out[run.Row] = run.Front()
		}
	}
	return out
}

func rowsOf(fronts map[int]tape.Length) []int {
	var out []int
	for n := range fronts {
		out = append(out, n)
	}
	slices.Sort(out)
	return out
}

func mm(v float64) tape.Length {
	return tape.Length(math.Round(v * float64(tape.Millimetre)))
}

// outlineOf is the outline of a room of the floor.
func outlineOf(p plan.Plan, name string) floor.RoomOutline {
	i := slices.IndexFunc(p.Floor.Rooms, func(r floor.RoomOutline) bool { return r.Name == name })
	if i < 0 {
		return floor.RoomOutline{}
	}
	return p.Floor.Rooms[i]
}
