package setout

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/row"
	"strake/tape"
)

// Stage is a room in the order of laying.
type Stage struct {
	Room        string
	First, Last int    // rows
	From, To    int    // places in the order of laying
	Leads       []Lead // to rooms that are begun later
	Pauses      []int  // rows after which the work can rest on a clean edge
}

// Lead is where rows of a room go on into another.
type Lead struct {
	Room        string
	First, Last int // rows that lie in both; 0 where fields meet at a seam
}

// Stages are the rooms in the order of laying, each with where it leads to and
// where it can pause: before the rows that go on into another room, and when it
// is done.
func Stages(p plan.Plan) []Stage {
	var out []Stage
	in := map[string]map[int]int{} // of each room: place in the order -> row
	for _, r := range p.Floor.Rooms {
		s := Stage{Room: r.Name}
		in[r.Name] = map[int]int{}
		for _, f := range p.AllFields() {
			if f.Kind != lay.Field {
				continue
			}
			here := placeIn(f, r)
			for _, q := range f.Layout.Runs {
				if here.holds(q) {
					s.add(q)
					in[r.Name][q.Order] = q.Row
				}
			}
		}
		if s.To > 0 {
			out = append(out, s)
		}
	}
	slices.SortStableFunc(out, func(a, b Stage) int { return a.From - b.From })
	for i := range out {
		out[i].leads(out[i+1:], in)
	}
	return out
}

func (s *Stage) add(q row.Run) {
	if s.To == 0 {
		s.First, s.Last, s.From, s.To = q.Row, q.Row, q.Order, q.Order
		return
	}
	s.First, s.Last = min(s.First, q.Row), max(s.Last, q.Row)
	s.From, s.To = min(s.From, q.Order), max(s.To, q.Order)
}

// leads finds the rooms after s that runs of it go on into.
func (s *Stage) leads(later []Stage, in map[string]map[int]int) {
	for _, t := range later {
		l := Lead{Room: t.Room}
		for place, n := range in[s.Room] {
			if in[t.Room][place] == n {
				if l.First == 0 {
					l.First, l.Last = n, n
				}
				l.First, l.Last = min(l.First, n), max(l.Last, n)
			}
		}
		if l.First > 0 {
			s.Leads = append(s.Leads, l)
			if l.First > s.First {
				s.Pauses = append(s.Pauses, l.First-1)
			}
		}
	}
	s.Pauses = append(s.Pauses, s.Last)
	slices.Sort(s.Pauses)
	s.Pauses = slices.Compact(s.Pauses)
}

// place is a room turned into the frame of a field, with the box round it.
type place struct {
	ring   plane.Ring
	lo, hi plane.Pt
}

func placeIn(f row.Field, r floor.RoomOutline) place {
	p := place{ring: make(plane.Ring, len(r.Corners))}
	for i, c := range r.Corners {
		p.ring[i] = f.Layout.Dir.ToRow(c)
	}
	p.lo, p.hi = p.ring.Box()
	return p
}

// holds tells whether a run of the field has boards in the room: a foot of it at
// least, or half of it. It is asked for each run in each room, so what lies outside
// the box is not looked at, and nothing once it is known.
func (p place) holds(q row.Run) bool {
	y := q.Low + (q.High-q.Low)/2
	if y < p.lo.Y || y > p.hi.Y {
		return false
	}
	var inside tape.Length
	step := max(tape.Inch, q.Length()/200)
	x := q.Left.Reach + step/2
	if x < p.lo.X {
		x += (p.lo.X - x) / step * step
	}
	for ; x < q.Right.Reach && x <= p.hi.X; x += step {
		if p.ring.Where(plane.P(x, y)) <= 0 {
			continue
		}
		if inside += step; inside >= tape.Foot || 2*inside >= q.Length() {
			return true
		}
	}
	return false
}
