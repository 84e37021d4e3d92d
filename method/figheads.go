package method

import (
	"strake/fasten"
	"strake/section"
	"strake/sheet"
	"strake/tape"
)

// fastener is how the job's fasteners look.
func (f facts) fastener() section.Fastener {
	if f.use.Kind == fasten.Staple {
		return section.Staple
	}
	return section.Cleat
}

// long is how long fasteners are drawn, real mm: 2 in where that is not known.
func (f facts) long() float64 {
	if f.use.Length > 0 {
		return mm(f.use.Length)
	}
	return mm(2 * tape.Inch)
}

// faceNail is how long nails through the face are drawn, real mm: no job tells it.
func (c pic) faceNail() float64 { return c.p.Thick + 24 }

// headFigure is the tongue edge of a nailed board with the next board pushed on.
func (f facts) headFigure(h head) Figure {
	c := f.at(f.detail())
	const x0, x1 = -24.0, 11.5
	low := c.ground(x0, x1, 7)
	c.left(x0, 0, section.Tongued)
	pocket := c.p.Pocket(0, 0)
	by := mm(h.over())
	at := section.Tip(pocket, by, 45)
	said := ""
	switch h {
	case sunk: // the channel it left, and the tongue split off
		c.channel(pocket, -by)
		c.crack(pocket)
		c.right(c.p.Air, x1, section.Grooved)
		said = "tongue split"
	case seated:
		c.right(c.p.Air, x1, section.Grooved)
		said = "head flush, joint shut"
	case proud:
		c.right(4.5, x1, section.Grooved)
		said = "joint stays open"
	}
	c.shank(f.fastener(), at, low)
	mark := section.At(x0+c.Real(5), c.p.Thick+c.Real(6))
	if h == seated {
		c.tick(mark)
	} else {
		c.cross(mark)
	}
	c.Left(mark.Add(section.At(c.Real(6), -c.Real(1))), section.Middle, said)
	return c.figure(h.title(), 0)
}

// channel is the hole that a head driven too deep leaves behind it.
func (c pic) channel(pocket section.XY, deep float64) {
	const w = 2.6
	c.Area("", sheet.White, section.Visible, turned(ring(1, w, -deep, w, -deep, -w, 1, -w), 45, pocket)...)
}

// crack runs from the corner over the tongue down through it.
func (c pic) crack(pocket section.XY) {
	lo := c.p.TongueLow
	c.Line(sheet.Pen{Width: 0.8, Ink: sheet.Black}, pocket, pocket.Add(section.At(1.2, -1.5)), pocket.Add(section.At(0.2, -3)), section.At(pocket.X+1.4, lo+1.2), section.At(pocket.X+0.6, lo))
	c.Line(section.Visible, pocket.Add(section.At(0.2, -3)), section.At(-4, lo+1), section.At(-9, lo+2))
}

// nailerFigure is the nailer on a board, with its mallet and where the tip ends.
func (f facts) nailerFigure() Figure {
	c := f.at(quarter)
	face := min(c.p.Face, 150)
	x0, x1 := -face-30, 60.0
	low := c.ground(x0, x1, 0)
	c.left(x0, -face-c.p.Air, section.Tongued)
	c.Board("", c.p, -face, 0, face, section.Grooved, section.Tongued)
	pocket := c.p.Pocket(0, 0)
	c.Nail(f.fastener(), pocket, f.long(), -135)
	c.nailerBody(pocket)
	tip := section.Tip(pocket, f.long(), -135)
	c.Angle(tip, 0, 45, 12, "45°")
	if down := f.use.Tip(f.under); f.known && down > 0 {
		top := -mm(f.under)
		c.Dim(section.Leftward, section.At(x0, top), section.At(tip.X, tip.Y), f.fine.Of(down))
	}
	c.Note(section.At(-20, c.p.Thick+6), "Foot flat on the face, nose in the corner above the tongue")
	c.Note(turned(ring(148, 0), 45, pocket)[0], "Mallet: one full blow")
	c.Note(section.At(x1-8, (low-mm(f.under))/2), "The same subfloor as in the room")
	return c.figure("HOW IT STANDS on the board", 52)
}

// nailerBody is a floor nailer seen along the row: foot on the face, body leaning
// over the tongue at 45 degrees, and the mallet that strikes its cap.
func (c pic) nailerBody(pocket section.XY) {
	top := c.p.Thick
	c.tool(ring(30, 13, 46, 13, 62, 66, 46, 70), 45, pocket) // magazine
	c.tool(ring(-70, top+0.6, 0.4, top+0.6, 2, pocket.Y+3, 14, pocket.Y+14, 0, top+22, -70, top+14), 0, section.At(0, 0))
	c.tool(ring(16, -15, 88, -19, 94, -12, 94, 12, 88, 19, 16, 15), 45, pocket)
	c.dark(ring(94, -8, 106, -8, 106, 8, 94, 8), 45, pocket)
	c.tool(ring(132, -24, 143, -24, 143, -74, 132, -74), 45, pocket)
	c.dark(ring(118, -24, 128, -24, 128, 24, 118, 24), 45, pocket)
	c.tool(ring(128, -24, 158, -24, 158, 24, 128, 24), 45, pocket)
}
