package setout

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strake/floor"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Ref is a place that a tape is held to, and that stays visible while the
// floor is laid: a corner of the room, a jamb, a corner of something that stays.
type Ref struct {
	Name   string // "A", "west door, jamb nearer A", "hearth, front corner nearer C"
	Short  string // "A", "jamb", "hearth"
	Corner bool   // it is a named corner
	xy     plane.XY
	in     room.Wall // the wall that it lies on, where it is a jamb; empty: any
	stay   int       // into view.stays; -1: not a corner of something that stays
}

// Place is where it is on the floor plan, mm.
func (r Ref) Place() plane.XY { return r.xy }

// allRefs are the corners of the room, the jambs of its doorways and the corners
// of what stays in it, less those that something hides.
func (v view) allRefs() []Ref {
	var out []Ref
	for i, n := range v.outline.Names {
		out = append(out, Ref{Name: n, Short: n, Corner: true, xy: v.outline.Corners[i], stay: -1})
	}
	for _, d := range v.plan.Built.Doorways {
		out = append(out, v.jambs(d.Name, d.Wall, d.From, d.At, d.Width)...)
		if d.Beyond == room.BeyondRoom {
			out = append(out, v.jambs(d.Name, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width)...)
		}
	}
	for k, s := range v.stays {
		out = append(out, v.stayRefs(k, s)...)
	}
	return slices.DeleteFunc(out, v.hidden)
}

// hidden tells whether a corner or jamb lies under or behind something that
// stays, or a corner of one under another.
func (v view) hidden(r Ref) bool {
	for k, s := range v.stays {
		if k != r.stay && (inside(s.corners, r.xy) || distance(s.corners, r.xy) < 1) {
			return true
		}
	}
	return false
}

// jambs are those of a doorway on a wall of this room.
func (v view) jambs(name string, w room.Wall, from string, at, width tape.Length) []Ref {
	k, ccw, ok := v.plan.Built.FindWall(w)
	if !ok || v.plan.Built.Rooms[k].Name != v.room.Name {
		return nil
	}
	s, e, ok := floor.Jambs(v.plan.Built, w, from, at, width)
	if !ok {
		return nil
	}
	return []Ref{
		{Name: fmt.Sprintf("%s, jamb nearer %s", name, ccw[0]), Short: "jamb", xy: s, in: ccw, stay: -1},
		{Name: fmt.Sprintf("%s, jamb nearer %s", name, ccw[1]), Short: "jamb", xy: e, in: ccw, stay: -1},
	}
}

// stayRefs are the corners of something that stays: by their own names, else
// by the wall that it was set out from: at it or away from it, and which of its
// ends they are nearer to.
func (v view) stayRefs(k int, s standing) []Ref {
	var out []Ref
	for i, c := range s.corners {
		r := Ref{Short: s.stay.Name, xy: c, stay: k}
		if len(s.stay.Corners) > 0 {
			r.Name = v.named(s.stay, c, i)
		} else {
			r.Name = v.byWall(s, c)
		}
		out = append(out, r)
	}
	return out
}

// named is the name that the job gave to a corner of something that stays.
func (v view) named(s room.Stay, c plane.XY, i int) string {
	for _, n := range s.Corners {
		if v.plan.Built.At[n].Sub(c).Len() < 0.01 {
			return s.Name + ", corner " + n
		}
	}
	return fmt.Sprintf("%s, its corner %d", s.Name, i+1)
}

func (v view) byWall(s standing, c plane.XY) string {
	_, ccw, _ := v.plan.Built.FindWall(s.stay.Wall)
	a, b := v.plan.Built.At[ccw[0]], v.plan.Built.At[ccw[1]]
	var mid plane.XY
	for _, q := range s.corners {
		mid = mid.Add(q.Times(1 / float64(len(s.corners))))
	}
	u := b.Sub(a).Unit()
	away, end := c.Sub(mid).Dot(u.Left()) > 0, ccw[1]
	if c.Sub(mid).Dot(u) < 0 {
		end = ccw[0]
	}
	side := "corner at wall " + s.stay.Wall.String()
	switch {
	case s.stay.Off == 0 && away:
		side = "front corner"
	case s.stay.Off > 0 && away:
		side = "corner away from wall " + s.stay.Wall.String()
	case s.stay.Off > 0:
		side = "corner toward wall " + s.stay.Wall.String()
	}
	return fmt.Sprintf("%s, %s nearer %s", s.stay.Name, side, end)
}

// less is how much farther than a corner anything else must be nearer to be
// taken instead: letters are found at once.
const less = 600.0 // mm

func (r Ref) cost(at plane.XY) float64 {
	d := r.xy.Sub(at).Len()
	if !r.Corner {
		d += less
	}
	return d
}

// mark is an end of a stretch taped along the side that it lies on; false where
// nothing on that side can be taped from.
func (v view) mark(e end) (Mark, bool) {
	m := Mark{x: e.x, xy: e.xy, On: "on wall " + e.wall.String()}
	if e.stay >= 0 {
		m.On = v.onStay(e, Ref{})
	}
	if e.flat {
		return m, false
	}
	found := false
	for _, r := range v.refs {
		if v.along(e, r) && (!found || r.cost(e.xy) < m.From.cost(e.xy)) {
			m.From, found = r, true
		}
	}
	if !found {
		return m, false
	}
	m.At = mm(e.xy.Sub(m.From.xy).Len())
	if e.stay >= 0 {
		m.On = v.onStay(e, m.From)
	}
	if d, ok := v.opening(e); ok {
		m.On = "in the opening of " + d
	}
	m.check(v, e)
	return m, true
}

// onStay is the side of something that stays that an end lies on, by the corner
// that the tape runs toward.
func (v view) onStay(e end, from Ref) string {
	name := v.stays[e.stay].stay.Name
	for _, r := range v.refs {
		if r.stay == e.stay && r.xy != from.xy && from.Name != "" && offSide(e.from, e.to, r.xy) < 1 {
			return "on " + name + " toward its " + strings.TrimPrefix(r.Name, name+", ")
		}
	}
	return "on " + name
}

// along tells whether a tape can run from a ref to an end along the side that
// the end lies on, with nothing standing against it between.
func (v view) along(e end, r Ref) bool {
	if e.stay >= 0 {
		return r.stay == e.stay && offSide(e.from, e.to, r.xy) < 1
	}
	a, b := v.plan.Built.At[e.wall[0]], v.plan.Built.At[e.wall[1]]
	if r.in != (room.Wall{}) && r.in != e.wall || offSide(a, b, r.xy) > touch {
		return false
	}
	for k, s := range v.stays {
		if k != r.stay && s.between(a, b, e.xy, r.xy) || k == r.stay && s.covers(a, b, e.xy, r.xy) {
			return false
		}
	}
	return true
}

// reach is how far along the wall from a to b something stands against it, mm
// from a; false when it does not.
func (s standing) reach(a, b plane.XY) (from, to float64, ok bool) {
	u := b.Sub(a).Unit()
	from, to = math.Inf(1), math.Inf(-1)
	for _, c := range s.corners {
		if offSide(a, b, c) < touch {
			t := c.Sub(a).Dot(u)
			from, to = min(from, t), max(to, t)
		}
	}
	return from, to, to > from
}

// between tells whether it stands against the wall from a to b between p and q.
func (s standing) between(a, b, p, q plane.XY) bool {
	from, to, ok := s.reach(a, b)
	u := b.Sub(a).Unit()
	x, y := p.Sub(a).Dot(u), q.Sub(a).Dot(u)
	return ok && min(x, y) < to-1 && max(x, y) > from+1
}

// covers tells whether it lies between p and its own corner q.
func (s standing) covers(a, b, p, q plane.XY) bool { return s.between(a, b, p, q) }

// opening is the doorway that an end lies in, between its jambs.
func (v view) opening(e end) (string, bool) {
	if e.stay >= 0 {
		return "", false
	}
	var jambs []Ref
	for _, d := range v.plan.Built.Doorways {
		jambs = append(v.jambs(d.Name, d.Wall, d.From, d.At, d.Width), v.jambs(d.Name, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width)...)
		for i := 0; i+1 < len(jambs); i += 2 {
			if jambs[i].in == e.wall && offSide(jambs[i].xy, jambs[i+1].xy, e.xy) < 1 {
				return d.Name, true
			}
		}
	}
	return "", false
}

// How much of an error in a mark its check is to show: shows is wanted, and
// below little a place across the room tells less than the other end of the wall.
const (
	shows  = 0.5
	little = 0.4
)

// check finds the place across the room that a mark is best checked from: in
// sight, and square enough to the line for an error to show in it, the nearest of
// those; else the one where it shows most, or the other end of its own side.
func (m *Mark) check(v view, e end) {
	u := e.to.Sub(e.from).Unit()
	best, found := little, false
	for _, r := range v.refs {
		if r.xy == m.From.xy || r.xy.Sub(e.xy).Len() < 1 || offSide(e.from, e.to, r.xy) < touch {
			continue
		}
		s := math.Abs(r.xy.Sub(e.xy).Unit().Dot(u))
		if s < little || !v.sees(r.xy, e.xy) {
			continue
		}
		value := s
		if s >= shows {
			value = 1 + 1/(1+r.cost(e.xy))
		}
		if value > best {
			best, found, m.Check = value, true, r
		}
	}
	if !found {
		m.checkAlong(v, e)
	}
	m.CheckAt = mm(m.Check.xy.Sub(e.xy).Len())
	if m.Check.Name == "" {
		m.CheckAt = 0
	}
}

// checkAlong checks a mark from the other end of its own side.
func (m *Mark) checkAlong(v view, e end) {
	for _, r := range v.refs {
		if r.xy != m.From.xy && v.along(e, r) && (m.Check.Name == "" || r.cost(e.xy) < m.Check.cost(e.xy)) {
			m.Check = r
		}
	}
}
