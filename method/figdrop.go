package method

import (
	"strake/section"
	"strake/sheet"
)

// lipless is a groove edge to the left without its lower lip, its tongue edge to the right.
func (c pic) lipless(wide float64) []section.XY {
	p := c.p
	hi := p.TongueTop + 0.15
	out := ring(0, p.Thick, 0, hi, p.Deep, hi, p.Deep, 0)
	return append(out, ring(wide-0.5, 0, wide-0.5, p.TongueLow, wide+p.Tongue, p.TongueLow, wide+p.Tongue, p.TongueTop,
		wide, p.TongueTop, wide, p.Thick)...)
}

func (f facts) lipFigure() Figure {
	c := f.at(f.detail())
	p := c.p
	c.right(0, 22, section.Grooved)
	lip := section.Rect(0.5, 0, p.Deep, p.TongueLow-0.15)
	c.Cut("", section.Soft, lip)
	c.Line(bold, section.At(p.Deep, -3.5), section.At(p.Deep, p.TongueLow+2))
	c.Arrow(section.At(-1, p.TongueLow/2), section.At(-10, p.TongueLow/2))
	c.Bold(section.At(-6, p.TongueLow+1.6), section.Middle, "off")
	c.Word(section.At(17, -4), section.Middle, "saw here")
	return c.figure("1  OFF with the lower lip", 0)
}

// hole is a hole between a tongue to the left and a groove to the right.
func (f facts) hole() (c pic, wide float64) {
	c = f.at(f.whole())
	wide = min(c.p.Face, short)
	c.ground(-22, wide+24, 7)
	c.left(-22, -c.p.Air, section.Tongued)
	c.right(wide+c.p.Air, wide+24, section.Grooved)
	return c, wide
}

func (f facts) tiltFigure() Figure {
	c, wide := f.hole()
	p := c.p
	ring := c.lipless(wide)
	for i := range ring { // about the upper corner of its tongue edge
		ring[i] = ring[i].Add(section.At(-wide, -p.TongueTop))
	}
	at, slant := section.At(wide-3.4, p.TongueTop+1.8), -16.0
	const inner = 3 // of the ring: the corner that has to come past the tongue on the left
	for slant > -40 && turned(ring, slant, at)[inner].Y < p.TongueTop+1.5 {
		slant--
	}
	held := turned(ring, slant, at)
	c.Cut("", section.EndGrain, held)
	top := held[0].Add(section.At(0, 1.5))
	c.Arrow(top.Add(section.At(-3, 12)), top)
	c.Word(top.Add(section.At(-14, 7)), section.Middle, "2 down")
	c.Arrow(section.At(wide-16, p.Thick+16), section.At(wide-2, p.Thick+6))
	c.Word(section.At(wide+4, p.Thick+14), section.Middle, "1 tongue in")
	return c.figure("2  TONGUE FIRST, then down", 0)
}

func (f facts) droppedFigure() Figure {
	c, wide := f.hole()
	p := c.p
	c.Cut("", section.EndGrain, c.lipless(wide))
	if p.Face > short {
		c.gapIn(wide / 2)
	}
	for _, at := range ring(p.Tongue-1, p.TongueTop-1.5, wide+p.Tongue+0.4, (p.TongueLow+p.TongueTop)/2) {
		c.Area("", sheet.Black, section.Light, circle(at, 1.1)...)
	}
	for _, x := range []float64{wide * 0.3, wide * 0.7} {
		c.Area("", sheet.Black, section.Light, section.Rect(x-4, 0, x+4, 1.2)...)
	}
	c.Nail(section.Finish, section.At(p.Deep+6, p.Thick-1.2), min(c.faceNail(), p.Thick+9), -90)
	c.tool(ring(-11, 0, 11, 0, 8, 9, -8, 9), 0, section.At(wide*0.7, p.Thick+0.4))
	c.Word(section.At(wide*0.7, p.Thick+3.6), section.Middle, "weight")
	c.Note(section.At(p.Tongue-1, p.TongueTop-1.5), "Glue on the neighbour's tongue, in the other's groove, and below where it is allowed")
	c.Note(section.At(p.Deep+6, p.Thick-5), "Face nail along the lip side and at both ends: drilled, set, filled")
	return c.figure("3  GLUED, NAILED, WEIGHTED", 48)
}
