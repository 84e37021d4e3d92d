package setout

import (
	"slices"

	"strake/plan"
	"strake/row"
	"strake/tape"
)

// Drift is where rows of one room should lie, measured from a line that is snapped in
// that room: rows in another room are measured from a line there, since a wall stands
// between.
type Drift struct {
	Room string
	From Line // its front is where distances begin
	Rows []Drifted
}

// Drifted is a row whose front is a full row's all along, so that it can be measured
// near both ends and in the middle.
type Drifted struct {
	Row   int
	Parts []int       // of those of its runs that lie in the room
	At    tape.Length // from the line, below 0 behind it
}

// Drifts are the rows to measure: every fifth of each room, and its last that can be.
func Drifts(p plan.Plan) []Drift {
	var out []Drift
	for _, t := range tables(p) {
		for _, r := range t.rooms {
			if d, ok := t.drift(r); ok {
				out = append(out, d)
			}
		}
	}
	return out
}

func (t table) drift(r roomRows) (Drift, bool) {
	d := Drift{Room: r.v.room.Name}
	from, ok := t.lineOf(d.Room)
	if !ok {
		return d, false
	}
	zero, ok := frontOf(r, from)
	if !ok {
		return d, false
	}
	d.From = from
	var last *Drifted
	for _, h := range r.rows {
		x, ok := drifted(h, zero, from.long())
		if !ok || h.row == from.Row {
			continue
		}
		if last = &x; h.row%every == 0 {
			d.Rows = append(d.Rows, x)
		}
	}
	if last != nil && last.Row%every != 0 {
		d.Rows = append(d.Rows, *last)
	}
	return d, true
}

// lineOf is the line of a room that its rows are measured from: one that a first row is
// set to, else its first.
func (t table) lineOf(room string) (Line, bool) {
	var out Line
	found := false
	for _, l := range t.lines {
		if l.Room == room && (!found || l.Start && !out.Start) {
			out, found = l, true
		}
	}
	return out, found
}

// frontOf is the front that a line was snapped for.
func frontOf(r roomRows, l Line) (tape.Length, bool) {
	for _, h := range r.rows {
		for _, q := range h.runs {
			if h.row == l.Row && (l.Part == 0 || q.Part == l.Part) && hasFront(q) {
				return q.Front(), true
			}
		}
	}
	return 0, false
}

// drifted is a row as it is measured from a front: where its runs whose front is
// there reach along half of a line so long.
func drifted(h rowHere, zero, long tape.Length) (Drifted, bool) {
	d := Drifted{Row: h.row}
	var reach tape.Length
	for _, q := range h.runs {
		if !whole(q) || len(d.Parts) > 0 && q.Front()-zero != d.At {
			continue
		}
		d.At = q.Front() - zero
		d.Parts = append(d.Parts, q.Part)
		reach += q.Length()
	}
	slices.Sort(d.Parts)
	return d, len(d.Parts) > 0 && 2*reach >= long
}

// whole tells whether a run's front is there along three quarters of it, neither ripped
// nor mitred away: so it can be measured near both ends.
func whole(q row.Run) bool {
	if len(q.Shape) == 0 {
		return true
	}
	y := q.Front()
	var front tape.Length
	for _, r := range q.Shape {
		for i, a := range r {
			if b := r[(i+1)%len(r)]; (a.Y-y).Abs() < near && (b.Y-y).Abs() < near {
				front += (b.X - a.X).Abs()
			}
		}
	}
	return 4*front >= 3*q.Length()
}

// near is how far off its line the front of a run may lie: less than can be measured.
const near = tape.Inch / 64
