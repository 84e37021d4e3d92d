package detail

import (
	"math"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/section"
	"strake/tape"
)

// frameRings are the places of the boards of a frame on the floor plan, mm.
func (w work) frameRings(stay string) [][]section.XY {
	var rings [][]section.XY
	for _, f := range w.p.AllFields() {
		if f.Kind != lay.Frame || f.Name != "frame of "+stay || len(f.Part.Reach) == 0 {
			continue
		}
		var ring []section.XY
		for _, q := range f.Part.Reach[0] {
			at := f.Part.Dir.FromRow(q)
			ring = append(ring, section.At(at.X, at.Y))
		}
		rings = append(rings, ring)
	}
	return rings
}

// frameAbove is a frame from above, turned so that its longest board lies level,
// as large as its place lets it.
func (w work) frameAbove(s room.Stay, rings [][]section.XY) section.Figure {
	turn := levelTurn(rings)
	var flat [][]section.XY
	b := [4]float64{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, r := range rings {
		var out []section.XY
		for _, p := range r {
			q := turn(p)
			out = append(out, q)
			b = [4]float64{min(b[0], q.X), min(b[1], q.Y), max(b[2], q.X), max(b[3], q.Y)}
		}
		flat = append(flat, out)
	}
	scale := min(100/(b[2]-b[0]), 70/(b[3]-b[1]))
	c := section.New(scale)
	for _, o := range w.p.Floor.Stays {
		if o.Name != s.Name {
			continue
		}
		var ring []section.XY
		for _, p := range o.Corners {
			ring = append(ring, turn(section.At(p.X, p.Y)))
		}
		c.Cut("stays", section.Masonry, ring)
		mid := middle(ring)
		c.Word(section.At(mid.X, mid.Y-c.Real(1)), section.Middle, s.Name)
	}
	for i, r := range flat {
		c.Faced("", section.Plain, r)
		w.boardWidth(c, r, i)
	}
	return c.Figure(0)
}

// boardWidth notes the face of the boards once.
func (w work) boardWidth(c *section.Canvas, ring []section.XY, i int) {
	if i == 0 {
		c.Note(middle(ring), "Boards of the frame, face "+w.say.Rip(w.p.Job.Boards.Face)+", their grooves out to the rows")
	}
}

// levelTurn turns the longest side of rings level.
func levelTurn(rings [][]section.XY) func(section.XY) section.XY {
	best := 0.0
	u := plane.XY{X: 1}
	for _, r := range rings {
		for i, a := range r {
			q := r[(i+1)%len(r)]
			if d := (plane.XY{X: q.X - a.X, Y: q.Y - a.Y}); d.Len() > best {
				best, u = d.Len(), d.Unit()
			}
		}
	}
	if u.X < 0 || u.X == 0 && u.Y < 0 {
		u = u.Times(-1)
	}
	return func(p section.XY) section.XY {
		return section.At(float64(p.X*u.X)+float64(p.Y*u.Y), float64(p.Y*u.X)-float64(p.X*u.Y))
	}
}

func middle(ring []section.XY) section.XY {
	x0, y0, x1, y1 := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, p := range ring {
		x0, y0, x1, y1 = min(x0, p.X), min(y0, p.Y), max(x1, p.X), max(y1, p.Y)
	}
	return section.At((x0+x1)/2, (y0+y1)/2)
}

// frameFigure cuts a board of a frame across: what stays, the joint, the board, the
// rows.
func (w work) frameFigure(s room.Stay, gap tape.Length, kind floor.Kind, scale float64) section.Figure {
	c := section.New(scale)
	g, face := gap.Millimetres(), w.prof.Face
	up, top := w.up(), w.top()
	x0, x1 := -w.arm(34), g+face+w.arm(46)
	low := w.under(c, ground{x0: x0, x1: x1, a: 0, b: x1, note: x1 - w.arm(14)})
	there, said := top, s.Name+": its height is not told in the job"
	for _, m := range w.h.Meetings {
		if w.told && m.Name == s.Name {
			there, said = m.Beyond.Millimetres(), s.Name+", "+w.height(m.Beyond)+" over the subfloor"
		}
	}
	c.Cut("beyond", section.Masonry, section.Rect(x0, 0, 0, there), 3)
	if kind == floor.Flush && g > 0 {
		c.Cut("soft joint", section.Soft, section.Rect(0, up, g, top))
		c.NoteLine(section.At(g/2, top), "Soft joint: cork or sealant, so that boards can move")
	}
	c.Board("board", w.prof, g, up, face, section.Square, section.Grooved)
	ring := w.prof.Ring(x1-g-face, section.Grooved, section.GoesOn)
	c.Cut("rows", section.Grain, section.Shift(ring, section.At(g+face, up)), 0)
	w.splineAt(c, g+face, up)
	c.Break(section.At(x0, low), section.At(x0, there))
	c.Break(section.At(x1, low), section.At(x1, top))
	c.Dim(section.Above, section.At(0, there), section.At(g, top), w.say.Rip(gap))
	c.Dim(section.Above, section.At(g, top), section.At(g+face, top), "face "+w.say.Rip(w.p.Job.Boards.Face))
	c.Note(section.At(x0+w.arm(12), there*0.5), said)
	c.Note(section.At(g+face*0.4, up+w.prof.Thick*0.5), "Board of the frame: tongue off towards "+s.Name+", groove to the rows")
	c.Note(section.At(g+face+w.arm(30), up+w.prof.Thick*0.75), "Rows: ends with a tongue go into the groove; cut ends and sawn sides are grooved for a spline")
	c.Note(section.At(g+face+2, up+(w.prof.TongueLow+w.prof.TongueTop)/2), w.splineNote())
	return c.Figure(w.column())
}

// splineAt draws a spline in the grooves of two boards that meet at x.
func (w work) splineAt(c *section.Canvas, x, up float64) {
	c.Cut("spline", section.Spline, section.Rect(x-w.prof.Deep+0.5, up+w.prof.TongueLow, x+w.prof.Deep-0.5, up+w.prof.TongueTop))
}

func (w work) splineNote() string {
	return "Spline (slip tongue), glued into one groove; its size is not told in the job: as thick as a tongue, as wide as both grooves less a hair"
}
