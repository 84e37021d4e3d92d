package method

import (
	"math"

	"strake/section"
	"strake/sheet"
)

// wave is a wall face about y, nearest in the middle.
func wave(y float64) func(float64) float64 {
	return func(x float64) float64 { return y + 2.4*math.Cos(x/17) + 1.1*math.Sin(x/6.5) }
}

func (f facts) scribeFigure() Figure {
	c := f.at(full)
	const x1 = 118.0
	c.planRow(0, x1, 0, 12)
	c.planTongue(0, x1, 12, true)
	face := wave(33)
	c.wavy(-4, x1+4, 42, face)
	// the board on top of the row, its wall edge touching the wall
	top := 100.0
	for i := range 200 {
		x := 6 + 106*float64(i)/199
		top = math.Min(top, face(x))
	}
	low := 7.0
	c.Area("", sheet.White, section.Heavy, section.Rect(6, low, 112, top)...)
	c.Line(section.Hidden, section.At(6, 12), section.At(112, 12))
	over := 12 - low
	set := over + 3.2
	var line []section.XY
	for i := range 80 {
		x := 6 + 78*float64(i)/79
		line = append(line, section.At(x, face(x)-set))
	}
	c.Line(sheet.Pen{Width: 0.6, Ink: sheet.Black}, line...)
	x := 84.0
	c.scriber(section.At(x, face(x)), section.At(x, face(x)-set))
	c.Pointer(section.At(x+8, face(x)-set-3), section.At(x+20, face(x)-set-3))
	for _, x := range []float64{12, 106} {
		c.span(x, low, 12)
	}
	c.Word(section.At(59, 8.4), section.Middle, "overlap, the same at both ends")
	c.Word(section.At(40, 17), section.Middle, "the board to be fitted")
	c.Word(section.At(20, 2.4), section.Middle, "last row laid")
	c.Note(section.At(116, 39), "Wall or stone")
	c.NoteLine(section.At(84, face(84)-set/2), "Scriber set to the overlap plus the gap")
	c.NoteLine(line[70], "Saw along this line")
	return c.free("MARK: board on top of the last row, touching the wall (seen from above)", 42)
}

// scriber is a pair of compasses from a point at a to a pencil at b.
func (c pic) scriber(a, b section.XY) {
	hinge := section.At(a.X+17, (a.Y+b.Y)/2)
	c.Line(sheet.Pen{Width: 0.9, Ink: sheet.Black}, a, hinge, b)
	c.Area("", sheet.Black, section.Light, circle(hinge, 1.4)...)
	c.Area("", sheet.Black, section.Light, circle(b, 0.7)...)
}

func (f facts) fittedFigure() Figure {
	c := f.at(full)
	const x1 = 118.0
	c.planRow(0, x1, 0, 9)
	face := wave(30)
	c.wavy(-4, x1+4, 38, face)
	gap := 3.2
	ring := []section.XY{section.At(112, 9), section.At(6, 9)}
	ring[0], ring[1] = ring[1], ring[0]
	for i := range 80 {
		x := 112 - 106*float64(i)/79
		ring = append(ring, section.At(x, face(x)-gap))
	}
	c.Area("", sheet.White, section.Heavy, ring...)
	c.Word(section.At(56, 17), section.Middle, "fitted board")
	c.Word(section.At(20, 3), section.Middle, "last row laid")
	c.NoteLine(section.At(70, face(70)-gap/2), "The same gap all along")
	c.NoteLine(section.At(100, 9), "Joint straight and shut")
	return c.free("DONE: pushed to the wall by the overlap", 42)
}
