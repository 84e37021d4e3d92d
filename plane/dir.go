package plane

import (
	"math"

	"strake/tape"
)

// XY is a place on the floor plan in millimetres, as a survey finds it. It is
// the only float geometry; Dir.ToRow rounds it to ticks once.
type XY struct{ X, Y float64 }

// Sub is the step from b to a.
func (a XY) Sub(b XY) XY { return XY{a.X - b.X, a.Y - b.Y} }

// Add is a moved by b.
func (a XY) Add(b XY) XY { return XY{a.X + b.X, a.Y + b.Y} }

// Times is a scaled by k.
func (a XY) Times(k float64) XY { return XY{a.X * k, a.Y * k} }

// Len is the distance of a from the origin.
func (a XY) Len() float64 { return math.Hypot(a.X, a.Y) }

// Unit is a scaled to length 1; a must not be 0.
func (a XY) Unit() XY { return a.Times(1 / a.Len()) }

// Left is a turned a quarter turn counter-clockwise.
func (a XY) Left() XY { return XY{-a.Y, a.X} }

// Dot is the scalar product.
func (a XY) Dot(b XY) float64 { return float64(a.X*b.X) + float64(a.Y*b.Y) }

// Cross is the vector product: positive when b lies left of a.
func (a XY) Cross(b XY) float64 { return float64(a.X*b.Y) - float64(a.Y*b.X) }

// Dir is the direction of the rows: a unit step along them, on the floor plan.
// In the row frame X runs along the rows in this direction and Y across them
// to the left.
type Dir XY

// DirOf is the direction from a to b, which must differ.
func DirOf(a, b XY) Dir { return Dir(b.Sub(a).Unit()) }

// Flip is the opposite direction.
func (d Dir) Flip() Dir { return Dir{-d.X, -d.Y} }

// ToRow turns a place on the floor plan (mm) into the row frame, rounded to a
// tick. The products are rounded one by one so that no processor fuses them.
func (d Dir) ToRow(p XY) Pt {
	x := float64(d.X*p.X) + float64(d.Y*p.Y)
	y := float64(d.X*p.Y) - float64(d.Y*p.X)
	return Pt{ticks(x), ticks(y)}
}

// FromRow turns a place in the row frame back into the floor plan (mm).
func (d Dir) FromRow(p Pt) XY {
	x, y := p.X.Millimetres(), p.Y.Millimetres()
	return XY{float64(d.X*x) - float64(d.Y*y), float64(d.Y*x) + float64(d.X*y)}
}

func ticks(mm float64) tape.Length {
	return tape.Length(math.Round(float64(mm * float64(tape.Millimetre))))
}
