package measure

import (
	"strake/plane"
	"strake/room"
)

// Rows is which way rows will run, as far as it is wished for.
type Rows struct {
	Along   room.Wall    // along this wall; empty: the longest
	Across  bool         // square to it instead
	Between [2]room.Wall // halfway between these two
	Start   room.Wall    // the first row lies along this wall
	Through string       // through this doorway
}

// short is the longest wall (mm) that needs no widths at three stations.
const short = 1800

// closing are the walls that rows will start from, or nearly: the widths from
// them across are those that rows close in.
func closing(b room.Built, rows Rows) []room.Wall {
	d := rows.heading(b)
	if d.Len() == 0 {
		return nil
	}
	var out []room.Wall
	for _, w := range walls(b) {
		if v := span(b, w); v.Len() > short && v.Unit().Dot(d.Unit()) > 0.97 {
			out = append(out, w)
		}
	}
	return out
}

// heading is which way the rows run, the first one at its right hand.
func (rows Rows) heading(b room.Built) plane.XY {
	wall, across := rows.Along, rows.Across
	for _, dw := range b.Doorways {
		if wall == (room.Wall{}) && rows.Through != "" && dw.Name == rows.Through {
			wall, across = dw.Wall, !across
		}
	}
	if wall == (room.Wall{}) {
		wall = longest(b)
	}
	d := span(b, inside(b, wall))
	if e := span(b, inside(b, rows.Between[0])); e.Len() > 0 {
		d = halfway(e, span(b, inside(b, rows.Between[1])))
	}
	if across {
		d = d.Left()
	}
	if d.Dot(span(b, inside(b, rows.Start))) < 0 {
		d = d.Times(-1)
	}
	return d
}

// halfway is the direction between two walls that face each other or not.
func halfway(u, v plane.XY) plane.XY {
	if v.Len() == 0 {
		return u
	}
	if u.Dot(v) < 0 {
		v = v.Times(-1)
	}
	return u.Unit().Add(v.Unit())
}

// inside is a wall with its room at the left.
func inside(b room.Built, w room.Wall) room.Wall {
	_, ccw, _ := b.FindWall(w)
	return ccw
}

func span(b room.Built, w room.Wall) plane.XY { return b.At[w[1]].Sub(b.At[w[0]]) }

// walls are all walls of all rooms, each with its room at the left.
func walls(b room.Built) []room.Wall {
	var out []room.Wall
	for _, r := range b.Rooms {
		ring := r.Ring()
		for i, c := range ring {
			out = append(out, room.Wall{c, ring[(i+1)%len(ring)]})
		}
	}
	return out
}

// longest is the longest wall; half a millimetre decides nothing.
func longest(b room.Built) room.Wall {
	var best room.Wall
	length := 0.0
	for _, w := range walls(b) {
		if l := span(b, w).Len(); l > length+0.5 {
			best, length = w, l
		}
	}
	return best
}
