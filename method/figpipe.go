package method

import (
	"math"

	"strake/section"
	"strake/sheet"
)

// slot is the two cuts from a hole to the edge at y: their places at the hole and
// at the edge.
func slot(at section.XY, r, y float64) (l0, l1, r0, r1 section.XY) {
	dx := r * 0.92
	dy := math.Sqrt(r*r - dx*dx)
	return section.At(at.X-dx, at.Y+dy), section.At(at.X-dx-1.6, y), section.At(at.X+dx, at.Y+dy), section.At(at.X+dx+1.6, y)
}

func (f facts) holePlan() Figure {
	c := f.at(full)
	const x1 = 84.0
	at := section.At(40, 17)
	const r = 6.0
	c.planRow(0, x1, 0, 10)
	c.planRow(0, x1, 10, 28)
	l0, l1, r0, r1 := slot(at, r, 28)
	c.Area("", sheet.White, section.Heavy, circle(at, r)...)
	c.Line(sheet.Pen{Width: 0.6, Ink: sheet.Black}, l0, l1)
	c.Line(sheet.Pen{Width: 0.6, Ink: sheet.Black}, r0, r1)
	c.planWall(-3, x1+3, 33, 40)
	c.Line(section.Chain, at.Add(section.At(-11, 0)), at.Add(section.At(11, 0)))
	c.Line(section.Chain, at.Add(section.At(0, -10)), at.Add(section.At(0, 16)))
	c.Word(section.At(x1-12, 36), section.Middle, "wall")
	c.Word(section.At(64, 18), section.Middle, "1 drill the hole")
	c.Word(section.At(64, 24), section.Middle, "2 saw twice")
	c.Word(section.At(14, 22), section.Middle, "keep the plug")
	c.Pointer(section.At(25, 22.8), section.At(37, 24.5))
	c.Pointer(section.At(54, 18.8), section.At(46.4, 17.6))
	c.Pointer(section.At(56, 24.8), section.At(47.4, 24.8))
	return c.free("1  DRILL, then saw out to the edge at the wall", 0)
}

func (f facts) plugPlan() Figure {
	c := f.at(full)
	const x1 = 84.0
	at := section.At(40, 17)
	const r = 6.0
	c.planRow(0, x1, 0, 10)
	c.planRow(0, x1, 10, 28)
	l0, l1, r0, r1 := slot(at, r, 28)
	c.Area("", sheet.White, sheet.Pen{}, append([]section.XY{l0, r0}, r1.Add(section.At(0, 0.6)), l1.Add(section.At(0, 0.6)))...)
	c.Line(section.Heavy, l0, l1)
	c.Line(section.Heavy, r0, r1)
	c.Area("", sheet.White, section.Heavy, circle(at, r)...)
	c.Area("", sheet.White, sheet.Pen{}, section.Rect(l0.X+0.3, at.Y+2, r0.X-0.3, at.Y+7)...)
	c.dark(circle(at, 3.4), 0, section.At(0, 0))
	c.tool(circle(at, 2.2), 0, section.At(0, 0))
	// the plug on its way in, its front hollowed by the hole
	plug := []section.XY{l1.Add(section.At(0.5, 6)), r1.Add(section.At(-0.5, 6)), r0.Add(section.At(-0.4, 6))}
	for i := range 13 {
		a := (math.Pi/2 - 1.17) + float64(i)/12*2.34
		plug = append(plug, section.At(at.X+r*math.Cos(a), at.Y+6+r*math.Sin(a)))
	}
	plug = append(plug, l0.Add(section.At(0.4, 6)))
	c.Faced("", section.Grain, plug)
	for _, q := range []section.XY{l0.Add(l1), r0.Add(r1)} {
		c.Area("", sheet.Black, section.Light, circle(section.At(q.X/2, q.Y/2-1), 0.9)...)
	}
	c.Arrow(section.At(40, 45), section.At(40, 36))
	c.Word(section.At(16, 16), section.Middle, "pipe, free all round")
	c.Pointer(section.At(32.4, 16.8), section.At(37.6, 17))
	c.Word(section.At(66, 24), section.Middle, "glue on the cheeks")
	c.Pointer(section.At(52, 24.6), section.At(47.6, 24.2))
	c.Word(section.At(24, 38), section.Middle, "plug slides in")
	return c.free("2  ROUND THE PIPE, then the plug back in", 0)
}

// collarFigure is the first pipe of the job in section, under its collar.
func (f facts) collarFigure() Figure {
	x := f.pipes[0]
	known := x.wide > 0
	d, g := 22.0, mm(f.lim.GapLeast.Value)
	if known {
		d = mm(x.wide)
	}
	r := d / 2
	hole := r + g
	collar := hole + mm(f.lim.Lap.Value)
	if x.told {
		collar = mm(x.collar) / 2
	}
	edge := max(collar, hole) + 22
	scale := half
	if edge > 90 {
		scale = quarter
	}
	c := f.at(scale)
	u := f.ground(c, -edge, edge, -(r + 3), r+3)
	for _, s := range []float64{-1, 1} {
		ring := section.Rect(min(s*hole, s*edge), 0, max(s*hole, s*edge), c.p.Thick)
		c.Cut(map[float64]string{-1: "board left of the pipe", 1: "board right of the pipe"}[s], section.EndGrain, ring, map[float64]int{-1: 3, 1: 1}[s])
		c.Break(section.At(s*edge, 0), section.At(s*edge, c.p.Thick))
	}
	top := c.p.Thick + 26
	c.Seen("pipe", section.Rect(-r, u-6, r, top)...)
	for _, s := range []float64{-r, r - 2} { // its wall
		c.dark(section.Rect(s, u-6, s+2, top), 0, section.At(0, 0))
	}
	for _, s := range []float64{-1, 1} {
		c.dark(ring(s*(r+0.5), 0, s*collar, 0, s*collar, 2, s*(r+3), 6, s*(r+0.5), 6), 0, section.At(0, c.p.Thick+0.4))
	}
	if known {
		c.Dim(section.Under, section.At(-hole, 0), section.At(hole, 0), "hole "+f.say.Of(x.hole))
	}
	c.Dim(section.Under, section.At(r, 0), section.At(hole, 0), f.say.Rip(f.lim.GapLeast.Value))
	c.Note(section.At(collar-2, c.p.Thick+1), "Collar: covers the hole, fixed to the pipe or loose")
	c.Note(section.At(0, c.p.Thick+16), "Pipe: touches no wood")
	return c.figure("3  UNDER THE COLLAR: "+x.name, 44)
}

// ground is the subfloor on both sides of what comes through it.
func (f facts) ground(c pic, x0, x1, h0, h1 float64) float64 {
	c.ground(x0, h0, 10)
	return c.ground(h1, x1, 10)
}
