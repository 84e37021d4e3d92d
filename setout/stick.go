package setout

import (
	"slices"

	"strake/lay"
	"strake/plan"
	"strake/row"
	"strake/tape"
)

// Tick is a mark on the story stick: the front of a row.
type Tick struct {
	Row    int
	At     tape.Length // from the front of the row that the stick begins at; below 0 behind it
	Ripped bool        // its front is ripped away all along: it closes against something, and has no mark
}

// Stick is the distance of the front of each row of a field from the line that its
// first run is set to or by.
type Stick struct {
	Field row.Field
	From  int // the row whose front that line is
	Ticks []Tick
}

// Sticks are the story sticks of a plan, one a field whose rows lie one way.
func Sticks(p plan.Plan) []Stick {
	var out []Stick
	for _, t := range tables(p) {
		if t.field.Kind != lay.Field {
			continue
		}
		fronts := fronts(t.field)
		from, ok := firstFront(t.field, fronts)
		if _, has := fronts[t.begin]; t.begun && has {
			from, ok = t.begin, true
		}
		if ok {
			out = append(out, Stick{t.field, from, ticks(t.field, fronts, from)})
		}
	}
	return out
}

func ticks(f row.Field, fronts map[int]tape.Length, from int) []Tick {
	var out []Tick
	done := map[int]bool{}
	for _, q := range f.Layout.Runs {
		if done[q.Row] {
			continue
		}
		done[q.Row] = true
		if at, ok := fronts[q.Row]; ok {
			out = append(out, Tick{Row: q.Row, At: at - fronts[from]})
			continue
		}
		out = append(out, Tick{Row: q.Row, Ripped: true})
	}
	slices.SortFunc(out, func(a, b Tick) int { return a.Row - b.Row })
	return out
}

// firstFront is the row laid first, or the first after it that has a front; false where
// none has.
func firstFront(f row.Field, fronts map[int]tape.Length) (int, bool) {
	best, order := 0, -1
	for _, q := range f.Layout.Runs {
		if _, ok := fronts[q.Row]; ok && (order < 0 || q.Order < order) {
			best, order = q.Row, q.Order
		}
	}
	return best, order >= 0
}
