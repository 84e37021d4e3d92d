package row

import (
	"fmt"
	"maps"
	"math"
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Change is what the rows do at a doorway between two rooms of the floor.
type Change string

// The ways.
const (
	Through Change = ""       // rows go on
	Turn    Change = "turn"   // beyond it rows lie along the doorway; their first row meets the ends of these
	AHeader Change = "header" // a board across it parts two fields, each with rows of its own
)

// Field is a part of the floor whose rows share one direction, or a header.
type Field struct {
	Kind    lay.ZoneKind
	Rooms   []string
	Name    string // "rooms hall, study", "header in doorway study"; empty: all of the floor
	Layout  Layout
	Part    floor.Aligned // its own share of the floor: rows and racking start from it
	Aligned floor.Aligned // all of the floor in its frame; Layout.Rips and Odd point into it
}

// Place is where rows are laid out, and how.
type Place struct {
	Floor  floor.Floor
	Built  room.Built
	Trim   floor.Trim
	Pitch  tape.Length
	Face   tape.Length // a header is so wide
	Limits limits.Limits
	Wishes Wishes
	Style  tape.Style
}

// Fields lays out all rows: one field for the whole floor, or several where
// the wishes part it at doorways. The first is the one that gives the floor
// its direction. A change that cannot be made at a doorway is reported, and
// rows go on through it.
func Fields(p Place) []Field {
	d, from, fs := direction(p.Built, p.Wishes)
	return p.fields(d, from, fs)
}

// fields is Fields with the direction of the first one given.
func (p Place) fields(d plane.Dir, from basis, fs []finding.Finding) []Field {
	changes := maps.Clone(p.Wishes.Doorways)
	for {
		g := groupsOf(p.Built, changes)
		frames := p.frames()
		if len(g.rooms) < 2 && len(frames) == 0 {
			l, a := layRows(p.Floor, p.Built, d, from, p.Pitch, p.Limits, p.Wishes, p.Style)
			l.Findings = append(fs, l.Findings...)
			return []Field{{Kind: lay.Field, Layout: l, Part: a, Aligned: a}}
		}
		s := &split{Place: p, around: frames, changes: changes, groups: g, dirs: make([]plane.Dir, len(g.rooms)), lines: make([]*plane.XY, len(g.rooms)), why: make([]string, len(g.rooms))}
		first := g.of(p.Built, from.wall)
		s.dirs[first] = d
		if bad, f := s.spread(first); bad != "" {
			delete(changes, bad)
			fs = append(fs, f)
			continue
		}
		out := s.fields(first, from)
		out[0].Layout.Findings = append(fs, out[0].Layout.Findings...)
		return out
	}
}

// groups are the rooms of a floor that rows go through as one.
type groups struct{ rooms [][]int }

func groupsOf(b room.Built, changes map[string]Change) groups {
	of := make([]int, len(b.Rooms))
	for i := range of {
		of[i] = i
	}
	for _, d := range b.Doorways {
		i, j, ok := sides(b, d)
		if !ok || changes[d.Name] != Through {
			continue
		}
		was, now := of[j], of[i]
		for k := range of {
			if of[k] == was {
				of[k] = now
			}
		}
	}
	var g groups
	for i := range of {
		var one []int
		for k := range of {
			if of[k] == i {
				one = append(one, k)
			}
		}
		if len(one) > 0 {
			g.rooms = append(g.rooms, one)
		}
	}
	return g
}

// sides are the rooms on the two sides of a doorway inside the floor.
func sides(b room.Built, d room.Doorway) (near, far int, ok bool) {
	near, _, ok = b.FindWall(d.Wall)
	far, _, ok2 := b.FindWall(d.OtherWall)
	return near, far, ok && ok2 && d.Beyond == room.BeyondRoom
}

// of is the group with a wall; the first when none has it.
func (g groups) of(b room.Built, w room.Wall) int {
	i, _, ok := b.FindWall(w)
	return max(0, slices.IndexFunc(g.rooms, func(rs []int) bool { return ok && slices.Contains(rs, i) }))
}

// split is a floor being parted into fields.
type split struct {
	Place
	changes map[string]Change
	around  []floor.Frame
	groups  groups
	dirs    []plane.Dir
	lines   []*plane.XY // a place that a row line of the group must run through
	why     []string
	seams   [][]floor.Seam // of each group
	order   []int          // the groups as they are reached
	headers []header
}

type header struct {
	door room.Doorway
	floor.Header
	dir plane.Dir
}

// spread goes from group to group through the doorways where rows change, and
// settles how each begins. It stops at a doorway where that cannot be.
func (s *split) spread(first int) (bad string, f finding.Finding) {
	s.seams = make([][]floor.Seam, len(s.groups.rooms))
	s.order = []int{first}
	for k := 0; k < len(s.order); k++ {
		for _, d := range s.Built.Doorways {
			i, j, ok := sides(s.Built, d)
			if !ok || s.changes[d.Name] == Through || s.seamed(d) {
				continue
			}
			a, b, wall := s.groupOf(i), s.groupOf(j), d.OtherWall
			if b == s.order[k] {
				a, b, wall = b, a, d.Wall
			}
			if a != s.order[k] || a == b {
				continue
			}
			if f := s.join(d, a, b, wall); f.Rule != "" {
				return d.Name, f
			}
		}
	}
	return "", f
}

func (s *split) groupOf(roomIndex int) int {
	return slices.IndexFunc(s.groups.rooms, func(rs []int) bool { return slices.Contains(rs, roomIndex) })
}

func (s *split) seamed(d room.Doorway) bool {
	return slices.ContainsFunc(s.seams, func(ss []floor.Seam) bool {
		return slices.ContainsFunc(ss, func(m floor.Seam) bool { return m.Doorway == d.Name })
	})
}

// join parts group a from b at a doorway; b, whose wall this is, may have
// been begun already.
func (s *split) join(d room.Doorway, a, b int, wall room.Wall) finding.Finding {
	dir, _ := wallDir(s.Built, wall)
	in := s.depth(d, dir)
	begun := slices.Contains(s.order, b)
	along := math.Abs(plane.XY(s.dirs[a]).Dot(plane.XY(in.dir))) > math.Sqrt2/2 // rows of a lie along the doorway
	change := s.changes[d.Name]
	if begun { // a second way between two fields
		alongB := math.Abs(plane.XY(s.dirs[b]).Dot(plane.XY(in.dir))) > math.Sqrt2/2
		if along == alongB && (along || change != AHeader) || along != alongB && !s.lineThere(in, a, b, along) {
			return in.cannot("the fields on both sides are set by another doorway, and no row edge lies here", s.Style)
		}
	}
	switch {
	case in.high-in.low < 2*clearOf:
		return in.cannot("the wall there is only "+s.Style.Of(in.high-in.low)+" thick from side to side", s.Style)
	case change == AHeader && along:
		return in.cannot("rows lie along the doorway: a header would be one of them", s.Style)
	case change == AHeader && in.high-in.low < s.Face:
		return in.cannot("a header is "+s.Style.Of(s.Face)+" wide, and the wall only "+s.Style.Of(in.high-in.low)+" thick", s.Style)
	case begun && change == AHeader:
		s.header(in, a, b)
		return finding.Finding{}
	case begun:
		return finding.Finding{}
	}
	s.order = append(s.order, b)
	switch {
	case change == AHeader:
		s.dirs[b], s.why[b] = s.dirs[a], fmt.Sprintf("rows as before, beyond a header in doorway %s", d.Name)
		s.header(in, a, b)
	case along:
		s.why[b] = fmt.Sprintf("rows turn in doorway %s and run out of it", d.Name)
		return s.runOut(in, a, b)
	default:
		s.dirs[b], s.why[b] = in.dir, fmt.Sprintf("rows turn in doorway %s, along wall %s", d.Name, wall)
		s.turn(in, a, b)
	}
	return finding.Finding{}
}

// lineThere puts the seam of a second doorway on a row line that one of the
// fields has in its depth.
func (s *split) lineThere(in depth, a, b int, along bool) bool {
	lined := b
	if along {
		lined = a
	}
	if s.lines[lined] == nil {
		return false
	}
	in = s.depth(in.door, same(s.dirs[lined], in.dir))
	y, ok := in.lineNear(in.dir.ToRow(*s.lines[lined]).Y, s.Pitch)
	if ok && s.changes[in.door.Name] == Turn {
		s.meet(in.seam(y), a, b)
	}
	return ok
}

func (s *split) meet(m floor.Seam, a, b int) {
	s.seams[a], s.seams[b] = append(s.seams[a], m), append(s.seams[b], m)
}

// cannot says why the rows cannot change at a doorway.
func (d depth) cannot(why string, style tape.Style) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: "rows at a doorway", Where: "doorway " + d.door.Name, Measured: why,
		Do: "Rows go on through it. Let the rows change at another doorway, or give this one another way."}
}

// depth is how a doorway lies in the frame of rows along it: the jambs' ends,
// from the far face (low) to the face of the wall it was entered by (high).
type depth struct {
	door             room.Doorway
	s, e, farS, farE plane.XY
	dir              plane.Dir
	low, high        tape.Length
}

func (s *split) depth(d room.Doorway, dir plane.Dir) depth {
	out := depth{door: d, dir: dir}
	out.s, out.e, _ = floor.Jambs(s.Built, d.Wall, d.From, d.At, d.Width)
	out.farE, out.farS, _ = floor.Jambs(s.Built, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width)
	y := func(p plane.XY) tape.Length { return out.dir.ToRow(p).Y }
	near, far := [2]tape.Length{y(out.s), y(out.e)}, [2]tape.Length{y(out.farS), y(out.farE)}
	if max(near[0], near[1]) > max(far[0], far[1]) {
		near, far = far, near
	}
	out.low, out.high = max(near[0], near[1]), min(far[0], far[1])
	return out
}

// seam is the line across the doorway at height y of the frame.
func (d depth) seam(y tape.Length) floor.Seam {
	on := func(p, q plane.XY) plane.XY {
		a, b := d.dir.ToRow(p).Y, d.dir.ToRow(q).Y
		if a == b {
			return p
		}
		return p.Add(q.Sub(p).Times(float64(y-a) / float64(b-a)))
	}
	return floor.Seam{Doorway: d.door.Name, Start: on(d.s, d.farS), End: on(d.e, d.farE)}
}

// lineNear is the row line nearest to the middle of the depth.
func (d depth) lineNear(offset, pitch tape.Length) (tape.Length, bool) {
	mid := d.low + (d.high-d.low)/2
	y := mid + mod(offset-mid, pitch)
	if y-mid > pitch/2 {
		y -= pitch
	}
	return y, y >= d.low+clearOf && y <= d.high-clearOf
}

// clearOf is how far a seam stays off the faces of the wall.
const clearOf = tape.Eighth

// turn lays group b along the doorway. The fields meet on one of its row lines
// that lies in the doorway's depth: the one of the start that is best for its
// own walls, of equals the one nearest to the middle, under the door.
func (s *split) turn(in depth, a, b int) {
	m := in.seam(s.bestLine(in, b, in.low))
	s.lines[b] = &m.Start
	s.meet(m, a, b)
}

// runOut lets the rows of group b run out of a doorway that those of a lie
// along: the fields meet on a row line of a.
func (s *split) runOut(in depth, a, b int) finding.Finding {
	in = s.depth(in.door, same(s.dirs[a], in.dir))
	s.dirs[b] = plane.Dir(plane.XY(in.dir).Left())
	if in.high-in.low < 2*clearOf {
		return in.cannot("the doorway lies too slanted to the rows: no row edge runs through it from jamb to jamb", s.Style)
	}
	var y tape.Length
	if s.lines[a] != nil {
		var ok bool
		if y, ok = in.lineNear(in.dir.ToRow(*s.lines[a]).Y, s.Pitch); !ok {
			return in.cannot("no row edge lies in its depth, and another doorway sets the rows", s.Style)
		}
	} else {
		y = s.bestLine(in, a, in.high)
	}
	m := in.seam(y)
	s.lines[a] = &m.Start
	far := m
	far.Tongue = true // the ends of b are cut here: what a offers is known once it is laid out
	s.seams[a], s.seams[b] = append(s.seams[a], m), append(s.seams[b], far)
	return finding.Finding{}
}

// same is d, turned round if it runs against e.
func same(d, e plane.Dir) plane.Dir {
	if plane.XY(d).Dot(plane.XY(e)) < 0 {
		return d.Flip()
	}
	return d
}

// bestLine is the row line in a doorway's depth of the start that is best for
// the walls of a group, whose floor is taken to a height of the doorway.
func (s *split) bestLine(in depth, group int, to tape.Length) tape.Length {
	low, high := in.low+clearOf, in.high-clearOf
	trial := floor.PartOf(s.Built, s.Trim, s.Limits, floor.Part{Rooms: s.names(group), Seams: append(slices.Clone(s.seams[group]), in.seam(to)), Frames: s.around})
	if len(trial.Rings) == 0 {
		return low + (high-low)/2
	}
	al := trial.In(in.dir)
	p := newProblem(al, s.Pitch, s.Limits)
	p.closing = slices.DeleteFunc(p.closing, func(e edge) bool { return al.Edges[e.index].Kind == floor.Meeting })
	return p.lineIn(low, high)
}

// lineIn is the row line between two heights of the start that scores best, of
// equals the one nearest to the middle.
func (p problem) lineIn(low, high tape.Length) tape.Length {
	mid := low + (high-low)/2
	best, s := mid, p.at(mid)
	for _, c := range append(p.candidates(), mod(low, p.pitch), mod(high, p.pitch)) {
		for y := low + mod(c-low, p.pitch); y <= high; y += p.pitch {
			t := p.at(y)
			if t.better(s) || !s.better(t) && (y-mid).Abs() < (best-mid).Abs() {
				best, s = y, t
			}
		}
	}
	return best
}

// header puts a board across the doorway: its groove toward a, its tongue
// toward b.
func (s *split) header(in depth, a, b int) {
	low := in.low + (in.high-in.low-s.Face)/2
	m, n := in.seam(low), in.seam(low+s.Face)
	n.Tongue = true
	s.headers = append(s.headers, header{in.door, floor.Header{Near: m, Far: n}, in.dir})
	s.seams[a], s.seams[b] = append(s.seams[a], m), append(s.seams[b], n)
}

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
			w.StartWall, w.EdgeOn, w.Pins, w.Middle = room.Wall{}, "", nil, false
			from = basis{why: s.why[g]}
		}
		l, a := layRows(part, s.Built, s.dirs[g], from, s.Pitch, s.Limits, w, s.Style)
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
		out[i].settle(s.Floor, &rows)
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
	l, a := layRows(part, s.Built, plane.DirOf(g.Outer[0], g.Outer[1]), basis{why: f.Name()}, s.Face, s.Limits, w, s.Style)
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
	l, a := layRows(f, s.Built, h.dir, basis{why: "header in doorway " + h.door.Name}, s.Face, s.Limits, w, s.Style)
	return Field{Kind: lay.Header, Name: "header in doorway " + h.door.Name, Layout: l, Part: a}
}

// settle numbers the rows of a field on from those before, points its rips at
// the edges of the whole floor, and gives its areas outlines.
func (f *Field) settle(whole floor.Floor, rows *int) {
	f.Aligned = whole.In(f.Part.Dir)
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
	for _, r := range l.Rips {
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
