package packet

import (
	"slices"

	"strake/sheet"
)

// column is a column of a table.
type column struct {
	name  string
	w     float64 // share of the page's width; 0 for all of them: by what is in them
	right bool    // figures stand at the right
	bold  bool
}

// table is written over as many pages as it takes, its head on each. A cell "[]" is a
// box to tick, "____" one to write in. A row of one cell, in a table of more columns,
// names the rows below it.
type table struct {
	cols  []column
	rows  [][]string
	high  float64 // of a row at least, mm; 0 as high as its writing
	size  float64 // of its writing, 0 that of the page
	folds bool    // it stands twice beside itself where that leaves its rows as high
}

const pad = 1.1 // between the lines of a table and its writing, mm

const (
	toTick  = "[]"
	toWrite = "____"
)

// widths are those of the columns, mm; its size is set.
func (t table) widths(w float64) []float64 {
	if t.byContent() {
		return t.balance().in(w)
	}
	all := 0.0
	for _, c := range t.cols {
		all += c.w
	}
	out := make([]float64, len(t.cols))
	for i, c := range t.cols {
		out[i] = w * c.w / all
	}
	return out
}

// part tells whether a row names the rows below it.
func (t table) part(row []string) bool { return len(row) == 1 && len(t.cols) > 1 }

// titled writes t under a heading, which stays with the head and the first row.
func (f *flow) titled(title string, t table) {
	if len(t.rows) > 0 {
		s := f.setOf(t, f.body.w)
		f.need(s.head.h + s.kept(0) + 3*subtitle*leading)
	}
	f.heading(title)
	f.table(t)
}

// sizeOf is the size of a table's writing.
func (f *flow) sizeOf(t table) float64 {
	if t.size == 0 {
		return f.size * 0.92
	}
	return t.size
}

// set is a table with its cells broken into lines.
type set struct {
	table
	ws   []float64
	head line
	rows []line
}

// line is a row of a table as it is set.
type line struct {
	cells [][]string
	h     float64
	part  bool
}

// setOf breaks the cells of a table that is w mm wide.
func (f *flow) setOf(t table, w float64) set {
	t.size = f.sizeOf(t)
	s := set{table: t, ws: t.widths(w)}
	head := f.wrapped(t, s.ws, t.names(), true)
	s.head = line{cells: head, h: tall(head, t.size)}
	for _, r := range t.rows {
		if t.part(r) {
			cells := [][]string{sheet.WrapPrinted(r[0], t.size*partSize, w-2*pad, true)}
			s.rows = append(s.rows, line{cells, tall(cells, t.size*partSize), true})
			continue
		}
		cells := f.wrapped(t, s.ws, r, false)
		s.rows = append(s.rows, line{cells: cells, h: max(t.high, tall(cells, t.size))})
	}
	return s
}

// partSize is how much larger the name of a part is set than the rows below it.
const partSize = 1.15

// kept is how high row i is with what stays with it: a row below the name of a part.
func (s set) kept(i int) float64 {
	h := s.rows[i].h
	for k := i; k+1 < len(s.rows) && s.rows[k].part; k++ {
		h += s.rows[k+1].h
	}
	return h
}

// high is how high its rows are together, mm.
func (s set) high() float64 {
	h := 0.0
	for _, l := range s.rows {
		h += l.h
	}
	return h
}

// filled is a table by its content without columns that nothing stands in.
func (t table) filled() table {
	if !t.byContent() {
		return t
	}
	empty := func(i int) bool {
		return !slices.ContainsFunc(t.rows, func(r []string) bool { return !t.part(r) && r[i] != "" })
	}
	out := t
	out.cols, out.rows = nil, make([][]string, len(t.rows))
	for i, c := range t.cols {
		if empty(i) {
			continue
		}
		out.cols = append(out.cols, c)
		for k, r := range t.rows {
			if !t.part(r) {
				out.rows[k] = append(out.rows[k], r[i])
			}
		}
	}
	for k, r := range t.rows {
		if t.part(r) {
			out.rows[k] = r
		}
	}
	return out
}

// table writes t.
func (f *flow) table(t table) {
	if len(t.rows) == 0 {
		return
	}
	t = t.filled()
	s := f.setOf(t, f.body.w)
	if f.folded(t, s.high()) {
		return
	}
	f.need(s.head.h + s.kept(0))
	f.row(s, s.head, f.body.x, true)
	for i, l := range s.rows {
		if i > 0 && f.left() < s.kept(i) {
			f.turn()
			f.row(s, s.head, f.body.x, true)
		}
		f.row(s, l, f.body.x, false)
	}
	f.gap(2)
}

func (t table) names() []string {
	var out []string
	for _, c := range t.cols {
		out = append(out, c.name)
	}
	return out
}

// wrapped is a row with each cell broken into lines.
func (f *flow) wrapped(t table, ws []float64, row []string, bold bool) [][]string {
	out := make([][]string, len(row))
	for i, s := range row {
		out[i] = sheet.WrapPrinted(s, t.size, ws[i]-2*pad, bold || t.cols[i].bold)
	}
	return out
}

func tall(row [][]string, size float64) float64 {
	n := 1
	for _, c := range row {
		n = max(n, len(c))
	}
	return float64(n)*size*1.28 + 2*pad
}

// row draws a line of the table from x on.
func (f *flow) row(s set, l line, x float64, head bool) {
	if l.part {
		b := box{x, f.y, sum(s.ws), l.h}
		f.frame(b, sheet.None, thin)
		f.cell(column{bold: true}, s.size*partSize, b, l.cells[0], false)
		f.y += l.h
		return
	}
	for i, lines := range l.cells {
		fill := sheet.None
		if head {
			fill = sheet.Light
		}
		b := box{x, f.y, s.ws[i], l.h}
		f.frame(b, fill, thin)
		f.cell(s.cols[i], s.size, b, lines, head)
		x += s.ws[i]
	}
	f.y += l.h
}

func (f *flow) cell(c column, size float64, b box, lines []string, head bool) {
	if len(lines) == 1 && lines[0] == toTick {
		f.frame(box{b.x + b.w/2 - 1.6, b.y + b.h/2 - 1.6, 3.2, 3.2}, sheet.White, rule)
		return
	}
	if len(lines) == 1 && lines[0] == toWrite {
		return
	}
	for k, l := range lines {
		t := sheet.Text{Text: l, Size: size, Bold: head || c.bold, Ink: sheet.Black,
			At: sheet.Pt{X: b.x + pad, Y: b.y + pad + size*0.86 + float64(k)*size*1.28}}
		if c.right && !head {
			t.Anchor, t.At.X = sheet.End, b.x+b.w-pad
		}
		if over := t.Printed() - (b.w - 2*pad); over > 0 { // a word longer than its column
			t.Size *= (b.w - 2*pad) / t.Printed()
		}
		f.Put(t)
	}
}
