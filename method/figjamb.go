package method

import (
	"strake/section"
	"strake/sheet"
)

// jambAbove is the jamb or casing from y up, its face at x 0.
func (c pic) jambAbove(y float64) {
	c.Cut("", section.Trim, section.Rect(0, y, 42, 72), 2)
	c.Break(section.At(-2, 72), section.At(44, 72))
}

func (f facts) jambSawFigure() Figure {
	c := f.at(half)
	top, j := c.p.Thick, f.jambs[0]
	c.ground(-150, 60, 11+mm(j.lift))
	floor := -mm(f.under + j.lift) // top of the subfloor that heights are told from
	if j.lift > 0 {
		c.Line(section.Visible, section.At(-150, floor), section.At(60, floor))
	}
	c.Cut("", section.EndGrain, section.Rect(-118, 0, -1, top))
	c.jambAbove(top + 1.7)
	c.Cut("", section.Trim, section.Rect(0, -mm(f.under), 42, top+0.2))
	c.saw(top, 22)
	c.Dim(section.Rightward, section.At(60, floor), section.At(42, top+mm(j.clear)), f.jambSaid())
	c.Note(section.At(-60, top/2), "Scrap of this floor's board, on the sheet: it leads the saw")
	c.Note(section.At(30, 55), "Casing first, then the jamb")
	c.Note(section.At(30, top/2), "Falls out")
	title := "SAW: blade flat on the scrap"
	if len(f.jambs) > 1 {
		title += ", here at " + j.name
	}
	return c.figure(title, 46)
}

// jambSaid is the height of the cut in words: a figure where the job tells of
// heights, else what makes it up.
func (f facts) jambSaid() string {
	if f.jambs[0].height > 0 {
		return f.fine.Of(f.jambs[0].height)
	}
	return "scrap"
}

// saw lies flat on y, its teeth so far into the jamb at x 0.
func (c pic) saw(y, into float64) {
	c.dark(ring(-112, 0.2, into, 0.2, into, 1.7, -112, 1.7), 0, section.At(0, y))
	c.tool(ring(-150, 14, -136, 2, -110, 0.2, -96, 2, -100, 10, -122, 34, -142, 34), 0, section.At(0, y))
	c.Area("", sheet.White, section.Visible, turned(ring(-138, 15, -124, 8, -116, 12, -128, 26, -136, 26), 0, section.At(0, y))...)
	c.Pointer(section.At(-60, y+12), section.At(-84, y+12))
	c.Pointer(section.At(-60, y+12), section.At(-36, y+12))
}

func (f facts) jambSlidFigure() Figure {
	c := f.at(half)
	c.ground(-150, 60, 11)
	top := c.p.Thick
	in := -mm(f.lim.JambLeast.Value)
	c.Cut("", section.EndGrain, section.Rect(-110, 0, in, top), 3)
	c.Break(section.At(-110, -2), section.At(-110, top+2))
	c.jambAbove(top + max(1.2, mm(f.jambs[0].clear)))
	c.Arrow(section.At(-78, top+14), section.At(-30, top+14))
	c.Dim(section.Under, section.At(0, top), section.At(in, 0), f.say.Rip(-f.lim.JambGreatest.Value)+" to "+f.say.Rip(-f.lim.JambLeast.Value))
	c.Note(section.At(in-4, top/2), "The board ends out of sight, behind the face")
	c.NoteLine(section.At(20, top+0.9), "Just room to slide in: no gap to see, nothing lifted")
	c.Note(section.At((in+42)/2+4, top/2), "Left free: the floor moves in here")
	return c.figure("SLIDE the floor under", 46)
}
