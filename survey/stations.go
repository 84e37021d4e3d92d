package survey

import (
	"math"
	"slices"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// longClose is the longest wall (mm) that rows close at with a width at one
// station: a longer one gets three.
const longClose = 1800

// stations are the widths where rows close: from three marks on the wall, at an
// eighth of its length from each end and in the middle, square across; as many
// more as it takes for three on each long wall across, and one on a short one;
// and two more through each doorway across, near its jambs.
func (r Result) stations(net *net, w Want) []candidate {
	var out []candidate
	for _, wall := range w.Closing {
		k, ccw, ok := r.Built.FindWall(wall)
		if !ok {
			continue
		}
		met := map[room.Wall][]float64{} // where on the wall, mm, the marks lie from which a wall across is met
		add := func(at tape.Length, far room.Wall, through string) {
			if through == "" {
				met[far] = append(met[far], at.Millimetres())
			}
			if r.widthTaken(w.Have, ccw, at, far) {
				return
			}
			p := r.mark(net.freeName(), ccw, at, w.Step)
			net.points[p.Name] = p
			ask := Ask{Reading: Reading{From: p.Name, Kind: Width, Wall: far, Value: 1, Step: w.Step}, Marks: []room.Point{p}, Through: through}
			if o, ok := net.reading(-1, ask.Reading, r.model); ok {
				out = append(out, candidate{ask, net.sparse(o, net.gradient(o, r.x)), o.sd, k})
			}
		}
		length := r.Built.At[ccw[1]].Sub(r.Built.At[ccw[0]]).Len()
		for _, part := range []float64{0.125, 0.5, 0.875} {
			r.across(k, ccw, part*length, w.Step, room.Wall{}, add)
		}
		for _, far := range r.facingWalls(k, ccw) {
			from, to := r.opposite(ccw, far)
			parts := []float64{0.125, 0.5, 0.875}
			if to-from <= longClose {
				parts = []float64{0.5}
			}
			for _, part := range parts {
				mm := from + part*(to-from)
				near := func(at float64) bool { return len(parts) == 1 || math.Abs(at-mm) < (to-from)/5 }
				if to-from > shortWall && !slices.ContainsFunc(met[far], near) {
					r.across(k, ccw, mm, w.Step, far, add)
				}
			}
		}
		for _, d := range r.Built.Doorways {
			r.acrossThrough(k, ccw, d, w.Step, add)
		}
	}
	return out
}

// facingWalls are the walls of room k across from a wall of it, nearly parallel.
func (r Result) facingWalls(k int, w room.Wall) []room.Wall {
	var out []room.Wall
	u := unit(r.Built.At[w[1]].Sub(r.Built.At[w[0]]))
	ring := r.Built.Rooms[k].Ring()
	for i, c := range ring {
		v := room.Wall{c, ring[(i+1)%len(ring)]}
		if unit(r.Built.At[v[1]].Sub(r.Built.At[v[0]])).Dot(u) < -0.97 && u.Cross(r.Built.At[v[0]].Sub(r.Built.At[w[0]])) > 0 {
			out = append(out, v)
		}
	}
	return out
}

// opposite is the part of a wall, in mm from its first corner, that another
// lies square across from.
func (r Result) opposite(w, far room.Wall) (from, to float64) {
	a, d := r.Built.At[w[0]], r.Built.At[w[1]].Sub(r.Built.At[w[0]])
	u := unit(d)
	return math.Max(0, r.Built.At[far[1]].Sub(a).Dot(u)), math.Min(d.Len(), r.Built.At[far[0]].Sub(a).Dot(u))
}

// widthTaken tells whether a width from near this place on a wall to that far
// one was read already.
func (r Result) widthTaken(have []Reading, w room.Wall, at tape.Length, far room.Wall) bool {
	q, _ := r.square(w, at)
	for _, v := range have {
		_, ccw, ok := r.Built.FindWall(v.Wall)
		if v.Kind == Width && ok && ccw == far && r.net.usable(v) && r.Built.At[v.From].Sub(q).Len() < nearMark {
			return true
		}
	}
	return false
}

// across finds a mark near a place (mm) along a wall of room k that a tape
// pulled square from meets a wall at: the wanted one, if any is.
func (r Result) across(k int, w room.Wall, mm float64, step tape.Length, want room.Wall, add func(at tape.Length, far room.Wall, through string)) {
	var far room.Wall
	at, ok := r.markAt(w, mm, step, func(at tape.Length) bool {
		p, u := r.square(w, at)
		v, t, ok := r.facing(k, w, p, u)
		far = v
		end := p.Add(u.Times(t))
		return ok && (want == room.Wall{} || v == want) && r.solid(v, end.Sub(r.Built.At[v[0]]).Len()) && r.inTheWay(p, end) == ""
	})
	if ok {
		add(at, far, "")
	}
}

// acrossThrough finds marks on a wall of room k that a tape pulled square from
// passes a doorway of the room at, near either jamb.
func (r Result) acrossThrough(k int, w room.Wall, d room.Doorway, step tape.Length, add func(at tape.Length, far room.Wall, through string)) {
	side, other, ok := r.sides(k, d)
	if !ok {
		return
	}
	a, u := r.Built.At[w[0]], r.Built.At[w[1]].Sub(r.Built.At[w[0]])
	if u.Len() == 0 {
		return
	}
	for _, part := range []float64{0.2, 0.8} {
		q := side.start.Add(side.end.Sub(side.start).Times(part))
		var far room.Wall
		at, ok := r.markAt(w, q.Sub(a).Dot(u.Unit()), step, func(at tape.Length) bool {
			p, in := r.square(w, at)
			near, t, ok := r.facing(k, w, p, in)
			if !ok || near != side.wall {
				return false
			}
			v, t2, ok := r.facing(other.room, other.wall, p.Add(in.Times(t)), in)
			far = v
			end := p.Add(in.Times(t + t2))
			return ok && opens(p, end, side.start, side.end) && opens(p, end, other.start, other.end) && r.solid(v, end.Sub(r.Built.At[v[0]]).Len()) && r.inTheWay(p, end) == ""
		})
		if ok {
			add(at, far, d.Name)
		}
	}
}

// doorSide is one side of a doorway: its room, wall and jambs, with the room at
// the left.
type doorSide struct {
	room       int
	wall       room.Wall
	start, end plane.XY
}

// sides are the sides of a doorway between rooms, that of room k first.
func (r Result) sides(k int, d room.Doorway) (near, far doorSide, ok bool) {
	i, here, ok1 := r.Built.FindWall(d.Wall)
	j, there, ok2 := r.Built.FindWall(d.OtherWall)
	if d.Beyond != room.BeyondRoom || !ok1 || !ok2 || i == j || k != i && k != j {
		return near, far, false
	}
	near, far = doorSide{room: i, wall: here}, doorSide{room: j, wall: there}
	near.start, near.end = r.net.jambs(here, d.From, d.At, d.Width, r.x)
	far.start, far.end = r.net.jambs(there, d.OtherFrom, d.OtherAt, d.Width, r.x)
	if k == j {
		near, far = far, near
	}
	return near, far, true
}

// square is a place on a wall and the direction square off it, into its room.
func (r Result) square(w room.Wall, at tape.Length) (p, into plane.XY) {
	a, d := r.Built.At[w[0]], unit(r.Built.At[w[1]].Sub(r.Built.At[w[0]]))
	return a.Add(d.Times(at.Millimetres())), d.Left()
}

// facing is the wall of room k that a tape meets first, pulled from p on wall w
// in direction u, and how far off (mm).
func (r Result) facing(k int, w room.Wall, p, u plane.XY) (room.Wall, float64, bool) {
	best, near := w, math.Inf(1)
	ring := r.Built.Rooms[k].Ring()
	for i, c := range ring {
		v := room.Wall{c, ring[(i+1)%len(ring)]}
		if v == w {
			continue
		}
		if t, ok := meets(p, u, r.Built.At[v[0]], r.Built.At[v[1]]); ok && t < near {
			best, near = v, t
		}
	}
	return best, near, best != w
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
