package check

import (
	"math/big"
	"slices"

	"strake/floor"
	"strake/plane"
	"strake/tape"
)

// boundOf is what a zone may fill besides keeping to the floor's own gaps: its
// outline, drawn in by the stated butt gap along zone lines (they have the
// range [0, 0] otherwise) and drawn out past those edges of the floor that boards
// may reach behind, as far as they may. Nil for a zone that is the whole floor.
//
// A moved corner is rounded to a tick: that is less than 1 tick x the length
// of the sides at it, which the tolerance of cover and gap has room for.
func boundOf(z *zone) plane.Region {
	if len(z.Outline) == 0 || !z.behind() && z.Butt == 0 {
		return z.Outline
	}
	var g plane.Region
	for _, r := range z.Outline {
		es := sides(r)
		off := make([]tape.Length, len(es))
		for i, e := range es {
			if z.lineLength(e) > 0 {
				off[i] = z.Butt
				continue
			}
			es[i], off[i] = z.least(e)
		}
		g = append(g, shift(es, off))
	}
	return g
}

// behind tells whether boards may reach behind any edge of the floor.
func (z *zone) behind() bool {
	return slices.ContainsFunc(z.at.Edges, func(e floor.AlignedEdge) bool { return e.Range.Least < 0 })
}

// least is the edge of the floor that boards may reach behind and that a side of
// the outline lies along, with its least gap; else the side itself and 0. Moved
// out farther, a side beside another that stays would cross it where they meet at
// a small angle. The edge is what is moved: a side of a mm or two, where a row
// line leaves no more of a jamb, tells its direction too badly.
func (z *zone) least(e edge) (edge, tape.Length) {
	along, out := e, tape.Length(0)
	for _, f := range z.at.Edges {
		line := edge{f.From, f.To}
		if f.Range.Least >= out {
			continue
		}
		on := max(e.beside(edge{line.b, line.a}, 4), edge{line.b, line.a}.beside(e, 4))
		if on > jog || on > 0 && on >= e.length()-2*slack && line.length() > jog {
			along, out = line, f.Range.Least
		}
	}
	return along, out
}

// jog is the longest part of a side that is taken for no zone line: corners are
// rounded, and a doorway's jamb may step where the doorway reaches 1 mm into its
// rooms. A side taken for a zone line is not drawn out under an undercut jamb. A
// side that lies on a row line and inside the floor from end to end is one all the
// same: a row may leave no more of its own behind the start line.
const jog = 2 * tape.Millimetre

// lineLength is how much of a side of the zone's outline is a zone line: it
// lies inside the floor, and not along an edge of it to within two ticks.
func (z *zone) lineLength(e edge) tape.Length {
	in, _ := e.within(z.at.Bare)
	if in.Sign() == 0 {
		return 0
	}
	l := e.part(in)
	for _, f := range sidesOf(z.at.Bare) {
		if d := e.step(); cross(d, f.a.Sub(e.a)).Sign() == 0 && cross(d, f.b.Sub(e.a)).Sign() == 0 {
			continue // exactly on its line: that is not inside
		}
		// A short side with rounded corners points away from a long wall: either
		// may lie on the line of the other.
		l -= max(e.beside(edge{f.b, f.a}, 2), f.beside(edge{e.b, e.a}, 2))
	}
	if whole := e.flat() && l > jog/10 && l >= e.length()-2*slack; l <= jog && !whole {
		return 0
	}
	return l
}

// lines is the length of all zone lines of a zone.
func (z *zone) lines() tape.Length {
	var sum tape.Length
	for _, e := range sidesOf(z.Outline) {
		sum += z.lineLength(e)
	}
	return sum
}

// shift moves each side of a ring to its left by off and joins them again.
func shift(es []edge, off []tape.Length) plane.Ring {
	moved := make([]edge, len(es))
	for i, e := range es {
		d := e.step()
		l := e.length()
		v := plane.P(scale(-d.Y, off[i], l), scale(d.X, off[i], l))
		moved[i] = edge{e.a.Add(v), e.b.Add(v)}
	}
	var out plane.Ring
	for i, e := range moved {
		f := moved[(i+1)%len(moved)]
		if p, ok := e.corner(f); ok {
			out = append(out, p)
			continue
		}
		out = append(out, e.b)
		if e.b != f.a {
			out = append(out, f.a)
		}
	}
	return out
}

// scale is v*by/of to the nearest tick; of must not be 0.
func scale(v, by, of tape.Length) tape.Length {
	return nearest(new(big.Rat).Mul(rat(v), frac(by, of)))
}

func nearest(q *big.Rat) tape.Length {
	two := big.NewRat(2, 1)
	n := new(big.Rat).Add(new(big.Rat).Mul(q, two), big.NewRat(1, 1))
	d := new(big.Int).Mul(n.Denom(), big.NewInt(2))
	return tape.Length(new(big.Int).Div(n.Num(), d).Int64())
}

// corner is where the lines of e and f meet, to the nearest tick; false when
// they are parallel.
func (e edge) corner(f edge) (plane.Pt, bool) {
	d, g := e.step(), f.step()
	turn := cross(d, g)
	if turn.Sign() == 0 {
		return plane.Pt{}, false
	}
	t := new(big.Rat).SetFrac(cross(f.a.Sub(e.a), g), turn)
	x := new(big.Rat).Mul(t, rat(d.X))
	y := new(big.Rat).Mul(t, rat(d.Y))
	return e.a.Add(plane.P(nearest(x), nearest(y))), true
}

// lineWith is the length along which the outlines of z and y lie against each
// other.
func (z *zone) lineWith(y *zone) tape.Length {
	var sum tape.Length
	there := sidesOf(turn{y.Dir, z.Dir}.region(y.Outline))
	for _, e := range sidesOf(z.Outline) {
		for _, f := range there {
			sum += max(e.beside(f, slack), f.beside(e, slack)) // the shorter tells its direction worse
		}
	}
	return sum
}
