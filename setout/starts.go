package setout

import (
	"cmp"
	"fmt"
	"slices"

	"strake/row"
	"strake/tape"
)

// Set is a first row that a line sets from afar, as its own front is too short
// to hold a floor straight, or cannot be snapped.
type Set struct {
	Row    int
	Behind tape.Length // its front lies so far behind the line, as its rows are laid; below 0 ahead
}

// steady is as long as a line has to be for whole rooms to be set to it.
const steady = 6 * tape.Foot

// table is what is snapped in one field.
type table struct {
	field row.Field
	rooms []roomRows
	lines []Line
	none  []None

	begun        bool
	begin, order int // the row whose line sets the run that is laid first, and the place of that run
}

// roomRows are the rows of the field in one room.
type roomRows struct {
	v    view
	rows []rowHere
}

// add takes a room with its rows and their lines.
func (t *table) add(v view) {
	rows := v.rowsHere(t.field)
	if len(rows) == 0 {
		return
	}
	t.rooms = append(t.rooms, roomRows{v, rows})
	ls, ns := v.lines(t.field, rows)
	t.lines, t.none = append(t.lines, ls...), append(t.none, ns...)
}

// starts finds for each run that has none to go on from the line that sets it:
// its own where that is long enough, else that of the first row laid after it
// that is half as long as the longest of its room.
func (t *table) starts() {
	for _, q := range t.field.Layout.Runs {
		if !q.First {
			continue
		}
		r, ok := t.roomOf(q)
		if !ok {
			continue
		}
		by := q.Row
		if !t.ownLine(q, r) {
			by = t.setFromAfar(q, r)
		}
		if !t.begun || q.Order < t.order {
			t.begun, t.order, t.begin = true, q.Order, by
		}
	}
	slices.SortStableFunc(t.lines, func(a, b Line) int {
		return cmp.Or(cmp.Compare(t.place(a.Room), t.place(b.Room)), cmp.Compare(a.Row, b.Row))
	})
}

func (t *table) place(room string) int {
	return slices.IndexFunc(t.rooms, func(r roomRows) bool { return r.v.room.Name == room })
}

// roomOf is the room that a run lies in; of one in a doorway's depth, or in a
// corner too tight to count, the room of the row that goes on from it.
func (t *table) roomOf(q row.Run) (roomRows, bool) {
	same := func(g row.Run) bool { return g.Row == q.Row && g.Part == q.Part }
	next := func(g row.Run) bool {
		return g.Row == q.Row+q.Ahead && g.Left.Reach < q.Right.Reach && q.Left.Reach < g.Right.Reach
	}
	for _, is := range []func(row.Run) bool{same, next} {
		for _, r := range t.rooms {
			for _, h := range r.rows {
				if slices.ContainsFunc(h.runs, is) {
					return r, true
				}
			}
		}
	}
	return roomRows{}, false
}

// enough is how long a line of a room has to be for its rows to be set to it:
// half the longest there, or 6 ft.
func (t *table) enough(r roomRows) tape.Length {
	most := tape.Length(0)
	for _, l := range t.lines {
		if l.Room == r.v.room.Name {
			most = max(most, l.long())
		}
	}
	return min(steady, most/2)
}

// ownLine marks the line at the front of a first run, and tells whether it is
// one to set a room by.
func (t *table) ownLine(q row.Run, r roomRows) bool {
	found, enough := false, t.enough(r)
	for i, l := range t.lines {
		if l.Room == r.v.room.Name && l.Row == q.Row && l.first && l.long() >= enough {
			t.lines[i].Start, found = true, true
		}
	}
	return found
}

// setFromAfar finds the line that a first run is set by: that of the row laid
// first of those after it with a line long enough.
func (t *table) setFromAfar(q row.Run, r roomRows) int {
	rows := slices.Clone(r.rows)
	slices.SortStableFunc(rows, func(a, b rowHere) int { return a.order - b.order })
	for _, h := range rows {
		if h.order >= q.Order && t.setBy(q, r, h) {
			return h.row
		}
	}
	return q.Row
}

// setBy sets a first run by the line of another row, where that has one.
func (t *table) setBy(q row.Run, r roomRows, h rowHere) bool {
	lines, _ := r.v.rowLines(t.field, h)
	if !slices.ContainsFunc(lines, func(l Line) bool { return l.long() >= t.enough(r) }) {
		return false
	}
	s := Set{Row: q.Row, Behind: (h.runs[0].Front() - q.Front()) * tape.Length(q.Ahead)}
	at := func(l Line) bool { return l.Room == r.v.room.Name && l.Row == h.row }
	if !slices.ContainsFunc(t.lines, at) {
		t.lines = append(t.lines, lines...)
	}
	for i := range t.lines {
		if at(t.lines[i]) {
			t.lines[i].Start, t.lines[i].Sets = true, append(t.lines[i].Sets, s)
		}
	}
	for i, n := range t.none {
		if n.Row == q.Row && n.Room == r.v.room.Name {
			t.none[i].Why = fmt.Sprintf("set it from the line of row %d", h.row)
		}
	}
	t.none = slices.DeleteFunc(t.none, func(n None) bool { return n.Row == h.row && n.Room == r.v.room.Name })
	return true
}
