package drawing

import (
	"strake/fasten"
	"strake/sheet"
)

// freePen is the line round a part of the floor that fasteners keep out of.
var freePen = sheet.Pen{Width: 0.25, Ink: sheet.Black, Dash: []float64{0.9, 0.7}}

// drawFree draws what fasteners keep out of, its margin included: as it is chalked
// on the subfloor, over the boards.
func (d *draw) drawFree() {
	for _, f := range d.p.Nailing().Free {
		ring := d.freeRing(f)
		d.lines = append(d.lines, sheet.Polyline{Name: "free " + f.Name, Points: append(ring, ring[0]), Pen: freePen})
	}
}

// freeRing is the outline of one, its margin included, on the page.
func (d *draw) freeRing(f fasten.Free) []sheet.Pt {
	return d.ring(toRow(d.p, f.Grown()))
}

// nameFree writes the name of each where there is room: in it, beside it, or
// anywhere near with a thin line to it.
func (d *draw) nameFree() {
	for _, f := range d.p.Nailing().Free {
		ring := d.freeRing(f)
		lo, hi := bounds(ring)
		name := f.Name + ": no fasteners"
		texts := inMiddle(name, lo, hi)
		texts = append(texts, besides(name, lo, hi)...)
		texts = append(texts, besides(f.Name, lo, hi)...)
		t, ok := d.labels.first(texts, nil)
		if !ok {
			t, ok = d.freeFarther(f.Name, lo, hi)
		}
		if ok {
			d.onWhite(t)
		}
		for i, a := range ring { // boards' names, which come last, keep off it where they can
			d.labels.line(a, ring[(i+1)%len(ring)], 0)
		}
	}
}

// inMiddle are writings in the middle of a box, level and upright.
func inMiddle(name string, lo, hi sheet.Pt) []sheet.Text {
	mid := lo.Add(hi).Times(0.5)
	var out []sheet.Text
	for _, turn := range []float64{0, -90} {
		t := sheet.Text{Text: name, Size: tiny, Anchor: sheet.Middle, Turn: turn, At: mid.Sub(up(turn).Times(0.36 * tiny))}
		if b := (box{lo, hi}); b.holds(outline(t)) {
			out = append(out, t)
		}
	}
	return out
}

// freeFarther looks for the nearest free place up and down from the middle, and
// draws the line from there.
func (d *draw) freeFarther(name string, lo, hi sheet.Pt) (sheet.Text, bool) {
	mid := lo.Add(hi).Times(0.5)
	var texts []sheet.Text
	for off := 2.0; off < 40; off++ {
		for _, at := range []sheet.Pt{{X: mid.X, Y: hi.Y + off + tiny}, {X: mid.X, Y: lo.Y - off}, {X: hi.X + off + 8, Y: mid.Y}, {X: lo.X - off - 8, Y: mid.Y}} {
			texts = append(texts, sheet.Text{Text: name, Size: tiny, Anchor: sheet.Middle, At: at})
		}
	}
	t, ok := d.labels.first(texts, nil)
	if ok {
		d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{mid, t.At.Sub(sheet.Pt{Y: 0.36 * tiny})}, Pen: thin})
	}
	return t, ok
}

// hasFree tells whether the job keeps anything free.
func (d *draw) hasFree() bool { return len(d.p.Nailing().Free) > 0 }
