package check

import (
	"math/big"

	"strake/plane"
	"strake/tape"
)

// edge is one side of an outline, run so that the inside is on its left.
type edge struct{ a, b plane.Pt }

// sides are the edges of a ring in order.
func sides(r plane.Ring) []edge {
	out := make([]edge, len(r))
	for i := range r {
		out[i] = edge{r[i], r[(i+1)%len(r)]}
	}
	return out
}

func sidesOf(g plane.Region) []edge {
	var out []edge
	for _, r := range g {
		out = append(out, sides(r)...)
	}
	return out
}

func (e edge) step() plane.Pt { return e.b.Sub(e.a) }
func (e edge) flat() bool     { return e.a.Y == e.b.Y }
func (e edge) upright() bool  { return e.a.X == e.b.X }
func (e edge) square() bool   { return e.flat() || e.upright() }

// long tells whether e lies more along the rows than across them. A mitre of
// 45 degrees, off by the rounding of its corners, is an end.
func (e edge) long() bool {
	d := e.step()
	if d.X.Abs() > 1000*slack {
		return d.X.Abs() > d.Y.Abs()+2*slack
	}
	return d.X.Abs() > d.Y.Abs()
}

func (e edge) x() plane.Span {
	return plane.Span{From: min(e.a.X, e.b.X), To: max(e.a.X, e.b.X)}
}

func (e edge) y() plane.Span {
	return plane.Span{From: min(e.a.Y, e.b.Y), To: max(e.a.Y, e.b.Y)}
}

// swap is e with X and Y exchanged, for measuring along instead of across.
func (e edge) swap() edge {
	return edge{plane.P(e.a.Y, e.a.X), plane.P(e.b.Y, e.b.X)}
}

// at is the Y of the line through e at x; e must not be upright.
func (e edge) at(x *big.Rat) *big.Rat {
	y := rat(e.a.Y)
	if e.flat() {
		return y
	}
	d := e.step()
	t := new(big.Rat).Sub(x, rat(e.a.X))
	t.Mul(t, frac(d.Y, d.X))
	return y.Add(y, t)
}

// crossing is the x where the lines through e and f meet; false when parallel.
// Neither may be upright.
func (e edge) crossing(f edge) (*big.Rat, bool) {
	d, g := e.step(), f.step()
	slope := new(big.Rat).Sub(frac(d.Y, d.X), frac(g.Y, g.X))
	if slope.Sign() == 0 {
		return nil, false
	}
	zero := new(big.Rat)
	x := new(big.Rat).Sub(f.at(zero), e.at(zero))
	return x.Quo(x, slope), true
}

// side is one of the four sides of a piece as laid.
type side int

// The four sides, as laid in the zone's frame.
const (
	leftEnd side = iota
	rightEnd
	lowEdge  // the long edge towards -Y
	highEdge // the long edge towards +Y
)

// faces tells which side of its outline e belongs to: the one its outside
// points to.
func (e edge) faces() side {
	d := e.step()
	switch {
	case e.long() && d.X > 0:
		return lowEdge
	case e.long():
		return highEdge
	case d.Y > 0:
		return rightEnd
	default:
		return leftEnd
	}
}

func rat(l tape.Length) *big.Rat { return new(big.Rat).SetInt64(int64(l)) }

func frac(n, d tape.Length) *big.Rat { return big.NewRat(int64(n), int64(d)) }

func bigInt(l tape.Length) *big.Int { return big.NewInt(int64(l)) }
