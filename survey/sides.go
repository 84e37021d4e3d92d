package survey

import (
	"fmt"
	"math"
	"slices"

	"strake/finding"
	"strake/plane"
	"strake/room"
)

// onLine is how near (mm) to the line of a wall a place of another room may
// start that its start does not say on which side it lies.
const onLine = 50

// sideOf is 1 for a place on the side of a wall where its room is, -1 behind it.
// A place of the wall's own room is before it. One of another room may be
// either: behind the wall between the rooms, before a wall whose line runs past
// both; the start says which. So it does for a corner of something that stays,
// where other readings place that in another room.
func (n *net) sideOf(name string, w room.Wall, in int) float64 {
	own := n.roomOf(name)
	if own == in {
		return 1
	}
	d := 0.0
	if n.first != nil {
		d = n.beside(name, w, n.first)
	}
	switch {
	case own >= 0 && math.Abs(d) < onLine:
		return -1
	case own >= 0, n.placed[name] && n.elsewhere(name, in):
		return math.Copysign(1, d)
	}
	return 1
}

// roomOf is the room of a corner or of a point on a wall; -1 for the corners of
// what stays.
func (n *net) roomOf(name string) int {
	if p, ok := n.points[name]; ok {
		name = p.Wall[0]
	}
	return slices.IndexFunc(n.sketch.Rooms, func(r room.Room) bool { return slices.Contains(r.Corners, name) })
}

// elsewhere tells whether a place starts in another room than this.
func (n *net) elsewhere(name string, in int) bool {
	p := n.at(name, n.first)
	return !n.holds(in, p) && n.within(p, n.first)
}

// holds tells whether a room, as it starts, goes round a place.
func (n *net) holds(k int, p plane.XY) bool { return holds(n.round(k, n.first), p) }

// round is the line round a room.
func (n *net) round(k int, x []float64) []plane.XY {
	var o []plane.XY
	for _, c := range n.sketch.Rooms[k].Ring() {
		o = append(o, n.at(c, x))
	}
	return o
}

// sideless names offsets of something that stays which may lie on either side:
// its readings are from more rooms than one, and none but offsets place it.
func (r Result) sideless(rs []Reading) []finding.Finding {
	var out []finding.Finding
	for _, st := range r.net.sketch.Stays {
		rooms := r.readFrom(st, rs)
		if len(rooms) < 2 {
			continue
		}
		for _, v := range rs {
			if v.Kind != Off || !slices.Contains(st.Corners, v.From) || r.net.placed[v.From] {
				continue
			}
			out = append(out, finding.Finding{Level: finding.Stop, Rule: "side of a wall", Where: v.Name(),
				Measured: fmt.Sprintf("%s is read from more than one room, and nothing says on which side of wall %s it lies", st.Name, v.Wall),
				Limit:    "a distance from each of two corners or points",
				Do:       fmt.Sprintf("Measure %s straight from two corners of the room that it stands in, and write both under readings.", v.From)})
		}
	}
	return out
}

// readFrom are the rooms that the readings to something that stays start in.
func (r Result) readFrom(st room.Stay, rs []Reading) map[int]bool {
	out := map[int]bool{}
	for _, v := range rs {
		if !r.net.usable(v) || !slices.Contains(st.Corners, v.From) && !slices.Contains(st.Corners, v.To) {
			continue
		}
		for _, name := range []string{v.From, v.To, v.Wall[0]} {
			if k := r.net.roomOf(name); k >= 0 {
				out[k] = true
			}
		}
	}
	return out
}
