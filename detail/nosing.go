package detail

import (
	"strake/floor"
	"strake/section"
)

const (
	overhang = 25.0 // a usual nosing over the riser, real mm (1 in, from memory)
	nosed    = 60.0 // of the nosing on the floor
)

// nosing draws a stair head: the nosing goes first, boards come up to it.
func (j joint) nosing(x0 float64) {
	c, w := j.c, j.w
	low := w.under(c, ground{x0: x0, x1: 0, a: x0, b: 0, note: -armThis + 6, shim: j.shim})
	c.Break(section.At(x0, low), section.At(x0, j.here))
	up := j.here - w.prof.Thick
	riser := 19.0
	c.Cut("riser", section.Trim, section.Rect(0, low-46, riser, up), 0)
	c.Break(section.At(0, low-46), section.At(riser, low-46))
	t := w.prof
	ring := t.Ring(nosed, section.Grooved, section.Square)
	ring = append(round(nosed, t.Thick), ring[2:]...)
	c.Cut("nosing", section.Trim, section.Shift(ring, section.At(riser+overhang-nosed, up)))
	x := riser + overhang - nosed
	edge, rest := w.nosingEdge(j.o)
	w.sideways(c, "board", j.o.beside, x0, x, up, edge)
	if edge != section.Tongued {
		y := up + t.TongueLow
		c.Cut("spline", section.Spline, section.Rect(x-t.Deep+0.5, y, x+t.Deep-0.5, up+t.TongueTop))
	}
	c.Dim(section.Leftward, section.At(x0, 0), section.At(x0, j.here), w.height(mm(j.here)))
	c.Note(section.At(riser+overhang-24, up+t.Thick*0.5), "Nosing: fitted, glued and fastened first. Its profile is not told in the job: drawn with a groove")
	c.Note(section.At(x-16, up+t.Thick*0.6), rest)
	c.Note(section.At(riser/2, low-30), "Riser of the stair, as found")
	c.NoteLine(section.At(x, up+t.Thick), "No gap: boards come up tight to the nosing")
}

// round is the right edge of a nosing, from below upwards.
func round(x, thick float64) []section.XY {
	r := thick / 2
	var out []section.XY
	for _, k := range arc[:len(arc)-1] {
		out = append(out, section.At(x-r+float64(r*k[1]), r-float64(r*k[0])))
	}
	for _, k := range arc {
		out = append(out, section.At(x-r+float64(r*k[0]), r+float64(r*k[1])))
	}
	return out
}

// nosingEdge is what boards turn to the nosing, and how it is said.
func (w work) nosingEdge(o opening) (section.Edge, string) {
	if !o.beside {
		return section.Grooved, "Row ends, the cut measured in place; where an end has no tongue it is grooved on the job for a spline"
	}
	for _, f := range w.p.AllFields() {
		for _, r := range f.Layout.Rips {
			if r.Kind != floor.Nosing {
				continue
			}
			switch full := r.Narrowest == r.Width; {
			case full && r.Above:
				return section.Grooved, "A whole board meets it with its groove: a spline, or a tongue on the nosing"
			case full:
				return section.Tongued, "A whole board meets it with its tongue: the nosing has a groove"
			}
			return section.Grooved, "The row is ripped there: groove the sawn edge for a spline"
		}
	}
	return section.Grooved, "The row lies along it: groove a sawn edge for a spline"
}

func (w work) nosingNotes(o opening) []string {
	out := []string{"An open stair head: a guard across it while you work, and nobody walks backwards towards it."}
	for _, f := range w.h.Flights {
		if f.Head && w.told {
			out = append(out, "This floor raises the head of "+f.Name+" by "+w.height(f.Rise)+": its last riser becomes "+w.height(f.Then[len(f.Then)-1])+".")
		}
	}
	return append(out, routerNote)
}

const routerNote = "Router or grooving cutter: by its maker's instructions, the piece clamped, eyes and ears covered, the bit stopped before hands come near."
