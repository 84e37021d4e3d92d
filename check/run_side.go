package check

import (
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// runEnd is one end of a run as the lay tells of it. Whatever is said of the
// left end holds of the right one with X turned about: in is 1 where the run
// lies towards +X of the end, else -1.
type runEnd struct {
	lay.EndRange
	run *run
	on  side
	in  tape.Length
	at  tape.Length // X where the outline of the run ends
}

func (n *run) ends() [2]runEnd {
	x := boxOf(n.Outline).x()
	return [2]runEnd{
		{n.LeftEnd, n, leftEnd, 1, x.From},
		{n.RightEnd, n, rightEnd, -1, x.To},
	}
}

func (e runEnd) where() string { return e.run.name + ", " + e.on.String() }

// past tells whether x lies further into the run than y.
func (e runEnd) past(x, y tape.Length) bool { return e.in*x > e.in*y }

// strip is the part of the run's strip between two places along it.
func (n *run) strip(x, y tape.Length) plane.Ring {
	return plane.Rect(plane.P(min(x, y), n.Low), plane.P(max(x, y), n.High))
}

// outlineFault is what keeps the outline of a run from being measured; empty
// when nothing does.
func outlineFault(n lay.Run) string {
	if what := ringFault(n.Outline, true); what != "" {
		return what
	}
	if y := boxOf(n.Outline).y(); y.From < n.Low || y.To > n.High {
		return "lies outside the strip of the row"
	}
	return ""
}

// endSpans are the stretches across the row where an outline ends square on
// that side; slanted when a side of it begins there that faces that way and
// does not run square across the row.
func endSpans(o plane.Ring, on side) (square []plane.Span, slanted bool) {
	at := boxOf(o).lo.X
	if on == rightEnd {
		at = boxOf(o).hi.X
	}
	for _, e := range sides(o) {
		switch {
		case e.faces() != on || e.a.X != at && e.b.X != at:
		case e.upright():
			square = append(square, e.y())
		default:
			slanted = true
		}
	}
	return square, slanted || len(square) == 0
}
