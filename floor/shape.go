package floor

import (
	"errors"
	"math"
	"slices"

	"github.com/peterstace/simplefeatures/geom"

	"strake/plane"
)

// outline is a closed line in mm; shape is an area: outer outlines
// counter-clockwise, holes clockwise.
type (
	outline []plane.XY
	shape   []outline
)

// speck is the smallest area (mm²) that counts: what touches only leaves less.
const speck = 0.01

func (o outline) area() float64 {
	sum := 0.0
	for i, a := range o {
		b := o[(i+1)%len(o)]
		sum += a.Sub(o[0]).Cross(b.Sub(o[0])) / 2
	}
	return sum
}

func (s shape) area() float64 {
	sum := 0.0
	for _, o := range s {
		sum += o.area()
	}
	return sum
}

func (o outline) geometry() geom.Geometry {
	flat := make([]float64, 0, 2*len(o)+2)
	for _, p := range append(slices.Clone(o), o[0]) {
		flat = append(flat, p.X, p.Y)
	}
	return geom.NewSingleRingPolygonXY(flat...).AsGeometry()
}

func geometries(os []outline) []geom.Geometry {
	out := make([]geom.Geometry, 0, len(os))
	for _, o := range os {
		if len(o) >= 3 && math.Abs(o.area()) > 1e-9 {
			out = append(out, o.geometry())
		}
	}
	return out
}

// errShape says that two outlines could not be put together, which happens
// only for walls that cross or corners that are no numbers.
var errShape = errors.New("the outlines cannot be put together")

// join is everything that any of the outlines covers, less everything that
// any of the others covers.
func join(add, less []outline) (shape, error) {
	for _, o := range slices.Concat(add, less) {
		for _, p := range o {
			if math.IsNaN(p.X+p.Y) || math.IsInf(p.X+p.Y, 0) {
				return nil, errShape
			}
		}
	}
	u, err := geom.UnionMany(geometries(add))
	if err != nil {
		return nil, errors.Join(errShape, err)
	}
	if cut := geometries(less); len(cut) > 0 {
		c, err := geom.UnionMany(cut)
		if err != nil {
			return nil, errors.Join(errShape, err)
		}
		if u, err = geom.Difference(u, c); err != nil {
			return nil, errors.Join(errShape, err)
		}
	}
	return shapeOf(u), nil
}

func shapeOf(g geom.Geometry) shape {
	var out shape
	for _, part := range g.Dump() {
		if !part.IsPolygon() {
			continue
		}
		p := part.MustAsPolygon()
		out = append(out, ringOf(p.ExteriorRing(), 1)...)
		for i := range p.NumInteriorRings() {
			out = append(out, ringOf(p.InteriorRingN(i), -1)...)
		}
	}
	return out
}

// ringOf is a ring turned the way its sign says, none when it is a speck.
func ringOf(l geom.LineString, sign float64) []outline {
	seq := l.Coordinates()
	o := make(outline, 0, seq.Length())
	for i := range seq.Length() - 1 {
		xy := seq.GetXY(i)
		o = append(o, plane.XY{X: xy.X, Y: xy.Y})
	}
	a := o.area()
	if math.Abs(a) < speck {
		return nil
	}
	if a*sign < 0 {
		slices.Reverse(o)
	}
	return []outline{o}
}
