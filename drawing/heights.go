package drawing

import (
	"fmt"
	"math"
	"strings"

	"strake/plan"
	"strake/sheet"
	"strake/tape"
)

// Heights draws what makes the subfloor flat over the room, to chalk from: at
// each mark of the grid how much is built up or taken off.
func Heights(p plan.Plan) sheet.Sheet { return heightsOn(p, usual, false) }

func heightsOn(p plan.Plan, choose sizing, tiles bool) sheet.Sheet {
	d := newDraw(p, choose)
	d.tiles = tiles
	if d.empty() {
		d.nothing()
		return d.sheet()
	}
	d.drawStays()
	d.drawEdges()
	marks, work := p.Heights()
	size := d.markSize()
	for _, m := range marks {
		d.drawMark(m, size)
	}
	d.nameCorners()
	d.nameStays()
	d.heightsColumn(work.Flat)
	d.frame()
	s := d.sheet()
	s.Title = p.Job.Name + ": what makes the subfloor flat"
	return s
}

// markSize is how high the figures are, so that neighbours keep apart.
func (d *draw) markSize() float64 {
	return math.Min(tiny, d.on(d.p.Job.Subfloor.Heights.Step)*0.26)
}

// drawMark draws one mark with its figure under it: a triangle that stands up
// where it is built up, a black one that hangs down where it is taken off, a
// small dot where nothing is done, and a question mark where nothing was read.
func (d *draw) drawMark(m plan.Mark, size float64) {
	c := d.at(d.p.Aligned.Dir.ToRow(m.At))
	r := size * 0.55
	change := changed(m.Change, d.p.Job.Unit)
	put := func(s string) {
		d.text = append(d.text, sheet.Text{Text: s, At: sheet.Pt{X: c.X, Y: c.Y + r + size}, Size: size, Anchor: sheet.Middle, Bold: m.Over})
	}
	switch {
	case !m.Read:
		put("?")
	case change == "":
		d.lines = append(d.lines, sheet.Polygon{Rings: [][]sheet.Pt{disc(c, 0.3)}, Fill: sheet.Mid})
	case m.Change > 0:
		d.lines = append(d.lines, triangle(c, r, -1, sheet.White))
		put(change)
	default:
		d.lines = append(d.lines, triangle(c, r, 1, sheet.Black))
		put(change)
	}
}

// triangle points up (-1) or down (1) on the page.
func triangle(c sheet.Pt, r, way float64, fill sheet.Ink) sheet.Polygon {
	return sheet.Polygon{Fill: fill, Pen: sheet.Pen{Width: 0.25, Ink: sheet.Black}, Rings: [][]sheet.Pt{{
		{X: c.X - r, Y: c.Y - way*r*0.8}, {X: c.X + r, Y: c.Y - way*r*0.8}, {X: c.X, Y: c.Y + way*r*0.8}}}}
}

// changed is what is done at a mark, to 1/32 in or 0.5 mm, without its unit; ""
// for nothing to speak of.
func changed(l tape.Length, u tape.Unit) string {
	s := tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 2}
	if u.Imperial() {
		s = tape.Style{Unit: tape.UnitInch, Step: tape.Inch / 32}
	}
	if tape.Nearest(l.Abs(), s.Step) == 0 {
		return ""
	}
	sign := "+"
	if l < 0 {
		sign = "-"
	}
	return sign + strings.TrimSuffix(strings.TrimSuffix(s.Of(l.Abs()), "\""), " mm")
}

// heightsColumn says how the sheet is used.
func (d *draw) heightsColumn(flat bool) {
	if !d.tiles {
		d.drawScaleBar()
		d.drawTop()
	}
	if d.page.panel == 0 {
		return
	}
	s := &side{d: d, x: d.area.b.X + 4, w: panel - 6, y: margin + 1, foot: d.page.h - margin - 6}
	s.para(d.p.Job.Name, title, 0)
	s.para("What makes the subfloor flat", middling, 0)
	h := d.p.Job.Subfloor.Heights
	s.heading("How to use it")
	unit := "millimetres"
	if d.p.Job.Unit.Imperial() {
		unit = "inches"
	}
	s.para(fmt.Sprintf("Figures are in %s. + with a white triangle: build up by so much. - with a black triangle: take off so much. A dot: leave it. ?: not read. Bold: a straightedge shows this mark to be off by more than the rule lets pass.", unit), small, 0)
	s.heading("Where the marks are")
	s.para(fmt.Sprintf("Lines of marks lie along wall %s, the first %s off it, the others %s apart. In each the first mark is %s from corner %s along the wall, the others %s apart.",
		h.Wall, d.say.Of(h.Off), d.say.Of(h.Step), d.say.Of(h.At), h.From, d.say.Of(h.Step)), small, 0)
	for _, v := range d.p.Underfloor().Verdicts(tape.Paper(d.p.Job.Unit)) {
		if strings.HasPrefix(v.Where, "grid of heights") && v.Rule == "flatness" {
			s.heading("Rule")
			s.para(v.Limit+". "+v.Source+".", small, 0)
			s.heading("Found")
			s.para(v.Measured+".", small, 0)
			s.heading("To do")
			s.para(v.Do, small, 0)
		}
	}
	if !flat {
		s.para("The figures on this sheet do not bring it within the rule.", small, 0)
	}
	s.para("Lay a straightedge over it again when it is done.", small, 0)
	x := d.area.b.X + 1
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{{X: x, Y: margin / 2}, {X: x, Y: d.page.h - margin/2}}, Pen: thin})
}
