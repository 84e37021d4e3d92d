package measure

import (
	"fmt"
	"math"

	"strake/plane"
	"strake/sheet"
)

// The page: A4 upright, with room for a carpenter's pencil.
const (
	pageW, pageH = 210.0, 297.0
	edge         = 12.0
	rowHigh      = 11.4 // of a line to fill in
	sketchHigh   = 105.0
	boxWide      = 48.0
)

// Pages are the sheet on paper: a sketch with lettered corners, then the lines
// to fill in, on as many pages as they take.
func (s Sheet) Pages() []sheet.Sheet {
	p := &pages{s: s}
	p.next()
	p.sketch()
	for i, l := range s.Lines {
		p.line(fmt.Sprintf("%d", i+1), l.What, l.Why+hookText(l))
	}
	if len(s.Openings) > 0 {
		p.heading("Doorways and what stays")
		for _, l := range s.Openings {
			p.line("", l.What, l.Why)
		}
	}
	p.how()
	return p.out
}

type pages struct {
	s   Sheet
	out []sheet.Sheet
	y   float64
}

func (p *pages) page() *sheet.Sheet { return &p.out[len(p.out)-1] }

func (p *pages) next() {
	n := len(p.out) + 1
	p.out = append(p.out, sheet.Sheet{Title: fmt.Sprintf("%s, measuring sheet %d", p.s.Ask.Name, n), W: pageW, H: pageH})
	p.page().Put(sheet.Text{Text: fit(p.s.Ask.Name, 6, pageW-2*edge-45), At: sheet.Pt{X: edge, Y: edge + 5}, Size: 6, Bold: true, Ink: sheet.Black},
		sheet.Text{Text: fmt.Sprintf("measuring sheet %d", n), At: sheet.Pt{X: pageW - edge, Y: edge + 5}, Size: 3.5, Anchor: sheet.End, Ink: sheet.Black})
	p.y = edge + 10
}

// room makes a new page where h mm do not fit any more.
func (p *pages) room(h float64) {
	if p.y+h > pageH-edge {
		p.next()
	}
}

func (p *pages) heading(text string) {
	p.room(8 + rowHigh)
	p.y += 7
	p.page().Put(sheet.Text{Text: text, At: sheet.Pt{X: edge, Y: p.y}, Size: 4.2, Bold: true, Ink: sheet.Black})
	p.y += 2
}

// line is one reading: its number, what it is, why, and a box to write in.
func (p *pages) line(number, what, why string) {
	p.room(rowHigh)
	top, width := p.y, pageW-2*edge-boxWide-10
	rule := sheet.Pen{Width: 0.25, Ink: sheet.Mid}
	box := []sheet.Pt{{X: pageW - edge - boxWide, Y: top + 0.6}, {X: pageW - edge, Y: top + 0.6}, {X: pageW - edge, Y: top + rowHigh - 0.6}, {X: pageW - edge - boxWide, Y: top + rowHigh - 0.6}}
	p.page().Put(
		sheet.Polygon{Rings: [][]sheet.Pt{box}, Pen: sheet.Pen{Width: 0.4, Ink: sheet.Black}},
		sheet.Text{Text: number, At: sheet.Pt{X: edge + 7, Y: top + 5.2}, Size: 4.2, Anchor: sheet.End, Bold: true, Ink: sheet.Black},
		shrunk(what, sheet.Pt{X: edge + 9, Y: top + 5.2}, width),
		sheet.Text{Text: fit(why, 2.8, width), At: sheet.Pt{X: edge + 9, Y: top + 9.4}, Size: 2.8, Ink: sheet.Dark},
		sheet.Polyline{Points: []sheet.Pt{{X: edge, Y: top + rowHigh}, {X: pageW - edge - boxWide - 2, Y: top + rowHigh}}, Pen: rule},
	)
	p.y += rowHigh
}

// shrunk is a line as large as its width allows, cut only when it would be too
// small to read.
func shrunk(what string, at sheet.Pt, width float64) sheet.Text {
	t := sheet.Text{Text: what, At: at, Size: 4, Ink: sheet.Black}
	for t.Size > 2.8 && t.Width() > width {
		t.Size -= 0.1
	}
	t.Text = fit(what, t.Size, width)
	return t
}

// fit cuts text that is too wide, with dots.
func fit(text string, size, width float64) string {
	rs := []rune(text)
	for n := len(rs); n > 0; n-- {
		t := string(rs[:n])
		if n < len(rs) {
			t += "..."
		}
		if (sheet.Text{Text: t, Size: size}).Width() <= width {
			return t
		}
	}
	return ""
}

func (p *pages) how() {
	p.heading("How")
	p.y += 3
	for _, h := range How {
		lines := sheet.Wrap(h, 3.2, pageW-2*edge-5)
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

// sketch draws the rooms as far as they are known, letters at the corners.
func (p *pages) sketch() {
	lo, hi := p.s.extent()
	scale := math.Min((pageW-2*edge-24)/math.Max(1, hi.X-lo.X), (sketchHigh-24)/math.Max(1, hi.Y-lo.Y))
	w := (hi.X - lo.X) * scale
	place := func(q plane.XY) sheet.Pt {
		return sheet.Pt{X: pageW/2 - w/2 + (q.X-lo.X)*scale, Y: p.y + sketchHigh - 12 - (q.Y-lo.Y)*scale}
	}
	for _, r := range p.s.Ask.Sketch.Rooms {
		ring := r.Ring()
		var pts []sheet.Pt
		for _, c := range ring {
			pts = append(pts, place(p.s.At[c]))
		}
		p.page().Put(sheet.Polygon{Name: r.Name, Rings: [][]sheet.Pt{pts}, Pen: sheet.Pen{Width: 0.8, Ink: sheet.Black}})
		for i, c := range ring {
			p.page().Put(p.letter(c, ring, i, place))
		}
	}
	p.page().Put(sheet.Text{Text: "Seen from above, not to scale. Letters are the corners.", At: sheet.Pt{X: edge, Y: p.y + sketchHigh - 1}, Size: 2.8, Ink: sheet.Dark})
	p.y += sketchHigh + 2
}

// letter stands outside its corner, on the line that halves it.
func (p *pages) letter(c string, ring []string, i int, place func(plane.XY) sheet.Pt) sheet.Text {
	n := len(ring)
	at, a, b := p.s.At[c], p.s.At[ring[(i+n-1)%n]], p.s.At[ring[(i+1)%n]]
	u, v := a.Sub(at), b.Sub(at)
	out := plane.XY{X: 1}
	if u.Len() > 0 && v.Len() > 0 {
		out = u.Unit().Add(v.Unit()).Times(-1)
		if out.Len() < 0.05 {
			out = v.Unit().Left().Times(-1)
		}
		out = out.Unit()
		if v.Cross(u) < 0 { // a corner that stands into the room: the outside is the narrow side
			out = out.Times(-1)
		}
	}
	q := place(at)
	best, room := sheet.Pt{}, -1.0
	for _, d := range []float64{5, -5, 7.5, -7.5} { // outside first, else inside, clear of every wall
		m := sheet.Pt{X: q.X + out.X*d, Y: q.Y - out.Y*d}
		clear := p.clear(m, place)
		if clear > room {
			best, room = m, clear
		}
		if clear >= 4 {
			break
		}
	}
	return sheet.Text{Text: c, At: sheet.Pt{X: best.X, Y: best.Y + 2}, Size: 5.5, Anchor: sheet.Middle, Bold: true, Ink: sheet.Black}
}

// clear is how far a place on the page is from the nearest wall.
func (p *pages) clear(m sheet.Pt, place func(plane.XY) sheet.Pt) float64 {
	d := math.Inf(1)
	for _, r := range p.s.Ask.Sketch.Rooms {
		ring := r.Ring()
		for i, c := range ring {
			a, b := place(p.s.At[c]), place(p.s.At[ring[(i+1)%len(ring)]])
			u := b.Sub(a)
			t := 0.0
			if l := u.X*u.X + u.Y*u.Y; l > 0 {
				t = math.Max(0, math.Min(1, ((m.X-a.X)*u.X+(m.Y-a.Y)*u.Y)/l))
			}
			q := a.Add(u.Times(t)).Sub(m)
			d = math.Min(d, math.Hypot(q.X, q.Y))
		}
	}
	return d
}

func (s Sheet) extent() (lo, hi plane.XY) {
	first := true
	for _, r := range s.Ask.Sketch.Rooms {
		for _, c := range r.Corners {
			q := s.At[c]
			if first {
				lo, hi, first = q, q, false
			}
			lo.X, lo.Y = math.Min(lo.X, q.X), math.Min(lo.Y, q.Y)
			hi.X, hi.Y = math.Max(hi.X, q.X), math.Max(hi.Y, q.Y)
		}
	}
	return
}
