package survey

import (
	"fmt"
	"slices"

	"strake/room"
	"strake/tape"
)

// Ask is a reading to take.
type Ask struct {
	Reading Reading      // without its value
	Marks   []room.Point // points to mark on the walls first
	Through string       // the doorway it is pulled through, "" inside one room
	Past    string       // what stands up in its way, "" nothing: asked for only where nothing else fixes the shape
}

// Name is the ask in words: A-C, or "from wall A-B, 90" from A, to C", and the
// doorway that it goes through.
func (a Ask) Name(style tape.Style) string {
	if a.Through != "" {
		return a.ends(style) + " through “" + a.Through + "”"
	}
	return a.ends(style)
}

func (a Ask) ends(style tape.Style) string {
	if len(a.Marks) == 0 {
		return a.Reading.Name()
	}
	end := func(name string) string {
		for _, p := range a.Marks {
			if p.Name == name {
				return fmt.Sprintf("the mark on wall %s at %s from %s", p.Wall, style.Of(p.At), p.From)
			}
		}
		return name
	}
	if a.Reading.Kind == Width {
		return "from " + end(a.Reading.From) + " square across to wall " + a.Reading.Wall.String()
	}
	return "from " + end(a.Reading.From) + " to " + end(a.Reading.To)
}

// ease weighs a tie: one to a mark on a wall has to say more than one from
// corner to corner.
func (a Ask) ease() float64 {
	if len(a.Marks) > 0 {
		return 0.7
	}
	return 1
}

// candidate is an ask with its equation.
type candidate struct {
	ask  Ask
	row  []entry
	sd   float64
	room int
}

// candidates are the readings that could still be taken: in each room between
// corners that see each other and from the middle of walls, and from room to
// room through doorways. past are those that something stands in the
// way of.
func (r Result) candidates(net *net, x []float64, rs []Reading, step tape.Length) (free, past []candidate) {
	read := map[[2]string]bool{}
	for _, v := range rs {
		if v.Kind == Between {
			read[[2]string{v.From, v.To}], read[[2]string{v.To, v.From}] = true, true
		}
	}
	add := func(p, q spot, room int, through string) {
		a := askOf(p, q, step)
		a.Through, a.Past = through, r.inTheWay(p.at, q.at)
		o, ok := net.reading(-1, a.Reading, r.model)
		if !ok || read[[2]string{p.name, q.name}] {
			return
		}
		c := candidate{a, net.sparse(o, net.gradient(o, x)), o.sd, room}
		if a.Past == "" {
			free = append(free, c)
		} else {
			past = append(past, c)
		}
	}
	spots := make([][]spot, len(r.Built.Rooms))
	for k, rm := range r.Built.Rooms {
		ring := rm.Ring()
		spots[k] = r.corners(ring)
		spots[k] = append(spots[k], r.points(ring)...)
		if len(ring) <= manyCorners {
			spots[k] = append(spots[k], r.middles(net, rm, step)...)
		}
		r.pairs(ring, spots[k], func(p, q spot) { add(p, q, k, "") })
	}
	r.throughDoorways(spots, add)
	return free, past
}

// pairs are the pairs of spots in a room that a reading between says something
// of, the last wall named as the others are, the way round.
func (r Result) pairs(ring []string, spots []spot, add func(p, q spot)) {
	for i, p := range spots {
		for j, q := range spots[i+1:] {
			switch {
			case !r.tells(ring, p, q):
			case i == 0 && j+2 == len(ring):
				add(q, p)
			default:
				add(p, q)
			}
		}
	}
}

// tells tells whether a reading between two spots says something: a wall from
// corner to corner, or what sees each other across the room.
func (r Result) tells(ring []string, p, q spot) bool {
	if p.name == q.name || sameWall(p, q) && (p.onWall() || q.onWall()) {
		return false
	}
	return r.sees(ring, p, q)
}

func askOf(p, q spot, step tape.Length) Ask {
	a := Ask{Reading: Reading{From: p.name, To: q.name, Value: 1, Step: step}}
	for _, s := range []spot{p, q} {
		if s.mark != nil {
			a.Marks = append(a.Marks, *s.mark)
		}
	}
	return a
}

// manyCorners is where marks on walls are no longer tried: corners alone then
// give readings enough.
const manyCorners = 16

// shortWall is the longest wall (mm) that gets no mark in its middle.
const shortWall = 600

// middles are marks in the middle of a room's walls, at a whole inch or
// centimetre, entered in the net as points.
func (r Result) middles(net *net, rm room.Room, step tape.Length) []spot {
	var out []spot
	ring := rm.Ring()
	for i, c := range ring {
		w := room.Wall{c, ring[(i+1)%len(ring)]}
		length := r.Built.At[w[1]].Sub(r.Built.At[w[0]]).Len()
		if length < shortWall {
			continue
		}
		at, ok := r.markAt(w, length/2, step, func(tape.Length) bool { return true })
		if !ok || r.pointNear(w, at) {
			continue
		}
		p := r.mark(net.freeName(), w, at, step)
		net.points[p.Name] = p
		out = append(out, spot{name: p.Name, at: net.at(p.Name, r.x), walls: []room.Wall{w}, mark: &p})
	}
	return out
}

// points are the points on a room's walls that are marked already.
func (r Result) points(ring []string) []spot {
	var out []spot
	for _, p := range r.Built.Points {
		if _, ok := r.net.points[p.Name]; !ok {
			continue
		}
		_, ccw, _ := r.Built.FindWall(p.Wall)
		if i := slices.Index(ring, ccw[0]); i >= 0 && ring[(i+1)%len(ring)] == ccw[1] {
			out = append(out, spot{name: p.Name, at: r.Built.At[p.Name], walls: []room.Wall{ccw}, marked: true})
		}
	}
	return out
}

// nearMark is how near (mm) two marks on a wall are one.
const nearMark = 100

// pointNear tells whether a point is marked already within a hand of a place on
// a wall, its room at the left.
func (r Result) pointNear(w room.Wall, at tape.Length) bool {
	q, _ := r.square(w, at)
	for _, p := range r.Built.Points {
		if _, ccw, ok := r.Built.FindWall(p.Wall); ok && ccw == w && r.Built.At[p.Name].Sub(q).Len() < nearMark {
			return true
		}
	}
	return false
}

// wholeStep is the unit that marks are set out in.
func wholeStep(step tape.Length) tape.Length {
	if step%tape.SixtyFourth == 0 {
		return tape.Inch
	}
	return 10 * tape.Millimetre
}

// freeName is the first of P1, P2 ... that is no name yet.
func (n *net) freeName() string {
	for i := 1; ; i++ {
		if name := markName(i); !n.known(name) {
			return name
		}
	}
}

// markName is the name of the i-th mark on a wall.
func markName(i int) string { return fmt.Sprintf("P%d", i) }

// with is a net that further points may be entered in.
func (n *net) with() *net {
	out := *n
	out.points = map[string]room.Point{}
	for k, v := range n.points {
		out.points[k] = v
	}
	return &out
}
