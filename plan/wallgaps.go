package plan

import (
	"math"

	"strake/floor"
	"strake/plane"
	"strake/tape"
	"strake/trim"
)

// wallGaps are the gaps at each wall, in the order of the floor's edges: as its
// boards leave them, or, where none are laid, the ranges that they may have.
// A wall that no board comes to is left out.
func (p Plan) wallGaps() []trim.Gap {
	var out []trim.Gap
	at := map[string]int{}
	add := func(e floor.Edge, least, greatest tape.Length, beside bool) {
		i, seen := at[e.Wall.String()]
		if !seen {
			i = len(out)
			at[e.Wall.String()] = i
			out = append(out, trim.Gap{Wall: e.Wall, Least: least, Greatest: greatest, Beside: beside, Cover: p.Job.Base + p.Job.Shoe})
		}
		g := &out[i]
		g.Least, g.Greatest, g.Beside = min(g.Least, least), max(g.Greatest, greatest), g.Beside || beside
	}
	laid := p.outlines()
	for _, e := range p.Floor.Edges {
		if e.Kind != floor.Wall || e.Wall[0] == "" {
			continue
		}
		if laid == nil {
			r, beside := p.rangeOf(e)
			add(e, r.Least, r.Greatest, beside)
			continue
		}
		if least, greatest, beside, ok := gapAt(e, laid); ok {
			add(e, least, greatest, beside)
		}
	}
	return out
}

// beside tells whether the rows of the first field lie along an edge.
func (p Plan) beside(e floor.Edge) bool {
	if len(p.Fields) == 0 {
		return false
	}
	u := e.To.Sub(e.From).Unit()
	d := plane.XY(p.Fields[0].Layout.Dir)
	return math.Abs(u.Dot(d)) >= math.Abs(u.Cross(d))
}

// rangeOf is the gap range of an edge by the rows of the first field.
func (p Plan) rangeOf(e floor.Edge) (floor.Range, bool) {
	if p.beside(e) {
		return e.Sides, true
	}
	return e.Ends, false
}

// outline is a piece on the floor plan, counter-clockwise, with the direction of
// its rows.
type outline struct {
	at, along []plane.XY // corners, and the direction from each to the next
	dir       plane.XY
	mid, half plane.XY // of the box round it
}

// slackMM is how much a box counts for more than it is, so that rounding decides
// nothing.
const slackMM = 1.0

// outlineOf is a piece from its corners.
func outlineOf(at []plane.XY, dir plane.XY) outline {
	o := outline{at: at, dir: dir}
	lo, hi := at[0], at[0]
	for i, a := range at {
		o.along = append(o.along, at[(i+1)%len(at)].Sub(a).Unit())
		lo, hi = plane.XY{X: min(lo.X, a.X), Y: min(lo.Y, a.Y)}, plane.XY{X: max(hi.X, a.X), Y: max(hi.Y, a.Y)}
	}
	o.mid, o.half = lo.Add(hi).Times(0.5), hi.Sub(lo).Times(0.5)
	return o
}

// span is how far an outline reaches in a direction from a place, at the most.
func (o *outline) span(from, dir plane.XY) (least, greatest float64) {
	at := dir.Dot(o.mid.Sub(from))
	by := math.Abs(dir.X)*o.half.X + math.Abs(dir.Y)*o.half.Y + slackMM
	return at - by, at + by
}

// outlines are those of all pieces, nil where none are laid.
func (p Plan) outlines() []outline {
	var out []outline
	dirs := map[int]plane.Dir{} // of runs, by their ID
	for _, r := range p.Lay.Runs {
		for _, z := range p.Lay.Zones {
			if z.ID == r.Zone {
				dirs[r.ID] = z.Dir
			}
		}
	}
	for _, x := range p.Lay.Pieces {
		d := dirs[x.Run]
		var at []plane.XY
		for _, c := range x.Outline {
			at = append(at, d.FromRow(c))
		}
		if len(at) > 0 {
			out = append(out, outlineOf(at, plane.XY(d)))
		}
	}
	return out
}

// gapAt is the least and the greatest distance from an edge of the floor to the
// sides of pieces that face it, and whether any of those lies along its rows. A
// side that another piece lies before does not count, nor what lies beyond the
// ends of the edge.
func gapAt(e floor.Edge, laid []outline) (least, greatest tape.Length, beside, ok bool) {
	u := e.To.Sub(e.From).Unit()
	long, in := e.To.Sub(e.From).Len(), u.Left()
	low, high := math.Inf(1), math.Inf(-1)
	far := max(e.Ends.Greatest, e.Sides.Greatest).Millimetres() + reachMM
	for i := range laid {
		o := &laid[i]
		if near, deep := o.span(e.From, in); near > far || deep < -reachMM {
			continue
		}
		if from, to := o.span(e.From, u); to < 0 || from > long {
			continue
		}
		for k, a := range o.at {
			b := o.at[(k+1)%len(o.at)]
			if a == b || o.along[k].Dot(u) < math.Sqrt2/2 {
				continue
			}
			a, b, some := within(a, b, e.From, u, long)
			da, db := in.Dot(a.Sub(e.From)), in.Dot(b.Sub(e.From))
			if !some || min(da, db) > far || max(da, db) < -reachMM || before(laid, i, a, b) {
				continue
			}
			ok = true
			low, high = min(low, da, db), max(high, da, db)
			d := b.Sub(a).Unit()
			beside = beside || math.Abs(d.Dot(o.dir)) >= math.Abs(d.Cross(o.dir))
		}
	}
	if !ok {
		return 0, 0, false, false
	}
	return micro(low), micro(high), beside, true
}

const (
	reachMM  = 30.0 // how much farther than its range a gap is looked for
	cornerMM = 1.0  // what is left out at each end of an edge
)

// micro is a distance in mm, rounded to a micrometre.
func micro(mm float64) tape.Length {
	return tape.Length(math.Round(mm*1000)) * tape.Micrometre
}

// within is the part of the step a to b that lies beside an edge from a place, of
// a direction and length; some is false where there is none.
func within(a, b, from, u plane.XY, long float64) (plane.XY, plane.XY, bool) {
	sa, sb := u.Dot(a.Sub(from)), u.Dot(b.Sub(from))
	lo, hi := max(sa, cornerMM), min(sb, long-cornerMM)
	if hi-lo < cornerMM {
		return a, b, false
	}
	step := b.Sub(a).Times(1 / (sb - sa))
	return a.Add(step.Times(lo - sa)), a.Add(step.Times(hi - sa)), true
}

// before tells whether another piece lies just outside the side a to b of piece i.
func before(laid []outline, i int, a, b plane.XY) bool {
	mid := a.Add(b).Times(0.5).Sub(b.Sub(a).Unit().Left().Times(2)) // 2 mm outside
	for k := range laid {
		if k != i && laid[k].holds(mid) {
			return true
		}
	}
	return false
}

// holds tells whether a place lies in an outline.
func (o *outline) holds(p plane.XY) bool {
	if math.Abs(p.X-o.mid.X) > o.half.X+slackMM || math.Abs(p.Y-o.mid.Y) > o.half.Y+slackMM {
		return false
	}
	in := false
	for i, a := range o.at {
		b := o.at[(i+1)%len(o.at)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}
