package check

import (
	"math/big"

	"strake/plane"
	"strake/tape"
)

// square2 is x*x + y*y.
func square2(d plane.Pt) *big.Int {
	x, y := bigInt(d.X), bigInt(d.Y)
	x.Mul(x, x)
	return x.Add(x, y.Mul(y, y))
}

// cross is the vector product of d and e.
func cross(d, e plane.Pt) *big.Int {
	a := new(big.Int).Mul(bigInt(d.X), bigInt(e.Y))
	return a.Sub(a, new(big.Int).Mul(bigInt(d.Y), bigInt(e.X)))
}

// dot is the scalar product of d and e.
func dot(d, e plane.Pt) *big.Int {
	a := new(big.Int).Mul(bigInt(d.X), bigInt(e.X))
	return a.Add(a, new(big.Int).Mul(bigInt(d.Y), bigInt(e.Y)))
}

// rootUp is the smallest whole number whose square is not below q; q >= 0.
// (The root of a fraction and of the whole number over it round up alike.)
func rootUp(q *big.Rat) *big.Int {
	n := up(q)
	r := new(big.Int).Sqrt(n)
	if new(big.Int).Mul(r, r).Cmp(n) < 0 {
		r.Add(r, big.NewInt(1))
	}
	return r
}

// up is q rounded up to a whole number.
func up(q *big.Rat) *big.Int {
	n, rest := new(big.Int).QuoRem(q.Num(), q.Denom(), new(big.Int))
	if rest.Sign() > 0 {
		n.Add(n, big.NewInt(1))
	}
	return n
}

// length is the length of e, rounded up to a tick.
func (e edge) length() tape.Length {
	d := e.step()
	if e.square() {
		return d.X.Abs() + d.Y.Abs()
	}
	return tape.Length(rootUp(new(big.Rat).SetInt(square2(d))).Int64())
}

// perimeter is the length of all edges of g, each rounded up to a tick.
func perimeter(g plane.Region) tape.Length {
	var sum tape.Length
	for _, e := range sidesOf(g) {
		sum += e.length()
	}
	return sum
}

// offLine is how far p lies to the left of the line from e.a to e.b, square to
// it, to the nearest tick below in size; negative to the right.
func (e edge) offLine(p plane.Pt) tape.Length {
	c := cross(e.step(), p.Sub(e.a))
	q := new(big.Int).Mul(c, c)
	q.Quo(q, square2(e.step()))
	d := tape.Length(q.Sqrt(q).Int64())
	if c.Sign() < 0 {
		return -d
	}
	return d
}

// beside is the length along which f, run the other way, lies on e with no
// corner more than slack ticks off its line; 0 when they do not touch so.
func (e edge) beside(f edge, slack int64) tape.Length {
	d := e.step()
	if dot(d, f.step()).Sign() >= 0 {
		return 0
	}
	size := square2(d)
	room := new(big.Int).Mul(size, big.NewInt(slack*slack))
	for _, p := range []plane.Pt{f.a, f.b} {
		c := cross(d, p.Sub(e.a))
		if c.Mul(c, c).Cmp(room) > 0 {
			return 0
		}
	}
	from, to := dot(d, f.b.Sub(e.a)), dot(d, f.a.Sub(e.a))
	if from.Sign() < 0 {
		from.SetInt64(0)
	}
	if to.Cmp(size) > 0 {
		to.Set(size)
	}
	to.Sub(to, from)
	if to.Sign() <= 0 {
		return 0
	}
	to.Mul(to, to)
	return tape.Length(to.Sqrt(to.Quo(to, size)).Int64())
}
