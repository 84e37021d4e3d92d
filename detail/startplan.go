package detail

import (
	"fmt"
	"strings"

	"strake/fasten"
	"strake/section"
	"strake/setout"
	"strake/tape"
)

// The start from above, 1:5: real mm along the rows.
const (
	planScale = 0.2
	planLeft  = 305.0 // of the left end
	planGap   = 30.0  // between the two ends
	planLong  = 640.0
	band      = 26.0 // of a wall
)

// stretch is a part of the start from above, from x0 to x1.
type stretch struct{ x0, x1 float64 }

func stretches() []stretch { return []stretch{{0, planLeft}, {planLeft + planGap, planLong}} }

// startPlan is the first row from above: both ends, the line at y 0, the wall
// below.
func (w work) startPlan(s start, u fasten.Use, nailed bool) section.Figure {
	c := section.New(planScale)
	from, corner, mark := s.ends()
	if s.wall {
		w.planRows(c, s, u, nailed)
		w.planWall(c, s, from, corner, mark)
	} else {
		w.planAlone(c, s, u, nailed)
	}
	ends := [2]float64{0, planLong}
	c.Named("line", section.Chain, section.At(-30, 0), section.At(planLong+30, 0))
	if s.snap.Row > 0 {
		for i := range mark {
			c.Area("", "000000", section.Thin, circle(section.At(ends[i], 0), 4)...)
		}
		c.Left(section.At(4, 18), section.Small, w.say.Rip(mark[0].At)+" from "+mark[0].From.Short)
		c.Right(section.At(planLong-4, 18), section.Small, w.say.Rip(mark[1].At)+" from "+mark[1].From.Short)
	}
	c.Bold(section.At(planLong/2, 40), section.Middle, "line to snap: front of row "+s.line.Row)
	for _, x := range []float64{planLong * 0.22, planLong * 0.78} {
		c.Arrow(section.At(x, 40), section.At(x, 84))
	}
	c.Word(section.At(planLong/2, 66), section.Small, "rows go on this way")
	f := c.Figure(0)
	return section.Below(2, f, section.Caption(s.key(nailed), section.Small, MostW-10, false))
}

// planWall draws the wall behind the rows and those at their ends.
func (w work) planWall(c *section.Canvas, s start, from [2]tape.Length, corner [2]string, mark [2]setout.Mark) {
	a, b := -from[0].Millimetres(), -from[1].Millimetres()
	y := func(x float64) float64 { return a + float64((b-a)*x/planLong) }
	for _, t := range stretches() {
		c.Cut("", section.Plaster, []section.XY{{X: t.x0, Y: y(t.x0) - band}, {X: t.x1, Y: y(t.x1) - band}, {X: t.x1, Y: y(t.x1)}, {X: t.x0, Y: y(t.x0)}}, 0, 1, 3)
	}
	for i, x := range []float64{0, planLong} {
		out := -band
		if i == 1 {
			out = band
		}
		if strings.HasPrefix(mark[i].On, "on wall") {
			lo, hi := min(x, x+out), max(x, x+out)
			c.Cut("", section.Plaster, section.Rect(lo, y(x)-band, hi, 30), 0, 2, 3-2*i)
		} else {
			c.Break(section.At(x, y(x)-band), section.At(x, 20))
		}
		if corner[i] != "" {
			c.Bold(section.At(x+out*0.5, y(x)-band*0.75), section.Middle, corner[i])
		}
	}
	c.Bold(section.At(planLeft*0.55, y(planLeft*0.55)-band*0.75), section.Middle, s.line.Wall)
	c.Dim(section.Leftward, section.At(0, a), section.At(0, 0), w.say.Rip(from[0]))
	c.Dim(section.Rightward, section.At(planLong, b), section.At(planLong, 0), w.say.Rip(from[1]))
}

// planRows draws the rows between wall and line, each at both ends.
func (w work) planRows(c *section.Canvas, s start, u fasten.Use, nailed bool) {
	gap := w.p.Job.Limits.GapLeast.Value.Millimetres()
	for k, t := range stretches() {
		x0, x1, open := t.x0+gap, t.x1, 1
		if k == 1 {
			x0, x1, open = t.x0, t.x1-gap, 3
		}
		y := 0.0
		for i := len(s.rows) - 1; i >= 0; i-- {
			r := s.rows[i]
			wide := [2]float64{r.left.Millimetres(), r.right.Millimetres()}
			if s.turn {
				wide[0], wide[1] = wide[1], wide[0]
			}
			low := func(x float64) float64 { return y - wide[0] - float64((wide[1]-wide[0])*x/planLong) }
			c.Faced("", section.Plain, []section.XY{{X: x0, Y: low(x0)}, {X: x1, Y: low(x1)}, {X: x1, Y: y}, {X: x0, Y: y}}, open)
			if min(wide[0], wide[1]) > 22 {
				c.Word(section.At((x0+x1)/2, (low((x0+x1)/2)+y)/2-7), section.Middle, "row "+r.name)
			}
			if nailed {
				w.planNails(c, u, x0, x1, k == 1, y)
				if i == 0 && s.nails.face {
					w.planFace(c, u, x0, x1, k == 1, low)
				}
			}
			y -= s.at(r)
		}
		c.Line(section.Thin, section.At(x0, w.prof.Tongue), section.At(x1, w.prof.Tongue))
		x := t.x1
		if k == 1 {
			x = t.x0
		}
		c.Break(section.At(x, -s.total()), section.At(x, w.prof.Tongue))
	}
}

// total is how far the wall-side edge of the first row lies from the line at the
// left end as drawn, mm.
func (s start) total() float64 {
	sum := 0.0
	for _, r := range s.rows {
		sum += s.at(r)
	}
	return sum
}

// planAlone draws the row at a line that lies far from any wall along it.
func (w work) planAlone(c *section.Canvas, s start, u fasten.Use, nailed bool) {
	face := s.face.Millimetres()
	if face == 0 {
		face = w.prof.Face
	}
	for k, t := range stretches() {
		open := 1
		if k == 1 {
			open = 3
		}
		c.Faced("", section.Plain, section.Rect(t.x0, -face, t.x1, 0), open)
		c.Cut("", section.Trim, section.Rect(t.x0+20, -face-45, t.x1-20, -face))
		if nailed {
			w.planNails(c, u, t.x0, t.x1, k == 1, 0)
		}
		c.Line(section.Thin, section.At(t.x0, w.prof.Tongue), section.At(t.x1, w.prof.Tongue))
	}
	c.Word(section.At(planLeft/2, -face/2-7), section.Middle, "row "+s.line.Row)
	c.Word(section.At(planLong*0.77, -face-30), section.Small, "batten, screwed down")
	c.Break(section.At(planLeft, -face), section.At(planLeft, 6))
	c.Break(section.At(planLeft+planGap, -face), section.At(planLeft+planGap, 6))
}

// planNails are strokes through the tongue along y, so far from the end of the
// board and so far apart.
func (w work) planNails(c *section.Canvas, u fasten.Use, x0, x1 float64, fromRight bool, y float64) {
	for _, x := range along(u, x0, x1, fromRight) {
		c.Line(section.Visible, section.At(x-2, y+5), section.At(x+2, y-7))
	}
}

// planFace are dots through the face, beside the wall.
func (w work) planFace(c *section.Canvas, u fasten.Use, x0, x1 float64, fromRight bool, low func(float64) float64) {
	for _, x := range along(u, x0, x1, fromRight) {
		c.Area("", "000000", section.Thin, circle(section.At(x, low(x)+u.Edge.Millimetres()), 2.6)...)
	}
}

// along are places from the end of a board on.
func along(u fasten.Use, x0, x1 float64, fromRight bool) []float64 {
	var out []float64
	for d := u.End.Millimetres(); d < x1-x0-4; d += u.Spacing.Millimetres() {
		if fromRight {
			out = append(out, x1-d)
			continue
		}
		out = append(out, x0+d)
	}
	return out
}

// startSection cuts the start across at its left end.
func (w work) startSection(s start, u fasten.Use, nailed bool, scale float64) section.Figure {
	if s.wall {
		return w.startAtWall(s, u, nailed, scale)
	}
	return w.startAtBatten(s, u, nailed, scale)
}

func (w work) startAtWall(s start, u fasten.Use, nailed bool, scale float64) section.Figure {
	c := section.New(scale)
	from, corner, _ := s.ends()
	line := from[0].Millimetres()
	gap := line - s.total()
	up, top := w.up(), w.top()
	end := line + w.arm(40)
	low := w.under(c, ground{x0: -wallThick - 14, x1: end, a: 0, b: end, note: end - w.arm(16)})
	c.Cut("wall", section.Plaster, section.Rect(-wallThick, 0, 0, top+30), 2)
	c.Break(section.At(-wallThick, top+30), section.At(0, top+30))
	c.Break(section.At(-wallThick-14, low), section.At(-wallThick-14, 0))
	c.Cut("block", section.Trim, section.Rect(0, up, gap, top-2))
	x := gap
	for i, r := range s.rows {
		wide, left := s.at(r), section.Grooved
		air := w.prof.Air
		if i == 0 {
			left, air = r.edge, 0
		}
		c.Board(rowSlug(i), w.prof, x+air, up, wide-air, left, section.Tongued)
		if nailed {
			w.startNail(c, u, x+wide)
			if i == 0 && s.nails.face {
				c.Nail(section.Finish, section.At(x+u.Edge.Millimetres(), top-1), u.Length.Millimetres(), -90)
			}
		}
		x += wide
	}
	c.Named("line", section.Chain, section.At(line, low-6), section.At(line, top+26))
	c.Named("next", section.Hidden, section.At(end, top), section.At(line+w.prof.Air, top), section.At(line+w.prof.Air, up), section.At(end, up))
	c.Break(section.At(end, low), section.At(end, top))
	c.Dim(section.Above, section.At(0, top), section.At(gap, top), "gap "+w.say.Rip(mm(gap)))
	c.Dim(section.Above, section.At(0, top+30), section.At(line, top+26), w.say.Rip(from[0])+" from wall to line")
	first := s.rows[0]
	if first.ripped {
		c.Dim(section.Above, section.At(gap, top), section.At(gap+s.at(first), top), "ripped "+w.say.Rip(mm(s.at(first))))
	}
	if nailed && s.nails.face {
		c.Dim(section.Under, section.At(gap, up), section.At(gap+u.Edge.Millimetres(), up), w.say.Rip(u.Edge))
		c.NoteLine(section.At(gap+u.Edge.Millimetres(), top), "Through the face: hole drilled first, head set")
	}
	if nailed {
		c.NoteLine(section.At(line+1, up+w.prof.TongueTop), w.tongueSaid(s, u))
	}
	where := ""
	if corner[0] != "" {
		where = " at corner " + corner[0]
	}
	c.Note(section.At(gap*0.5, up+w.prof.Thick*0.3), "Block or wedges behind the row, so that it cannot give: out again before the base goes on")
	c.Note(section.At(gap+s.at(first)*0.6, up+w.prof.Thick*0.6), firstSaid(first))
	c.NoteLine(section.At(line, top+10), "Line to snap: the front of row "+s.line.Row+where)
	return c.Figure(w.column())
}

// tongueSaid says how nails go through the tongue of the first row.
func (w work) tongueSaid(s start, u fasten.Use) string {
	by := ""
	if s.nails.hand && !s.nails.nailer {
		by = " by hand: no nailer has room here"
	}
	return fmt.Sprintf("Through the tongue at %.0f degrees%s", u.Slant, by)
}

// startAfar is the line from above, and the row that is set from it.
func (w work) startAfar(s start) section.Figure {
	c := section.New(planScale)
	off, face := 110.0, 70.0
	if s.afar.Behind < 0 {
		off = -off
	}
	c.Named("line", section.Chain, section.At(-20, 0), section.At(planLong+20, 0))
	c.Faced("", section.Plain, section.Rect(90, -off-face, 360, -off))
	c.Line(section.Thin, section.At(90, -off+6), section.At(360, -off+6))
	c.Word(section.At(225, -off-face/2-7), section.Middle, "row "+s.first+", laid first")
	for i, m := range []setout.Mark{s.snap.Left, s.snap.Right} {
		x := []float64{0, planLong}[i]
		c.Area("", "000000", section.Thin, circle(section.At(x, 0), 4)...)
		text := w.say.Rip(m.At) + " from " + m.From.Short
		if i == 0 {
			c.Left(section.At(6, 12), section.Small, text)
		} else {
			c.Right(section.At(planLong-6, 12), section.Small, text)
		}
	}
	c.Bold(section.At(planLong/2, 34), section.Middle, "line to snap: front of row "+s.line.Row)
	c.Dim(section.Leftward, section.At(90, -off), section.At(0, 0), w.say.Rip(s.afar.Behind.Abs()))
	c.Arrow(section.At(460, -off-face), section.At(460, -off))
	c.Word(section.At(540, -off-face*0.6), section.Small, "rows go on this way")
	return section.Below(2, c.Figure(0), section.Caption("Its own front is too short to hold a floor straight, or cannot be snapped: it is set square from this line.", section.Small, MostW-10, false))
}

func rowSlug(i int) string {
	if i == 0 {
		return "first"
	}
	return ""
}

func firstSaid(r startRow) string {
	if r.ripped {
		return "Row " + r.name + ": ripped edge to the wall, tongue out to the floor"
	}
	return "Row " + r.name + ": groove to the wall, tongue out to the floor"
}

// startNail is a nail over the tongue of a board whose face ends at x.
func (w work) startNail(c *section.Canvas, u fasten.Use, x float64) {
	c.Nail(section.Finish, section.At(x+0.4, w.up()+u.Entry.Millimetres()+0.4), u.Length.Millimetres(), -180+u.Slant)
}

func (w work) startAtBatten(s start, u fasten.Use, nailed bool, scale float64) section.Figure {
	c := section.New(scale)
	up, top := w.up(), w.top()
	face := s.face.Millimetres()
	if face == 0 {
		face = w.prof.Face
	}
	x0, end := -86.0, face+w.arm(40)
	low := w.under(c, ground{x0: x0, x1: end, a: x0, b: end, note: end - w.arm(16)})
	c.Cut("block", section.Trim, section.Rect(-62, up, 0, up+36))
	c.Nail(section.Screw, section.At(-31, up+36), 36+20, -90)
	c.Board("first", w.prof, 0, up, face, section.Grooved, section.Tongued)
	if nailed {
		w.startNail(c, u, face)
		c.NoteLine(section.At(face+1, up+w.prof.TongueTop), w.tongueSaid(s, u))
	}
	c.Named("line", section.Chain, section.At(face, low-6), section.At(face, top+26))
	c.Break(section.At(x0, low), section.At(x0, up))
	c.Break(section.At(end, low), section.At(end, up))
	c.Dim(section.Above, section.At(0, top), section.At(face, top), "face "+w.say.Rip(mm(face)))
	c.Note(section.At(-20, up+24), "Straight batten screwed down behind the row, off again once five rows hold (common practice); it must not be screwed where something lies below")
	c.Note(section.At(face*0.5, up+w.prof.Thick*0.6), "Row "+s.line.Row+": groove to the batten; where rows go back from here, a spline goes into it")
	c.NoteLine(section.At(face, top+18), "Line to snap: the front of row "+s.line.Row)
	return c.Figure(w.column())
}
