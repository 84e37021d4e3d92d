package row

import (
	"strake/plane"
	"strake/tape"
)

// dehorned is a part of a strip without its horns. Where a wall meets a jamb a
// strip that goes on into the doorway also has the wedge between its row line
// and the wall, thin to nothing, however little of the wall's gap it fills.
// Where Need asks for none of a wedge the row passes the corner without it.
func dehorned(ring plane.Ring, need []plane.Ring) plane.Ring {
	out := append(plane.Ring(nil), ring...)
	for i := range out {
		n := len(out)
		before, tip, after := out[(i+n-1)%n], out[i], out[(i+1)%n]
		if foot, ok := horn(before, tip, after, out[(i+2)%n], need); ok { // the row line comes first
			out[i] = foot
		} else if foot, ok := horn(after, tip, before, out[(i+n-2)%n], need); ok {
			out[i] = foot
		}
	}
	return out
}

// horn tells whether a corner between a row line, which comes from the corner
// line, and a side beside the rows is the tip of one: that side ends at a corner
// that stands into the strip, over the row line, from where the strip goes on
// away from it, steeply or leaning back over the wedge. The foot is the place on the row line under that corner.
func horn(line, tip, corner, beyond plane.Pt, need []plane.Ring) (foot plane.Pt, ok bool) {
	foot = plane.P(corner.X, tip.Y)
	in := tape.Length(1) // which way the strip lies from the tip
	if line.X < tip.X {
		in = -1
	}
	up := tape.Length(1)
	if corner.Y < tip.Y {
		up = -1
	}
	switch {
	case line.Y != tip.Y || corner.Y == tip.Y || (corner.Y-tip.Y).Abs() >= (corner.X-tip.X).Abs(),
		in*(corner.X-tip.X) <= 0 || in*(line.X-corner.X) <= 0,
		up*(beyond.Y-corner.Y) <= max(0, in*(beyond.X-corner.X)):
		return foot, false
	}
	wedge := plane.Ring{tip, foot, corner}
	if wedge.Area2() < 0 {
		wedge = plane.Ring{tip, corner, foot}
	}
	for _, r := range need {
		if meetsWedge(r, wedge) {
			return foot, false
		}
	}
	return foot, true
}

// meetsWedge tells whether a ring covers any of a wedge but its edge, to two
// ticks.
func meetsWedge(r, wedge plane.Ring) bool {
	lo, hi := wedge.Box()
	xs := []tape.Length{lo.X, lo.X + (hi.X-lo.X)/2, hi.X}
	for _, p := range r {
		if p.X > lo.X && p.X < hi.X {
			xs = append(xs, p.X)
		}
	}
	for _, x := range xs {
		for _, leftwards := range []bool{false, true} {
			for _, s := range (plane.Region{r}).Section(x, leftwards) {
				for _, w := range (plane.Region{wedge}).Section(x, leftwards) {
					if s.Meet(w).Len() > 2 {
						return true
					}
				}
			}
		}
	}
	return false
}
