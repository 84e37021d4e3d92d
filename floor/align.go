package floor

import (
	"math"
	"slices"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// In turns the floor into the frame of rows that run in direction d. Here, and
// only here, each corner is rounded to a tick.
func (f Floor) In(d plane.Dir) Aligned {
	a := Aligned{Dir: d}
	least := make([]float64, len(f.Edges))
	greatest := make([]float64, len(f.Edges))
	for i, e := range f.Edges {
		from, to := level(d.ToRow(e.From), d.ToRow(e.To))
		run := to.Sub(from)
		beside := run.Y.Abs() < run.X.Abs()
		r, old := e.Ends, e.Old
		if beside {
			r, old = e.Sides, ""
		}
		a.Edges = append(a.Edges, AlignedEdge{Edge: i, Name: e.Name, Kind: e.Kind, From: from, To: to, Beside: beside, Range: r, InPlace: e.InPlace, Old: old})
		least[i], greatest[i] = r.Least.Millimetres(), r.Greatest.Millimetres()
	}
	f.group(&a)
	a.Reach, a.ReachEdge = f.region(d, least)
	a.Need, a.NeedEdge = f.region(d, greatest)
	for _, r := range f.Rings {
		a.Bare = append(a.Bare, apart(alignRing(d, r.Corners)))
	}
	return a
}

// group gives edges of one wall that follow each other beside the rows the
// same group: a bowed wall closes the rows as one edge.
func (f Floor) group(a *Aligned) {
	next := 0
	for _, r := range f.Rings {
		first := next
		for k, id := range r.Edges {
			a.Edges[id].Group = next
			if !f.oneWall(a, id, r.Edges[(k+1)%len(r.Edges)]) {
				next++
			}
		}
		if n := len(r.Edges); n > 1 && f.oneWall(a, r.Edges[n-1], r.Edges[0]) { // the ring starts in mid-wall
			for _, id := range r.Edges {
				if a.Edges[id].Group == next {
					a.Edges[id].Group = first
				}
			}
		}
		next++
	}
}

func (f Floor) oneWall(a *Aligned, i, j int) bool {
	e, g := a.Edges[i], a.Edges[j]
	return i != j && f.Edges[i].Wall != (room.Wall{}) && f.Edges[i].Wall == f.Edges[j].Wall &&
		e.Beside && g.Beside && (e.To.X > e.From.X) == (g.To.X > g.From.X)
}

// level takes out a slant of a tick or two that rounding alone can make.
func level(a, b plane.Pt) (plane.Pt, plane.Pt) {
	if dy := b.Y - a.Y; dy != 0 && dy.Abs() <= 2 && (b.X-a.X).Abs() > 1000 {
		b.Y = a.Y
	}
	if dx := b.X - a.X; dx != 0 && dx.Abs() <= 2 && (b.Y-a.Y).Abs() > 1000 {
		b.X = a.X
	}
	return a, b
}

func alignRing(d plane.Dir, o []plane.XY) plane.Ring {
	out := make(plane.Ring, len(o))
	for i, p := range o {
		out[i] = d.ToRow(p)
	}
	n := len(out)
	for i := 0; i+1 < n; i++ {
		out[i], out[i+1] = level(out[i], out[i+1])
	}
	if n > 2 { // the closing side gives way at its far end
		_, out[n-1] = level(out[0], out[n-1])
	}
	return out
}

// apart is a ring without corners that rounding put on the one before.
func apart(r plane.Ring) plane.Ring {
	r = slices.Compact(r)
	for len(r) > 1 && r[0] == r[len(r)-1] {
		r = r[:len(r)-1]
	}
	return r
}

// region is the inset floor in the row frame, and what each of its sides comes
// from. A floor that vanishes at these gaps is empty.
func (f Floor) region(d plane.Dir, gap []float64) (plane.Region, [][]int) {
	s, err := f.inset(gap)
	if err != nil {
		return nil, nil
	}
	var out plane.Region
	var edges [][]int
	for _, o := range s {
		o = f.clean(o, gap)
		if len(o) < 3 {
			continue
		}
		r := alignRing(d, o)
		if r.Tidy() == nil {
			continue
		}
		ids := make([]int, len(o))
		for i := range o {
			ids[i] = f.comesFrom(o[i], o[(i+1)%len(o)], gap)
		}
		out, edges = append(out, r), append(edges, ids)
	}
	return out, edges
}

// clean drops corners that the cutting left on straight sides, and sides
// shorter than two micrometres.
func (f Floor) clean(o outline, gap []float64) outline {
	for changed := true; changed && len(o) > 3; {
		changed = false
		for i := range o {
			n := len(o)
			a, b, c := o[(i+n-1)%n], o[i], o[(i+1)%n]
			short := b.Sub(a).Len() < straight || c.Sub(a).Len() < straight // a spike comes back on itself
			if !short && (offLine(a, c, b) > straight || f.comesFrom(a, b, gap) != f.comesFrom(b, c, gap)) {
				continue
			}
			o = append(o[:i:i], o[i+1:]...)
			changed = true
			break
		}
	}
	return o
}

// comesFrom is the edge whose line, moved in by its gap, the side a to b lies
// on; -1 when none does.
func (f Floor) comesFrom(a, b plane.XY, gap []float64) int {
	best, at := 0.05, -1
	far := math.Inf(1)
	for i, e := range f.Edges {
		d := e.To.Sub(e.From)
		if d.Len() == 0 || d.Dot(b.Sub(a)) <= 0 {
			continue
		}
		u := d.Unit()
		off := math.Max(math.Abs(u.Cross(a.Sub(e.From))-gap[i]), math.Abs(u.Cross(b.Sub(e.From))-gap[i]))
		t := u.Dot(a.Add(b).Times(0.5).Sub(e.From))
		out := math.Max(0, math.Max(-t, t-d.Len()))
		if off < 0.05 && (off < best-0.01 || off <= best+0.01 && out < far) {
			best, far, at = off, out, i
		}
	}
	return at
}

// Perimeter is the length of all lines of a region, rounded up.
func Perimeter(g plane.Region) tape.Length {
	sum := 0.0
	for _, r := range g {
		for i, a := range r {
			b := r[(i+1)%len(r)]
			sum += math.Hypot(float64(b.X-a.X), float64(b.Y-a.Y))
		}
	}
	return tape.Length(math.Ceil(sum))
}
