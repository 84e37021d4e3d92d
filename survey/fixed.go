package survey

import (
	"slices"

	"strake/plane"
)

// fix holds the datum: the fixed corners where there are any, else the first
// corner of the first room and the direction of its first wall, which starts
// along X and so keeps its Y. Rooms that nothing joins keep their own datum
// through their assumed start.
func (n *net) fix(m Model, x []float64) {
	n.free[n.scale()] = !m.NoScale
	held := n.held(m)
	if len(held) > 0 {
		n.moveTo(held, m.Fixed, x)
		return
	}
	if len(n.sketch.Rooms) == 0 {
		return
	}
	if ring := n.sketch.Rooms[0].Ring(); len(ring) > 1 {
		a, b := n.index[ring[0]], n.index[ring[1]]
		n.free[a], n.free[a+1], n.free[b+1] = false, false, false
	}
}

// held lists the fixed corners that are in the net, in order.
func (n *net) held(m Model) []string {
	var out []string
	for name := range m.Fixed {
		if _, ok := n.index[name]; ok {
			out = append(out, name)
		}
	}
	slices.Sort(out)
	return out
}

// moveTo turns and shifts the whole start so that the first two fixed corners
// lie right, then holds every fixed corner where it belongs.
func (n *net) moveTo(held []string, fixed map[string]plane.XY, x []float64) {
	from, to := n.at(held[0], x), fixed[held[0]]
	turn := plane.XY{X: 1}
	if len(held) > 1 {
		u, v := n.at(held[1], x).Sub(from), fixed[held[1]].Sub(to)
		if u.Len() > 0 && v.Len() > 0 {
			u, v = u.Unit(), v.Unit()
			turn = plane.XY{X: u.Dot(v), Y: u.Cross(v)}
		}
	}
	for _, i := range n.index {
		d := plane.XY{X: x[i], Y: x[i+1]}.Sub(from)
		p := to.Add(turn.Times(d.X)).Add(turn.Left().Times(d.Y))
		x[i], x[i+1] = p.X, p.Y
	}
	for _, c := range held {
		i := n.index[c]
		x[i], x[i+1] = fixed[c].X, fixed[c].Y
		n.free[i], n.free[i+1] = false, false
	}
}
