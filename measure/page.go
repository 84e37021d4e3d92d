package measure

import (
	"fmt"

	"strake/sheet"
)

// The page, upright, with room for a carpenter's pencil.
const (
	edge       = 12.0
	rowHigh    = 11.4 // of a line to fill in
	sketchHigh = 105.0
	boxWide    = 48.0
)

// paper is the size of the page in mm: US Letter or A4.
func (a Ask) paper() (w, h float64) {
	if a.Unit.Imperial() {
		return 215.9, 279.4
	}
	return 210, 297
}

// Pages are the sheet on paper: a sketch with lettered corners, then the lines
// to fill in, on as many pages as they take.
func (s Sheet) Pages() []sheet.Sheet {
	p := &pages{s: s}
	p.w, p.h = s.Ask.paper()
	p.next()
	p.sketch()
	number := 0
	for _, sec := range s.Sections {
		p.heading(sec.Title, sec.Note)
		for _, l := range sec.Lines {
			number++
			p.line(fmt.Sprint(number), l)
		}
	}
	p.list("What each check buys", s.Buys)
	p.list("Mind", s.Notes)
	p.list("How", How)
	for i := range p.out {
		p.out[i].Put(sheet.Text{Text: fmt.Sprintf("measuring sheet %d of %d", i+1, len(p.out)), At: sheet.Pt{X: p.w - edge, Y: edge + 5}, Size: 3.5, Anchor: sheet.End, Ink: sheet.Black})
	}
	return p.out
}

type pages struct {
	s    Sheet
	w, h float64
	out  []sheet.Sheet
	y    float64
}

func (p *pages) page() *sheet.Sheet { return &p.out[len(p.out)-1] }

func (p *pages) next() {
	n := len(p.out) + 1
	p.out = append(p.out, sheet.Sheet{Title: fmt.Sprintf("%s, measuring sheet %d", p.s.Ask.Name, n), W: p.w, H: p.h})
	p.page().Put(sheet.Text{Text: fit(p.s.Ask.Name, 6, p.w-2*edge-50, true), At: sheet.Pt{X: edge, Y: edge + 5}, Size: 6, Bold: true, Ink: sheet.Black})
	p.y = edge + 10
}

// room makes a new page where h mm do not fit any more.
func (p *pages) room(h float64) {
	if p.y+h > p.h-edge {
		p.next()
	}
}

// heading is a section's title and what is said of all its lines.
func (p *pages) heading(title, note string) {
	lines := sheet.Wrap(note, 3, p.w-2*edge)
	p.room(9 + 4*float64(len(lines)) + rowHigh)
	p.y += 7
	p.page().Put(sheet.Text{Text: title, At: sheet.Pt{X: edge, Y: p.y}, Size: 4.2, Bold: true, Ink: sheet.Black})
	p.y += 1.5
	for _, l := range lines {
		p.page().Put(sheet.Text{Text: l, At: sheet.Pt{X: edge, Y: p.y + 3}, Size: 3, Ink: sheet.Dark})
		p.y += 4
	}
	p.y++
}

// line is one thing to read: its number, what it is, why, and a box to write in.
func (p *pages) line(number string, l Line) {
	p.room(rowHigh)
	top, width := p.y, p.w-2*edge-boxWide-12
	right, x := p.w-edge, edge+9
	box := []sheet.Pt{{X: right - boxWide, Y: top + 0.6}, {X: right, Y: top + 0.6}, {X: right, Y: top + rowHigh - 0.6}, {X: right - boxWide, Y: top + rowHigh - 0.6}}
	p.page().Put(
		sheet.Polygon{Rings: [][]sheet.Pt{box}, Pen: sheet.Pen{Width: 0.4, Ink: sheet.Black}},
		sheet.Text{Text: number, At: sheet.Pt{X: edge + 7, Y: top + 5.2}, Size: 4.2, Anchor: sheet.End, Bold: true, Ink: sheet.Black},
		shrunk(l.What, sheet.Pt{X: x, Y: top + 5.2}, 4.6, width),
		shrunk(l.beside(), sheet.Pt{X: x, Y: top + 9.6}, 3, width),
		sheet.Polyline{Points: []sheet.Pt{{X: edge, Y: top + rowHigh}, {X: right - boxWide - 2, Y: top + rowHigh}}, Pen: sheet.Pen{Width: 0.25, Ink: sheet.Mid}},
	)
	p.y += rowHigh
}

// shrunk is a line as large as its width allows, cut only when it would be too
// small to read.
func shrunk(what string, at sheet.Pt, size, width float64) sheet.Text {
	t := sheet.Text{Text: what, At: at, Size: size, Ink: sheet.Black}
	for t.Size > 2.4 && t.Width() > width {
		t.Size -= 0.1
	}
	t.Text = fit(what, t.Size, width, false)
	return t
}

// fit cuts text that is too wide, with dots.
func fit(text string, size, width float64, bold bool) string {
	rs := []rune(text)
	for n := len(rs); n > 0; n-- {
		t := string(rs[:n])
		if n < len(rs) {
			t += "..."
		}
		if (sheet.Text{Text: t, Size: size, Bold: bold}).Width() <= width {
			return t
		}
	}
	return ""
}

// list is a heading with points below.
func (p *pages) list(title string, points []string) {
	if len(points) == 0 {
		return
	}
	p.heading(title, "")
	for _, h := range points {
		lines := sheet.Wrap(h, 3.2, p.w-2*edge-5)
		p.room(4.4 * float64(len(lines)))
		for i, l := range lines {
			if i == 0 {
				p.page().Put(sheet.Text{Text: "-", At: sheet.Pt{X: edge, Y: p.y + 3.2}, Size: 3.2, Ink: sheet.Black})
			}
			p.page().Put(sheet.Text{Text: l, At: sheet.Pt{X: edge + 4, Y: p.y + 3.2}, Size: 3.2, Ink: sheet.Black})
			p.y += 4.4
		}
	}
}
