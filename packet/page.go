package packet

import (
	"fmt"
	"strings"

	"strake/sheet"
)

// Paper is a size of sheet, upright, mm.
type Paper struct {
	Name string
	W, H float64
}

// The papers: ISO 216 and ANSI Y14.1, which is 8-1/2 by 11 in.
var (
	A4     = Paper{"A4", 210, 297}
	Letter = Paper{"Letter", 215.9, 279.4}
)

// Papers are the papers by the names they are asked for with.
var Papers = map[string]Paper{"a4": A4, "letter": Letter}

// Of a page, mm: what is left free round it, and the lines at its head and foot.
const (
	margin = 10.0
	head   = 13.0
	foot   = 7.0
)

// Sizes of writing, mm.
const (
	heading  = 6.0
	subtitle = 4.2
	body     = 3.4
	working  = 3.2 // the least of what one works from, read at arm's length
	note     = 2.7 // sources, and what is seldom needed
)

var (
	rule  = sheet.Pen{Width: 0.35, Ink: sheet.Black}
	thin  = sheet.Pen{Width: 0.18, Ink: sheet.Black}
	faint = sheet.Pen{Width: 0.18, Ink: sheet.Mid}
)

// box is an upright rectangle on a page.
type box struct{ x, y, w, h float64 }

func (b box) ring() []sheet.Pt {
	return []sheet.Pt{{X: b.x, Y: b.y}, {X: b.x + b.w, Y: b.y}, {X: b.x + b.w, Y: b.y + b.h}, {X: b.x, Y: b.y + b.h}}
}

// leaf is a page with its title.
type leaf struct {
	sheet.Sheet
	title string // of the part of the packet
	no    int    // which page of that part, from 1
	job   string // named at the foot where something else stands beside the title
	body  box
}

// plainLeaf is an upright page without a head: what is on it has its own.
func plainLeaf(p Paper, title string) *leaf {
	l := &leaf{title: title, no: 1, body: box{margin, margin, p.W - 2*margin, p.H - 2*margin - foot}}
	l.Sheet = sheet.Sheet{Title: title, W: p.W, H: p.H}
	return l
}

// newLeaf is a page with its head: the title, and something said beside it.
func newLeaf(p Paper, across bool, beside, title string, no int) *leaf {
	w, h := p.W, p.H
	if across {
		w, h = h, w
	}
	l := &leaf{title: title, no: no, body: box{margin, margin + head, w - 2*margin, h - 2*margin - head - foot}}
	l.Sheet = sheet.Sheet{Title: title, W: w, H: h}
	t := title
	if no > 1 {
		t = fmt.Sprintf("%s, sheet %d", title, no)
	}
	name := boldFitted(t, sheet.Pt{X: margin, Y: margin + heading}, heading, w-2*margin)
	l.Put(name)
	if room := w - 2*margin - name.Printed() - 6; room >= leastName && !strings.Contains(title, beside) {
		l.Put(fitted(beside, sheet.Pt{X: w - margin, Y: margin + heading}, body, room, sheet.End))
	}
	return l.ruled(w)
}

// leastName is the least room for the name of the job beside a title, mm.
const leastName = 25.0

// ruled draws the line under the head.
func (l *leaf) ruled(w float64) *leaf {
	l.line(margin, margin+head-4, w-margin, margin+head-4, rule)
	return l
}

// foots writes the foot of a page.
func (l *leaf) foots(page, pages int, example bool) {
	y := l.H - margin
	l.line(margin, y-foot+3, l.W-margin, y-foot+3, thin)
	left := "Lengths hold where this is printed at its own size, 100 %."
	if example {
		left = "EXAMPLE LAYOUT, BOARDS NOT YET KNOWN. " + left
	}
	if l.job != "" {
		left = l.job + ". " + left
	}
	l.Put(fitted(left, sheet.Pt{X: margin, Y: y}, note, l.W-2*margin-26, sheet.Start))
	l.Put(sheet.Text{Text: fmt.Sprintf("page %d of %d", page, pages), At: sheet.Pt{X: l.W - margin, Y: y}, Size: note, Anchor: sheet.End, Ink: sheet.Black})
}

func (l *leaf) line(x1, y1, x2, y2 float64, pen sheet.Pen) {
	l.Put(sheet.Polyline{Points: []sheet.Pt{{X: x1, Y: y1}, {X: x2, Y: y2}}, Pen: pen})
}

func (l *leaf) write(text string, x, y, size float64, bold bool) sheet.Text {
	t := sheet.Text{Text: text, At: sheet.Pt{X: x, Y: y}, Size: size, Bold: bold, Ink: sheet.Black}
	l.Put(t)
	return t
}

func (l *leaf) frame(b box, fill sheet.Ink, pen sheet.Pen) {
	l.Put(sheet.Polygon{Rings: [][]sheet.Pt{b.ring()}, Fill: fill, Pen: pen})
}

// fitted is a text made smaller where it is longer than w mm.
func fitted(text string, at sheet.Pt, size, w float64, anchor sheet.Anchor) sheet.Text {
	return within(sheet.Text{Text: text, At: at, Size: size, Anchor: anchor, Ink: sheet.Black}, w)
}

// boldFitted is such a text in bold letters, from its start.
func boldFitted(text string, at sheet.Pt, size, w float64) sheet.Text {
	return within(sheet.Text{Text: text, At: at, Size: size, Bold: true, Ink: sheet.Black}, w)
}

func within(t sheet.Text, w float64) sheet.Text {
	if have := t.Printed(); have > w && w > 0 {
		t.Size *= w / have
	}
	return t
}
