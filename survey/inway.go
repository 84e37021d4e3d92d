package survey

import (
	"math"

	"strake/plane"
	"strake/room"
)

// inTheWay names what stands up between two places, within an inch of the
// straight line: no tape passes. "" when nothing does. What was given no size
// yet, or no place, is not in the way.
func (r Result) inTheWay(p, q plane.XY) string {
	for _, st := range r.Built.Stays {
		if !st.StandsUp() {
			continue
		}
		if o := r.Outline(st); len(o) > 0 && nearOutline(o, p, q) < clearOf {
			return st.Name
		}
	}
	return ""
}

// Outline is the line round something that stays, none where it has no area.
func (r Result) Outline(st room.Stay) []plane.XY {
	n := len(st.Corners)
	if n == 0 {
		n = 4
	}
	var out []plane.XY
	for k := range n {
		l, ok := r.stayLine(st, k)
		if !ok {
			return nil
		}
		a, _ := l.line(r.x, l.values())
		out = append(out, a)
	}
	if math.Abs(ringArea(out)) < 1 {
		return nil
	}
	return out
}

// ringArea is the area of an outline, mm²; negative when it runs clockwise.
func ringArea(o []plane.XY) float64 {
	sum := 0.0
	for i, a := range o {
		sum += a.Sub(o[0]).Cross(o[(i+1)%len(o)].Sub(o[0])) / 2
	}
	return sum
}

// nearOutline is how near the straight line from p to q comes to an outline,
// mm; 0 when it meets it or lies inside.
func nearOutline(o []plane.XY, p, q plane.XY) float64 {
	if holds(o, p) {
		return 0
	}
	near := math.Inf(1)
	for i, a := range o {
		b := o[(i+1)%len(o)]
		if crosses(p, q, a, b) {
			return 0
		}
		for _, d := range []float64{offSegment(a, p, q), offSegment(b, p, q), offSegment(p, a, b), offSegment(q, a, b)} {
			near = math.Min(near, d)
		}
	}
	return near
}

// holds tells whether an outline goes round a place.
func holds(o []plane.XY, p plane.XY) bool {
	in := false
	for i, a := range o {
		b := o[(i+1)%len(o)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)*(b.X-a.X)/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}

// offSegment is how far c lies from the segment a-b.
func offSegment(c, a, b plane.XY) float64 {
	d := b.Sub(a)
	if d.Len() == 0 {
		return c.Sub(a).Len()
	}
	t := math.Max(0, math.Min(1, c.Sub(a).Dot(d)/d.Dot(d)))
	return c.Sub(a.Add(d.Times(t))).Len()
}
