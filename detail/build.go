package detail

import (
	"fmt"
	"strings"

	"strake/fasten"
	"strake/section"
	"strake/subfloor"
)

const joistShown = 70.0 // of a joist, real mm

// buildUp is the floor cut through, with what holds it down.
func (w work) buildUp() []Detail {
	notes := []string{w.buildNote()}
	f := w.p.Nailing()
	_, u, ok := f.Use()
	if ok {
		notes = append(notes, w.fastenNote(u), w.tipNote(f, u))
	} else {
		notes = append(notes, "No schedule speaks of such boards: write length, spacing and ends by their maker under fasteners.")
	}
	if j := w.p.Job.Joists; j.Spacing > 0 && w.layers()[len(w.layers())-1].is == 0 && !f.Slab {
		notes = append(notes, "Joists "+w.say.Of(j.Spacing)+" on centre below: not drawn, as the subfloor's thickness is not told in the job.")
	}
	for _, x := range f.Free {
		depth := "how deep it lies is not told in the job"
		if x.Known {
			depth = w.height(x.Depth) + " down from what boards lie on"
		}
		notes = append(notes, fmt.Sprintf("Keep fasteners off %s (%s, %s), %s to every side: mark it on the sheet.", x.Name, x.What, depth, w.say.Of(x.Margin)))
	}
	if fasten.Glue(f.Face) {
		notes = append(notes, "Boards over "+w.say.Of(fasten.Wide)+" are glued besides, where their maker allows it.")
	}
	return []Detail{w.fitted("build-up", "The floor cut through", 0, func(s float64) section.Figure { return w.buildFigure(f, u, ok, s) }, notes...)}
}

// buildNote adds up what lies over the subfloor.
func (w work) buildNote() string {
	var parts []string
	for _, l := range w.h.Floor {
		parts = append(parts, l.What+" "+w.height(l.Thickness))
	}
	return "Over the subfloor: " + strings.Join(parts, ", ") + ", together " + w.height(w.h.Floor.Height()) + "."
}

func (w work) fastenNote(u fasten.Use) string {
	return fmt.Sprintf("%s, %s long, at %.0f degrees through the corner over the tongue: every %s at most, %s from each end of a board, at least %d a board.",
		strings.ToUpper(string(u.Kind)[:1])+string(u.Kind)[1:], w.say.Of(u.Length), u.Slant, w.say.Of(u.Spacing), w.say.Of(u.End), u.PerBoard)
}

// tipNote says where tips end, and what they must not meet.
func (w work) tipNote(f fasten.Floor, u fasten.Use) string {
	s := "Tips end " + w.height(u.Tip(f.Paper)) + " below the top of what boards are nailed to"
	switch out := u.Out(f.Paper, f.Base); {
	case f.Base == 0 && f.Slab:
		return s + ". The thickness of the nailing base over the slab is not told in the job: a tip must not meet the concrete."
	case f.Base == 0:
		return s + ". Its thickness is not told in the job: treat what lies right below as reached, and find pipes, cables and heating before you nail."
	case f.Slab && out > 0:
		return s + ", and meet the slab: shorter ones, or a thicker base."
	case out > 0:
		return s + ", and come out below by " + w.height(out) + ": no pipe, cable or duct may lie right under the panel."
	}
	return s + ", inside its " + w.height(f.Base) + "."
}

func (w work) buildFigure(f fasten.Floor, u fasten.Use, nailed bool, scale float64) section.Figure {
	c := section.New(scale)
	p, up, top := w.prof, w.up(), w.top()
	arm := w.arm(28)
	x0, x1 := -arm, p.Face+arm
	low := w.under(c, ground{x0: x0, x1: x1, a: x0, b: x1, note: x1 - w.arm(18)})
	if ls := w.layers(); !w.slab() && ls[len(ls)-1].is > 0 {
		low = w.joist(c, x0, x1, low)
	}
	c.Board("board", p, 0, up, p.Face, section.Grooved, section.Tongued)
	c.Board("last", p, x0-p.Air, up, arm, section.GoesOn, section.Tongued)
	c.Board("next", p, p.Pitch(), up, arm-p.Air, section.Grooved, section.GoesOn)
	c.Break(section.At(x0-p.Air, low), section.At(x0-p.Air, top))
	c.Break(section.At(x1, low), section.At(x1, top))
	c.Dim(section.Above, section.At(0, top), section.At(p.Face, top), "face "+w.say.Rip(w.p.Job.Boards.Face))
	if air := w.p.Job.Boards.Air(); air > 0 {
		c.Dim(section.Above, section.At(0, top), section.At(p.Pitch(), top), "row width "+w.say.Rip(w.p.Job.Boards.Pitch()))
	}
	c.Dim(section.Leftward, section.At(x0, up), section.At(x0, top), "board "+w.height(w.p.Job.Boards.Thickness))
	if h := w.h.Floor.Height(); h > w.p.Job.Boards.Thickness {
		c.Dim(section.Leftward, section.At(x0, 0), section.At(x0, top), "together "+w.height(h))
	}
	c.Note(section.At(p.Face*0.45, up+p.Thick*0.5), "Board, its tongue ahead, away from the row before")
	if nailed {
		w.nail(c, f, u)
	}
	for i, x := range f.Free {
		if y := w.panel() - x.Depth.Millimetres(); x.Known && y > low-60 {
			at := section.At(p.Face*0.2+26*float64(i), y)
			c.Area("", "ffffff", section.Visible, circle(at, 11)...)
			c.Note(at, x.Name+" ("+x.What+"): where it lies along the rows is in the list of fasteners; its thickness is not told in the job")
		}
	}
	return c.Figure(w.column())
}

// nail draws a fastener in its place over the tongue, and how deep it goes.
func (w work) nail(c *section.Canvas, f fasten.Floor, u fasten.Use) {
	p := w.prof
	at := section.At(p.Face+0.4, w.up()+u.Entry.Millimetres()+0.4)
	kind := section.Cleat
	if u.Kind == fasten.Staple {
		kind = section.Staple
	}
	deg := -180 + u.Slant
	c.Nail(kind, at, u.Length.Millimetres(), deg)
	tip := section.Tip(at, u.Length.Millimetres(), deg)
	c.Dim(section.Leftward, section.At(-w.arm(28), w.panel()), section.At(tip.X, w.panel()-u.Tip(f.Paper).Millimetres()), "tip "+w.height(u.Tip(f.Paper)))
	mid := section.Tip(at, u.Length.Millimetres()*0.42, deg)
	c.NoteLine(mid, fmt.Sprintf("%s %s, at %.0f degrees, its head set in the corner over the tongue", u.Kind, w.say.Of(u.Length), u.Slant))
}

// joist draws what carries the subfloor as this cut shows it, and returns the
// lowest y.
func (w work) joist(c *section.Canvas, x0, x1, low float64) float64 {
	j := w.p.Job.Joists
	if j.Spacing == 0 && j.Along[0] == "" {
		return low
	}
	said := "Joist: its size is not told in the job"
	if j.Spacing > 0 {
		said = "Joists " + w.say.Of(j.Spacing) + " on centre; their size is not told in the job"
	}
	if w.p.Underfloor().Rows == subfloor.Across {
		c.Cut("joist", section.Grain, section.Rect(x0, low-joistShown*0.5, x1, low), 0, 1, 3)
		c.Note(section.At(x0+16, low-joistShown*0.3), said+". Rows run across them")
		return low - joistShown*0.5
	}
	const wide = 38.0 // a usual joist
	x := w.prof.Face * 0.2
	c.Cut("joist", section.Framing, section.Rect(x, low-joistShown, x+wide, low), 0)
	c.Break(section.At(x, low-joistShown), section.At(x+wide, low-joistShown))
	c.Note(section.At(x+wide*0.6, low-joistShown*0.75), said)
	return low
}

func circle(at section.XY, r float64) []section.XY {
	var out []section.XY
	for _, s := range [][2]float64{{1, 1}, {-1, 1}, {-1, -1}, {1, -1}} {
		a := arc[:len(arc)-1]
		for i := range a {
			k := a[i]
			if s[0]*s[1] < 0 { // the other way round
				k = [2]float64{arc[len(arc)-1-i][0], arc[len(arc)-1-i][1]}
			}
			out = append(out, section.At(at.X+float64(r*s[0]*k[0]), at.Y+float64(r*s[1]*k[1])))
		}
	}
	return out
}
