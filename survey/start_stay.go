package survey

import (
	"math"
	"slices"

	"strake/plane"
	"strake/room"
)

// startStay sets the corners of something that stays: one that two readings
// reach from placed points by the crossing of two circles, the side that lies
// in a room; one beside two placed ones by a square turn.
func (n *net) startStay(st room.Stay, rs []Reading, x []float64) {
	done := map[string]bool{}
	for _, r := range n.sketch.Rooms {
		for _, c := range r.Corners {
			done[c] = true
		}
	}
	ready := func(name string) bool {
		if p, ok := n.points[name]; ok {
			return done[p.Wall[0]] && done[p.Wall[1]]
		}
		return done[name]
	}
	ring := n.stayRing(st)
	for range ring {
		for i, c := range ring {
			if done[c] {
				continue
			}
			at, ok := n.crossing(c, rs, ready, x)
			if !ok {
				at, ok = n.setOff(c, rs, x)
			}
			n.placed[c] = n.placed[c] || ok
			if !ok {
				at, ok = n.squareOff(ring, i, rs, done, x)
			}
			if ok {
				x[n.index[c]], x[n.index[c]+1] = at.X, at.Y
				done[c] = true
			}
		}
	}
}

// stayRing is the corners of a stay counter-clockwise: they are named the same
// way round as those of the rooms.
func (n *net) stayRing(st room.Stay) []string {
	return room.Room{Corners: st.Corners, Clockwise: len(n.sketch.Rooms) > 0 && n.sketch.Rooms[0].Clockwise}.Ring()
}

// crossing is where two readings from placed points meet.
func (n *net) crossing(c string, rs []Reading, ready func(string) bool, x []float64) (plane.XY, bool) {
	var from []plane.XY
	var dist []float64
	for _, r := range rs {
		other := r.To
		if r.To == c {
			other = r.From
		}
		if r.Kind == Between && (r.From == c || r.To == c) && n.known(other) && ready(other) {
			from, dist = append(from, n.at(other, x)), append(dist, r.Value.Millimetres())
		}
	}
	if len(from) < 2 {
		return plane.XY{}, false
	}
	d := from[1].Sub(from[0])
	l := d.Len()
	if l == 0 {
		return plane.XY{}, false
	}
	along := (dist[0]*dist[0] - dist[1]*dist[1] + l*l) / (2 * l)
	up := math.Sqrt(math.Max(0, dist[0]*dist[0]-along*along))
	u := d.Unit()
	p := from[0].Add(u.Times(along)).Add(u.Left().Times(up))
	q := from[0].Add(u.Times(along)).Sub(u.Left().Times(up))
	if misses(q, from, dist, n.within(q, x)) < misses(p, from, dist, n.within(p, x)) {
		p = q
	}
	return p, true
}

// setOff is where a distance along a wall and one off the same wall meet.
func (n *net) setOff(c string, rs []Reading, x []float64) (plane.XY, bool) {
	for _, r := range rs {
		i := slices.IndexFunc(rs, func(o Reading) bool {
			return o.Kind == Off && o.From == c && (o.Wall == r.Wall || o.Wall == room.Wall{r.Wall[1], r.Wall[0]})
		})
		_, ccw, ok := n.sketch.FindWall(r.Wall)
		if r.Kind != Along || r.To != c || i < 0 || !ok || !n.usable(r) {
			continue
		}
		u := unit(n.at(ccw[1], x).Sub(n.at(ccw[0], x)))
		at := n.along(r.Wall, r.From, r.Value.Millimetres(), x)
		return at.Add(u.Left().Times(rs[i].Value.Millimetres())), true
	}
	return plane.XY{}, false
}

// misses is how badly a place fits further readings; outside every room it
// fits worst.
func misses(p plane.XY, from []plane.XY, dist []float64, within bool) float64 {
	sum := 0.0
	for i, f := range from {
		sum += math.Abs(p.Sub(f).Len() - dist[i])
	}
	if !within {
		sum += 1e6
	}
	return sum
}

// squareOff places corner i of a stay by a square turn from two placed
// corners before or after it.
func (n *net) squareOff(ring []string, i int, rs []Reading, done map[string]bool, x []float64) (plane.XY, bool) {
	k := len(ring)
	for _, step := range []int{1, k - 1} {
		a, b := ring[(i+step)%k], ring[(i+2*step)%k]
		if !done[a] || !done[b] {
			continue
		}
		p, q := n.at(a, x), n.at(b, x)
		l := q.Sub(p).Len()
		if l == 0 {
			continue
		}
		u := q.Sub(p).Unit().Left()
		if step != 1 {
			u = u.Times(-1)
		}
		return p.Add(u.Times(readOr(ring[i], a, rs, l))), true
	}
	return plane.XY{}, false
}

func readOr(a, b string, rs []Reading, otherwise float64) float64 {
	for _, r := range rs {
		if r.From == a && r.To == b || r.From == b && r.To == a {
			return r.Value.Millimetres()
		}
	}
	return otherwise
}
