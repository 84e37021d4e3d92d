package paper

import (
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
	"strake/words"
)

// atHand is how far from a row's end, beyond the gap there, an edge is still
// what the row comes to.
const atHand = tape.Inch

// end says where a row ends, what it meets there and how. An end that no edge
// was found for runs out beside one (a point), or stands at one that its gap
// alone keeps it off.
func (l *lister) end(at tape.Length, r lay.Run, e lay.EndRange) End {
	out := End{At: at - l.zero, Edge: e.Edge, InPlace: e.InPlace}
	if e.Edge == "" {
		if f, ok := l.seam(at, r); ok {
			out.Edge = f
			return out
		}
		return l.guess(out, at, r)
	}
	for _, f := range l.at.Edges {
		if f.Name == e.Edge && !f.Beside {
			out.Meets = words.Meets(f, l.say)
			break
		}
	}
	return out
}

// seam is the line to other rows that a row ends at, if it does.
func (l *lister) seam(at tape.Length, r lay.Run) (string, bool) {
	for _, f := range l.part.Edges {
		if f.Kind == floor.Meeting && !f.Beside && offEnd(f, at, r) <= tape.Millimetre {
			return "meets the " + f.Name, true
		}
	}
	return "", false
}

// guess looks for the edge nearest to the end of a row, one that rows end at
// before one that lies beside them.
func (l *lister) guess(out End, at tape.Length, r lay.Run) End {
	best, beside := -1, -1
	near, level := tape.Longest, tape.Longest
	for i, f := range l.at.Edges {
		d := offEnd(f, at, r)
		reach := max(f.Range.Least.Abs(), f.Range.Greatest.Abs()) + atHand
		switch {
		case d > reach:
		case f.Beside && d < level:
			beside, level = i, d
		case !f.Beside && d < near:
			best, near = i, d
		}
	}
	switch {
	case best >= 0:
		out.Edge, out.Meets = l.at.Edges[best].Name, words.Meets(l.at.Edges[best], l.say)
	case beside >= 0:
		out.Edge = "runs out to a point at " + l.at.Edges[beside].Name
	}
	return out
}

// offEnd is how far the stretch of an edge that lies as high as the row is from
// the place at along the rows; tape.Longest when none does.
func offEnd(f floor.AlignedEdge, at tape.Length, r lay.Run) tape.Length {
	a, b := f.From, f.To
	if a.Y > b.Y {
		a, b = b, a
	}
	gap := max(f.Range.Least.Abs(), f.Range.Greatest.Abs())
	m := plane.Span{From: a.Y - gap, To: b.Y + gap}.Meet(plane.Span{From: r.Low, To: r.High})
	if m.Empty() {
		return tape.Longest
	}
	x, z := placeAt(a, b, m.From), placeAt(a, b, m.To)
	return max(0, min(x, z)-at, at-max(x, z))
}

// placeAt is the X of the line from a up to b at height y, no further than its
// ends.
func placeAt(a, b plane.Pt, y tape.Length) tape.Length {
	switch {
	case y <= a.Y:
		return a.X
	case y >= b.Y:
		return b.X
	}
	return a.X + tape.Length(float64(y-a.Y)/float64(b.Y-a.Y)*float64(b.X-a.X))
}
