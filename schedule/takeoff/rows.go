package takeoff

import (
	"slices"

	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/row"
	"strake/schedule"
	"strake/tape"
	"strake/words"
)

// rows are the rows of all fields in the order of laying, with the area of each
// by the way it is laid.
func rows(p plan.Plan) []schedule.Row {
	type placed struct {
		order int
		row   schedule.Row
	}
	var all []placed
	for _, f := range p.AllFields() {
		for i, q := range f.Layout.Runs {
			r := schedule.Row{Name: words.RowPart(q.Row, q.Part), Number: q.Row, Rooms: roomsOf(p, f, q)}
			hand := schedule.LastRows
			if f.Kind != lay.Field || startsOff(f.Layout.Runs, i) {
				hand = schedule.FirstRows
			}
			area := tape.Area(plane.Region(q.Shape).Area2() / 2).SquareFeet()
			for z, share := range shares(q) {
				zone := schedule.FieldRows
				if z != lay.Nailer || f.Kind != lay.Field {
					zone = hand
				}
				r.SqFt[zone] += area * share
			}
			all = append(all, placed{q.Order, r})
		}
	}
	slices.SortStableFunc(all, func(a, b placed) int { return a.order - b.order })
	out := make([]schedule.Row, len(all))
	for i, x := range all {
		out[i] = x.row
	}
	return out
}

// shares are the parts of a run by how they are fastened.
func shares(q row.Run) map[lay.Fasten]float64 {
	out := map[lay.Fasten]float64{}
	var all tape.Length
	for _, s := range q.Nailing {
		all += s.Along.Len()
	}
	if all <= 0 {
		return map[lay.Fasten]float64{lay.Nailer: 1}
	}
	for _, s := range q.Nailing {
		out[s.By] += float64(s.Along.Len()) / float64(all)
	}
	return out
}

// startsOff tells whether a run is nearer to where its rows begin than to where
// they end: fewer rows of its sense lie behind it than ahead.
func startsOff(runs []row.Run, i int) bool {
	q := runs[i]
	mid := (q.Left.Reach + q.Right.Reach) / 2
	behind, ahead := 0, 0
	for k, o := range runs {
		if k == i || o.Ahead != q.Ahead || o.Left.Reach > mid || o.Right.Reach < mid || o.Low == q.Low {
			continue
		}
		if (o.Low > q.Low) == (q.Ahead > 0) {
			ahead++
		} else {
			behind++
		}
	}
	return behind < ahead
}

// roomsOf are the rooms that a run lies in: a foot of it at least, or half of it.
func roomsOf(p plan.Plan, f row.Field, q row.Run) []string {
	var out []string
	most, best := tape.Length(0), ""
	for _, r := range p.Floor.Rooms {
		ring := make(plane.Ring, len(r.Corners))
		for i, c := range r.Corners {
			ring[i] = f.Layout.Dir.ToRow(c)
		}
		var in tape.Length
		y, step := q.Low+(q.High-q.Low)/2, max(tape.Inch, q.Length()/200)
		for x := q.Left.Reach + step/2; x < q.Right.Reach; x += step {
			if ring.Where(plane.P(x, y)) > 0 {
				in += step
			}
		}
		if in >= tape.Foot || 2*in >= q.Length() && in > 0 {
			out = append(out, r.Name)
		}
		if in > most {
			most, best = in, r.Name
		}
	}
	if len(out) == 0 && best != "" {
		out = []string{best}
	}
	return out
}
