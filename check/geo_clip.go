package check

import (
	"math/big"
	"slices"

	"strake/plane"
	"strake/tape"
)

// within is how much of e, as a fraction of its length, lies strictly inside
// g and how much on its line; exact.
func (e edge) within(g plane.Region) (in, on *big.Rat) {
	in, on = new(big.Rat), new(big.Rat)
	ts := []*big.Rat{new(big.Rat), big.NewRat(1, 1)}
	es := sidesOf(g)
	for _, f := range es {
		ts = append(ts, e.cutBy(f)...)
	}
	slices.SortFunc(ts, (*big.Rat).Cmp)
	for i := 1; i < len(ts); i++ {
		part := new(big.Rat).Sub(ts[i], ts[i-1])
		if part.Sign() == 0 {
			continue
		}
		mid := new(big.Rat).Add(ts[i], ts[i-1])
		switch e.stands(mid.Quo(mid, big.NewRat(2, 1)), es) {
		case 1:
			in.Add(in, part)
		case 0:
			on.Add(on, part)
		}
	}
	return in, on
}

// cutBy gives the places along e, as fractions strictly between 0 and 1, where
// the line of f may begin or end to run with it or across it.
func (e edge) cutBy(f edge) []*big.Rat {
	d, g := e.step(), f.step()
	var out []*big.Rat
	keep := func(t *big.Rat) {
		if t.Sign() > 0 && t.Cmp(big.NewRat(1, 1)) < 0 {
			out = append(out, t)
		}
	}
	if turn := cross(d, g); turn.Sign() != 0 {
		keep(new(big.Rat).SetFrac(cross(f.a.Sub(e.a), g), turn))
		return out
	}
	if cross(d, f.a.Sub(e.a)).Sign() == 0 {
		size := square2(d)
		keep(new(big.Rat).SetFrac(dot(d, f.a.Sub(e.a)), size))
		keep(new(big.Rat).SetFrac(dot(d, f.b.Sub(e.a)), size))
	}
	return out
}

// stands tells where the place at fraction t of e lies among the sides of a
// region: 1 inside, 0 on a side, -1 outside.
func (e edge) stands(t *big.Rat, es []edge) int {
	d := e.step()
	x := new(big.Rat).Add(rat(e.a.X), new(big.Rat).Mul(t, rat(d.X)))
	y := new(big.Rat).Add(rat(e.a.Y), new(big.Rat).Mul(t, rat(d.Y)))
	odd := false
	for _, f := range es {
		g := f.step()
		side := new(big.Rat).Mul(rat(g.X), new(big.Rat).Sub(y, rat(f.a.Y)))
		side.Sub(side, new(big.Rat).Mul(rat(g.Y), new(big.Rat).Sub(x, rat(f.a.X))))
		if side.Sign() == 0 && holds(f.x(), x) && holds(f.y(), y) {
			return 0
		}
		if (rat(f.a.Y).Cmp(y) > 0) != (rat(f.b.Y).Cmp(y) > 0) && (side.Sign() > 0) == (f.b.Y > f.a.Y) {
			odd = !odd
		}
	}
	if odd {
		return 1
	}
	return -1
}

// holds tells whether v lies in s, ends counted.
func holds(s plane.Span, v *big.Rat) bool {
	return rat(s.From).Cmp(v) <= 0 && rat(s.To).Cmp(v) >= 0
}

// part is a fraction of the length of e, rounded up to a tick.
func (e edge) part(of *big.Rat) tape.Length {
	q := new(big.Rat).Mul(of, of)
	q.Mul(q, new(big.Rat).SetInt(square2(e.step())))
	return tape.Length(rootUp(q).Int64())
}

// perimeterIn is the length of the outline of what g and w share, rounded up:
// the sides of g in w or on its line, and the sides of w inside g. A nil w is
// everywhere.
func perimeterIn(g, w plane.Region) tape.Length {
	if len(w) == 0 {
		return perimeter(g)
	}
	var sum tape.Length
	for _, e := range sidesOf(g) {
		in, on := e.within(w)
		sum += e.part(in.Add(in, on))
	}
	for _, e := range sidesOf(w) {
		in, _ := e.within(g)
		sum += e.part(in)
	}
	return sum
}
