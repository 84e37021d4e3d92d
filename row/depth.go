package row

import (
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// cannot says why the rows cannot change at a doorway.
func (d depth) cannot(why string, style tape.Style) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: "rows at a doorway", Where: d.door.Said(), Measured: why,
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
	p := newProblem(al, s.widths(), s.Limits)
	p.closing = slices.DeleteFunc(p.closing, func(e edge) bool { return al.Edges[e.index].Kind == floor.Meeting })
	return p.lineIn(low, high)
}

// lineIn is the row line between two heights of the start that scores best, of
// equals the one nearest to the middle.
func (p problem) lineIn(low, high tape.Length) tape.Length {
	mid := low + (high-low)/2
	best, s := mid, p.at(mid)
	period := p.lines(0).Period()
	for _, c := range append(p.candidates(), p.of(low), p.of(high)) {
		for y := low + p.of(c-low); y <= high; y += period {
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
