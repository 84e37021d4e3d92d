package method

import (
	"fmt"
	"strings"

	"strake/section"
	"strake/sheet"
)

// Sizes of writing on a card, mm of the font.
const (
	sizeTitle = 6.0
	sizeText  = 3.6
	sizeNote  = 3.5 // cautions and titles of figures
	sizeScale = 3.2 // scales of figures
	sizeFrom  = 2.6 // sources
)

const (
	leading = 1.24 // of lines, in font sizes
	apart   = 5.0  // of figures beside each other, mm
	number0 = 7.0  // indent of steps, mm
)

// page is a card being set, from the top down.
type page struct {
	w, y  float64
	items []sheet.Item
}

// On is the card set on an area w by h mm, and whether it fits there: title and
// why, figures, steps, cautions, sources.
func (k Card) On(w, h float64) ([]sheet.Item, bool) {
	p := page{w: w}
	p.lines(k.Title, sizeTitle, 0, true)
	p.y++
	p.lines(k.Why, sizeText, 0, false)
	p.y += 2
	p.figures(k.Figures)
	for i, s := range k.Steps {
		p.marked(fmt.Sprintf("%d", i+1), s, sizeText)
		p.y += 0.6
	}
	p.y += 0.8
	p.rule()
	for _, s := range k.Caution {
		p.marked("!", s, sizeNote)
	}
	p.y++
	p.lines(strings.Join(k.Sources, ". "), sizeFrom, 0, false)
	return p.items, p.y <= h
}

// lines sets writing, broken between words.
func (p *page) lines(s string, size, indent float64, bold bool) {
	for _, l := range sheet.WrapPrinted(s, size, p.w-indent, bold) {
		p.items = append(p.items, sheet.Text{Text: l, At: sheet.Pt{X: indent, Y: p.y + size}, Size: size, Bold: bold, Ink: sheet.Black})
		p.y += float64(size * leading)
	}
}

// marked sets writing with a bold mark before it.
func (p *page) marked(mark, s string, size float64) {
	p.items = append(p.items, sheet.Text{Text: mark, At: sheet.Pt{X: 0.5, Y: p.y + size}, Size: size, Bold: true, Ink: sheet.Black})
	p.lines(s, size, number0, false)
}

func (p *page) rule() {
	p.items = append(p.items, sheet.Polyline{Points: []sheet.Pt{{X: 0, Y: p.y}, {X: p.w, Y: p.y}}, Pen: section.Visible})
	p.y += 1.5
}

// figures sets figures in lines, as many beside each other as there is room for,
// each with its title below it.
func (p *page) figures(fs []Figure) {
	for len(fs) > 0 {
		n, wide := 1, fs[0].W
		for n < len(fs) && wide+apart+fs[n].W <= p.w {
			wide += apart + fs[n].W
			n++
		}
		p.line(fs[:n], wide)
		fs = fs[n:]
	}
}

func (p *page) line(fs []Figure, wide float64) {
	high, free := 0.0, 0.0
	for _, f := range fs {
		high = max(high, f.H)
	}
	if len(fs) > 1 {
		free = min(12, (p.w-wide)/float64(len(fs)-1))
	}
	x, low := 0.0, p.y+high
	for i, f := range fs {
		p.items = append(p.items, section.Move(f.Items, sheet.Pt{X: x, Y: p.y + high - f.H})...)
		y := p.y + high + 0.8
		put := func(s string, size float64, bold bool) {
			width := p.w - x
			if i+1 < len(fs) {
				width = f.W + 0.8*(apart+free)
			}
			for _, l := range sheet.WrapPrinted(s, size, width, bold) {
				p.items = append(p.items, sheet.Text{Text: l, At: sheet.Pt{X: x, Y: y + size}, Size: size, Bold: bold, Ink: sheet.Black})
				y += float64(size * leading)
			}
		}
		put(f.Title, sizeNote, true)
		title := sheet.Text{Text: f.Title, Size: sizeNote, Bold: true}
		if title.Printed()+4+(sheet.Text{Text: f.Scale, Size: sizeScale}).Printed() < f.W {
			y -= sizeNote * leading // on the same line
			p.items = append(p.items, sheet.Text{Text: f.Scale, At: sheet.Pt{X: x + title.Printed() + 3, Y: y + sizeNote}, Size: sizeScale, Ink: sheet.Black})
			y += sizeNote * leading
		} else {
			put(f.Scale, sizeScale, false)
		}
		low = max(low, y)
		x += f.W + apart + free
	}
	p.y = low + 2.5
}
