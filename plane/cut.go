package plane

import (
	"cmp"
	"slices"

	"strake/tape"
)

// Above is the part of g above the line Y = y.
//
//  1. Corners made by the cut lie on the line, rounded along it to a tick.
//  2. Above and Below of one line share every such corner exactly.
//  3. What only touches the line is left out.
func (g Region) Above(y tape.Length) Region {
	var out Region
	var chains cutter
	for _, r := range g {
		switch over := countAbove(r, y); {
		case len(r) == 0:
		case over == len(r):
			out = append(out, r)
		case over > 0:
			chains.add(r, y)
		}
	}
	return append(out, chains.close()...)
}

// Below is the part of g below the line Y = y.
func (g Region) Below(y tape.Length) Region {
	return g.turned(half).Above(-y).turned(half)
}

// RightOf is the part of g to the right of the line X = x.
func (g Region) RightOf(x tape.Length) Region {
	return g.turned(left).Above(x).turned(right)
}

// LeftOf is the part of g to the left of the line X = x.
func (g Region) LeftOf(x tape.Length) Region {
	return g.turned(right).Above(-x).turned(left)
}

// Strip is the part of g between the lines Y = low and Y = high.
func (g Region) Strip(low, high tape.Length) Region { return g.Above(low).Below(high) }

func left(p Pt) Pt  { return Pt{-p.Y, p.X} }
func right(p Pt) Pt { return Pt{p.Y, -p.X} }
func half(p Pt) Pt  { return Pt{-p.X, -p.Y} }

func (g Region) turned(turn func(Pt) Pt) Region {
	out := make(Region, len(g))
	for i, r := range g {
		t := make(Ring, len(r))
		for j, p := range r {
			t[j] = turn(p)
		}
		out[i] = t
	}
	return out
}

func countAbove(r Ring, y tape.Length) int {
	n := 0
	for _, p := range r {
		if p.Y > y {
			n++
		}
	}
	return n
}

// chain is a stretch of a ring above the line, from where it rises through it
// to where it falls back. A corner on the line counts as below it.
type chain struct {
	points Ring
	used   bool
}

// crossing is a place where a chain starts or ends: at the whole tick floor
// plus rem/den along the line, leaning by dx over dy just above it.
type crossing struct {
	floor, rem, den int64
	dx, dy          int64
	chain           int
	rises           bool
	at              Pt
}

type cutter struct {
	chains    []chain
	crossings []crossing
}

// add takes up the chains of r above the line.
func (c *cutter) add(r Ring, y tape.Length) {
	first := slices.IndexFunc(r, func(p Pt) bool { return p.Y <= y })
	open := false
	for k := range r {
		a, b := r[(first+k)%len(r)], r[(first+k+1)%len(r)]
		switch {
		case a.Y <= y && b.Y > y:
			x := crossAt(a, b, y)
			x.chain, x.rises = len(c.chains), true
			c.crossings = append(c.crossings, x)
			c.chains = append(c.chains, chain{points: Ring{x.at, b}})
			open = true
		case a.Y > y && b.Y <= y:
			x := crossAt(b, a, y)
			x.chain = len(c.chains) - 1
			c.crossings = append(c.crossings, x)
			last := &c.chains[x.chain]
			last.points = append(last.points, x.at)
			open = false
		case open:
			last := &c.chains[len(c.chains)-1]
			last.points = append(last.points, b)
		}
	}
}

// crossAt is where the edge from lo up to hi meets the line; lo is not above
// it, hi is.
func crossAt(lo, hi Pt, y tape.Length) crossing {
	d := hi.Sub(lo)
	n, den := int64(y-lo.Y)*int64(d.X), int64(d.Y)
	q, rem := n/den, n%den
	if rem < 0 {
		q, rem = q-1, rem+den
	}
	x := crossing{floor: int64(lo.X) + q, rem: rem, den: den, dx: int64(d.X), dy: int64(d.Y)}
	x.at = Pt{tape.Length(roundEven(x.floor, rem, den)), y}
	return x
}

// roundEven rounds floor + rem/den to the nearest whole number, ties to the
// even one: the same from either end of an edge and in any quarter turn.
func roundEven(floor, rem, den int64) int64 {
	if 2*rem > den || 2*rem == den && floor&1 != 0 {
		return floor + 1
	}
	return floor
}

func (a crossing) before(b crossing) int {
	if a.floor != b.floor {
		return cmp.Compare(a.floor, b.floor)
	}
	if c := cmpMul(a.rem, b.den, b.rem, a.den); c != 0 {
		return c
	}
	return cmpMul(a.dx, b.dy, b.dx, a.dy)
}

// close joins the chains along the line: just above it the area lies between
// the first and the second crossing, the third and the fourth and so on, and
// is run round with the area on the left, so each falling chain is joined to
// the rising one at the other end of its stretch.
func (c *cutter) close() Region {
	slices.SortStableFunc(c.crossings, crossing.before)
	next := make([]int, len(c.chains)) // falling chain -> rising chain
	for i := range next {
		next[i] = -1
	}
	for i := 0; i+1 < len(c.crossings); i += 2 {
		a, b := c.crossings[i], c.crossings[i+1]
		if a.rises {
			a, b = b, a
		}
		next[a.chain] = b.chain
	}
	var out Region
	for i := range c.chains {
		var ring Ring
		for j := i; j >= 0 && !c.chains[j].used; j = next[j] {
			c.chains[j].used = true
			ring = append(ring, c.chains[j].points...)
		}
		if ring = ring.Tidy(); ring != nil && ring.Area2() != 0 {
			out = append(out, ring)
		}
	}
	return out
}
