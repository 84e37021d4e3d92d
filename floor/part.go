package floor

import (
	"slices"

	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Meeting is an edge that the floor has only because its rows turn or begin
// anew there: boards of another field or of a header meet it, with no gap.
const Meeting Kind = "meeting"

// Seam is the line across a doorway where two fields of one floor meet, from
// the jamb that Jambs calls the start to the other one. What lies on the near
// side, towards Doorway.Wall, and what lies on the far side take both their
// corners from it, so that nothing is left between them.
type Seam struct {
	Doorway    string
	Start, End plane.XY
	Tongue     bool // the boards beyond offer a tongue; else a groove
}

// Name is what the edge at a seam is called.
func (s Seam) Name() string { return "rows beyond in " + room.DoorwaySaid(s.Doorway) }

// Part is a share of the floor that is laid as one field: some rooms, the
// doorways between them, and doorways to other rooms as far as a seam.
type Part struct {
	Rooms  []string // by name
	Seams  []Seam   // where it stops
	Frames []Frame  // boards that lie round what stays in it
}

// Header is the strip between two seams of one doorway.
type Header struct{ Near, Far Seam }

// PartOf is the floor of a part. A floor without rings could not be made.
func PartOf(b room.Built, trim Trim, lim limits.Limits, part Part) Floor {
	var p parts
	cover := trim.Base + trim.Shoe
	for _, r := range b.Rooms {
		if slices.Contains(part.Rooms, r.Name) {
			p.room(b, r, cover)
		}
	}
	for _, d := range b.Doorways {
		near, far := p.within(b, d.Wall, part), d.Beyond == room.BeyondRoom && p.within(b, d.OtherWall, part)
		k := slices.IndexFunc(part.Seams, func(s Seam) bool { return s.Doorway == d.Name })
		switch {
		case k >= 0:
			p.upTo(b, d, cover, part.Seams[k], near)
		case near && (far || d.Beyond != room.BeyondRoom):
			p.doorway(b, d, cover)
		}
	}
	for _, f := range part.Frames {
		p.frame(f)
	}
	return p.floor(b, cover, lim)
}

// frame takes away what a frame covers.
func (p *parts) frame(f Frame) {
	o := slices.Clone(f.Outer)
	for i := range o {
		j := (i + 1) % len(o)
		if f.walls[i] { // no film of floor is left at the wall
			out := o[j].Sub(o[i]).Unit().Left().Times(-overlap)
			o[i], o[j] = o[i].Add(out), o[j].Add(out)
		}
	}
	for i := range o {
		if j := (i + 1) % len(o); !f.walls[i] {
			p.line(f.Name(), Meeting, 0, o[j], o[i])
		}
	}
	p.less = append(p.less, o)
}

// HeaderOf is the floor of a header across a doorway: its near seam lies on
// either side of the far one.
func HeaderOf(b room.Built, trim Trim, lim limits.Limits, d room.Doorway, h Header) Floor {
	var p parts
	jamb, cover := jambKind(d), trim.Base+trim.Shoe
	a, z := h.Near, h.Far
	if a.End.Sub(a.Start).Cross(z.Start.Sub(a.Start)) > 0 { // the rows come from the far room
		a, z = z, a
	}
	p.add = append(p.add, outline{a.End, a.Start, z.Start, z.End})
	p.line("jamb of "+d.Said(), jamb, cover, a.Start, z.Start)
	p.line("jamb of "+d.Said(), jamb, cover, z.End, a.End)
	p.line(a.Name(), Meeting, 0, a.End, a.Start)
	p.line(z.Name(), Meeting, 0, z.Start, z.End)
	return p.floor(b, cover, lim)
}

func (p *parts) within(b room.Built, w room.Wall, part Part) bool {
	i, _, ok := b.FindWall(w)
	return ok && slices.Contains(part.Rooms, b.Rooms[i].Name)
}

func jambKind(d room.Doorway) Kind {
	if d.Undercut {
		return Jamb
	}
	return Wall
}

// upTo adds the half of a doorway on one side of a seam.
func (p *parts) upTo(b room.Built, d room.Doorway, cover tape.Length, s Seam, near bool) {
	from, to, ok := Jambs(b, d.Wall, d.From, d.At, d.Width)
	farTo, farFrom, ok2 := Jambs(b, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width)
	if !ok || !ok2 {
		return
	}
	name, jamb := "jamb of "+d.Said(), jambKind(d)
	into := func(p, q plane.XY, by float64) plane.XY { return p.Add(p.Sub(q).Unit().Times(by)) }
	if near {
		by := overlap + standsIn(b, d.Wall)
		p.add = append(p.add, outline{into(to, farTo, by), into(from, farFrom, by), s.Start, s.End})
		p.line(name, jamb, cover, from, s.Start)
		p.line(name, jamb, cover, s.End, to)
		p.line(s.Name(), Meeting, 0, s.Start, s.End)
	} else {
		by := overlap + standsIn(b, d.OtherWall)
		p.add = append(p.add, outline{into(farFrom, from, by), into(farTo, to, by), s.End, s.Start})
		p.line(name, jamb, cover, s.Start, farFrom)
		p.line(name, jamb, cover, farTo, s.End)
		p.line(s.Name(), Meeting, 0, s.End, s.Start)
	}
	if s.Tongue {
		p.sources[len(p.sources)-1].tongue = true
	}
}

// floor puts the outlines gathered so far together, less what stays.
func (p *parts) floor(b room.Built, cover tape.Length, lim limits.Limits) Floor {
	for _, s := range b.Stays {
		p.stay(b, s, cover)
	}
	s, err := join(p.add, p.less)
	if err != nil || s.area() < speck {
		return Floor{}
	}
	f := Floor{Rooms: p.rooms, Stays: p.stays}
	for _, o := range s {
		f.ring(*p, o, lim)
	}
	return f
}
