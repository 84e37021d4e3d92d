package method

import (
	"strake/section"
	"strake/sheet"
)

// grooved is the back edge of the start row, its groove to the left; what is laid
// behind it comes from there.
func (f facts) grooved() pic {
	c := f.at(f.detail())
	c.ground(-13, 21, 5)
	c.right(0, 21, section.Grooved)
	c.Word(section.At(13, c.p.Thick-4.4), section.Middle, "start row")
	return c
}

// mid is the middle of the tongue's height.
func (c pic) mid() float64 { return (c.p.TongueLow + c.p.TongueTop) / 2 }

func (f facts) glueFigure() Figure {
	c := f.grooved()
	c.tool(ring(0, -1, -9, -2.4, -14, -2.4, -14, 2.4, -9, 2.4, 0, 1), -18, section.At(c.p.Deep-3, c.mid()+0.3))
	c.Area("", sheet.Black, section.Light, circle(section.At(c.p.Deep-1.6, c.mid()), 1.5)...)
	return c.figure("1  GLUE at the back of the groove", 0)
}

func (f facts) splineFigure() Figure {
	c := f.grooved()
	c.slip(0)
	c.Dim(section.Above, section.At(-c.p.Tongue, c.p.TongueTop), section.At(0, c.p.Thick), f.fine.Of(f.Job.Boards.SideTongue))
	return c.figure("2  SPLINE in, half stands out", 0)
}

// slip is a spline half in the groove of a board that begins at x.
func (c pic) slip(x float64) {
	c.Cut("", section.Spline, section.Rect(x-c.p.Tongue, c.p.TongueLow+0.2, x+c.p.Tongue, c.p.TongueTop-0.2))
}

func (f facts) turnPlan() Figure {
	c := f.at(full)
	c.planTongue(0, 46, 33, true)
	for i, y := range []float64{17, 25} {
		c.planRow(0, 46, y, y+8, 14+float64(18*i))
	}
	for i, y := range []float64{9, 1} {
		c.planRow(0, 46, y, y+8, 30-float64(16*i))
	}
	c.planTongue(0, 46, 1, false)
	c.Line(sheet.Pen{Width: 1.6, Ink: sheet.Black}, section.At(-2, 17), section.At(48, 17))
	c.Arrow(section.At(40, 19), section.At(40, 38))
	c.Arrow(section.At(40, 15), section.At(40, -4))
	c.Bold(section.At(17, 16), section.Middle, "spline")
	c.Word(section.At(8, 27.8), section.Middle, "first")
	c.Word(section.At(8, 3.8), section.Middle, "then")
	return c.free("3  SEEN FROM ABOVE", 0)
}

func (f facts) turnedFigure() Figure {
	c := f.at(f.whole())
	wide := min(c.p.Face, short)
	x0, x1 := -wide-c.p.Air-c.p.Tongue-9, wide+c.p.Tongue+9
	low := c.ground(x0, x1, 8)
	end := c.shortened(0, section.Grooved, section.Tongued)
	c.shank(f.fastener(), c.p.Pocket(end, 0), low)
	c.shortened(-wide-c.p.Air, section.Tongued, section.Grooved)
	at := section.At(-wide-c.p.Air-0.5, c.p.TongueTop)
	c.shankRight(f.fastener(), at, low)
	c.slip(-c.p.Air / 2)
	c.Arrow(section.At(-wide/2+10, c.p.Thick+4), section.At(-wide/2-10, c.p.Thick+4))
	c.Arrow(section.At(wide/2-10, c.p.Thick+4), section.At(wide/2+10, c.p.Thick+4))
	c.Word(section.At(-wide/2, c.p.Thick+8), section.Middle, "laid backwards")
	c.Word(section.At(wide/2, c.p.Thick+8), section.Middle, "laid first")
	c.NoteLine(section.At(0, c.p.TongueLow+1), "Spline, glued on the side that was laid first")
	c.Note(at.Add(section.At(5, -5)), "Nailed through its own tongue, now on the far side")
	return c.figure("4  THE FIRST TURNED BOARD on the spline", 48)
}
