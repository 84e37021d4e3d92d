package jobfile

import (
	"math"
	"slices"

	"strake/room"
)

// taper checks the wall that is to take the taper: the direction follows from
// it, and a direction of the wishes may only be the same.
func (n *names) taper(path string, w room.Wall) {
	if !n.wall(path, w) {
		return
	}
	wishes := n.j.Wishes
	switch {
	case wishes.Between != [2]room.Wall{}:
		n.d.failPath(path, "rows_between shares the taper between two walls, and this one cannot take all of it then", w.String(), "one of the two")
	case wishes.Direction != (room.Wall{}) && n.otherWay(w):
		n.d.failPath(path, "the wishes give another direction than rows along the wall that faces this one, and both cannot hold", w.String(),
			"one of the two, or rows_along: the wall that faces "+w.String())
	}
}

// otherWay tells whether the direction that the wishes give is surely another
// than that of the wall facing one that takes the taper, by the corners' nominal
// angles: what they leave open, the readings tell later.
func (n *names) otherWay(w room.Wall) bool {
	d := n.j.Wishes
	a, ok := n.roomOf[w[0]]
	b, ok2 := n.roomOf[d.Direction[0]]
	if !ok || !ok2 || a != b {
		return false
	}
	if sameWall(d.Direction, w) && !d.Across {
		return true // along this wall, which the one that faces it then tapers to
	}
	turn := math.Mod(n.heading(a, w)-n.heading(a, d.Direction)+720, 180)
	if d.Across {
		turn = math.Mod(turn+90, 180)
	}
	return math.Min(turn, 180-turn) > nearlyParallel
}

// nearlyParallel is how many degrees walls that are taken for parallel may be
// apart by the angles that a job gives.
const nearlyParallel = 5

// heading is the direction of a wall in degrees, run counter-clockwise, as the
// inside angles before it have it.
func (n *names) heading(in int, w room.Wall) float64 {
	r := n.j.Sketch.Rooms[in]
	ring, sum := r.Ring(), 0.0
	for i, c := range ring {
		if i > 0 {
			inside, _ := r.Turn(c)
			sum += 180 - inside
		}
		next := ring[(i+1)%len(ring)]
		if slices.Contains(w[:], c) && slices.Contains(w[:], next) {
			break
		}
	}
	return math.Mod(sum, 360)
}
