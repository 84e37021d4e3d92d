package survey

import (
	"math"

	"strake/plane"
	"strake/room"
)

// Doubt is a figure with its standard deviation.
type Doubt struct{ Value, SD float64 }

// SD is the standard deviation of any figure made from places of corners and
// points: f is asked once with the fitted places and twice for each coordinate
// in doubt. The unit is that of f; places are in mm. +Inf where nothing fixes
// it.
//
//	r.SD(func(at func(string) plane.XY) float64 { return at("C").Sub(at("A")).Len() })
func (r Result) SD(f func(at func(string) plane.XY) float64) float64 {
	return r.Doubt(f).SD
}

// Doubt is SD with the figure itself.
func (r Result) Doubt(f func(at func(string) plane.XY) float64) Doubt {
	x := append([]float64(nil), r.x...)
	at := func(name string) plane.XY {
		if !r.net.known(name) {
			return plane.XY{}
		}
		return r.net.at(name, x)
	}
	out := Doubt{Value: f(at), SD: math.Inf(1)}
	if r.covariance == nil {
		return out
	}
	var row []entry
	for _, i := range r.free {
		if i == r.net.scale() {
			continue
		}
		const h = 0.01
		keep := x[i]
		x[i] = keep + h
		up := f(at)
		x[i] = keep - h
		down := f(at)
		x[i] = keep
		if up != down {
			row = append(row, entry{i, (up - down) / (2 * h)})
		}
	}
	sd := math.Sqrt(math.Max(0, quadratic(r.covariance, row)))
	if r.adrift(row) {
		return out
	}
	out.SD = sd
	return out
}

// adrift tells whether a figure hangs on a coordinate that nothing fixes.
func (r Result) adrift(row []entry) bool {
	steep := 0.0
	for _, e := range row {
		steep = math.Max(steep, math.Abs(e.v))
	}
	return steep > 0 && math.Sqrt(math.Max(0, quadratic(r.covariance, row)))/steep > drift
}

// Heading is the direction of the rows as a function of the places of corners.
type Heading func(at func(string) plane.XY) plane.XY

// AlongWall is rows that run along a wall.
func AlongWall(w room.Wall) Heading {
	return func(at func(string) plane.XY) plane.XY { return at(w[1]).Sub(at(w[0])) }
}

// SquareTo is rows square to a wall.
func SquareTo(w room.Wall) Heading {
	return func(at func(string) plane.XY) plane.XY { return at(w[1]).Sub(at(w[0])).Left() }
}

// Toward is rows in a direction that no reading changes.
func Toward(d plane.XY) Heading {
	return func(func(string) plane.XY) plane.XY { return d }
}

// Across is the width across the boards between two walls, square to the rows,
// at both ends of the stretch along the rows that the walls have in common, in
// order along the rows; mm. ok is false when they have none. The places along
// the rows are those of the fitted room: it is the width there that is in
// doubt. Bows are left out: they are read, not fitted.
func (r Result) Across(rows Heading, start, end room.Wall) (ends [2]Doubt, ok bool) {
	at := func(name string) plane.XY { return r.Built.At[name] }
	d := rows(at)
	if d.Len() == 0 {
		return ends, false
	}
	lo, hi := common(d.Unit(), at, start, end)
	if hi-lo < 1 {
		return ends, false
	}
	for i, t := range []float64{lo, hi} {
		ends[i] = r.Doubt(widthAt(rows, start, end, t))
	}
	return ends, true
}

// common is the stretch along u that two walls share.
func common(u plane.XY, at func(string) plane.XY, v, w room.Wall) (lo, hi float64) {
	span := func(w room.Wall) (float64, float64) {
		a, b := u.Dot(at(w[0])), u.Dot(at(w[1]))
		return math.Min(a, b), math.Max(a, b)
	}
	a, b := span(v)
	c, d := span(w)
	return math.Max(a, c), math.Min(b, d)
}

// widthAt is the width across between two walls at t along the rows.
func widthAt(rows Heading, v, w room.Wall, t float64) func(at func(string) plane.XY) float64 {
	return func(at func(string) plane.XY) float64 {
		d := rows(at)
		if d.Len() == 0 {
			return 0
		}
		u := d.Unit()
		level := func(w room.Wall) float64 {
			a, b := at(w[0]), at(w[1])
			run := u.Dot(b.Sub(a))
			if run == 0 {
				return u.Cross(a)
			}
			return u.Cross(a) + (t-u.Dot(a))/run*u.Cross(b.Sub(a))
		}
		return math.Abs(level(w) - level(v))
	}
}

// Area is a room's area between its corners, with its doubt, mm².
func (r Result) Area(rm room.Room) Doubt {
	ring := rm.Ring()
	return r.Doubt(func(at func(string) plane.XY) float64 {
		sum := 0.0
		for i, c := range ring {
			sum += at(c).Cross(at(ring[(i+1)%len(ring)])) / 2
		}
		return sum
	})
}
