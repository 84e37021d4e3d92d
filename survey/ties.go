package survey

import (
	"slices"

	"strake/plane"
	"strake/room"
)

// clearOf is how far (mm) a tape stays off the jambs: stops and hinges.
const clearOf = 25

// throughDoorways adds the readings that could be taken from room to room: the
// tape runs between the jambs of a doorway and past every other wall. spots are
// those of each room.
func (r Result) throughDoorways(spots [][]spot, add func(p, q spot, room int, through string)) {
	for _, d := range r.Built.Doorways {
		i, _, _ := r.Built.FindWall(d.Wall)
		near, far, ok := r.sides(i, d)
		if !ok {
			continue
		}
		for _, p := range spots[near.room] {
			for _, q := range spots[far.room] {
				if opens(p.at, q.at, near.start, near.end) && opens(p.at, q.at, far.start, far.end) &&
					r.passes(near.room, near.wall, p, q) && r.passes(far.room, far.wall, q, p) {
					add(p, q, near.room, d.Name)
				}
			}
		}
	}
}

// opens tells whether the line from p to q runs between two jambs, clear of
// both.
func opens(p, q, start, end plane.XY) bool {
	d := end.Sub(start)
	if d.Len() <= 2*clearOf {
		return false
	}
	off := d.Unit().Times(clearOf)
	return crosses(p, q, start.Add(off), end.Sub(off))
}

// passes tells whether the line from p, in room k, to q, in another, meets no
// wall of room k but the one with the doorway and those that p lies on.
func (r Result) passes(k int, door room.Wall, p, q spot) bool {
	ring := r.Built.Rooms[k].Ring()
	for i, c := range ring {
		w := room.Wall{c, ring[(i+1)%len(ring)]}
		if w != door && !slices.Contains(p.walls, w) && crosses(p.at, q.at, r.Built.At[w[0]], r.Built.At[w[1]]) {
			return false
		}
	}
	return true
}
