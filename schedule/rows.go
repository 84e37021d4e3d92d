package schedule

import (
	"slices"
	"strings"
)

// zoneWords are the zones as steps are called.
var zoneWords = [3]struct{ key, rate, what string }{
	{"first rows", "first_rows", "First rows, by hand"},
	{"field", "field", "Field, with the floor nailer"},
	{"last rows", "last_rows", "Last rows, by hand"},
}

// stretch is rows that follow each other, mostly laid in one way, each in a room of
// the one before.
type stretch struct {
	zone Zone
	rows []Row
}

// brief is how long a stretch of rows may be, laid another way or in another room,
// that still counts with the rows before it: a few rows of a closet between those of a room are no step of
// their own.
const brief = 1.0

// rows are the steps of the rows left: rows that follow each other and are mostly
// laid in one way.
func (p planner) rows() []Step {
	var out []Step
	for _, x := range p.stretches() {
		out = append(out, p.fill(x))
	}
	return out
}

func (p planner) stretches() []stretch {
	var all []stretch
	for _, r := range p.w.Rows {
		if p.j.laid(r.Number) {
			continue
		}
		if z, n := r.zone(), len(all); n == 0 || all[n-1].zone != z || apart(all[n-1].rows, r) {
			all = append(all, stretch{zone: z})
		}
		all[len(all)-1].rows = append(all[len(all)-1].rows, r)
	}
	var out []stretch
	for i, x := range all {
		n := len(out)
		inside := i > 0 && i < len(all)-1
		if n > 0 && (out[n-1].zone == x.zone && !apart(out[n-1].rows, x.rows[0]) || inside && p.takes(x) < brief) {
			out[n-1].rows = append(out[n-1].rows, x.rows...)
			continue
		}
		out = append(out, x)
	}
	return out
}

// apart tells whether a row lies in other rooms than the last of those before it; a
// row in a doorway alone lies in none, and is apart from nothing.
func apart(before []Row, r Row) bool {
	last := before[len(before)-1]
	if len(last.Rooms) == 0 || len(r.Rooms) == 0 {
		return false
	}
	return !slices.ContainsFunc(r.Rooms, func(room string) bool { return slices.Contains(last.Rooms, room) })
}

// takes are the hours of a stretch.
func (p planner) takes(x stretch) float64 {
	h := 0.0
	for _, part := range p.parts(x.rows) {
		h += part.Hours
	}
	return h
}

// parts are the areas of rows by the way they are laid, with hours at the pace of
// rows done.
func (p planner) parts(rows []Row) []Part {
	var out []Part
	for z, word := range zoneWords {
		area := 0.0
		for _, r := range rows {
			area += r.SqFt[z]
		}
		if area > 0 {
			x := p.part(word.rate, area, p.square(area))
			x.Hours *= p.factor
			out = append(out, x)
		}
	}
	return out
}

// fill is a stretch as a step.
func (p planner) fill(x stretch) Step {
	s := Step{Key: zoneWords[x.zone].key, rows: x.rows, places: true, Parts: p.parts(x.rows)}
	for _, r := range x.rows {
		for _, room := range r.Rooms {
			if !slices.Contains(s.rooms, room) {
				s.rooms = append(s.rooms, room)
			}
		}
	}
	s.What = zoneWords[x.zone].what + ": " + RowNames(x.rows)
	if len(p.w.Rooms) > 1 && len(s.rooms) > 0 {
		s.What += " (" + list(s.rooms) + ")"
	}
	return s
}

// RowNames are rows in words: row 4; rows 35 to 37, 1.
func RowNames(rows []Row) string {
	var out []string
	for i := 0; i < len(rows); {
		k := i
		for k+1 < len(rows) && (rows[k+1].Number-rows[k].Number)*(rows[k+1].Number-rows[k].Number) <= 1 {
			k++
		}
		name := rows[i].Name
		if k > i {
			name += " to " + rows[k].Name
		}
		out = append(out, name)
		i = k + 1
	}
	if len(rows) == 1 {
		return "row " + out[0]
	}
	return "rows " + strings.Join(out, ", ")
}
