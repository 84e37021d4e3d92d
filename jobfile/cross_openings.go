package jobfile

import (
	"strconv"

	"slices"
	"strings"

	"strake/room"
	"strake/tape"
)

// doorways checks each doorway, and sets where the floor ends in it.
func (n *names) doorways() {
	for i := range n.j.Sketch.Doorways {
		w := &n.j.Sketch.Doorways[i]
		path, before := at("doorways", w.Name), len(n.d.errs)
		if n.wall(at(path, "wall"), w.Wall) {
			n.end(at(path, "from"), w.From, w.Wall)
			n.reach(at(path, "width"), "the doorway", w.Wall, w.At+w.Width)
			n.overlap(path, w, n.j.Sketch.Doorways[:i])
		}
		if w.Beyond == room.BeyondRoom {
			n.otherSide(path, w)
		} else {
			n.threshold(path, w)
		}
		if len(n.d.errs) == before {
			n.gone(*w)
		}
	}
}

// gone checks that no point lies in an opening: there is no wall to mark.
func (n *names) gone(w room.Doorway) {
	for _, p := range n.j.Sketch.Points {
		if n.within(p, w.Wall, w.From, w.At, w.Width) || w.Beyond == room.BeyondRoom && n.within(p, w.OtherWall, w.OtherFrom, w.OtherAt, w.Width) {
			n.d.failPath(at("points", p.Name, "at"), "this point lies in the opening of “"+w.Name+"”, where there is no wall to mark", tape.Paper(n.j.Unit).Of(p.At)+" from "+p.From, "a place beside its jambs")
		}
	}
}

// within tells whether a point lies between the jambs of an opening, as far as
// the job says: measured from the other corner, the wall must have been read.
func (n *names) within(p room.Point, w room.Wall, from string, at, width tape.Length) bool {
	if !sameWall(p.Wall, w) || width == 0 {
		return false
	}
	x := p.At
	if p.From != from {
		l, ok := n.read(w)
		if !ok {
			return false
		}
		x = l - x
	}
	return x > at && x < at+width
}

// otherSide checks where a doorway comes out in another room.
func (n *names) otherSide(path string, w *room.Doorway) {
	far := at(path, "beyond")
	if n.wall(at(far, "wall"), w.OtherWall) {
		n.end(at(far, "from"), w.OtherFrom, w.OtherWall)
		n.reach(at(far, "at"), "the doorway", w.OtherWall, w.OtherAt+w.Width)
		a, ok := n.roomOf[w.Wall[0]]
		if b := n.roomOf[w.OtherWall[0]]; ok && a == b {
			n.d.failPath(at(far, "wall"), "this wall is in the same room as the doorway's own", w.OtherWall.String(), "a wall of another room")
		}
	}
	if n.d.given(at(path, "ends")) {
		n.d.failPath(at(path, "ends"), "the floor runs through to another room here, so it does not end in the wall", "", "this line left out")
	}
	if n.d.given(at(path, "old_floor")) {
		n.d.failPath(at(path, "old_floor"), "another room of this job lies beyond, and its floor is laid with this one", "", "old_floor where an old floor of boards lies beyond")
	}
}

// threshold checks a doorway the floor ends in: that no rows are to go on, and
// how deep in the wall the floor ends, half of it unless the job says otherwise.
func (n *names) threshold(path string, w *room.Doorway) {
	if n.d.given(at(path, "rows")) {
		n.d.failPath(at(path, "rows"), "no room of this job lies beyond, so no rows go on there", string(w.Rows), "this line left out, or beyond: {wall, from, at} in another room")
	}
	if !n.d.given(at(path, "ends")) {
		w.Ends = w.Thickness / 2
		return
	}
	if w.Thickness > 0 && w.Ends > w.Thickness {
		s := tape.Paper(n.j.Unit)
		n.d.failPath(at(path, "ends"), "the floor would end beyond the wall, which is "+s.Of(w.Thickness)+" thick", s.Of(w.Ends), "at most "+s.Of(w.Thickness))
	}
}

// overlap checks a doorway against those before it in the same wall. One that is
// measured from the other corner is turned round where the wall was read; half
// an inch is left to the readings then.
func (n *names) overlap(path string, w *room.Doorway, before []room.Doorway) {
	for _, o := range before {
		if o.From == "" || w.From == "" || !sameWall(o.Wall, w.Wall) {
			continue
		}
		from, to := o.At, o.At+o.Width
		if o.From != w.From {
			l, ok := n.read(w.Wall)
			if !ok {
				continue
			}
			from, to = l-to+tape.Inch/2, l-from-tape.Inch/2
		}
		if w.At < to && from < w.At+w.Width {
			n.d.failPath(at(path, "at"), "this doorway lies over the doorway “"+o.Name+"”", tape.Paper(n.j.Unit).Of(w.At), "doorways beside each other")
		}
	}
}

func sameWall(a, b room.Wall) bool { return a == b || a == room.Wall{b[1], b[0]} }

// stays checks how each thing that stays is set out.
func (n *names) stays() {
	for _, s := range n.j.Sketch.Stays {
		path := at("stays", s.Name)
		n.soleName(path, s.Name)
		placed := n.d.given(at(path, "wall"))
		switch {
		case n.d.given(at(path, "corners")) && placed:
			n.d.failPath(at(path, "wall"), "it is given by its corners and from a wall", "", "one of the two")
		case n.d.given(at(path, "corners")):
			n.stayCorners(path, s)
		case placed:
			n.stayFromWall(path, s)
		default:
			n.d.failPath(path+keyOf, "nothing says where this stands", s.Name, "its corners, or wall, from, at, width and depth")
		}
	}
}

// soleName checks that no doorway is called by the name of a thing that stays: both stand
// in lists and among edges by their names.
func (n *names) soleName(path, name string) {
	for _, d := range n.j.Sketch.Doorways {
		if d.Said() == name {
			n.d.failPath(path+keyOf, "a doorway has this name too", name, "a name of its own")
		}
	}
}

// stayCorners checks the corners of a thing that readings reach.
func (n *names) stayCorners(path string, s room.Stay) {
	if len(s.Corners) < 3 {
		n.d.failPath(at(path, "corners"), "it has three corners at least", strings.Join(s.Corners, ", "), "its corners in order round it")
	}
	for i, c := range s.Corners {
		if slices.Contains(s.Corners[:i], c) {
			n.d.failPath(at(path, "corners"), "corner “"+c+"” is named twice", c, "each corner once, in order round it")
		}
		if _, corner := n.roomOf[c]; corner || n.points[c] {
			continue
		}
		if n.reached(c) < 2 && !n.d.sketch {
			n.d.failPath(at(path, "corners"), "too few readings reach corner “"+c+"” to place it", c, "two readings from it at least, to corners or points that are known")
		}
	}
}

// reached is the number of readings that reach c.
func (n *names) reached(c string) int {
	count := 0
	for _, r := range n.j.Readings {
		if r.From == c || r.To == c {
			count++
		}
	}
	return count
}

// stayFromWall checks a thing set out from a wall.
func (n *names) stayFromWall(path string, s room.Stay) {
	for _, k := range []string{"from", "at", "width", "depth"} {
		if !n.d.given(at(path, k)) && (k == "from" || !n.d.sketch) {
			n.d.failPath(path+keyOf, "“"+k+"” is missing", "", k+", as it is set out from a wall")
		}
	}
	if n.wall(at(path, "wall"), s.Wall) {
		n.end(at(path, "from"), s.From, s.Wall)
		n.reach(at(path, "width"), "it", s.Wall, s.At+s.Width)
	}
}

// wishes checks the walls, doorway and corner that wishes and joists name.
func (n *names) wishes() {
	for i, w := range n.j.Wishes.Between {
		if w != (room.Wall{}) {
			n.wall(at("wishes", "rows_between", strconv.Itoa(i)), w)
		}
	}
	w := n.j.Wishes
	n.wall(at("joists", "along"), n.j.Joists.Along)
	if w.Across {
		n.wall(at("wishes", "rows_across"), w.Direction)
	} else {
		n.wall(at("wishes", "rows_along"), w.Direction)
	}
	n.wall(at("wishes", "start_wall"), w.StartWall)
	n.mark(at("wishes", "edge_on"), w.EdgeOn)
	n.edge(at("wishes", "full_board_at"), w.FullBoard)
	for i, s := range w.Seen {
		n.wall(at("wishes", "seen_walls", strconv.Itoa(i)), s)
	}
	n.through(w.RunThrough)
	n.from(at("wishes", "continuous_from"), w.From)
	n.taper(at("wishes", "taper_at"), w.Taper)
}

// through checks that rows can run through the doorway that is wished for.
func (n *names) through(name string) {
	if name == "" {
		return
	}
	path := at("wishes", "run_through")
	var all []string
	for _, w := range n.j.Sketch.Doorways {
		if w.Name == name && w.Beyond != room.BeyondRoom && w.Beyond != "" {
			n.d.failPath(path, "this floor ends in the "+name+", so no row runs through", name, "a doorway with another room of this job beyond")
			return
		}
		if w.Name == name {
			return
		}
		all = append(all, w.Name)
	}
	if len(all) == 0 {
		n.d.failPath(path, "“"+name+"” is not a doorway of this job", name, "a doorway under doorways")
		return
	}
	n.d.notOne(n.d.at[path], name, all)
}
