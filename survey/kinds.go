package survey

import (
	"math"
	"slices"

	"strake/room"
)

// usable tells whether everything that a reading names is there.
func (n *net) usable(r Reading) bool {
	if r.Value <= 0 || !n.known(r.From) {
		return false
	}
	if r.Kind == Between {
		return n.known(r.To) && r.From != r.To
	}
	_, _, ok := n.sketch.FindWall(r.Wall)
	onWall := r.From == r.Wall[0] || r.From == r.Wall[1]
	switch r.Kind {
	case Off:
		return ok && !onWall
	case Along:
		return ok && onWall && n.known(r.To) && r.To != r.From
	case Width:
		p, is := n.points[r.From]
		return ok && is && p.Wall != r.Wall && p.Wall != (room.Wall{r.Wall[1], r.Wall[0]})
	}
	return false
}

// reading is the equation of a tape reading; ok is false when it names what is
// not there.
func (n *net) reading(i int, r Reading, m Model) (observation, bool) {
	if !n.usable(r) {
		return observation{}, false
	}
	span := n.span(r)
	want, s := r.Value.Millimetres(), n.scale()
	needs := n.needs(r.From)
	if r.To != "" && n.known(r.To) {
		needs = append(needs, n.needs(r.To)...)
	}
	if r.Kind != Between {
		needs = append(needs, n.needs(r.Wall[0], r.Wall[1])...)
	}
	slices.Sort(needs)
	return observation{
		name: r.Name(), reading: i, sd: n.trust(r, m),
		needs:  append(slices.Compact(needs), s),
		misfit: func(x []float64) float64 { return span(x)*(1+x[s]/1000) - want },
	}, true
}

// trust is the standard deviation of a reading: the tape's, and that of
// walls taken for straight where it ends between their corners. A doubt that
// was written down stands as it is.
func (n *net) trust(r Reading, m Model) float64 {
	sd := m.deviation(r)
	if m.UnitWeights || r.SD > 0 {
		return sd
	}
	sum := sd * sd
	for _, w := range n.between(r) {
		if i, ccw, ok := n.sketch.FindWall(w); ok && !n.sketch.Rooms[i].Bowed(ccw) {
			sum += m.WallMM * m.WallMM
		}
	}
	return math.Sqrt(sum)
}

// between lists the walls on whose face, between the corners, a reading ends.
func (n *net) between(r Reading) []room.Wall {
	var out []room.Wall
	for _, name := range []string{r.From, r.To} {
		if p, ok := n.points[name]; ok && r.Kind != Along {
			out = append(out, p.Wall)
		}
	}
	if r.Kind == Width {
		out = append(out, r.Wall)
	}
	return out
}

// span is the true length of what a reading measures, by the unknowns, mm.
func (n *net) span(r Reading) func(x []float64) float64 {
	i, ccw, _ := n.sketch.FindWall(r.Wall)
	switch r.Kind {
	case Off:
		return n.offset(r.From, ccw, i)
	case Along:
		return func(x []float64) float64 {
			a, b := n.at(r.From, x), n.at(other(r.Wall, r.From), x)
			d := b.Sub(a)
			if d.Len() == 0 {
				return 0
			}
			return n.at(r.To, x).Sub(a).Dot(d.Unit())
		}
	case Width:
		return n.across(n.points[r.From], ccw, i)
	}
	return func(x []float64) float64 { return n.at(r.To, x).Sub(n.at(r.From, x)).Len() }
}

// offset is how far a place lies from the line of a wall, on the side where it
// lies.
func (n *net) offset(from string, w room.Wall, in int) func(x []float64) float64 {
	side := n.sideOf(from, w, in)
	return func(x []float64) float64 { return side * n.beside(from, w, x) }
}

// beside is how far a place lies from the line of a wall, into its room;
// negative behind it.
func (n *net) beside(from string, w room.Wall, x []float64) float64 {
	a, d := n.at(w[0], x), n.at(w[1], x).Sub(n.at(w[0], x))
	if d.Len() == 0 {
		return 0
	}
	return d.Unit().Cross(n.at(from, x).Sub(a))
}

// across is the distance from a point on a wall, square to that wall, to the
// face of another.
func (n *net) across(p room.Point, w room.Wall, in int) func(x []float64) float64 {
	_, own, _ := n.sketch.FindWall(p.Wall)
	return func(x []float64) float64 {
		from := n.at(p.Name, x)
		u := n.at(own[1], x).Sub(n.at(own[0], x)).Left()
		a, d := n.at(w[0], x), n.at(w[1], x).Sub(n.at(w[0], x))
		if u.Len() == 0 || d.Len() == 0 {
			return 0
		}
		u = u.Unit()
		turn := u.Cross(d.Unit())
		if math.Abs(turn) < 0.1 {
			return 0 // the walls stand square to each other: no width
		}
		t := a.Sub(from).Cross(d.Unit()) / turn
		hit := from.Add(u.Times(t)).Sub(a).Dot(d.Unit())
		return t + n.sketch.Rooms[in].OutAt(w, d.Len(), hit)
	}
}

// other is the other corner of a wall.
func other(w room.Wall, corner string) string {
	if w[0] == corner {
		return w[1]
	}
	return w[0]
}
