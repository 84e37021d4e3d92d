package packet

import (
	"fmt"

	"strake/row"
	"strake/setout"
	"strake/sheet"
	"strake/tape"
)

// Of a story stick, mm: a strip and what is between two of them.
const (
	stripWide = 35.0
	stripGap  = 5.0
)

// figureUnder is how far under the name of a row its distance is written, mm.
const figureUnder = 3.9

// checkBar is the length that shows whether a page was printed at its own size.
const checkBar = 100.0

// storyStick is row lines at full size, as strips to cut out.
func (d *desk) storyStick() {
	for _, s := range setout.Sticks(d.in.Plan) {
		if len(s.Ticks) > 1 {
			d.stickOf(s.Field, s.Ticks, s.From)
		}
	}
}

func (d *desk) stickOf(fl row.Field, ticks []setout.Tick, from int) {
	title := "Story stick"
	if fl.Name != "" {
		title += ", " + fl.Name
	}
	f := d.open(title, false)
	s := stick{d: d, f: f, from: from}
	s.head()
	lo, hi := ticks[0].At, ticks[0].At
	for _, k := range ticks {
		if !k.Ripped {
			lo, hi = min(lo, k.At), max(hi, k.At)
		}
	}
	span := millimetres(f.left() - 8)
	for at := lo; at <= hi; at += span {
		s.strip(ticks, at, min(at+span, hi), at+span < hi)
	}
}

// stick draws strips beside one another, as many as go on a page.
type stick struct {
	d    *desk
	f    *flow
	from int
	col  int
	no   int // of the strip, over all pages
}

// head begins a page: how it is used, and the bar to check it by.
func (s *stick) head() {
	f := s.f
	f.para(fmt.Sprintf("Row lines at full size. Cut the strips out and tape them to a straight batten. Set the top edge of each by tape, from the front of row %d, to the distance that it carries; never set one strip by the end of another: every joint adds an error. The grey marks of strips that follow one another then make whole diamonds. Then hold the batten to the start line.", s.from))
	f.gap(6)
	x, y := f.body.x, f.y
	f.line(x, y, x+checkBar, y, rule)
	for _, at := range []float64{0, checkBar} {
		f.line(x+at, y-2, x+at, y+2, rule)
	}
	inch := checkBar / 25.4
	if s.d.in.Plan.Job.Unit.Imperial() {
		f.line(x+4*25.4, y-2, x+4*25.4, y+2, rule)
		f.line(x+checkBar, y, x+4*25.4, y, rule)
		inch = 4
	}
	text := "100 mm"
	if inch == 4 {
		text = "100 mm, and 4 in to the last stroke"
	}
	f.Put(fitted("Check: "+text+". Else print again at 100 %.", sheet.Pt{X: x + 106, Y: y + 1}, note, f.body.w-106, sheet.Start))
	f.y += 7
	s.col = 0
}

// columns of strips on a page.
func (s *stick) columns() int { return int((s.f.body.w + stripGap) / (stripWide + stripGap)) }

// strip draws the stick from one distance to another, where more of it may follow.
func (s *stick) strip(ticks []setout.Tick, from, to tape.Length, more bool) {
	if s.col == s.columns() {
		s.f.turn()
		s.head()
	}
	s.no++
	f := s.f
	x := f.body.x + float64(s.col)*(stripWide+stripGap)
	top := f.y + 4
	h := (to - from).Millimetres()
	f.Put(boldFitted(fmt.Sprintf("%d. top edge at %s", s.no, s.at(from)), sheet.Pt{X: x + 1, Y: f.y + 2.6}, note*1.1, stripWide-1))
	f.frame(box{x, top, stripWide, h}, sheet.None, thin)
	f.line(x, top, x+stripWide, top, rule)
	for _, k := range ticks {
		if k.Ripped || k.At < from || k.At > to {
			continue
		}
		y := top + (k.At - from).Millimetres()
		f.line(x, y, x+stripWide, y, rule)
		f.Put(sheet.Polygon{Fill: sheet.Black, Rings: [][]sheet.Pt{{{X: x, Y: y}, {X: x + 3, Y: y - 1.2}, {X: x + 3, Y: y + 1.2}}}})
		// Writing stands under its line, above it at the foot of a strip.
		base := y + 4.4
		if base+figureUnder > top+h-0.5 && y > top+9 {
			base = y - 1 - figureUnder
		}
		f.write(fmt.Sprintf("row %d", k.Row), x+4, base, 4, true)
		f.Put(fitted(s.at(k.At), sheet.Pt{X: x + 4, Y: base + figureUnder}, note*1.1, stripWide-6, sheet.Start))
	}
	if s.no > 1 {
		f.halfMark(x+stripWide*0.8, top, 1)
	}
	if more {
		f.halfMark(x+stripWide*0.8, top+h, -1)
		f.Put(fitted("next strip from "+s.at(to), sheet.Pt{X: x + 1, Y: top + h + 3.2}, note, stripWide-1, sheet.Start))
	}
	s.col++
}

// at is a distance from the first row's front.
func (s *stick) at(l tape.Length) string {
	if l < 0 {
		return s.d.say.Rip(-l) + " behind"
	}
	return s.d.say.Rip(l)
}

// halfMark draws half of a match mark at an edge of a strip, below it (1) or above it (-1):
// where two strips meet as they should, the halves make a whole.
func (l *leaf) halfMark(x, y, way float64) {
	l.Put(sheet.Polygon{Fill: sheet.Mid, Rings: [][]sheet.Pt{{{X: x - 2.5, Y: y}, {X: x + 2.5, Y: y}, {X: x, Y: y + way*3}}}})
}
