package packet

import (
	"fmt"
	"strings"

	"strake/lay"
	"strake/paper"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// rowsOnCard is the most rows on a card.
const rowsOnCard = 10

// Of a row card, mm: the column of the row's name, a line of figures with the writing
// under it, the line that heads a row, and what is written to by hand.
const (
	nameWide  = 30.0
	lineHigh  = 13.2
	headHigh  = 5.0
	noteLine  = 5.2
	cellLeast = 30.0
	noteWide  = 75.0
)

// card is the rows that stand on one sheet: one walk to the saw.
type card struct {
	no   int
	rows []paper.Row
}

// cards are the row cards, in the order of laying.
func (d *desk) cards() {
	all := paper.Rows(d.in.Plan)
	if len(all) == 0 {
		return
	}
	f := d.open("Row cards", true)
	f.size = note
	c := &carder{d: d, f: f, w: f.body.w - nameWide}
	c.sheet(1)
	for _, r := range all {
		if len(d.walks[len(d.walks)-1].rows) == rowsOnCard || f.left() < c.high(r) && f.y > f.body.y+2*headHigh {
			f.turn()
			c.sheet(len(d.walks) + 1)
		}
		c.row(r)
		w := &d.walks[len(d.walks)-1]
		w.rows = append(w.rows, r)
	}
}

// carder draws the rows of cards.
type carder struct {
	d *desk
	f *flow
	w float64 // of the part with the pieces
}

// sheet begins a card.
func (c *carder) sheet(no int) {
	c.d.walks = append(c.d.walks, card{no: no})
	c.f.para("Figures are lengths" + c.d.unitSaid() + ". In brackets beside an empty box: the planned figure; MEASURE FIRST, write it in, then cut. Tick a piece when it lies; write below the row what happened.")
}

// cell is a piece on a card: its figure with its box, and what to do.
type cell struct {
	piece paper.Piece
	big   string
	first first
	todo  string
	w     float64
	notes []string
}

const boxWide = 26.0 // of a box that a measured figure is written in, mm

// cells are the pieces of a row, each as wide as its figure.
func (c *carder) cells(r paper.Row) []cell {
	var out []cell
	for _, p := range r.Pieces {
		x := cell{piece: p, big: c.d.bare(p.Cuts.Long()), first: c.d.first(r, p), todo: c.d.pieceNote(r, p)}
		if x.first.length {
			x.big = "(" + x.big + ")"
		}
		x.w = bigWide(x.big) + 7
		if n := len(x.first.boxes()); n > 0 {
			x.w = bigWide(x.big)/narrower + 7 + boxWide*float64(n) // the name of a box keeps off it
		}
		// Writing under a figure takes three lines at the most, if it is not very long.
		notes := sheet.Text{Text: x.todo, Size: note}.Width()
		x.w = min(c.w, max(cellLeast, x.w, min(noteWide, notes/2.6+6)))
		out = append(out, x)
	}
	return out
}

// lined are cells broken into lines, each line filled to the width, with their notes
// wrapped.
func (c *carder) lined(cells []cell) [][]cell {
	var out [][]cell
	used := c.w + 1
	for _, x := range cells {
		if used+x.w > c.w {
			out, used = append(out, nil), 0
		}
		out[len(out)-1] = append(out[len(out)-1], x)
		used += x.w
	}
	for _, line := range out {
		sum := 0.0
		for _, x := range line {
			sum += x.w
		}
		for i := range line {
			line[i].w += (c.w - sum) / float64(len(line))
			line[i].notes = sheet.Wrap(line[i].todo, note, line[i].w-6)
		}
	}
	return out
}

func lineTall(line []cell) float64 {
	h := lineHigh
	for _, x := range line {
		h = max(h, x.under()+float64(len(x.notes)-1)*note*1.25+1.2)
	}
	return h
}

// under is where the writing under a figure begins: brackets hang below the line.
func (c cell) under() float64 {
	if c.first.length {
		return 13.4
	}
	return 12
}

// high is how much of a card a row takes.
func (c *carder) high(r paper.Row) float64 {
	h := c.headTall(r) + noteLine
	for _, l := range c.lined(c.cells(r)) {
		h += lineTall(l)
	}
	return max(h, 21)
}

// row draws a row.
func (c *carder) row(r paper.Row) {
	top, h, f := c.f.y, c.high(r), c.f
	f.frame(box{f.body.x, top, f.body.w, h}, sheet.None, rule)
	f.line(f.body.x+nameWide, top, f.body.x+nameWide, top+h, thin)
	f.Put(big(r.Name, sheet.Pt{X: f.body.x + 2, Y: top + 10.4}, nameWide-3))
	f.tickBox(f.body.x+nameWide-5, top+15.5)
	f.write(fmt.Sprintf("no. %d to lay", r.Order), f.body.x+2, top+15.5, note, false)
	f.Put(bold(fitted(c.d.say.Of(r.Length)+" long", sheet.Pt{X: f.body.x + 2, Y: top + 19.5}, note, (nameWide-4)/1.15, sheet.Start)))
	f.y = top
	c.ends(r)
	for _, l := range c.lined(c.cells(r)) {
		x := f.body.x + nameWide
		for i, p := range l {
			c.piece(p, x, i > 0)
			x += p.w
		}
		f.y += lineTall(l)
	}
	f.write("happened:", f.body.x+nameWide+2, top+h-1.4, note, false)
	f.line(f.body.x+nameWide+18, top+h-1, f.body.x+f.body.w-2, top+h-1, faint)
	f.y = top + h
}

// headLines are the lines over the pieces: which way its ends lie, how it is fastened,
// how wide it is.
func (c *carder) headLines(r paper.Row) []string {
	var parts []string
	if s := c.d.rips(r); s != "" {
		parts = append(parts, s)
	}
	parts = append(parts, r.Fasten)
	if r.Turned {
		parts = append(parts, "laid backwards, boards turned end for end, tongues down the drawing")
	}
	if s := words.FieldText(c.d.in.Plan, r.Field); s != "" && len(c.d.in.Plan.Fields) > 1 {
		parts = append(parts, s)
	}
	if r.Closes != "" {
		parts = append(parts, r.Closes)
	}
	if r.Unfilled || len(r.Pieces) == 0 {
		parts = append(parts, "no boards left for it")
	}
	if c.d.starter(r) {
		parts = append(parts, "starter: rip it only once the start line has been checked")
	}
	return sheet.Wrap(capital(strings.Join(parts, "; "))+".", note, c.w-4)
}

// headTall is how high the head of a row is: one line where what has to be said goes
// in between its two ends.
func (c *carder) headTall(r paper.Row) float64 {
	if c.short(r) {
		return headHigh
	}
	return headHigh + float64(len(c.headLines(r)))*note*1.3
}

// between is the part of a row's width that is left between what its ends meet.
const between = 0.4

func (c *carder) short(r paper.Row) bool {
	l := c.headLines(r)
	return len(l) == 1 && sheet.Text{Text: l[0], Size: note}.Width() < c.w*between
}

// ends draws the arrows to what the row's ends meet, and the lines under them.
func (c *carder) ends(r paper.Row) {
	f := c.f
	x, w := f.body.x+nameWide, c.w
	base := f.y + 3.7
	f.arrow(x+2, base-1, -1)
	room := w*(1-between)/2 - 10
	f.Put(fitted("this end to "+toward(r.Left), sheet.Pt{X: x + 8, Y: base}, note*1.1, room, sheet.Start))
	f.arrow(x+w-2, base-1, 1)
	f.Put(fitted("this end to "+toward(r.Right), sheet.Pt{X: x + w - 8, Y: base}, note*1.1, room, sheet.End))
	f.y += headHigh
	if c.short(r) {
		f.Put(sheet.Text{Text: c.headLines(r)[0], At: sheet.Pt{X: x + w/2, Y: base}, Size: note, Anchor: sheet.Middle, Ink: sheet.Black})
		return
	}
	for _, l := range c.headLines(r) {
		f.write(l, x+2, f.y+note*0.8, note, false)
		f.y += note * 1.3
	}
}

// toward is what an end of a row comes to.
func toward(e paper.End) string {
	if e.Edge == "" {
		return "the end of the row"
	}
	return e.Edge
}

// arrow draws an arrow that points left (-1) or right (1) with its tip at x.
func (l *leaf) arrow(x, y, way float64) {
	l.Put(sheet.Polygon{Fill: sheet.Black, Rings: [][]sheet.Pt{{{X: x, Y: y}, {X: x - way*2.4, Y: y - 1.3}, {X: x - way*2.4, Y: y + 1.3}}}})
	l.line(x-way*2.4, y, x-way*5, y, rule)
}

// piece draws a piece: a box to tick, its figure, what to do to it.
func (c *carder) piece(x cell, at float64, ruled bool) {
	f := c.f
	if ruled {
		f.line(at, f.y+0.5, at, f.y+lineHigh-1, thin)
	}
	w := x.w - 6
	names := x.first.boxes()
	for i, n := range names {
		left := at + x.w - boxWide*float64(len(names)-i) - 1
		f.frame(box{left, f.y + 0.4, boxWide - 1, 8.4}, sheet.White, rule)
		f.write(n, left+0.8, f.y+0.4+note*0.85, note*0.85, false)
	}
	w -= boxWide * float64(len(names))
	f.tickBox(at+1.2, f.y+8.6)
	f.Put(big(x.big, sheet.Pt{X: at + 5.4, Y: f.y + 8.6}, w))
	for i, l := range x.notes {
		f.write(l, at+5.4, f.y+x.under()+float64(i)*note*1.25, note, false)
	}
}

// pieceNote is what to know of a piece: its board and what is done to it.
func (d *desk) pieceNote(r paper.Row, p paper.Piece) string {
	parts := []string{"board " + p.Board}
	parts = append(parts, d.work(r, p)...)
	if p.From != "board "+p.Board {
		parts = append(parts, p.From)
	}
	switch p.Lay.How {
	case lay.Dropped:
		parts = append(parts, "dropped in: lower groove lip off, glue, face-nail")
	case lay.Angled:
		parts = append(parts, "angled in")
	}
	return strings.Join(append(parts, p.Marks...), "; ")
}

// rips are how wide a row is that is not of full width.
func (d *desk) rips(r paper.Row) string {
	if r.Kind == "full width" {
		return ""
	}
	a, b := d.say.Rip(r.WidthLeft), d.say.Rip(r.WidthRight)
	if a == b {
		return fmt.Sprintf("%s %s on the floor", r.Kind, a)
	}
	return fmt.Sprintf("%s %s at the left, %s at the right, on the floor", r.Kind, a, b)
}

// starter tells whether a row is the one that the start line sets; that is one of the
// main field.
func (d *desk) starter(r paper.Row) bool {
	return d.begun && r.Field == 0 && len(r.Pieces) > 0 && rowOf(r) == d.begin && r.Kind != "full width"
}

// rowOf is a row's number without the letter of its part.
func rowOf(r paper.Row) int {
	n := 0
	for _, c := range r.Name {
		if c < '0' || c > '9' {
			break
		}
		n = n*10 + int(c-'0')
	}
	return n
}

// bare is a length without the name of its unit where the whole job has one.
func (d *desk) bare(l tape.Length) string {
	return strings.TrimSuffix(d.say.Of(l), d.unit())
}

// unit is what metric lengths end in.
func (d *desk) unit() string {
	if d.in.Plan.Job.Unit.Imperial() {
		return ""
	}
	s := d.say.Of(tape.Metre)
	return s[max(0, strings.LastIndex(s, " ")):]
}

func (d *desk) unitSaid() string {
	if u := d.unit(); u != "" {
		return " in" + u
	}
	return ""
}
