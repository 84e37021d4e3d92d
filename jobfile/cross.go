package jobfile

import (
	"sort"
	"strings"

	"strake/room"
	"strake/tape"
)

// names is who is who in a job: every named place, and the ring it belongs to.
type names struct {
	d       *decoder
	j       *draft
	roomOf  map[string]int  // room of each corner, by its index
	points  map[string]bool // named points on walls
	corners map[string]bool // corners of things that stay
	broken  bool            // a room's corners could not be read: no name is called unknown
}

// cross checks what the parts of a job say of each other, each error at the
// value that is wrong.
func cross(d *decoder, j *draft) {
	n := &names{d: d, j: j, roomOf: map[string]int{}, points: map[string]bool{}, corners: map[string]bool{}, broken: d.lost}
	n.rooms()
	n.collect()
	n.pointsOnWalls()
	n.stays()
	n.readings()
	n.squares()
	n.doorways()
	n.wishes()
	n.pins()
	n.laid()
	n.subfloor()
	n.keepFree()
	n.joists()
	n.hazards()
	j.Order.SparesTold = d.given(at("order", "spares"))
	n.heights()
	n.goods()
	n.schedule()
	n.quote()
	if d.given("boards") {
		boards(d, j)
	}
	pairs(d, j)
	meter(d, j)
}

// collect gathers the names that are no corners of rooms.
func (n *names) collect() {
	for _, p := range n.j.Sketch.Points {
		at := at("points", p.Name) + keyOf
		if _, taken := n.roomOf[p.Name]; taken {
			n.d.failPath(at, "this point has the name of a corner", p.Name, "a name that no corner has")
		} else if strings.Contains(p.Name, "-") {
			n.d.failPath(at, "a point's name has no dash: the dash stands between two of them", p.Name, "a name such as P1")
		}
		n.points[p.Name] = true
	}
	for _, s := range n.j.Sketch.Stays {
		for _, c := range s.Corners {
			n.corners[c] = true
		}
	}
}

// known tells whether readings may name s.
func (n *names) known(s string) bool {
	_, corner := n.roomOf[s]
	return corner || n.points[s] || n.corners[s]
}

// place checks that a name is that of a corner, point or corner of something
// that stays.
func (n *names) place(path, s string) {
	if s == "" || n.known(s) || n.broken {
		return
	}
	n.d.failPath(path, "“"+s+"” is not a corner or point of this job", s, suggest(s, n.all()))
}

// all is every name that readings may have.
func (n *names) all() []string {
	var out []string
	for _, m := range []map[string]bool{n.points, n.corners} {
		for s := range m {
			if _, corner := n.roomOf[s]; !corner {
				out = append(out, s)
			}
		}
	}
	for s := range n.roomOf {
		out = append(out, s)
	}
	sort.Strings(out)
	return out
}

// wall checks that w is a wall of a room, at the value with this path.
func (n *names) wall(path string, w room.Wall) bool {
	if w == (room.Wall{}) || n.broken {
		return false
	}
	a, okA := n.roomOf[w[0]]
	b, okB := n.roomOf[w[1]]
	switch {
	case !okA || !okB:
		name := w[0]
		if okA {
			name = w[1]
		}
		n.d.failPath(path, "“"+name+"” is not a corner of a room", w.String(), n.walls(a, okA || okB))
		return false
	case a != b:
		n.d.failPath(path, "these corners belong to two rooms, so no wall joins them", w.String(), n.walls(a, true))
		return false
	case !neighbours(n.j.Sketch.Rooms[a].Corners, w):
		n.d.failPath(path, "these corners are not neighbours, so this is no wall", w.String(), n.walls(a, true))
		return false
	}
	return true
}

// walls is the list of walls of one room, or of all.
func (n *names) walls(in int, one bool) string {
	var out []string
	for i, r := range n.j.Sketch.Rooms {
		if one && i != in {
			continue
		}
		for k, c := range r.Corners {
			out = append(out, room.Wall{c, r.Corners[(k+1)%len(r.Corners)]}.String())
		}
	}
	return "one of the walls " + strings.Join(out, ", ")
}

// neighbours tells whether a wall's corners follow each other round a ring.
func neighbours(ring []string, w room.Wall) bool {
	for i, c := range ring {
		next := ring[(i+1)%len(ring)]
		if w == (room.Wall{c, next}) || w == (room.Wall{next, c}) {
			return true
		}
	}
	return false
}

// end checks that a distance along w is taken from one of its corners.
func (n *names) end(path, from string, w room.Wall) {
	if from == "" || w == (room.Wall{}) || from == w[0] || from == w[1] {
		return
	}
	accept := w[0] + " or " + w[1]
	k, corner := n.roomOf[from]
	if own, ok := n.roomOf[w[0]]; corner && ok && k != own {
		n.d.failPath(path, "“"+from+"” is a corner of "+n.j.Sketch.Rooms[k].Name+", and wall "+w.String()+" is in "+n.j.Sketch.Rooms[own].Name, from,
			accept+", as the tape runs along this wall; what was read from another room goes under readings")
		return
	}
	n.d.failPath(path, "“"+from+"” is not a corner of wall "+w.String(), from, accept)
}

// reach checks that what lies along a wall does not go past its other end,
// where the wall has been read.
func (n *names) reach(path, what string, w room.Wall, upTo tape.Length) {
	l, ok := n.read(w)
	if !ok || upTo <= l+readSlack {
		return
	}
	s := tape.Paper(n.j.Unit)
	n.d.failPath(path, what+" goes past the end of wall "+w.String()+", which reads "+s.Of(l), s.Of(upTo)+" from the corner", "at most "+s.Of(l)+", or another reading of the wall")
}

// readSlack is how much two readings along one wall may contradict each other
// before it is an error here; less is for the survey to weigh.
const readSlack = in

// read is the first reading along a wall.
func (n *names) read(w room.Wall) (tape.Length, bool) {
	for _, r := range n.j.Readings {
		if (r.From == w[0] && r.To == w[1]) || (r.From == w[1] && r.To == w[0]) {
			return r.Value, true
		}
	}
	return 0, false
}
