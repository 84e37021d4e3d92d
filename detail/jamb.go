package detail

import (
	"slices"
	"strings"

	"strake/floor"
	"strake/room"
	"strake/section"
	"strake/tape"
	"strake/trim"
)

// jambCase is a way that boards pass under jambs.
type jambCase struct {
	names  []string
	beside bool
	r      floor.Range // negative: under the face
	stack  trim.Stack
	height tape.Length // of the cut over the subfloor
	deep   tape.Length // of the cut into the wall, 0 all of it
	told   bool        // jambs are told under heights
}

func (a jambCase) same(b jambCase) bool {
	return a.beside == b.beside && a.r == b.r && a.height == b.height && a.deep == b.deep && a.told == b.told
}

// jambs are the undercut jambs of doorways.
func (w work) jambs() []Detail {
	var cases []jambCase
	for _, d := range w.p.Job.Sketch.Doorways {
		k, ok := w.jambCase(d)
		if !ok {
			continue
		}
		if i := slices.IndexFunc(cases, k.same); i >= 0 {
			cases[i].names = append(cases[i].names, k.names...)
			continue
		}
		cases = append(cases, k)
	}
	var out []Detail
	for _, k := range cases {
		out = append(out, w.jamb(k))
	}
	return out
}

func (w work) jambCase(d room.Doorway) (jambCase, bool) {
	e, ok := longest(w.edges(floor.Jamb, func(e floor.AlignedEdge) bool { return e.Name == "jamb of "+d.Said() }))
	if !ok || !d.Undercut || e.Range.Greatest > 0 {
		return jambCase{}, false
	}
	k := jambCase{names: []string{d.Name}, beside: e.Beside, r: e.Range, stack: w.h.Floor}
	if d.Beyond != room.BeyondRoom {
		k.deep = d.Ends
	}
	for _, u := range w.h.Undercuts {
		if u.Name == d.Name {
			if u.Not != "" {
				return jambCase{}, false // it is not to be cut: a verdict says so
			}
			k.told, k.stack = true, u.Stack
		}
	}
	k.height = k.stack.Height() + w.h.JambClear
	return k, true
}

func (w work) jamb(k jambCase) Detail {
	sum := []string{}
	for _, l := range k.stack {
		sum = append(sum, l.What+" "+w.height(l.Thickness))
	}
	notes := []string{"Holds at " + strings.Join(k.names, ", ") + ", jambs and casings to both sides.",
		"Height of the cut: " + strings.Join(sum, ", ") + ", and " + w.height(w.h.JambClear) + " to slide in: " + w.height(k.height) + " over the subfloor at that spot."}
	if w.h.SheetGuess {
		notes = append(notes, "The thickness of the "+w.p.Job.Site.Sheet.Kind+" is taken, not told in the job: use the piece itself under the scrap.")
	}
	if k.deep > 0 {
		notes = append(notes, "Only "+w.say.Of(k.deep)+" deep from this side: the floor stops there.")
	}
	if !k.told {
		notes = append(notes, "What the frame is of is not told in the job. A steel, masonry, fire-rated or outside frame is not cut: write undercut: no there and plan again.")
	}
	notes = append(notes, "Undercut saw: by its maker's instructions, the scrap held down, eyes and ears covered. Look first for cables, alarm contacts and nails in the frame. Old paint may hold lead: test it before it is sawn.")
	return w.fitted(slug("jamb", k.names[0]), "Undercut jamb at "+strings.Join(k.names, ", "), 0, func(s float64) section.Figure { return w.jambFigure(k, s) }, notes...)
}

const jambShown = 44.0 // of a jamb over the cut, real mm

// jambFigure are the jamb with the board under it, and the saw on its scrap.
func (w work) jambFigure(k jambCase, scale float64) section.Figure {
	return section.Below(3,
		section.Caption("1  The saw, led by a scrap", section.Middle, MostW-4, true), w.sawFigure(k, scale),
		section.Caption("2  The board in its place", section.Middle, MostW-4, true), w.slidFigure(k, scale))
}

// frame draws the jamb standing over a cut at a height, its face at x 0.
func (w work) frame(c *section.Canvas, height float64) {
	top := height + jambShown*0.6
	c.Cut("jamb", section.Trim, section.Rect(0, height, 19, top), 2)
	c.Cut("stud", section.Framing, section.Rect(27, 0, 50, top), 2, 1)
	c.Break(section.At(0, top), section.At(50, top))
}

func (w work) slidFigure(k jambCase, scale float64) section.Figure {
	c := section.New(scale)
	h, up := k.height.Millimetres(), k.stack.Height().Millimetres()-w.prof.Thick
	near, far := -k.r.Greatest.Millimetres(), -k.r.Least.Millimetres()
	low := w.under(c, ground{x0: -58, x1: 50, a: -58, b: far + 6, note: -46, shim: up - w.up()})
	w.frame(c, h)
	w.sideways(c, "board", k.beside, -58, near, up, section.Square)
	c.Named("farthest", section.Hidden, section.At(far, up), section.At(far, up+w.prof.Thick), section.At(near, up+w.prof.Thick))
	c.Break(section.At(-58, low), section.At(-58, up+w.prof.Thick))
	c.Dim(section.Under, section.At(0, h), section.At(near, up), "at least "+w.say.Rip(-k.r.Greatest))
	c.Dim(section.Under, section.At(0, h), section.At(far, up), "at most "+w.say.Rip(-k.r.Least))
	c.Note(section.At(8, h+20), "Jamb or casing, sawn off below; its shape is not told in the job")
	c.Note(section.At(-30, up+w.prof.Thick*0.4), "Board, slid in under the face: no nail through the jamb into it")
	c.Note(section.At(far+4, up+w.prof.Thick*0.5), "Room to move, hidden")
	c.Pointer(section.At(-40, up+w.prof.Thick+8), section.At(-12, up+w.prof.Thick+8))
	return c.Figure(0)
}

func (w work) sawFigure(k jambCase, scale float64) section.Figure {
	c := section.New(scale)
	h, up := k.height.Millimetres(), k.stack.Height().Millimetres()-w.prof.Thick
	w.under(c, ground{x0: -58, x1: 50, a: -56, b: -2, note: -46, shim: up - w.up()})
	w.frame(c, h)
	c.Area("offcut", "", section.Hidden, section.Rect(0, 0, 19, h)...)
	c.Cut("scrap", section.EndGrain, section.Rect(-50, up, -3, up+w.prof.Thick))
	c.Area("blade", "000000", section.Thin, section.Rect(-54, h-0.2, 17, h+1)...)
	left := -58.0
	c.Dim(section.Leftward, section.At(left, 0), section.At(-54, h), w.height(k.height))
	c.Note(section.At(-26, up+w.prof.Thick*0.4), "A scrap of these boards, on a piece of all that goes under them")
	c.NoteLine(section.At(-20, h+1), "Saw blade flat on the scrap")
	c.Note(section.At(9, h*0.5), "What is sawn off comes out: clean to the wall")
	return c.Figure(0)
}

func mm(v float64) tape.Length { return tape.Length(v*float64(tape.Millimetre) + 0.5) }
