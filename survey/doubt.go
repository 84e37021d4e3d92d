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
	return r.doubt(func(x, _ []float64) float64 { return f(r.places(x)) }, nil)
}

// places are the named places for these unknowns; what is not known lies at
// the origin.
func (r Result) places(x []float64) func(string) plane.XY {
	return func(name string) plane.XY {
		if !r.net.known(name) {
			return plane.XY{}
		}
		return r.net.at(name, x)
	}
}

// own is a figure read with the tape that is no reading of the network: the
// depth of a hearth. Its error is its own.
type own struct{ mm, sd float64 }

// doubt is the doubt of a figure made from the unknowns and from figures of
// its own.
func (r Result) doubt(f func(x, own []float64) float64, owns []own) Doubt {
	x := append([]float64(nil), r.x...)
	fixed := make([]float64, len(owns))
	for i, o := range owns {
		fixed[i] = o.mm
	}
	at := func() float64 { return f(x, fixed) }
	out := Doubt{Value: at(), SD: math.Inf(1)}
	if r.covariance == nil {
		return out
	}
	var row []entry
	for _, i := range r.free {
		if v := slope(&x[i], at); v != 0 {
			row = append(row, entry{i, v})
		}
	}
	if r.adrift(row) {
		return out
	}
	sum := math.Max(0, quadratic(r.covariance, row))
	for i, o := range owns {
		v := slope(&fixed[i], at) * o.sd
		sum += v * v
	}
	out.SD = math.Sqrt(sum)
	return out
}

// slope is the derivative of f by v, by central differences over 0.02.
func slope(v *float64, f func() float64) float64 {
	const h = 0.01
	keep := *v
	*v = keep + h
	up := f()
	*v = keep - h
	down := f()
	*v = keep
	return (up - down) / (2 * h)
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
