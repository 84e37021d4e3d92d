package paper

import (
	"math"

	"strake/fasten"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/tape"
	"strake/words"
)

// Fastened is a row with what nails it down.
type Fastened struct {
	Row   Row
	Total fasten.Total
	Plain bool // with the nailer all along
}

// FastenedRows are the rows that are nailed, in the order of laying; none where no
// schedule speaks of such boards.
func FastenedRows(p plan.Plan) []Fastened {
	_, u, ok := p.Nailing().Use()
	if !ok {
		return nil
	}
	of := map[int]fasten.Total{} // by the place in the order of laying
	plain := map[int]bool{}
	places := perRow(p, fasten.Places(p.Lay, u))
	for _, r := range p.Lay.Runs {
		if len(places[r.ID]) > 0 {
			of[r.Order] = fasten.Sum(places[r.ID])
			plain[r.Order] = len(r.Nailing) == 1 && r.Nailing[0].By == lay.Nailer
		}
	}
	var out []Fastened
	for _, r := range Rows(p) {
		if t, ok := of[r.Order]; ok {
			out = append(out, Fastened{r, t, plain[r.Order] && t.Hand+t.Face == 0})
		}
	}
	return out
}

// KeptOff is where a row is kept free of fasteners: so far from its left end.
type KeptOff struct {
	Row      string
	From, To tape.Length
}

// KeepOff are the rows over a part that is kept free, its margin counted, in the order of
// laying.
func KeepOff(p plan.Plan, x fasten.Free) []KeptOff {
	var out []KeptOff
	grown := x.Grown()
	for _, r := range p.Lay.Runs {
		d := p.Lay.Zones[r.Zone].Dir
		ring := make([]plane.Pt, len(grown))
		for i, c := range grown {
			ring[i] = d.ToRow(c)
		}
		lo, hi := r.Outline.Box()
		a, b := reachIn(ring, lo.Y, hi.Y)
		if a, b = max(a, lo.X), min(b, hi.X); a < b {
			out = append(out, KeptOff{words.Row(r), a - lo.X, b - lo.X})
		}
	}
	return out
}

// reachIn is how far an outline reaches along x between two levels; the least after the
// greatest where it does not come there.
func reachIn(ring []plane.Pt, low, high tape.Length) (from, to tape.Length) {
	from, to = math.MaxInt64, math.MinInt64
	take := func(x tape.Length) { from, to = min(from, x), max(to, x) }
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		if p.Y >= low && p.Y <= high {
			take(p.X)
		}
		for _, y := range []tape.Length{low, high} {
			if (p.Y < y) != (q.Y < y) {
				take(p.X + tape.Length(math.Round(float64(q.X-p.X)*(float64(y-p.Y)/float64(q.Y-p.Y)))))
			}
		}
	}
	return from, to
}
