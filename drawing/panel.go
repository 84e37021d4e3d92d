package drawing

import (
	"strake/sheet"
)

// side is the column of writing beside the drawing, filled from the top.
type side struct {
	d       *draw
	x, w, y float64
	foot    float64 // no writing below this
	full    bool    // something did not fit
}

func (d *draw) drawPanel() {
	if !d.tiles {
		if d.p.Lay.Example {
			d.banner()
		}
		d.drawScaleBar()
		d.drawTop()
	}
	d.drawTongues()
	if d.page.panel == 0 {
		return
	}
	s := &side{d: d, x: d.area.b.X + 4, w: panel - 6, y: margin + 1, foot: d.page.h - margin - 6}
	s.titleBlock()
	s.boards()
	s.toLay()
	s.legend()
	s.edges()
	s.rips()
	s.notes()
	if s.full {
		d.put(sheet.Text{Text: "more stands on the row cards", At: sheet.Pt{X: s.x, Y: s.foot + 4}, Size: small})
	}
	x := d.area.b.X + 1
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{{X: x, Y: margin / 2}, {X: x, Y: d.page.h - margin/2}}, Pen: thin})
}

// line writes one line at an indent; false when the column is full.
func (s *side) line(text string, size, indent float64, bold bool) bool {
	h := size * 1.35
	if s.y+h > s.foot {
		s.full = true
		return false
	}
	s.d.put(sheet.Text{Text: text, At: sheet.Pt{X: s.x + indent, Y: s.y + size}, Size: size, Bold: bold})
	s.y += h
	return true
}

// para writes text over as many lines as it takes.
func (s *side) para(text string, size, indent float64) {
	for _, l := range sheet.Wrap(text, size, s.w-indent) {
		if !s.line(l, size, indent, false) {
			return
		}
	}
}

// heading starts a part of the column.
func (s *side) heading(text string) {
	s.y += 2.6
	if s.line(text, middling, 0, true) {
		y := s.y + 0.2
		s.d.lines = append(s.d.lines, sheet.Polyline{Points: []sheet.Pt{{X: s.x, Y: y}, {X: s.x + s.w, Y: y}}, Pen: thin})
		s.y += 1.4
	}
}

// banner says across the drawing that the lengths are an example.
func (d *draw) banner() {
	b := box{d.area.a, sheet.Pt{X: d.area.b.X - 3, Y: d.area.a.Y + 9}}
	d.lines = append(d.lines, sheet.Polygon{Rings: [][]sheet.Pt{b.corners()}, Fill: sheet.Light, Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black}})
	d.put(sheet.Text{Text: "EXAMPLE LAYOUT, BOARDS NOT YET KNOWN", Size: title, Bold: true, Anchor: sheet.Middle,
		At: sheet.Pt{X: (b.a.X + b.b.X) / 2, Y: b.a.Y + 6.4}})
	d.labels.reserve(b.corners())
	d.bannered = true
}
