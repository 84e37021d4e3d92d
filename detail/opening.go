package detail

import (
	"fmt"
	"slices"
	"strings"

	"strake/floor"
	"strake/room"
	"strake/section"
	"strake/tape"
	"strake/trim"
)

// opening is where this floor ends against another one.
type opening struct {
	names  []string
	beside bool        // rows lie along it, else they end at it
	r      floor.Range // how far boards stay off where this floor ends
	kind   floor.Kind
	ends   tape.Length // how deep in the wall this floor ends; 0: at no wall
	known  bool        // the height beyond is told
	m      trim.Meeting
}

func (o opening) same(q opening) bool {
	return o.beside == q.beside && o.r == q.r && o.kind == q.kind && o.ends == q.ends && o.known == q.known &&
		o.m.Covering == q.m.Covering && o.m.Strip == q.m.Strip && o.m.Diff == q.m.Diff && o.m.Stack.Height() == q.m.Stack.Height()
}

// openings are the doorways out of the floor, and what stays that a strip
// overlaps.
func (w work) openings() []Detail {
	var all []opening
	add := func(o opening, ok bool) {
		if !ok {
			return
		}
		if i := slices.IndexFunc(all, o.same); i >= 0 {
			all[i].names = append(all[i].names, o.names...)
			return
		}
		all = append(all, o)
	}
	for _, d := range w.p.Job.Sketch.Doorways {
		add(w.doorOpening(d))
	}
	for _, s := range w.p.Job.Sketch.Stays {
		if s.Meets == room.MeetsTransition {
			add(w.openingAt(s.Name, floor.Transition, func(e floor.AlignedEdge) bool { return e.Name == s.Name }))
		}
	}
	var out []Detail
	for _, o := range all {
		out = append(out, w.opening(o))
	}
	return out
}

// doorOpening is a doorway that this floor ends in; not one to another room of it,
// nor one to an old floor that rows join.
func (w work) doorOpening(d room.Doorway) (opening, bool) {
	kind := map[room.Beyond]floor.Kind{room.BeyondFlush: floor.Flush, room.BeyondTransition: floor.Transition, room.BeyondStair: floor.Nosing}[d.Beyond]
	if kind == "" {
		return opening{}, false
	}
	o, ok := w.openingAt(d.Name, kind, func(e floor.AlignedEdge) bool { return e.Name == d.Said() && e.Old == "" })
	o.ends = d.Ends
	return o, ok
}

func (w work) openingAt(name string, kind floor.Kind, at func(floor.AlignedEdge) bool) (opening, bool) {
	e, ok := longest(w.edges(kind, at))
	if !ok {
		return opening{}, false
	}
	o := opening{names: []string{name}, beside: e.Beside, r: e.Range, kind: kind}
	for _, m := range w.h.Meetings {
		if m.Name == name && w.told {
			o.m, o.known = m, true
		}
	}
	return o, true
}

// strip is what lies over the joint; "" where the height beyond is not told.
func (o opening) strip() trim.Strip {
	switch {
	case o.kind == floor.Nosing:
		return trim.Nosing
	case o.known:
		return o.m.Strip
	case o.kind == floor.Flush:
		return trim.None
	}
	return ""
}

// beyond names what lies beyond.
func (o opening) beyond() string {
	if o.m.Covering == "" || o.m.Covering == "other" {
		return "floor beyond"
	}
	return o.m.Covering
}

func (w work) opening(o opening) Detail {
	title := map[trim.Strip]string{trim.None: "Flush joint", trim.TMould: "T-mould", trim.Reducer: "Reducer", trim.Threshold: "Threshold",
		trim.Ramp: "Step too high for a strip", trim.Nosing: "Nosing at the stair head", "": "Transition"}[o.strip()]
	title += " at " + strings.Join(o.names, ", ")
	notes := []string{"Holds at " + strings.Join(o.names, ", ") + "."}
	if o.known && o.kind != floor.Nosing {
		notes = append(notes, w.heightsNote(o), o.m.How+" Gap: "+o.m.Gap+".")
		if o.m.Flush && o.m.Strip != trim.None {
			notes = append(notes, "The job has it met flush, and by these heights it is not: settle that before this is built.")
		}
		if run, ramp := w.bevel(o); run > 0 && !ramp {
			notes = append(notes, fmt.Sprintf("What stands over %s is bevelled 1 up in 2 along: the slope runs %s at least.", w.height(w.upright()), w.height(run)))
		}
	}
	if o.strip() == "" {
		notes = append(notes, "Which strip it takes follows from the height beyond: measure it and write it under heights, openings.")
	}
	if o.kind == floor.Nosing {
		notes = append(notes, w.nosingNotes(o)...)
	}
	return w.fitted(slug(string(o.kind), o.names[0]), title, 0, func(s float64) section.Figure { return w.openingFigure(o, s) }, notes...)
}

// heightsNote says both heights.
func (w work) heightsNote(o opening) string {
	side := "higher"
	if o.m.Diff < 0 {
		side = "lower"
	}
	s := fmt.Sprintf("Over the subfloor: this floor %s, %s %s", w.height(o.m.Stack.Height()), o.beyond(), w.height(o.m.Beyond))
	if o.m.Diff == 0 {
		return s + ": alike."
	}
	return fmt.Sprintf("%s: this floor is %s by %s.", s, side, w.height(o.m.Diff.Abs()))
}

// guide is a limit of heights as a length.
func (w work) guide(key string) tape.Length {
	r, _ := trim.Guides.Rule(w.p.Job.Trim.Limits, key)
	return tape.Length(r.Is)
}

func (w work) upright() tape.Length { return w.guide(trim.UprightMost) }

// bevel is how far the change of level slopes.
func (w work) bevel(o opening) (tape.Length, bool) {
	return trim.Bevel(o.m.Diff, w.upright(), w.guide(trim.BevelledMost))
}

const (
	armThis   = 42.0 // of this floor drawn, real mm
	armBeyond = 44.0 // of what lies beyond
)

// joint is a drawing of an opening: this floor to the left of x 0, where it ends.
type joint struct {
	w           work
	c           *section.Canvas
	o           opening
	end         float64 // x of the boards' end at the least gap
	far         float64 // at the greatest
	beyond      float64 // x where the floor beyond begins
	here, there float64 // heights of both floors
	shim        float64
}

func (w work) openingFigure(o opening, scale float64) section.Figure {
	j := joint{w: w, c: section.New(scale), o: o, end: -o.r.Least.Millimetres(), far: -o.r.Greatest.Millimetres()}
	if o.known {
		j.shim = o.m.Shim.Millimetres()
	}
	j.here = w.top() + j.shim
	j.there = j.here
	if o.known && o.kind != floor.Nosing {
		j.here, j.there = o.m.Stack.Height().Millimetres(), o.m.Beyond.Millimetres()
	}
	if o.strip() == trim.TMould {
		j.beyond = j.end + (w.guide(trim.TMouldStem) + 2*o.r.Least).Millimetres()
	}
	j.draw()
	return j.c.Figure(0)
}

func (j joint) draw() {
	c, w := j.c, j.w
	x0, x1 := -armThis-j.o.r.Greatest.Millimetres(), j.beyond+armBeyond
	if j.o.kind == floor.Nosing {
		j.nosing(x0)
		return
	}
	low := w.under(c, ground{x0: x0, x1: x1, a: x0, b: j.end, note: -armThis + 6, shim: j.shim})
	c.Break(section.At(x0, low), section.At(x0, j.here))
	c.Break(section.At(x1, low), section.At(x1, max(j.there, 4)))
	switch {
	case !j.o.known:
		c.Area("beyond", "ffffff", section.Hidden, section.Rect(j.beyond, 0, x1, j.there)...)
	case j.there > 0:
		c.Cut("beyond", coveringMaterial(j.o.m.Covering), section.Rect(j.beyond, 0, x1, j.there), 1)
	}
	w.sideways(c, "board", j.o.beside, x0, j.end, j.here-w.prof.Thick, section.Square)
	j.over()
	if j.far < j.end {
		c.Named("farthest", section.Hidden, section.At(j.far, j.here-w.prof.Thick), section.At(j.far, j.here))
	}
	j.where(low)
	j.dims()
	j.labels(x1, low)
}

// where marks where this floor ends in the wall.
func (j joint) where(low float64) {
	c, d := j.c, j.o.ends.Millimetres()
	c.Named("where this floor ends", section.Chain, section.At(0, low-4), section.At(0, max(j.here, j.there)+14))
	if d > 0 && d < armThis+j.o.r.Greatest.Millimetres()-6 {
		c.Named("face of the wall", section.Hidden, section.At(-d, low-4), section.At(-d, j.here+14))
		c.Dim(section.Under, section.At(-d, low-4), section.At(0, low-4), j.w.say.Of(j.o.ends)+" into the wall")
	}
}

// dims are the gap and the heights.
func (j joint) dims() {
	c, w, o := j.c, j.w, j.o
	base := j.here - w.prof.Thick
	text := w.say.Rip(o.r.Least)
	if j.far < j.end {
		c.Dim(section.Under, section.At(j.far, base), section.At(0, base), "at most "+w.say.Rip(o.r.Greatest))
		text = "at least " + text
	}
	if o.r.Least > 0 {
		c.Dim(section.Under, section.At(j.end, base), section.At(0, base), text)
	}
	if o.strip() == trim.TMould {
		c.Dim(section.Under, section.At(j.end, base), section.At(j.beyond, 0), w.say.Rip(w.guide(trim.TMouldStem)+2*o.r.Least)+" floor to floor")
	}
	left := -armThis - o.r.Greatest.Millimetres()
	c.Dim(section.Leftward, section.At(left, 0), section.At(left, j.here), w.height(tape.Length(float64(tape.Millimetre)*j.here)))
	if o.known && j.there > 0 {
		c.Dim(section.Leftward, section.At(left, 0), section.At(j.beyond, j.there), o.beyond()+" "+w.height(o.m.Beyond))
	}
}

// labels name the parts.
func (j joint) labels(x1, low float64) {
	c, o := j.c, j.o
	this := "This floor: row ends"
	if o.beside {
		this = "This floor: a row lies along the opening, its edge sawn"
	}
	if o.kind == floor.Flush && !o.beside {
		this += ", the cut measured in place"
	}
	c.Note(section.At(j.end-18, j.here-j.w.prof.Thick*0.6), this)
	name := o.beyond()
	if o.known {
		name += ", " + j.w.height(o.m.Beyond) + " over the subfloor"
	} else {
		name += ": its height is not told in the job"
	}
	c.Note(section.At(x1-14, max(j.there*0.5, 1)), name)
	switch {
	case o.strip() == trim.None && o.r.Least > 0 && o.beside:
		c.Note(section.At(j.end/2, j.here-3), "Soft joint: cork or sealant, so that boards can move")
	case o.strip() == trim.None && o.r.Least > 0:
		c.NoteLine(section.At(j.end/2, j.here), "Fine joint")
	}
	if o.ends > 0 {
		c.NoteLine(section.At(0, low*0.6), "Here this floor ends, under the closed door leaf")
	} else {
		c.NoteLine(section.At(0, low*0.6), "Here this floor ends")
	}
}

func coveringMaterial(name string) section.Material {
	switch name {
	case "tile", "stone":
		return section.Tile
	case "carpet":
		return section.Carpet
	case "boards", "laminate":
		return section.Grain
	}
	return section.Plain
}
