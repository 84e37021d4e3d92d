package survey

import (
	"fmt"

	"strake/room"
	"strake/tape"
)

// Ask is a reading to take.
type Ask struct {
	Reading Reading      // without its value
	Marks   []room.Point // points to mark on the walls first
}

// Name is the ask in words: A-C, or "from wall A-B, 90" from A, to C".
func (a Ask) Name(style tape.Style) string {
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

// candidate is an ask with its equation.
type candidate struct {
	ask  Ask
	row  []entry
	sd   float64
	room int
}

// candidates are the readings that could still be taken in each room: between
// corners that see each other, and from the middle of walls.
func (r Result) candidates(net *net, x []float64, rs []Reading, step tape.Length) []candidate {
	read := map[[2]string]bool{}
	for _, v := range rs {
		if v.Kind == Between {
			read[[2]string{v.From, v.To}], read[[2]string{v.To, v.From}] = true, true
		}
	}
	var out []candidate
	for k, rm := range r.Built.Rooms {
		ring := rm.Ring()
		spots := r.corners(ring)
		if len(ring) <= manyCorners {
			spots = append(spots, r.middles(net, rm, step)...)
		}
		for i, p := range spots {
			for j, q := range spots[i+1:] {
				if read[[2]string{p.name, q.name}] || !r.tie(ring, p, q) {
					continue
				}
				if i == 0 && j+2 == len(ring) {
					p, q = q, p // the last wall, as it is named
				}
				a := askOf(p, q, step)
				if o, ok := net.reading(-1, a.Reading, r.model); ok {
					out = append(out, candidate{a, net.sparse(o, net.gradient(o, x)), o.sd, k})
				}
			}
		}
	}
	return out
}

// tie tells whether a reading between two spots says something: a wall from
// corner to corner, or what sees each other across the room.
func (r Result) tie(ring []string, p, q spot) bool {
	if p.name == q.name || sameWall(p, q) && (p.mark != nil || q.mark != nil) {
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

// middles are marks in the middle of a room's walls, at a whole inch or
// centimetre, entered in the net as points.
func (r Result) middles(net *net, rm room.Room, step tape.Length) []spot {
	var out []spot
	ring := rm.Ring()
	for i, c := range ring {
		w := room.Wall{c, ring[(i+1)%len(ring)]}
		length := r.Built.At[w[1]].Sub(r.Built.At[w[0]]).Len()
		if length < 900 {
			continue
		}
		at := tape.Nearest(ticks(length/2), wholeStep(step))
		p := room.Point{Name: net.freeName(), Wall: w, From: c, At: at}
		net.points[p.Name] = p
		out = append(out, spot{name: p.Name, at: net.at(p.Name, r.x), walls: []room.Wall{w}, mark: &p})
	}
	return out
}

// wholeStep is the unit that marks are set out in.
func wholeStep(step tape.Length) tape.Length {
	if step%tape.SixtyFourth == 0 {
		return tape.Inch
	}
	return 10 * tape.Millimetre
}

// freeName is the first number that is no name yet.
func (n *net) freeName() string {
	for i := 1; ; i++ {
		if name := fmt.Sprint(i); !n.known(name) {
			return name
		}
	}
}

// with is a net that further points may be entered in.
func (n *net) with() *net {
	out := *n
	out.points = map[string]room.Point{}
	for k, v := range n.points {
		out.points[k] = v
	}
	return &out
}
