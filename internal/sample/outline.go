package sample

import (
	"math"

	"strake/floor"
	"strake/plane"
	"strake/tape"
)

// side is one edge of a floor's outline, from its corner to the next.
type side struct {
	from    plane.XY // mm
	name    string
	kind    floor.Kind
	ends    floor.Range
	sides   floor.Range
	inPlace bool
}

// align makes the floor and its form in the row frame; rows run along x.
func align(outline []side) (floor.Floor, floor.Aligned) {
	dir := plane.Dir{X: 1}
	f := floor.Floor{Rings: []floor.Ring{{}}}
	a := floor.Aligned{Dir: dir}
	bare := plane.Ring{}
	for i, s := range outline {
		to := outline[(i+1)%len(outline)].from
		f.Rings[0].Corners = append(f.Rings[0].Corners, s.from)
		f.Rings[0].Edges = append(f.Rings[0].Edges, i)
		f.Edges = append(f.Edges, floor.Edge{Name: s.name, Kind: s.kind, Ends: s.ends, Sides: s.sides, InPlace: s.inPlace, From: s.from, To: to})
		a.Edges = append(a.Edges, alignedEdge(i, s, to, dir))
		bare = append(bare, dir.ToRow(s.from))
	}
	a.Bare = plane.Region{bare}
	a.Reach = plane.Region{inset(outline, a, func(r floor.Range) tape.Length { return r.Least })}
	a.Need = plane.Region{inset(outline, a, func(r floor.Range) tape.Length { return r.Greatest })}
	index := make([]int, len(outline))
	for i := range index {
		index[i] = i
	}
	a.ReachEdge, a.NeedEdge = [][]int{index}, [][]int{index}
	return f, a
}

func alignedEdge(i int, s side, to plane.XY, dir plane.Dir) floor.AlignedEdge {
	d := to.Sub(s.from)
	e := floor.AlignedEdge{Edge: i, Name: s.name, Kind: s.kind, From: dir.ToRow(s.from), To: dir.ToRow(to),
		Beside: math.Abs(d.X) > math.Abs(d.Y), InPlace: s.inPlace}
	e.Range = s.ends
	if e.Beside {
		e.Range = s.sides
	}
	return e
}

// inset moves every side in by its gap; a corner goes to where its two sides
// meet then.
func inset(outline []side, a floor.Aligned, gap func(floor.Range) tape.Length) plane.Ring {
	n := len(outline)
	var out plane.Ring
	for i := range outline {
		p, u := moved(outline, i, gap(a.Edges[i].Range))
		q, v := moved(outline, (i+n-1)%n, gap(a.Edges[(i+n-1)%n].Range))
		t := q.Sub(p).Cross(v) / u.Cross(v)
		out = append(out, a.Dir.ToRow(p.Add(u.Times(t))))
	}
	return out
}

// moved is a place on side i moved in by gap, and the side's direction.
func moved(outline []side, i int, gap tape.Length) (at, along plane.XY) {
	p := outline[i].from
	u := outline[(i+1)%len(outline)].from.Sub(p).Unit()
	return p.Add(u.Left().Times(gap.Millimetres())), u
}
