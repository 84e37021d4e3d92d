package method

import (
	"strake/section"
	"strake/sheet"
)

// short is how wide boards are drawn that are shown shortened, real mm.
const short = 46.0

// shortened is a whole board from x on; a wide one with its middle left out.
func (c pic) shortened(x float64, left, right section.Edge) (end float64) {
	wide := min(c.p.Face, short)
	c.Board("", c.p, x, 0, wide, left, right)
	if c.p.Face > short {
		c.gapIn(x + wide/2)
	}
	return x + wide
}

// gapIn is where the middle of a board is left out.
func (c pic) gapIn(x float64) {
	k := c.Real(1.1)
	c.Area("", sheet.White, sheet.Pen{}, section.Rect(x-k, -c.Real(0.1), x+k, c.p.Thick+c.Real(0.4))...)
	for _, s := range []float64{-k, k} {
		c.Break(section.At(x+s, 0), section.At(x+s, c.p.Thick))
	}
}

func (f facts) tapFigure() Figure {
	c := f.at(half)
	const open = 5.0
	face := min(c.p.Face, 62)
	end := open + face
	c.ground(-28, end+50, 9)
	c.left(-28, 0, section.Tongued)
	c.Board("", c.p, open, 0, face, section.Grooved, section.Tongued)
	c.Board("", c.p, end+c.p.Air, 0, 34, section.Grooved, section.Square)
	c.hammer(0.42, 0, section.At(end+36, c.p.Thick/2), true)
	c.Arrow(section.At(end-18, c.p.Thick+17), section.At(end-50, c.p.Thick+17))
	c.Bold(section.At(end+19, c.p.Thick+18), section.Middle, "scrap")
	c.Pointer(section.At(end+19, c.p.Thick+16), section.At(end+19, c.p.Thick-1))
	c.Dim(section.Above, section.At(0, c.p.Thick), section.At(open, c.p.Thick), "closes")
	return c.as("TAP on a scrap, not on the tongue", "half size, hammer smaller", 0)
}

// wallEnd is a wall at x, so high over the boards' underside.
func (c pic) wallEnd(x, high float64) {
	c.Cut("", section.Masonry, section.Rect(x, -mm(c.f.under), x+14, high), 1, 2)
}

func (f facts) barFigure() Figure {
	c := f.at(half)
	gap := mm(f.gap.Least)
	face := min(c.p.Face, 80-max(0, gap-20))
	const open = 5.0
	top := c.p.Thick
	x1 := open + face + gap
	c.ground(-46, x1+14, 9)
	c.left(-46, 0, section.Tongued)
	c.Board("", c.p, open, 0, face, section.Grooved, section.Square)
	c.wallEnd(x1, 74)
	c.pullBar(section.At(open+face, top), face+20, top*0.8)
	c.hammer(0.45, 0, section.At(open-14, top+16), true)
	c.Arrow(section.At(open-24, top+30), section.At(open-58, top+30))
	c.Bold(section.At(x1-27, top+40), section.Middle, "hook over")
	c.Bold(section.At(x1-27, top+32), section.Middle, "the edge")
	c.Pointer(section.At(x1-24, top+29), section.At(open+face+1, top+5))
	return c.as("AT A WALL: the pull bar", "half size, hammer smaller", 0)
}

// wedgeFigure is a crooked board pulled in from above: a block, a pair of wedges,
// and nails that follow.
func (f facts) wedgeFigure() Figure {
	c := f.at(full)
	const x1 = 112.0
	c.planRow(0, x1, 0, 8, 66)
	c.planRow(0, x1, 8, 16, 30)
	c.planTongue(0, x1, 16, true)
	bent := func(x float64) float64 { return 16.4 + 4.4*(x/x1)*(x/x1) }
	var low, high []section.XY
	for i := range 21 {
		x := x1 * float64(i) / 20
		low = append(low, section.At(x, bent(x)))
		x = x1 - x
		high = append(high, section.At(x, bent(x)+8))
	}
	c.Area("", sheet.White, section.Heavy, append(low, high...)...)
	for _, x := range []float64{6, 22, 38} {
		c.dot(section.At(x, bent(x)+7.2))
	}
	const at = 74.0
	y := bent(at) + 8.2
	c.tool(section.Rect(at-13, y, at+13, y+4), 0, section.At(0, 0)) // scrap on the tongue
	y += 4.3
	c.dark(ring(-20, 0, 16, 0, 16, 4.6), 0, section.At(at, y))
	c.tool(ring(20, 5.4, -16, 5.4, -16, 0.8), 0, section.At(at, y))
	c.Faced("", section.Grain, section.Rect(at-15, y+5.5, at+15, y+12))
	for _, x := range []float64{-9, 9} {
		c.screwHead(section.At(at+x, y+8.7))
	}
	c.Arrow(section.At(at+29, y+2.4), section.At(at+18, y+2.4))
	c.Arrow(section.At(at-34, y+3), section.At(at-21, y+3))
	c.Note(section.At(at+3, y+11), "Block screwed to the subfloor")
	c.NoteLine(section.At(at+15.5, y+3), "Pair of wedges: drive them together")
	c.Note(section.At(at+11, y-2.3), "Scrap over the tongue")
	c.NoteLine(section.At(x1-6, 18.2), "Still open here. Nails follow the wedges along the board")
	c.Word(section.At(15, 11), section.Middle, "laid rows")
	return c.free("A CROOKED BOARD: wedges, then the next nail (seen from above)", 52)
}
