package jobfile

import (
	"fmt"
	"slices"
	"strconv"

	"strake/room"
	"strake/survey"
)

// maxCorners is the most corners of a room: far more than any has, and few
// enough for the survey.
const maxCorners = 60

// rooms checks each room's ring and notes whose its corners are.
func (n *names) rooms() {
	if len(n.j.Sketch.Rooms) == 0 {
		n.broken = true
		if n.d.given("rooms") && len(n.d.errs) == 0 {
			n.d.failPath("rooms", "there is no room", "", "at least one room with its corners")
		}
	}
	for i, r := range n.j.Sketch.Rooms {
		n.ring(i, r)
	}
	for _, r := range n.j.Sketch.Rooms {
		n.inside(r)
	}
}

// ring checks the corners of one room.
func (n *names) ring(i int, r room.Room) {
	path := at("rooms", r.Name, "corners")
	switch {
	case len(r.Corners) < 3:
		n.broken = true
		if n.d.given(path) && !n.d.lost {
			n.d.failPath(path, "a room has three corners at least", fmt.Sprintf("%d", len(r.Corners)), "its corners in order, such as [A, B, C, D]")
		}
	case len(r.Corners) > maxCorners:
		n.d.failPath(path, "these are too many corners for one room", fmt.Sprintf("%d", len(r.Corners)), fmt.Sprintf("at most %d", maxCorners))
	}
	for k, c := range r.Corners {
		if other, taken := n.roomOf[c]; taken {
			n.d.failPath(at(path, strconv.Itoa(k)), "the name “"+c+"” is taken by a corner of "+n.j.Sketch.Rooms[other].Name, c, "a name of its own for every corner of the job")
			continue
		}
		n.roomOf[c] = i
	}
}

// inside checks which corners stand into the room, and the angles.
func (n *names) inside(r room.Room) {
	for k, c := range r.Into {
		n.own(at("rooms", r.Name, "into", strconv.Itoa(k)), c, r)
	}
	if len(r.Corners) >= 3 && len(r.Corners)-len(r.Into) < 3 {
		n.d.failPath(at("rooms", r.Name, "into"), "too many corners stand into this room: no outline closes like that", fmt.Sprintf("%d of %d", len(r.Into), len(r.Corners)), "at least three corners that do not")
	}
	for k, b := range r.Bows {
		path := at("rooms", r.Name, "bows", strconv.Itoa(k))
		if n.wall(at(path, "wall"), b.Wall) {
			n.end(at(path, "from"), b.From, b.Wall)
			n.own(at(path, "from"), b.From, r)
			n.reach(at(path, "at"), "this place", b.Wall, b.At)
		}
	}
	for c, a := range r.Angles {
		path := at("rooms", r.Name, "angles", c)
		n.own(path+keyOf, c, r)
		if into := slices.Contains(r.Into, c); into != (a > 180) && a != 180 {
			n.contrary(path, c, a, into)
		}
	}
}

// contrary records an angle that says the opposite of the list of corners
// that stand into the room.
func (n *names) contrary(path, c string, a float64, into bool) {
	if into {
		n.d.failPath(path, "corner "+c+" stands into the room, so its inside angle is over 180", fmt.Sprintf("%g", a), fmt.Sprintf("an angle such as %g", 360-a))
		return
	}
	n.d.failPath(path, "an inside angle over 180 means that the corner stands into the room", fmt.Sprintf("%g", a), c+" in the room's list “into”, or an angle under 180")
}

// own checks that c is a corner of r.
func (n *names) own(path, c string, r room.Room) {
	if slices.Contains(r.Corners, c) || n.broken {
		return
	}
	n.d.failPath(path, "“"+c+"” is not a corner of "+r.Name, c, suggest(c, r.Corners))
}

// pointsOnWalls checks where each point lies.
func (n *names) pointsOnWalls() {
	for _, p := range n.j.Sketch.Points {
		path := at("points", p.Name)
		if n.wall(at(path, "wall"), p.Wall) {
			n.end(at(path, "from"), p.From, p.Wall)
			n.reach(at(path, "at"), "this point", p.Wall, p.At)
		}
	}
}

// readings checks that both ends of each reading and of each guess exist.
func (n *names) readings() {
	n.ends("readings", n.j.Readings)
	n.ends("rough", n.j.rough)
}

func (n *names) ends(under string, rs []survey.Reading) {
	done := map[string]bool{}
	for _, r := range rs {
		if r.Kind != survey.Between {
			continue
		}
		key := at(under, room.Wall{r.From, r.To}.String()) + keyOf
		if !done[key] {
			done[key] = true
			n.place(key, r.From)
			n.place(key, r.To)
		}
	}
}
