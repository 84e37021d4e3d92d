package survey

import (
	"math"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// stations are the widths where rows close: from three marks on the wall, at an
// eighth of its length from each end and in the middle, square across.
func (r Result) stations(net *net, w Want) []candidate {
	var out []candidate
	for _, wall := range w.Closing {
		k, ccw, ok := r.Built.FindWall(wall)
		if !ok {
			continue
		}
		a, b := r.Built.At[ccw[0]], r.Built.At[ccw[1]]
		for _, part := range []float64{0.125, 0.5, 0.875} {
			at := tape.Nearest(ticks(part*b.Sub(a).Len()), wholeStep(w.Step))
			facing, ok := r.facing(r.Built.Rooms[k], ccw, at.Millimetres())
			if !ok {
				continue
			}
			p := room.Point{Name: net.freeName(), Wall: ccw, From: ccw[0], At: at}
			net.points[p.Name] = p
			ask := Ask{Reading: Reading{From: p.Name, Kind: Width, Wall: facing, Value: 1, Step: w.Step}, Marks: []room.Point{p}}
			if o, ok := net.reading(-1, ask.Reading, r.model); ok {
				out = append(out, candidate{ask, net.sparse(o, net.gradient(o, r.x)), o.sd, k})
			}
		}
	}
	return out
}

// facing is the wall that a tape meets first, pulled square from a place on a
// wall.
func (r Result) facing(rm room.Room, w room.Wall, at float64) (room.Wall, bool) {
	a, d := r.Built.At[w[0]], r.Built.At[w[1]].Sub(r.Built.At[w[0]])
	if d.Len() == 0 {
		return w, false
	}
	p, u := a.Add(d.Unit().Times(at)), d.Unit().Left()
	best, near := w, math.Inf(1)
	ring := rm.Ring()
	for i, c := range ring {
		v := room.Wall{c, ring[(i+1)%len(ring)]}
		if v == w {
			continue
		}
		if t, ok := meets(p, u, r.Built.At[v[0]], r.Built.At[v[1]]); ok && t < near {
			best, near = v, t
		}
	}
	return best, best != w
}

// meets is how far along the ray from p in direction u (a unit) the segment a-b
// is met.
func meets(p, u, a, b plane.XY) (float64, bool) {
	d := b.Sub(a)
	turn := u.Cross(d)
	if math.Abs(turn) < 1e-9 {
		return 0, false
	}
	t, s := a.Sub(p).Cross(d)/turn, a.Sub(p).Cross(u)/turn
	return t, t > 1 && s >= 0 && s <= 1
}
