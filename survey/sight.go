package survey

import (
	"math"
	"slices"

	"strake/plane"
	"strake/room"
)

// spot is where a tape can be held: a corner, or a point on a wall.
type spot struct {
	name   string
	at     plane.XY
	walls  []room.Wall // it lies on, counter-clockwise
	mark   *room.Point // a point still to be marked
	marked bool        // a point marked already
}

// onWall tells whether a spot is no corner.
func (s spot) onWall() bool { return s.marked || s.mark != nil }

// sees tells whether a tape can be pulled straight from p to q inside a room.
// Walls that p or q lie on do not stand in the way; two spots on one wall see
// each other.
func (r Result) sees(ring []string, p, q spot) bool {
	if sameWall(p, q) {
		return true
	}
	for i := range ring {
		w := room.Wall{ring[i], ring[(i+1)%len(ring)]}
		if slices.Contains(p.walls, w) || slices.Contains(q.walls, w) {
			continue
		}
		if crosses(p.at, q.at, r.Built.At[w[0]], r.Built.At[w[1]]) {
			return false
		}
	}
	return r.net.within(p.at.Add(q.at).Times(0.5), r.x)
}

func sameWall(p, q spot) bool {
	for _, w := range p.walls {
		if slices.Contains(q.walls, w) {
			return true
		}
	}
	return false
}

func crosses(p, q, u, v plane.XY) bool {
	a, b := q.Sub(p), v.Sub(u)
	return a.Cross(u.Sub(p))*a.Cross(v.Sub(p)) < 0 && b.Cross(p.Sub(u))*b.Cross(q.Sub(u)) < 0
}

// corners are a room's corners as spots.
func (r Result) corners(ring []string) []spot {
	n := len(ring)
	out := make([]spot, n)
	for i, c := range ring {
		out[i] = spot{name: c, at: r.Built.At[c], walls: []room.Wall{{ring[(i+n-1)%n], c}, {c, ring[(i+1)%n]}}}
	}
	return out
}

// DistanceSD is the standard deviation of a distance between two corners or
// points (mm), infinite where nothing fixes it.
func (r Result) DistanceSD(a, b string) float64 {
	o, ok := r.net.reading(-1, Reading{From: a, To: b, Value: 1}, r.model)
	if r.covariance == nil || !ok {
		return math.Inf(1)
	}
	o.sd = 1
	row := r.net.sparse(o, r.net.gradient(o, r.x))
	row = slices.DeleteFunc(row, func(e entry) bool { return e.i == r.net.scale() })
	sd := math.Sqrt(math.Max(0, quadratic(r.covariance, row)))
	if sd > drift {
		return math.Inf(1)
	}
	return sd
}

// drift is the deviation (mm) above which nothing fixes a length: squares
// and readings leave no room in doubt by ten metres.
const drift = 10e3
