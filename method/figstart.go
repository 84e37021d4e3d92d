package method

import (
	"strake/section"
	"strake/sheet"
)

// Plans are drawn in paper mm, not to scale: what matters is made large.

// planRow is a row seen from above, with its end joints.
func (c pic) planRow(x0, x1, y0, y1 float64, joints ...float64) {
	from := x0
	for _, j := range append(joints, x1) {
		c.Faced("", section.Plain, section.Rect(from, y0, j, y1))
		from = j
	}
}

// planTongue is the tongue that stands out of a row's front edge at y, upward or
// downward.
func (c pic) planTongue(x0, x1, y float64, up bool) {
	d := 1.3
	if !up {
		d = -d
	}
	c.Area("", sheet.White, section.Light, section.Rect(x0, min(y, y+d), x1, max(y, y+d))...)
}

// planWall is a wall seen from above, in section.
func (c pic) planWall(x0, x1, y0, y1 float64) {
	c.Cut("", section.Masonry, section.Rect(x0, y0, x1, y1), 1, 3)
}

func (f facts) blocksFigure() Figure {
	c := f.at(full)
	const x1 = 110.0
	c.planWall(0, x1, 0, 7)
	c.planTongue(6, x1-2, 24, true)
	c.planRow(6, x1, 13, 24, 42, 86)
	for _, x := range []float64{8, 23, 38, 44, 62, 80, 88, 105} {
		c.dark(section.Rect(0, 7.3, 4.5, 12.8), 0, section.At(x, 0))
	}
	c.Line(section.Chain, section.At(-5, 24), section.At(x1+5, 24))
	for _, x := range []float64{24, 64, 100} {
		c.Arrow(section.At(x, 40), section.At(x, 27))
	}
	c.Word(section.At(x1/2, 17), section.Middle, "start row")
	c.Word(section.At(44, 34), section.Middle, "blows push this way")
	c.Dim(section.Leftward, section.At(0, 7), section.At(6, 13), f.gaps())
	c.NoteLine(section.At(x1+4, 24), "Start line: front edge of the start row, tongue not counted")
	c.Note(section.At(90.2, 10), "Blocks as thick as the gap: at each board end, and between")
	c.Note(section.At(106, 3.5), "Bottom plate of the wall")
	return c.free("A WALL CLOSE BEHIND: blocks in the gap (seen from above)", 48)
}

func (f facts) backerFigure() Figure {
	c := f.at(full)
	const x1 = 110.0
	c.Faced("", section.Grain, section.Rect(0, 3, x1, 12))
	for _, x := range []float64{6, 28, 50, 72, 94, 108} {
		c.screwHead(section.At(x, 7.5))
	}
	c.planTongue(6, x1-2, 23, true)
	c.planRow(6, x1, 12, 23, 38, 78)
	c.Line(section.Chain, section.At(-5, 23), section.At(x1+5, 23))
	for _, x := range []float64{24, 94} {
		c.Arrow(section.At(x, 37), section.At(x, 26))
	}
	c.Word(section.At(x1/2, 16), section.Middle, "start row")
	c.NoteLine(section.At(x1+4, 23), "Start line")
	c.Note(section.At(101, 7.5), "Backer: a straight board screwed to the subfloor, tight against the row")
	what := "The wall is far off or crooked here"
	if f.turns {
		what = "Later: spline and rows the other way"
	}
	c.Word(section.At(x1/2, -3.5), section.Middle, what)
	return c.free("NO SOUND WALL CLOSE BEHIND: a backer (seen from above)", 48)
}
