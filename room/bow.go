package room

import (
	"math"
	"sort"

	"strake/plane"
	"strake/tape"
)

// Bow is how far a wall lies off the straight line between its two corners, at
// one place. A string from corner to corner over two blocks of 1 in that comes
// within 5/8 in of the wall says that the wall stands 3/8 in into the room
// there: Out is -3/8 in.
type Bow struct {
	Wall Wall
	From string      // a corner of Wall
	At   tape.Length // from that corner along the straight line
	Out  tape.Length // how far the wall lies behind the line, seen from the room; negative: it stands into the room
}

// bend is a Bow set out from the first corner of its wall, in mm.
type bend struct{ at, out float64 }

// bends are the bows of a wall in order along it, given its length in mm. The
// wall is in the room's counter-clockwise order. Places beyond its ends are
// left out.
func (r Room) bends(w Wall, length float64) []bend {
	var out []bend
	for _, b := range r.Bows {
		if b.Wall != w && b.Wall != (Wall{w[1], w[0]}) {
			continue
		}
		at := b.At.Millimetres()
		if b.From == w[1] {
			at = length - at
		}
		if at > 0 && at < length {
			out = append(out, bend{at, b.Out.Millimetres()})
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].at < out[j].at })
	return out
}

// Bowed tells whether wall w of this room has a bow.
func (r Room) Bowed(w Wall) bool {
	for _, b := range r.Bows {
		if b.Wall == w || b.Wall == (Wall{w[1], w[0]}) {
			return true
		}
	}
	return false
}

// OutAt is how far wall w, counter-clockwise and this long, lies behind its
// straight line at a place this far from its first corner (all mm): straight
// from bow to bow, nothing at the corners.
func (r Room) OutAt(w Wall, length, at float64) float64 {
	last := bend{}
	for _, b := range append(r.bends(w, length), bend{length, 0}) {
		if at <= b.at {
			if b.at == last.at {
				return b.out
			}
			return last.out + (b.out-last.out)*math.Max(0, at-last.at)/(b.at-last.at)
		}
		last = b
	}
	return 0
}

// Side is a wall as built: its first corner, a point at each bow, its second
// corner, counter-clockwise round its room. Nil when there is no such wall.
func (b Built) Side(w Wall) []plane.XY {
	i, ccw, ok := b.FindWall(w)
	if !ok {
		return nil
	}
	p, q := b.At[ccw[0]], b.At[ccw[1]]
	out := []plane.XY{p}
	if length := q.Sub(p).Len(); length > 0 {
		u := q.Sub(p).Unit()
		for _, v := range b.Rooms[i].bends(ccw, length) {
			out = append(out, p.Add(u.Times(v.at)).Sub(u.Left().Times(v.out)))
		}
	}
	return append(out, q)
}

// Outline is the line round a room as built, counter-clockwise, bows included.
// Stretch i runs from points[i] to the next and belongs to walls[i].
func (b Built) Outline(r Room) (points []plane.XY, walls []Wall) {
	ring := r.Ring()
	for i, c := range ring {
		w := Wall{c, ring[(i+1)%len(ring)]}
		side := b.Side(w)
		for _, p := range side[:max(0, len(side)-1)] {
			points, walls = append(points, p), append(walls, w)
		}
	}
	return points, walls
}
