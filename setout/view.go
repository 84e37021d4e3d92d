package setout

import (
	"slices"

	"strake/floor"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// view is a room with all that stands in it, as a person with a tape sees it.
type view struct {
	plan    plan.Plan
	room    room.Room
	outline floor.RoomOutline
	points  []plane.XY  // round the room, bows included
	walls   []room.Wall // of the stretch from each point to the next
	stays   []standing
	style   tape.Style
	refs    []Ref // all that may be taped from
}

// standing is something that stays in the room.
type standing struct {
	stay    room.Stay
	corners []plane.XY
	up      bool // no string passes over it
}

// touch is how near to a wall something counts as standing against it, mm.
const touch = 30.0

func viewOf(p plan.Plan, i int) view {
	v := view{plan: p, room: p.Built.Rooms[i], style: tape.Paper(p.Job.Unit)}
	v.outline = outlineOf(p, v.room.Name)
	v.points, v.walls = p.Built.Outline(v.room)
	for _, o := range p.Floor.Stays {
		k := slices.IndexFunc(p.Built.Stays, func(s room.Stay) bool { return s.Name == o.Name })
		if k >= 0 && len(o.Corners) > 2 && v.near(o.Corners) {
			s := p.Built.Stays[k]
			v.stays = append(v.stays, standing{s, onWall(p.Built, s, o.Corners), s.StandsUp()})
		}
	}
	v.refs = v.allRefs()
	return v
}

// onWall are the corners of something that stays, those at its wall on the wall:
// the floor is cut out a little behind it.
func onWall(b room.Built, s room.Stay, corners []plane.XY) []plane.XY {
	out := slices.Clone(corners)
	if len(s.Corners) > 0 || s.Off != 0 {
		return out
	}
	from, to, ok := floor.Jambs(b, s.Wall, s.From, s.At, s.Width)
	if !ok {
		return out
	}
	for i, c := range out {
		for _, q := range []plane.XY{from, to} {
			if c.Sub(q).Len() < 2 {
				out[i] = q
			}
		}
	}
	return out
}

// near tells whether any of some corners lies in the room or at its walls.
func (v view) near(corners []plane.XY) bool {
	return slices.ContainsFunc(corners, func(c plane.XY) bool { return inside(v.points, c) || distance(v.points, c) < touch })
}

// end is an end of a stretch: where it meets a wall or something that stays.
type end struct {
	x        tape.Length
	xy       plane.XY
	wall     room.Wall // empty: something that stays
	stay     int       // into view.stays, -1: a wall
	from, to plane.XY  // the side that it lies on
	flat     bool      // that side runs nearly along the rows
}

func (e end) why() string {
	if e.flat {
		return "its line runs out along wall " + e.wall.String() + ": set it by the story stick from the nearest line"
	}
	return "nothing on wall " + e.wall.String() + " that stays visible to measure from"
}

// stretch is a part of a row line between what stands up.
type stretch struct{ from, to end }

// flat is the least sine of the angle between a row line and a side that a mark
// can be made on: 10 degrees.
const flat = 0.17

// stretches are the parts of the line at y that a string can be stretched
// along: inside the room, past what stands up, and not under what stands
// against the wall that it ends at.
func (v view) stretches(d plane.Dir, y tape.Length) []stretch {
	crossings := crossings(d, v.points, y)
	for i := range crossings {
		c := &crossings[i]
		c.wall, c.stay = v.walls[c.stay], -1
	}
	var out []stretch
	for i := 0; i+1 < len(crossings); i += 2 {
		out = append(out, stretch{crossings[i], crossings[i+1]})
	}
	for k, s := range v.stays {
		cs := crossingsOf(d, s.corners, y, k)
		for i := 0; i+1 < len(cs); i += 2 {
			var left []stretch
			for _, t := range out {
				left = append(left, t.without(cs[i], cs[i+1], s.up)...)
			}
			out = left
		}
	}
	return out
}

// without is what a thing from a to b leaves of a stretch. A low one in the
// middle leaves it whole: the string passes over.
func (t stretch) without(a, b end, up bool) []stretch {
	near := mm(touch)
	if b.x <= t.from.x || a.x >= t.to.x {
		return []stretch{t}
	}
	atLeft, atRight := a.x <= t.from.x+near, b.x >= t.to.x-near
	switch {
	case atLeft && atRight:
		return nil
	case atLeft:
		return []stretch{{b, t.to}}
	case atRight:
		return []stretch{{t.from, a}}
	case up:
		return []stretch{{t.from, a}, {b, t.to}}
	}
	return []stretch{t}
}

// crossings are where the line at y crosses a ring, from left to right; stay
// holds the index of the side until the caller says what it is.
func crossings(d plane.Dir, ring []plane.XY, y tape.Length) []end {
	var out []end
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		a, b := d.ToRow(p), d.ToRow(q)
		if (a.Y > y) == (b.Y > y) {
			continue
		}
		xy := p.Add(q.Sub(p).Times(float64(y-a.Y) / float64(b.Y-a.Y)))
		s := plane.XY(d).Cross(q.Sub(p).Unit())
		out = append(out, end{x: d.ToRow(xy).X, xy: xy, stay: i, from: p, to: q, flat: s*s < flat*flat})
	}
	slices.SortFunc(out, func(a, b end) int { return int(a.x - b.x) })
	return out
}

// crossingsOf are those with the outline of something that stays.
func crossingsOf(d plane.Dir, ring []plane.XY, y tape.Length, stay int) []end {
	out := crossings(d, ring, y)
	for i := range out {
		out[i].stay = stay
	}
	return out
}

// sees tells whether a tape can be pulled straight from a to b: inside the
// room and past what stands up.
func (v view) sees(a, b plane.XY) bool {
	steps := int(b.Sub(a).Len()/20) + 2
	for i := 1; i < steps; i++ {
		q := a.Add(b.Sub(a).Times(float64(i) / float64(steps)))
		if !inside(v.points, q) && distance(v.points, q) > 3 {
			return false
		}
		for _, s := range v.stays {
			if s.up && inside(s.corners, q) && distance(s.corners, q) > 3 {
				return false
			}
		}
	}
	return true
}

// inside tells whether q lies inside a ring.
func inside(ring []plane.XY, q plane.XY) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y > q.Y) != (b.Y > q.Y) && q.X < a.X+(q.Y-a.Y)*(b.X-a.X)/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}

// distance is how far q lies from the nearest side of a ring, mm.
func distance(ring []plane.XY, q plane.XY) float64 {
	best := -1.0
	for i, a := range ring {
		if d := offSide(a, ring[(i+1)%len(ring)], q); best < 0 || d < best {
			best = d
		}
	}
	return best
}

// offSide is how far q lies from the stretch from a to b, mm.
func offSide(a, b, q plane.XY) float64 {
	u := b.Sub(a)
	if u.Len() == 0 {
		return q.Sub(a).Len()
	}
	t := min(1, max(0, q.Sub(a).Dot(u)/u.Dot(u)))
	return q.Sub(a.Add(u.Times(t))).Len()
}
