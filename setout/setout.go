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
	"strake/row"
	"strake/tape"
)

// Mark is an end of a line: a place on a wall, in an opening or on the side of
// something that stands up.
type Mark struct {
	On   string // where it lies: "on wall A-B", "on hearth", "in the opening of west door"
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
	First       bool // the first row is set to it, with none to go on from
	Left, Right Mark
}

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

// Lines are the lines of every room: each row that is set to a line, and every
// fifth from there on both ways; the next row that can have one where such a
// row has none, and then why.
func Lines(p plan.Plan) ([]Line, []None) {
	var out []Line
	var none []None
	for i, r := range p.Built.Rooms {
		v := viewOf(p, i)
		for _, f := range p.AllFields() {
			if f.Kind == lay.Field && (len(p.Fields) < 2 || slices.Contains(f.Rooms, r.Name)) {
				ls, ns := v.lines(f)
				out, none = append(out, ls...), append(none, ns...)
			}
		}
	}
	return out, none
}

// lines are those of one field in the room of a view.
func (v view) lines(f row.Field) (out []Line, none []None) {
	rows := v.rowsHere(f)
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
	for _, q := range f.Layout.Runs {
		if !liesIn(f, q, v.outline) {
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
		if q.Front() != y || over <= 0 {
			continue
		}
		if laid == 0 {
			l.Part = q.Part
		} else {
			l.Part = 0
		}
		laid += over
		l.First = l.First || q.First
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

// Tick is a mark on the story stick: the front of a row.
type Tick struct {
	Row int
	At  tape.Length // from the front of the row that is laid first; below 0 behind it
}

// Stick is the distance of the front of each row of a field from the front of
// the one that is laid first, for a story stick and for checks of drift.
func Stick(f row.Field) []Tick {
	if len(f.Layout.Runs) == 0 || f.Kind == lay.Header || f.Kind == lay.Frame {
		return nil
	}
	fronts := fronts(f)
	first := fronts[f.Layout.StartRow]
	var out []Tick
	for _, n := range rowsOf(fronts) {
		out = append(out, Tick{n, fronts[n] - first})
	}
	return out
}

// fronts are the lines that rows keep to, by row: the edge that the tongues of
// its boards lead, of those laid ahead where it has both kinds.
func fronts(f row.Field) map[int]tape.Length {
	out := map[int]tape.Length{}
	for _, run := range f.Layout.Runs {
		if _, ok := out[run.Row]; !ok || run.Ahead > 0 {
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
