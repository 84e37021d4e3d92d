package rack

import (
	"strake/plane"
	"strake/tape"
)

// stepped is what boards must cover where a closing row is stepped.
type stepped struct{ need plane.Region }

// straight makes a tapered long edge of one piece straight where the play of
// the gap takes up the taper over that piece's length: a closing row is then
// stepped, each piece ripped to one width, with the steps under the base.
func (b stepped) straight(r plane.Ring, low, high tape.Length) plane.Ring {
	r = b.levelled(r, low, 1)
	return b.levelled(r, high, -1)
}

// levelled straightens the edge towards the strip's line: up is 1 for the edge
// with the piece above it.
func (b stepped) levelled(r plane.Ring, line tape.Length, up tape.Length) plane.Ring {
	lo, hi := r.Box()
	for i, p := range r {
		j := (i + 1) % len(r)
		q := r[j]
		before, after := r[(i+len(r)-1)%len(r)], r[(j+1)%len(r)]
		if p.Y == q.Y || (q.X-p.X)*up != hi.X-lo.X || before.X != p.X || after.X != q.X {
			continue // not a taper from one square end to the other
		}
		y := max(p.Y*up, q.Y*up) * up
		out := append(plane.Ring(nil), r...)
		out[i].Y, out[j].Y = y, y
		if b.covered(out, lo.X, hi.X, min(line, y), max(line, y)) {
			return out
		}
	}
	return r
}

// covered tells whether nothing that boards must cover lies between the line
// of the strip and the straightened edge.
func (b stepped) covered(r plane.Ring, from, to, low, high tape.Length) bool {
	if r.Tidy() == nil || r.Area2() <= 0 {
		return false
	}
	return len(b.need.Strip(low, high).RightOf(from).LeftOf(to)) == 0
}
