package floor

import (
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// FrameSide is the place of one board of a frame round something that stays.
type FrameSide struct {
	Stay  string
	Outer [2]plane.XY  // its edge to the rows, in the direction that has what stays on its left
	Ring  []plane.XY   // all of its place, counter-clockwise from Outer
	Wall  [2]room.Wall // the wall that its start and its end come to; empty: another board of the frame
}

// Frame is the boards round something that stays.
type Frame struct {
	Stay  string
	Outer outline // all that it covers and what stays inside it
	Sides []FrameSide
	walls []bool // Outer side i lies along a wall
}

// Name is what the edge of the rows at a frame is called.
func (f Frame) Name() string { return "frame of " + f.Stay }

// FrameOf is the frame of boards of this width round something that stays:
// round all of it, or round the three sides that stand off the wall it is set
// out from. ok is false where it has no sides to frame.
func FrameOf(b room.Built, s room.Stay, trim Trim, width tape.Length, lim limits.Limits) (Frame, bool) {
	o, wall, ok := framed(b, s)
	if !ok {
		return Frame{}, false
	}
	cover := trim.Base + trim.Shoe
	if s.Cover > 0 {
		cover = s.Cover
	}
	_, side, _ := gaps(stayKind(s), cover, lim)
	w := (width + side.Least).Millimetres()
	f := Frame{Stay: s.Name}
	n := len(o)
	at := func(i int) plane.XY { return outerCorner(o, i, w, wall) }
	for i := range n {
		f.Outer = append(f.Outer, at(i))
		f.walls = append(f.walls, wall && i == 0)
	}
	for i := range n {
		if wall && i == 0 {
			continue // it stands against the wall
		}
		j := (i + 1) % n
		g := FrameSide{Stay: s.Name, Outer: [2]plane.XY{at(i), at(j)}, Ring: []plane.XY{at(i), at(j), o[j], o[i]}}
		_, ccw, _ := b.FindWall(s.Wall)
		if wall && i == 1 {
			g.Wall[0] = ccw
		}
		if wall && j == 0 {
			g.Wall[1] = ccw
		}
		if s.Frame == room.Butted && n == 4 { // other shapes have no pairs of sides
			g.butt(i%2 == 0, width.Millimetres(), side.Least.Millimetres())
		}
		f.Sides = append(f.Sides, g)
	}
	return f, len(f.Sides) > 0
}

// framed is the outline of what stays, counter-clockwise; wall tells that its
// first side lies on the wall it is set out from.
func framed(b room.Built, s room.Stay) (o outline, wall, ok bool) {
	o, _ = stayOutline(b, s)
	if len(o) < 3 {
		return nil, false, false
	}
	if len(s.Corners) > 0 || s.Off > 0 {
		return o, false, true
	}
	start, end, ok := Jambs(b, s.Wall, s.From, s.At, s.Width)
	if !ok {
		return nil, false, false
	}
	return outline{start, end, o[2], o[3]}, true, true
}

// outerCorner is where the outer edges of the sides before and after corner i
// meet; along the wall, straight out from the corner.
func outerCorner(o outline, i int, w float64, wall bool) plane.XY {
	n := len(o)
	before, after := o[i].Sub(o[(i+n-1)%n]).Unit(), o[(i+1)%n].Sub(o[i]).Unit()
	switch {
	case wall && i == 0:
		return o[i].Sub(after.Times(w / sin(before, after)))
	case wall && i == 1:
		return o[i].Add(before.Times(w / sin(before, after)))
	}
	// The sides lie w to the right of the outline.
	p, q := o[i].Sub(before.Left().Times(w)), o[i].Sub(after.Left().Times(w))
	t := q.Sub(p).Cross(after) / before.Cross(after)
	return p.Add(before.Times(t))
}

func sin(u, v plane.XY) float64 { return max(0.2, u.Cross(v)) }

// butt gives a side of a four-sided frame square ends. The through ones, such
// as the front of a hearth, run from outer edge to outer edge; the others end at
// their backs.
func (g *FrameSide) butt(through bool, width, gap float64) {
	u := g.Outer[1].Sub(g.Outer[0]).Unit()
	in := u.Left()
	end, start := g.Ring[2], g.Ring[3] // corners of what stays
	on := func(from, p plane.XY) plane.XY { return from.Add(u.Times(u.Dot(p.Sub(from)))) }
	if through {
		back := g.Outer[0].Add(in.Times(width))
		g.Ring = []plane.XY{g.Outer[0], g.Outer[1], on(back, g.Outer[1]), on(back, end), end, start, on(back, start), back}
		return
	}
	if g.Wall[0] == (room.Wall{}) {
		start = start.Sub(u.Times(gap))
		g.Outer[0] = on(g.Outer[0], start)
	}
	if g.Wall[1] == (room.Wall{}) {
		end = end.Add(u.Times(gap))
		g.Outer[1] = on(g.Outer[1], end)
	}
	g.Ring = []plane.XY{g.Outer[0], g.Outer[1], end, start}
}

// SideOf is the floor of one board of a frame.
func SideOf(b room.Built, trim Trim, lim limits.Limits, s room.Stay, g FrameSide) Floor {
	var p parts
	cover := trim.Base + trim.Shoe
	p.add = append(p.add, g.Ring)
	n := len(g.Ring)
	name := Frame{Stay: g.Stay}.Name()
	for i, c := range g.Ring { // what stays, named after these, has the last word
		p.line(name, Meeting, 0, c, g.Ring[(i+1)%n])
		p.sources[len(p.sources)-1].tongue = i > 0 // its ends are always cut
	}
	ends := [2][2]plane.XY{{g.Ring[n-1], g.Ring[0]}, {g.Ring[1], g.Ring[2]}}
	for k, e := range ends {
		if g.Wall[k] != (room.Wall{}) {
			p.line("wall "+g.Wall[k].String(), Wall, cover, e[0], e[1])
			p.sources[len(p.sources)-1].wall = g.Wall[k]
		}
	}
	return p.floor(b, cover, lim)
}
