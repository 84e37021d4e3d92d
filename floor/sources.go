package floor

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// source is a line that edges of the floor may lie on, with what it meets.
type source struct {
	name     string
	kind     Kind
	from, to plane.XY
	cover    tape.Length // what covers a gap here
	wall     room.Wall
	framed   bool // boards lie along it all round: no row ends at it
	tongue   bool // Meeting: the boards beyond offer a tongue
	stay     string
	side     int        // of stay
	old      room.Offer // of an old floor beyond, to row ends
	face     bool       // an opening that the floor ends in at the face of its wall
}

// overlap is how far a doorway reaches into its rooms before the union: rooms
// that only touch do not always join once they are turned.
const overlap = 1.0 // mm

// parts are the outlines to add and to take away, and the lines of their edges.
type parts struct {
	add, less []outline
	sources   []source
	rooms     []RoomOutline
	stays     []StayOutline
}

func (p *parts) line(name string, k Kind, cover tape.Length, a, b plane.XY) {
	p.sources = append(p.sources, source{name: name, kind: k, from: a, to: b, cover: cover})
}

// gather makes the outlines of rooms, doorways and what stays.
func gather(b room.Built, trim Trim) parts {
	var p parts
	cover := trim.Base + trim.Shoe
	for _, r := range b.Rooms {
		p.room(b, r, cover)
	}
	for _, d := range b.Doorways {
		p.doorway(b, d, cover)
	}
	for _, s := range b.Stays {
		p.stay(b, s, cover)
	}
	return p
}

func (p *parts) room(b room.Built, r room.Room, cover tape.Length) {
	points, walls := b.Outline(r)
	for i, w := range walls {
		p.line("wall "+w.String(), Wall, cover, points[i], points[(i+1)%len(points)])
		p.sources[len(p.sources)-1].wall = w
	}
	p.add = append(p.add, points)
	ring := r.Ring()
	ro := RoomOutline{Name: r.Name, Names: ring}
	for _, c := range ring {
		ro.Corners = append(ro.Corners, b.At[c])
	}
	p.rooms = append(p.rooms, ro)
}

// Jambs are the two jambs of a doorway on the line of its wall, in the
// counter-clockwise order of that wall's room; ok is false when no room has
// the wall.
func Jambs(b room.Built, w room.Wall, from string, at, width tape.Length) (start, end plane.XY, ok bool) {
	_, ccw, ok := b.FindWall(w)
	if !ok {
		return
	}
	a, c := b.At[ccw[0]], b.At[ccw[1]]
	if c == a {
		return start, end, false
	}
	u := c.Sub(a).Unit()
	d := at.Millimetres()
	if from == ccw[1] {
		d = c.Sub(a).Len() - d - width.Millimetres()
	}
	return a.Add(u.Times(d)), a.Add(u.Times(d + width.Millimetres())), true
}

func (p *parts) doorway(b room.Built, d room.Doorway, cover tape.Length) {
	s, e, ok := Jambs(b, d.Wall, d.From, d.At, d.Width)
	if !ok || s == e {
		return
	}
	jamb := Wall
	if d.Undercut {
		jamb = Jamb
	}
	farE, farS, through := plane.XY{}, plane.XY{}, false
	if d.Beyond == room.BeyondRoom {
		farE, farS, through = Jambs(b, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width)
	}
	if !through {
		out := e.Sub(s).Unit().Left().Times(-d.Ends.Millimetres()) // the wall lies to the right
		farS, farE = s.Add(out), e.Add(out)
		p.line(d.Said(), beyondKind(d.Beyond), 0, farS, farE)
		if d.Mates() {
			p.sources[len(p.sources)-1].old = d.Old.Offers
		}
	} // else the other side's start is this side's end
	if farS == s || farE == e {
		p.sources[len(p.sources)-1].face = true
		return
	}
	p.line("jamb of "+d.Said(), jamb, cover, s, farS)
	p.line("jamb of "+d.Said(), jamb, cover, farE, e)
	near := overlap + standsIn(b, d.Wall)
	in := func(from, to plane.XY, far float64) plane.XY { return from.Add(from.Sub(to).Unit().Times(far)) }
	o := outline{in(e, farE, near), in(s, farS, near), farS, farE}
	if through {
		far := overlap + standsIn(b, d.OtherWall)
		o[2], o[3] = in(farS, s, far), in(farE, e, far)
	}
	p.add = append(p.add, o)
}

// standsIn is how far a bowed wall stands into its room anywhere, mm: a
// doorway in it, set out on the straight line, reaches that much farther.
func standsIn(b room.Built, w room.Wall) float64 {
	side := b.Side(w)
	most := 0.0
	for _, p := range side {
		u := side[len(side)-1].Sub(side[0]).Unit()
		most = math.Max(most, u.Cross(p.Sub(side[0])))
	}
	return most
}

func (p *parts) stay(b room.Built, s room.Stay, cover tape.Length) {
	o, turned := stayOutline(b, s)
	if len(o) < 3 {
		return
	}
	if s.Cover > 0 {
		cover = s.Cover
	}
	for i, a := range o {
		p.line(s.Name, stayKind(s), cover, o[(i+1)%len(o)], a) // the floor is on the other side
		last := &p.sources[len(p.sources)-1]
		last.stay, last.side, last.framed = s.Name, i, s.Frame != room.NoFrame
		if turned {
			last.side = (2*len(o) - 2 - i) % len(o)
		}
	}
	p.less = append(p.less, o)
	p.stays = append(p.stays, StayOutline{Name: s.Name, Kind: string(s.Kind), Corners: o})
}

// stayOutline is what stays, counter-clockwise: its corners, or a rectangle
// set out from a wall. Against the wall it is drawn 1 mm into it, so that no
// film of floor is left between. turned tells whether its corners are named
// clockwise, so that the outline runs the other way.
func stayOutline(b room.Built, s room.Stay) (o outline, turned bool) {
	if len(s.Corners) > 0 {
		for _, c := range s.Corners {
			o = append(o, b.At[c])
		}
	} else {
		start, end, ok := Jambs(b, s.Wall, s.From, s.At, s.Width)
		if !ok || start == end {
			return nil, false
		}
		in := end.Sub(start).Unit().Left()
		near := s.Off.Millimetres()
		if s.Off == 0 {
			near = -overlap
		}
		far := s.Off.Millimetres() + s.Depth.Millimetres()
		o = outline{start.Add(in.Times(near)), end.Add(in.Times(near)), end.Add(in.Times(far)), start.Add(in.Times(far))}
	}
	if o.area() < 0 {
		slices.Reverse(o)
		return o, true
	}
	return o, false
}

// onLine tells how well the step a to b lies on the source line: the greatest
// distance of its ends from it, infinite when it runs the other way or beside.
func (s source) onLine(a, b plane.XY) float64 {
	d := s.to.Sub(s.from)
	l := d.Len()
	if l == 0 || d.Dot(b.Sub(a)) <= 0 {
		return math.Inf(1)
	}
	u := d.Unit()
	mid := a.Add(b).Times(0.5).Sub(s.from)
	if t := mid.Dot(u); t < -overlap || t > l+overlap {
		return math.Inf(1)
	}
	return math.Max(math.Abs(u.Cross(a.Sub(s.from))), math.Abs(u.Cross(b.Sub(s.from))))
}

// faces are the places between a and b where an opening begins or ends that the
// floor ends in at the face of its wall, in their order; a and b themselves are
// first and last.
func (p parts) faces(a, b plane.XY) []plane.XY {
	out := []plane.XY{a, b}
	u := b.Sub(a).Unit()
	for _, s := range p.sources {
		if !s.face || s.to.Sub(s.from).Dot(u) <= 0 {
			continue
		}
		for _, c := range []plane.XY{s.from, s.to} {
			if t := u.Dot(c.Sub(a)); t > overlap && t < b.Sub(a).Len()-overlap && math.Abs(u.Cross(c.Sub(a))) < 0.05 {
				out = append(out, a.Add(u.Times(t)))
			}
		}
	}
	slices.SortStableFunc(out, func(c, d plane.XY) int { return cmp.Compare(u.Dot(c), u.Dot(d)) })
	return out
}

// meet is the edge of the floor from a to b: the source it lies on says what
// it meets. Later sources win ties: a hearth's face in a wall is the hearth's.
func (p parts) meet(a, b plane.XY, lim limits.Limits) Edge {
	best, at := math.Inf(1), -1
	for i, s := range p.sources {
		if d := s.onLine(a, b); d <= best+1e-6 && d < 0.05 {
			best, at = math.Min(best, d), i
		}
	}
	e := Edge{From: a, To: b, Name: fmt.Sprintf("edge at %.0f, %.0f mm", a.X, a.Y), Kind: Wall}
	var cover tape.Length
	if at >= 0 {
		s := p.sources[at]
		e.Name, e.Kind, cover = s.name, s.kind, s.cover
		e.Wall, e.Stay, e.Side = s.wall, s.stay, s.side
	}
	e.Ends, e.Sides, e.InPlace = gaps(e.Kind, cover, lim)
	if at >= 0 && p.sources[at].framed {
		e.Ends, e.InPlace = e.Sides, false
	}
	if at >= 0 && p.sources[at].old != "" { // ends go into its edge, and are cut to it one by one
		e.Old, e.Ends = p.sources[at].old, Range{}
	}
	if at >= 0 && p.sources[at].tongue { // a factory tongue does not go into a tongue
		e.InPlace = true
	}
	return e
}
