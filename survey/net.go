package survey

import (
	"math"

	"strake/plane"
	"strake/room"
)

// net is every named point as a function of the unknowns: two coordinates in
// mm for each corner, then the scale of the tape in mm per m.
type net struct {
	sketch room.Sketch
	index  map[string]int // corner -> its x in the unknowns; y follows
	points map[string]room.Point
	count  int // unknowns, the scale included
	free   []bool
	first  []float64       // the unknowns as they start
	placed map[string]bool // corners of what stays that readings place at the start
}

// newNet numbers the corners of all rooms and of what stays by corners.
func newNet(s room.Sketch) *net {
	n := &net{sketch: s, index: map[string]int{}, placed: map[string]bool{}, points: map[string]room.Point{}}
	for _, r := range s.Rooms {
		for _, c := range r.Ring() {
			n.number(c)
		}
	}
	for _, st := range s.Stays {
		for _, c := range st.Corners {
			n.number(c)
		}
	}
	for _, p := range s.Points {
		if _, _, ok := s.FindWall(p.Wall); ok {
			n.points[p.Name] = p
		}
	}
	n.count++
	n.free = make([]bool, n.count)
	for i := range n.free {
		n.free[i] = true
	}
	return n
}

func (n *net) number(corner string) {
	if _, ok := n.index[corner]; !ok {
		n.index[corner] = n.count
		n.count += 2
	}
}

// scale is the index of the tape's scale among the unknowns.
func (n *net) scale() int { return n.count - 1 }

func (n *net) known(name string) bool {
	_, c := n.index[name]
	_, p := n.points[name]
	return c || p
}

// at is where a named point lies for these unknowns.
func (n *net) at(name string, x []float64) plane.XY {
	if i, ok := n.index[name]; ok {
		return plane.XY{X: x[i], Y: x[i+1]}
	}
	p := n.points[name]
	return n.face(p.Wall, p.From, p.At.Millimetres(), x)
}

// face is along, on the wall's own face where it bows.
func (n *net) face(w room.Wall, from string, mm float64, x []float64) plane.XY {
	at := n.along(w, from, mm, x)
	i, ccw, ok := n.sketch.FindWall(w)
	if !ok || !n.sketch.Rooms[i].Bowed(ccw) {
		return at
	}
	d := n.at(ccw[1], x).Sub(n.at(ccw[0], x))
	if d.Len() == 0 {
		return at
	}
	if from != ccw[0] {
		mm = d.Len() - mm
	}
	return at.Sub(d.Unit().Left().Times(n.sketch.Rooms[i].OutAt(ccw, d.Len(), mm)))
}

// along is the place on a wall this far (mm) from one of its corners.
func (n *net) along(w room.Wall, from string, mm float64, x []float64) plane.XY {
	other := w[1]
	if from == w[1] {
		other = w[0]
	}
	a, b := n.at(from, x), n.at(other, x)
	if d := b.Sub(a); d.Len() > 0 {
		return a.Add(d.Unit().Times(mm))
	}
	return a
}

// needs lists the unknowns that place a named point.
func (n *net) needs(names ...string) []int {
	var out []int
	for _, name := range names {
		if p, ok := n.points[name]; ok {
			out = append(out, n.needs(p.Wall[0], p.Wall[1])...)
			continue
		}
		i := n.index[name]
		out = append(out, i, i+1)
	}
	return out
}

// inside is the inside angle at corner b of a ring a, b, c run
// counter-clockwise, in radians from 0 to 2 pi.
func inside(a, b, c plane.XY) float64 {
	u, v := c.Sub(b), a.Sub(b)
	t := math.Atan2(u.Cross(v), u.Dot(v))
	if t < 0 {
		t += 2 * math.Pi
	}
	return t
}

// unit is d scaled to length 1; along X where d has no length, as between two
// corners on one spot.
func unit(d plane.XY) plane.XY {
	if d.Len() == 0 {
		return plane.XY{X: 1}
	}
	return d.Unit()
}
