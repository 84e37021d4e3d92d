package drawing

import (
	"math"

	"strake/sheet"
)

func length(p sheet.Pt) float64 { return math.Hypot(p.X, p.Y) }

func unit(p sheet.Pt) sheet.Pt {
	if l := length(p); l > 0 {
		return p.Times(1 / l)
	}
	return sheet.Pt{X: 1}
}

// between is the place the part k of the way from a to b.
func between(a, b sheet.Pt, k float64) sheet.Pt { return a.Add(b.Sub(a).Times(k)) }

// inside tells whether p lies in the rings (an odd number of times).
func inside(rings [][]sheet.Pt, p sheet.Pt) bool {
	return sheet.Holds(rings, p)
}

// net is a net of places over a four-cornered outline: how much of it lies in
// some rings is told from these.
func net(o []sheet.Pt) []sheet.Pt {
	const n = 8
	var out []sheet.Pt
	for i := 0; i <= n; i++ {
		a, b := between(o[0], o[1], float64(i)/n), between(o[3], o[2], float64(i)/n)
		for j := 0; j <= 2; j++ {
			out = append(out, between(a, b, float64(j)/2))
		}
	}
	return out
}

// within tells whether the whole outline lies in the rings, clear of them
// whether none of it does.
func within(rings [][]sheet.Pt, o []sheet.Pt) bool {
	for _, p := range net(o) {
		if !inside(rings, p) {
			return false
		}
	}
	return true
}

func clearOf(rings [][]sheet.Pt, o []sheet.Pt) bool {
	for _, p := range net(o) {
		if inside(rings, p) {
			return false
		}
	}
	return true
}

// reading is the turn of writing along a line so that it is read from the foot
// or from the right of the sheet.
func reading(a, b sheet.Pt) float64 {
	d := b.Sub(a)
	deg := math.Atan2(d.Y, d.X) * 180 / math.Pi
	switch {
	case deg > 80: // an upright line that leans a little is still read from the right
		deg -= 180
	case deg < -100:
		deg += 180
	}
	// Near enough to a quarter turn is one: it is drawn and read the better.
	for _, q := range []float64{0, -90} {
		if math.Abs(deg-q) < 0.05 {
			return q
		}
	}
	return deg
}

// up is the direction from the foot to the head of writing turned so.
func up(turn float64) sheet.Pt {
	s, c := math.Sincos(turn * math.Pi / 180)
	return sheet.Pt{X: s, Y: -c}
}

// outward is square to the line from a to b, to its right on the floor: away
// from what the line runs round, which lies on its left.
func outward(a, b sheet.Pt) sheet.Pt {
	u := unit(b.Sub(a))
	return sheet.Pt{X: -u.Y, Y: u.X}
}

// disc is a circle as a ring of many corners.
func disc(mid sheet.Pt, radius float64) []sheet.Pt {
	const n = 24
	out := make([]sheet.Pt, n)
	for i := range out {
		s, c := math.Sincos(2 * math.Pi * float64(i) / n)
		out[i] = mid.Add(sheet.Pt{X: c * radius, Y: s * radius})
	}
	return out
}
