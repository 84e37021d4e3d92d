package method

import (
	"math"

	"strake/section"
	"strake/sheet"
)

// wavy is a wall seen from above whose face waves about y, from x0 to x1; it goes
// on upward to top.
func (c pic) wavy(x0, x1, top float64, face func(float64) float64) {
	ring := []section.XY{section.At(x1, top), section.At(x0, top)}
	const n = 40
	for i := range n + 1 {
		x := x0 + (x1-x0)*float64(i)/n
		ring = append(ring, section.At(x, face(x)))
	}
	c.Cut("", section.Masonry, ring, 0, 1, len(ring)-1)
}

// span is an upright double arrow.
func (c pic) span(x, y0, y1 float64) {
	m := (y0 + y1) / 2
	c.Pointer(section.At(x, m), section.At(x, y0))
	c.Pointer(section.At(x, m), section.At(x, y1))
}

func (f facts) stationsFigure() Figure {
	c := f.at(full)
	const x1 = 116.0
	face := func(x float64) float64 { return 34 + 4*x/x1 }
	c.planRow(0, x1, 0, 8, 52)
	c.planTongue(0, x1, 8, true)
	c.wavy(0, x1, 46, face)
	for i, x := range []float64{5, 58, 111} {
		c.span(x, 8, face(x))
		side := 5.5
		if i == 2 {
			side = -5.5
		}
		c.Bold(section.At(x+side, 25), section.Large, string(rune('A'+i)))
		c.Word(section.At(x+2.2*side, 13.5), section.Middle, "________")
	}
	c.Word(section.At(30, 3), section.Middle, "last row nailed")
	c.Note(section.At(86, 42), "Wall")
	c.NoteLine(section.At(90, 8), "From the shoulder, tongue not counted")
	c.NoteLine(section.At(111, 30), "A, B, C to the wall, each less the gap ("+f.gaps()+"): the width of the board there. More stations at each end joint")
	return c.free("MEASURE in place, at three stations (seen from above)", 52)
}

// closing is the wall with the laid row before it, and how wide the last board is.
func (f facts) closingAt() (c pic, wide, gap float64) {
	c = f.at(half)
	wide, gap = min(c.p.Face*0.75, 64), mm(f.gap.Least)
	x1 := wide + gap
	c.ground(-32, x1+14, 9)
	c.left(-32, 0, section.Tongued)
	c.wallEnd(x1, 66)
	return c, wide, gap
}

func (f facts) angleInFigure() Figure {
	c, wide, _ := f.closingAt()
	ring := section.Shift(c.p.Ring(wide, section.Grooved, section.Square), section.At(0, -c.p.TongueTop))
	c.Cut("", section.EndGrain, turned(ring, 24, section.At(2.6, c.p.TongueTop+1.5)))
	s, co := math.Sincos(24 * math.Pi / 180)
	at := section.At(wide*co-4, wide*s+c.p.Thick+12)
	c.Arrow(at.Add(section.At(-14, 22)), at.Add(section.At(-12, -4)))
	c.Arrow(section.At(-6, c.p.Thick+24), section.At(0, c.p.Thick+6))
	c.Word(section.At(-9, c.p.Thick+27), section.Middle, "1 groove on")
	c.Word(at.Add(section.At(-24, 26)), section.Middle, "2 down")
	return c.as("ANGLE it in", "half size", 0)
}

func (f facts) drawInFigure() Figure {
	c, wide, gap := f.closingAt()
	c.Board("", c.p, c.p.Air, 0, wide-c.p.Air, section.Grooved, section.Square)
	c.tool(ring(0, 0, gap, 0, gap, 34, 2, 34), 0, section.At(wide, 0))
	edge := mm(f.use.Edge)
	if edge <= 0 {
		edge = 12
	}
	c.Nail(section.Finish, section.At(wide-edge, c.p.Thick-1), c.faceNail(), -90)
	c.Area("", sheet.Black, section.Light, circle(section.At(c.p.Deep-1, c.mid()), 1.6)...)
	c.Dim(section.Under, section.At(wide, 0), section.At(wide+gap, 0), f.gaps())
	top := c.p.Thick
	c.Word(section.At(-18, top+9), section.Middle, "glue")
	c.Pointer(section.At(-12, top+9), section.At(c.p.Deep-2, c.mid()+2))
	c.Word(section.At(wide-edge-18, top+21), section.Middle, "face nail")
	c.Pointer(section.At(wide-edge-10, top+19), section.At(wide-edge-1, top+1))
	c.Word(section.At(wide-10, top+35), section.Middle, "wedge, out again")
	c.Pointer(section.At(wide+2, top+33), section.At(wide+gap/2, top+10))
	return c.as("DRAW it in, glue, nail", "half size", 0)
}
