package method

import (
	"strake/section"
	"strake/sheet"
	"strake/tape"
)

// edgeOn is the tongue edge of a board, to be nailed by hand; low is how far down
// it is drawn.
func (f facts) edgeOn() (c pic, pocket section.XY, low float64) {
	c = f.at(f.whole())
	low = c.ground(-23, 12, 8)
	c.left(-23, 0, section.Tongued)
	return c, c.p.Pocket(0, 0), low
}

func (f facts) pilotFigure() Figure {
	c, pocket, _ := f.edgeOn()
	deep := c.p.Thick * 0.85
	c.drill(45, section.Tip(pocket, deep, -135), deep+9)
	c.Angle(pocket, 0, 45, 14, "45°")
	return c.as("1  DRILL", named(c.scale)+", tools smaller", 0)
}

func (f facts) driveFigure() Figure {
	c, pocket, low := f.edgeOn()
	c.shank(section.Finish, section.Tip(pocket, 3, 45), low)
	c.hammer(0.24, 45, section.Tip(pocket, 5.5, 45), false)
	return c.as("2  DRIVE, and stop short", named(c.scale)+", tools smaller", 0)
}

func (f facts) setFigure() Figure {
	c, pocket, low := f.edgeOn()
	c.shank(section.Finish, pocket, low)
	c.nailSet(0.34, 45, section.Tip(pocket, 0.6, 45))
	c.Pointer(section.Tip(pocket, 39, 45), section.Tip(pocket, 29.5, 45))
	return c.as("3  SET flush with the slant", named(c.scale)+", tools smaller", 0)
}

// wallFigure is the first row at its wall, nailed through its face under base and
// shoe and through its tongue.
func (f facts) wallFigure() Figure {
	c := f.at(half)
	gap, base, shoe := mm(f.gap.Least), mm(f.Job.Base), mm(f.Job.Shoe)
	face := min(c.p.Face, 110-max(0, gap-25))
	x1 := gap + face + 45
	top := c.p.Thick
	c.ground(-40, x1, 0)
	c.Cut("", section.Framing, section.Rect(-40, -mm(f.under), -13, 38), 3)
	c.Cut("", section.Plaster, section.Rect(-13, 3, 0, 66), 2)
	if base > 0 {
		c.Cut("", section.Trim, section.Rect(0, top+0.8, base, 58))
	}
	if shoe > 0 {
		c.Cut("", section.Trim, ring(base, top+0.8, base+shoe, top+0.8, base+shoe, top+7, base+shoe*0.6, top+15, base, top+17))
	}
	c.Board("first row", c.p, gap, 0, face, section.Square, section.Tongued)
	c.right(gap+face+c.p.Air, x1, section.Grooved)
	edge := mm(f.use.Edge)
	if edge <= 0 {
		edge = mm(tape.Inch / 2)
	}
	c.Nail(section.Finish, section.At(gap+edge, top-2), c.faceNail(), -90)
	c.Area("", sheet.White, section.Thin, section.Rect(gap+edge-1.6, top-2, gap+edge+1.6, top+0.3)...)
	pocket := c.p.Pocket(gap+face, 0)
	c.Nail(section.Finish, pocket, f.long(), -135)
	c.Dim(section.Under, section.At(0, 0), section.At(gap, 0), "gap "+f.gaps())
	if f.use.Edge > 0 {
		c.Dim(section.Under, section.At(gap, 0), section.At(gap+edge, 0), f.say.Of(f.use.Edge))
	}
	c.Note(section.At(gap+edge, top-8), "Through the face: drilled, straight down, set, filled; base and shoe hide it")
	c.Note(section.Tip(pocket, 16, -135), "Through the tongue by hand, 45 degrees")
	if base+shoe > 0 {
		c.Note(section.At(base/2+shoe/4, top+10), "Base and shoe come later. They are nailed to the wall, never to the floor")
	}
	return c.figure("THE FIRST ROW at the wall", 62)
}
