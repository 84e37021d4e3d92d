package packet

import (
	"strake/paper"
	"strake/sheet"
)

// rowsOnCard is the most rows on a card.
const rowsOnCard = 10

// cardNote is the size of what is written small on a card, mm: its capitals are 2.3 mm
// high and are read kneeling.
const cardNote = 3.2

// Of a row card, mm: the column of the row's name, a line of figures with one line of
// writing under it, the line that heads a row, and the one to write on by hand.
const (
	nameWide  = 23.0
	lineHigh  = 12.5
	headHigh  = 4.6
	writeHigh = 5.0
	rowLeast  = 21.0
	underRule = 2.0 // of what a page leaves free under the line of its head
)

// card is the rows that stand on one sheet: one walk to the saw.
type card struct {
	no   int // of its sheet
	rows []paper.Row
}

// cards are the row cards, in the order of laying.
func (d *desk) cards() {
	all := paper.Rows(d.in.Plan)
	if len(all) == 0 {
		return
	}
	f := d.openBeside("Row cards", "Lengths"+d.unitSaid()+". (Brackets): MEASURE FIRST. Box “loose”: mark it on the loose row.")
	c := &carder{d: d, f: f, w: f.body.w - nameWide, made: map[int][][]cell{}}
	c.how()
	c.sheet()
	for _, r := range all {
		if len(d.walks[len(d.walks)-1].rows) == rowsOnCard || f.left() < c.high(r) && f.y > f.body.y+6*headHigh {
			f.turn()
			c.sheet()
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

	made map[int][][]cell // by the place in the order of laying
}

// how says before the first card how cards are read.
func (c *carder) how() {
	c.f.size = cardNote
	c.f.para("Lay from the top of a sheet down, each row from left to right as its arrows say, unless its line says otherwise. Tick a piece when it lies and a row when it is fastened; write on its line what happened. A figure in brackets is planned and waits: measure once the row beside it is nailed, write it in the box, then cut. A box named loose: lay the rows of the sheet out loose, mark the piece where it ends its row, write it in, and cut all of them in one walk.")
	c.f.gap(underRule + 1)
}

// sheet begins a card.
func (c *carder) sheet() {
	c.d.walks = append(c.d.walks, card{no: c.f.no})
	c.f.y -= underRule
}

// high is how much of a card a row takes.
func (c *carder) high(r paper.Row) float64 {
	return max(c.headTall(r)+tallOf(c.packed(r))+writeHigh, rowLeast)
}

// row draws a row; one that is higher than a sheet goes on on the next.
func (c *carder) row(r paper.Row) {
	lines := c.packed(r)
	for part := 0; part == 0 || len(lines) > 0; part++ {
		head := c.headTall(r)
		if part > 0 {
			c.f.turn()
			c.f.y -= underRule
			head = headHigh
		}
		n := fitting(lines, c.f.left()-head-writeHigh)
		c.stretch(r, part > 0, lines[:n], head)
		lines = lines[n:]
	}
}

// fitting is how many lines go into h mm, one at the least.
func fitting(lines [][]cell, h float64) int {
	for n := range lines {
		if h -= lineTall(lines[n]); h < 0 && n > 0 {
			return n
		}
	}
	return len(lines)
}

// stretch draws as much of a row as goes on a sheet.
func (c *carder) stretch(r paper.Row, goesOn bool, lines [][]cell, head float64) {
	top, f := c.f.y, c.f
	h := max(head+tallOf(lines)+writeHigh, rowLeast)
	left := f.body.x + nameWide
	f.frame(box{f.body.x, top, f.body.w, h}, sheet.None, rule)
	f.line(left, top, left, top+h, thin)
	c.name(r, top)
	if goesOn {
		f.write("row "+r.Name+" goes on", left+2, top+3.5, cardNote, false)
		f.y += headHigh
	} else {
		c.ends(r)
	}
	for _, l := range lines {
		x := left
		for i, p := range l {
			c.piece(p, x, i > 0)
			x += p.w
		}
		f.y += lineTall(l)
	}
	f.write("happened:", left+2, top+h-1.5, cardNote, false)
	f.line(left+19, top+h-1.2, f.body.x+f.body.w-2, top+h-1.2, faint)
	f.y = top + h
}

// name writes what a row is called, when it is laid and how long it is.
func (c *carder) name(r paper.Row, top float64) {
	f, x := c.f, c.f.body.x
	f.Put(big(r.Name, sheet.Pt{X: x + 1.5, Y: top + 9.6}, nameWide-2.5))
	f.tickBox(x+1.5, top+14.2)
	f.Put(fitted(ordinal(r.Order)+" to lay", sheet.Pt{X: x + 6, Y: top + 14}, cardNote, nameWide-7, sheet.Start))
	f.Put(boldFitted(c.d.bareSaw(r.Length)+" long", sheet.Pt{X: x + 1.5, Y: top + 18.8}, cardNote, nameWide-2.5))
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
		if len(names) == 1 && n == "length" { // brackets beside one box say it
			n = ""
		}
		c.boxNamed(n, at+x.w-boxWide*float64(len(names)-i)-1, f.y+0.3)
	}
	w -= boxWide * float64(len(names))
	f.tickBox(at+1.2, f.y+8.7)
	f.Put(big(x.big, sheet.Pt{X: at + 5.4, Y: f.y + 8.7}, w))
	for i, l := range x.notes {
		f.write(l, at+2, f.y+x.under()+float64(i)*cardNote*noteLead, cardNote, false)
	}
}
