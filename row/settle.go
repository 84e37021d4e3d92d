package row

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

func (s *split) names(group int) []string {
	var out []string
	for _, i := range s.groups.rooms[group] {
		out = append(out, s.Built.Rooms[i].Name)
	}
	return out
}

// fields lays out every group and header, numbered through.
func (s *split) fields(first int, from basis) []Field {
	var out []Field
	for _, g := range s.order {
		part := floor.PartOf(s.Built, s.Trim, s.Limits, floor.Part{Rooms: s.names(g), Seams: s.seams[g], Frames: s.around})
		w := s.Wishes
		w.Line = s.lines[g]
		if g != first {
			w.StartWall, w.EdgeOn, w.Pins, w.Middle = room.Wall{}, "", steppedPins(w.Pins), false
			from = basis{why: s.why[g]}
		}
		l, a := layRows(part, s.Built, s.dirs[g], from, s.widths(), s.Limits, w, s.Style)
		f := Field{Kind: lay.Field, Rooms: s.names(g), Name: roomsName(s.names(g)), Layout: l, Part: a}
		for _, h := range s.headers { // laid before what it leads to, after what it closes
			if s.leads(h, g) {
				out = append(out, s.headerField(h))
			}
		}
		out = append(out, f)
	}
	for _, f := range s.around {
		for _, g := range f.Sides {
			out = append(out, s.frameField(f, g))
		}
	}
	rows, order := 0, 0
	for i := range out {
		out[i].settle(s.turned(out[i].Part.Dir), &rows)
	}
	for _, first := range []bool{true, false} { // frames are fitted before the rows that come to them
		for i := range out {
			if (out[i].Kind == lay.Frame) == first {
				for k := range out[i].Layout.Runs {
					out[i].Layout.Runs[k].Order += order
				}
				order += len(out[i].Layout.Runs)
			}
		}
	}
	return out
}

// frames are those that the job asks for.
func (p Place) frames() []floor.Frame {
	var out []floor.Frame
	for _, s := range p.Built.Stays {
		if s.Frame == room.NoFrame {
			continue
		}
		if f, ok := floor.FrameOf(p.Built, s, p.Trim, p.Face, p.Limits); ok {
			out = append(out, f)
		}
	}
	return out
}

// frameField lays out one board of a frame: its groove to the rows, its tongue
// to what stays.
func (s *split) frameField(f floor.Frame, g floor.FrameSide) Field {
	k := slices.IndexFunc(s.Built.Stays, func(t room.Stay) bool { return t.Name == g.Stay })
	part := floor.SideOf(s.Built, s.Trim, s.Limits, s.Built.Stays[k], g)
	w := Wishes{Line: &g.Outer[0]}
	l, a := layRows(part, s.Built, plane.DirOf(g.Outer[0], g.Outer[1]), basis{why: f.Name()}, []tape.Length{s.Face}, s.Limits, w, s.Style)
	return Field{Kind: lay.Frame, Name: f.Name(), Layout: l, Part: a}
}

// leads tells whether group g is the later laid of the two on both sides of a
// header.
func (s *split) leads(h header, g int) bool {
	i, j, _ := sides(s.Built, h.door)
	a, b := s.groupOf(i), s.groupOf(j)
	return s.order[max(slices.Index(s.order, a), slices.Index(s.order, b))] == g
}

func roomsName(names []string) string {
	if len(names) == 1 {
		return "room " + names[0]
	}
	out := "rooms " + names[0]
	for _, n := range names[1:] {
		out += ", " + n
	}
	return out
}

func (s *split) headerField(h header) Field {
	f := floor.HeaderOf(s.Built, s.Trim, s.Limits, h.door, h.Header)
	w := Wishes{Line: &h.Near.Start}
	l, a := layRows(f, s.Built, h.dir, basis{why: "header in " + h.door.Said()}, []tape.Length{s.Face}, s.Limits, w, s.Style)
	return Field{Kind: lay.Header, Name: "header in " + h.door.Said(), Layout: l, Part: a}
}

// settle numbers the rows of a field on from those before, points its rips at
// the edges of the whole floor, and gives its areas outlines.
func (f *Field) settle(whole floor.Aligned, rows *int) {
	f.Aligned = whole
	l := &f.Layout
	for i := range l.Runs {
		l.Runs[i].Row += *rows
	}
	l.StartRow += *rows
	for i := range l.Closures {
		l.Closures[i].Row += *rows
		for k := range l.Closures[i].Arms {
			l.Closures[i].Arms[k] += *rows
		}
	}
	var rips []Rip
	l.AtFrames = nil
	for _, r := range l.Rips {
		if f.Kind == lay.Field && f.Part.Edges[r.Index].Kind == floor.Meeting {
			l.AtFrames = append(l.AtFrames, r)
		}
		r.Row += *rows
		if k := like(f.Part.Edges[r.Index], f.Aligned.Edges); k >= 0 && f.Part.Edges[r.Index].Kind != floor.Meeting {
			r.Index = k
			rips = append(rips, r)
		}
	}
	if f.Kind != lay.Field {
		rips = nil // a header or frame is as wide as it is
	}
	l.Rips = rips
	var odd []Odd
	for _, o := range l.Odd {
		if k := like(f.Part.Edges[o.Index], f.Aligned.Edges); k >= 0 {
			o.Index = k
			odd = append(odd, o)
		}
	}
	l.Odd = odd
	for i := range l.Areas {
		if l.Areas[i].Outline == nil {
			l.Areas[i].Outline = f.Part.Bare
		}
	}
	*rows += l.Rows
}

// like is the edge of the whole floor that an edge of a part is a stretch of,
// -1 when there is none.
func like(e floor.AlignedEdge, all []floor.AlignedEdge) int {
	best, at := tape.Longest, -1
	for i, f := range all {
		if f.Name != e.Name || f.Beside != e.Beside {
			continue
		}
		if d := (f.From.X + f.To.X - e.From.X - e.To.X).Abs() + (f.From.Y + f.To.Y - e.From.Y - e.To.Y).Abs(); d < best {
			best, at = d, i
		}
	}
	return at
}
