package rack

import (
	"math"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/row"
	"strake/tape"
)

// stepped is what boards must cover where a closing row is stepped, and the
// edges where it is whether that covers it or not.
type stepped struct {
	need   plane.Region
	always []floor.AlignedEdge
	off    map[string]tape.Length // how far pieces stay off those of always, where what covers the gap does not reach
}

// steppedIn is what a field asks of its closing rows.
func steppedIn(f row.Field) stepped {
	b := stepped{need: f.Part.Need, off: map[string]tape.Length{}}
	for _, p := range f.Layout.Pins {
		for _, e := range f.Aligned.Edges {
			if p.Kind == lay.PinStepped && e.Beside && e.Name == p.Where {
				b.always = append(b.always, e)
			}
		}
	}
	return b
}

// straight makes a tapered long edge of one piece straight where the play of
// the gap takes up the taper over that piece's length: a closing row is then
// stepped, each piece ripped to one width, with the steps under the base.
func (b stepped) straight(r plane.Ring, low, high tape.Length) plane.Ring {
	r = b.levelled(r, low, 1)
	return b.levelled(r, high, -1)
}

// levelled straightens the edge towards the strip's line: up is 1 for the edge
// with the piece above it.
func (b stepped) levelled(r plane.Ring, line tape.Length, up tape.Length) plane.Ring {
	lo, hi := r.Box()
	at, count := taper(r, lo.X, hi.X, up)
	if count == 0 {
		return r
	}
	n := len(r)
	y := r[at].Y
	for k := range count + 1 {
		y = max(y*up, r[(at+k)%n].Y*up) * up
	}
	first, last := r[at], r[(at+count)%n]
	first.Y, last.Y = y, y
	out := plane.Ring{first, last}
	for k := count + 1; k < n; k++ {
		out = append(out, r[(at+k)%n])
	}
	switch {
	case b.covered(out, lo.X, hi.X, min(line, y), max(line, y)):
		return out
	case b.pinned(first, last, up):
		return out
	}
	return r
}

// taper is the chain of sides, not all level, that leads from one square end of
// a piece to the other on the side that up says: its first corner and how many
// sides it has; none where the piece has no such chain.
func taper(r plane.Ring, from, to, up tape.Length) (at, count int) {
	n := len(r)
	if up < 0 {
		from, to = to, from
	}
	for i, p := range r {
		if before := r[(i+n-1)%n]; p.X != from || before.X != from {
			continue
		}
		level, k := true, 0
		for k < n && (r[(i+k+1)%n].X-r[(i+k)%n].X)*up > 0 {
			level = level && r[(i+k+1)%n].Y == r[(i+k)%n].Y
			k++
		}
		if end := r[(i+k)%n]; k > 0 && !level && end.X == to && r[(i+k+1)%n].X == to {
			return i, k
		}
	}
	return 0, 0
}

// covered tells whether nothing that boards must cover lies between the line
// of the strip and the straightened edge.
func (b stepped) covered(r plane.Ring, from, to, low, high tape.Length) bool {
	if r.Tidy() == nil || r.Area2() <= 0 {
		return false
	}
	return len(b.need.Strip(low, high).RightOf(from).LeftOf(to)) == 0
}

// pinned tells whether the edge from p to q lies along a wall that is stepped
// whatever covers it, and keeps how far it stays off that.
func (b stepped) pinned(p, q plane.Pt, up tape.Length) bool {
	edge, wall := plane.Span{From: min(p.X, q.X), To: max(p.X, q.X)}, plane.Span{}
	off, name := tape.Length(0), ""
	near := false // it is this wall that the edge lies along, not another one abreast of it
	for _, e := range b.always {
		along := plane.Span{From: min(e.From.X, e.To.X), To: max(e.From.X, e.To.X)}
		beside := edge.Meet(along)
		if (e.To.X-e.From.X)*up < 0 || beside.Empty() {
			continue
		}
		if name == "" {
			wall, name = along, e.Name
		}
		wall = plane.Span{From: min(wall.From, along.From), To: max(wall.To, along.To)}
		one, other := offLine(e, plane.P(beside.From, p.Y)), offLine(e, plane.P(beside.To, p.Y))
		off = max(off, one, other)
		closest := min(one, other)
		near = near || closest >= e.Range.Least-wallSlack && closest <= e.Range.Greatest+wallSlack
	}
	if !near || edge.From < wall.From || edge.To > wall.To {
		return false
	}
	const grid = tape.SixtyFourth // as it is told
	b.off[name] = max(b.off[name], (off+grid-1)/grid*grid)
	return true
}

// wallSlack is what rounding and a bow may put an edge off the gaps of its wall.
const wallSlack = tape.Sixteenth

// offLine is how far p lies inside the line of an edge, a tick more at most.
func offLine(e floor.AlignedEdge, p plane.Pt) tape.Length {
	u, v := e.To.Sub(e.From), p.Sub(e.From)
	d := float64(float64(u.X)*float64(v.Y)) - float64(float64(u.Y)*float64(v.X))
	return tape.Length(math.Ceil(d/math.Hypot(float64(u.X), float64(u.Y)))) + 1
}

// wide names the edges that stepped pieces stay off farther than what covers
// the gap reaches.
func wide(steps []stepped) []lay.Exemption {
	var out []lay.Exemption
	for _, b := range steps {
		for _, e := range b.always {
			if off, ok := b.off[e.Name]; ok {
				delete(b.off, e.Name)
				p := lay.Pin{Kind: lay.PinStepped, Where: e.Name}
				out = append(out, lay.Exemption{Rule: "cover", Run: -1, Edge: e.Name, To: off, Pin: p.String(), Why: "pinned: " + p.String()})
			}
		}
	}
	return out
}
