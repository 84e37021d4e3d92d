package detail

import (
	"fmt"

	"strake/section"
	"strake/subfloor"
	"strake/tape"
)

// layer is one layer under the boards, from the top of what boards lie on down.
type layer struct {
	name  string
	mat   section.Material
	thick float64     // drawn, real mm
	is    tape.Length // 0: not told in the job
	holds bool
}

// usual is how thick a layer of no told thickness is drawn, real mm.
const usual = 12.0

// deepest is how much of a slab is drawn, real mm.
const deepest = 32.0

// layers are the subfloor as it is, from the top down: what comes out is left out,
// a new panel and a rolled sheet over it are not counted.
func (w work) layers() []layer {
	var out []layer
	add := func(name string, m section.Material, t tape.Length, holds bool) {
		l := layer{name, m, t.Millimetres(), t, holds}
		if t == 0 {
			l.thick = usual
		}
		out = append(out, l)
	}
	for _, f := range subfloor.Fates(w.p.Job.Subfloor.Layers, w.p.Job.Subfloor.Built) {
		if f.Out {
			continue
		}
		add(f.Material.Said(), materialOf(f.Material), f.Thickness, f.Holds)
		if f.Material == subfloor.Concrete {
			out[len(out)-1].thick = deepest
			break
		}
	}
	if w.slab() && !endsIn(out, section.Concrete) {
		out = append(out, layer{"concrete slab", section.Concrete, deepest, 0, false})
	}
	if len(out) == 0 {
		add("subfloor", section.Plain, 0, true)
	}
	return out
}

func endsIn(ls []layer, m section.Material) bool { return len(ls) > 0 && ls[len(ls)-1].mat == m }

// slab tells whether the floor lies on concrete.
func (w work) slab() bool { return w.p.Nailing().Slab }

func materialOf(m subfloor.Material) section.Material {
	switch m {
	case subfloor.Plywood:
		return section.Plywood
	case subfloor.OSB, subfloor.Particleboard:
		return section.Strands
	case subfloor.Planks, subfloor.OldBoards:
		return section.Grain
	case subfloor.Concrete, subfloor.Leveller:
		return section.Concrete
	}
	return section.Plain
}

// said is a layer in a note.
func (w work) said(l layer) string {
	if l.is == 0 && l.mat == section.Concrete {
		return l.name
	}
	if l.is == 0 {
		return l.name + ": thickness not told in the job"
	}
	return fmt.Sprintf("%s, %s", l.name, w.height(l.is))
}

// rolled is the sheet under the boards: its thickness in real mm as drawn, 0
// none.
func (w work) rolled() float64 { return w.p.Nailing().Paper.Millimetres() }

// rolledName is what is rolled out, "" nothing.
func (w work) rolledName() string {
	if w.rolled() == 0 {
		return ""
	}
	name := w.p.Job.Site.Sheet.Kind
	if name == "" {
		name = "sheet"
	}
	if w.h.SheetGuess {
		return name + " under the boards, taken for " + w.height(w.p.Nailing().Paper)
	}
	return name + " under the boards, " + w.height(w.p.Nailing().Paper)
}

// ground is what boards lie on, in a cut: the subfloor from x0 to x1, what is new
// over it from a to b. Leaders go to it from note on.
type ground struct {
	x0, x1, a, b float64
	note         float64
	shim         float64 // under the new layers there
}

// under draws what boards lie on: the subfloor with its top at y 0, over it what is
// shimmed there, a new panel and the sheet. It returns the lowest y.
func (w work) under(c *section.Canvas, g ground) (low float64) {
	for i, l := range w.layers() {
		open := []int{1, 3}
		if l.mat == section.Concrete || l.is == 0 {
			open = append(open, 0) // how deep it goes is not known
		}
		c.Cut(fmt.Sprintf("layer %d", i+1), l.mat, section.Rect(g.x0, low-l.thick, g.x1, low), open...)
		c.Note(section.At(g.note+3*float64(i), low-l.thick/2), w.said(l))
		low -= l.thick
	}
	y := 0.0
	var open []int
	if g.a == g.x0 {
		open = append(open, 3)
	}
	if g.b == g.x1 {
		open = append(open, 1)
	}
	add := func(name string, m section.Material, t float64, said string) {
		if t <= 0 {
			return
		}
		c.Cut(name, m, section.Rect(g.a, y, g.b, y+t), open...)
		c.Note(section.At(min(max(g.note-4, g.a+2), g.b-2), y+t/2), said)
		y += t
	}
	add("shim", section.Plain, g.shim, "shimmed here by "+w.height(mm(g.shim)))
	add("panel", section.Plywood, w.panel(), "new panel, "+w.height(w.p.Job.Trim.Panel))
	add("sheet", section.Solid, w.rolled(), w.rolledName())
	return low
}

// panel is a new panel over the subfloor, real mm, 0 none.
func (w work) panel() float64 { return w.p.Job.Trim.Panel.Millimetres() }

// up is the underside of the boards over the subfloor, real mm; top their face.
func (w work) up() float64  { return w.panel() + w.rolled() }
func (w work) top() float64 { return w.up() + w.prof.Thick }
