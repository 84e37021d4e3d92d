package packet

import "strake/sheet"

// column is a column of a table.
type column struct {
	name  string
	w     float64 // share of the page's width
	right bool    // figures stand at the right
	bold  bool
}

// table is written over as many pages as it takes, its head on each. A cell "[]" is a
// box to tick, "____" one to write in.
type table struct {
	cols []column
	rows [][]string
	high float64 // of a row at least, mm; 0 as high as its writing
	size float64 // of its writing, 0 that of the page
}

const pad = 1.1 // between the lines of a table and its writing, mm

const (
	toTick  = "[]"
	toWrite = "____"
)

// widths are those of the columns, mm.
func (t table) widths(w float64) []float64 {
	sum := 0.0
	for _, c := range t.cols {
		sum += c.w
	}
	out := make([]float64, len(t.cols))
	for i, c := range t.cols {
		out[i] = w * c.w / sum
	}
	return out
}

// titled writes t under a heading, which stays with the head and the first row.
func (f *flow) titled(title string, t table) {
	if len(t.rows) > 0 {
		size := f.sizeOf(t)
		ws, first := t.widths(f.body.w), t
		first.size = size
		f.need(tall(f.wrapped(first, ws, t.names(), true), size) + max(t.high, tall(f.wrapped(first, ws, t.rows[0], false), size)) + 3*subtitle*leading)
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

// table writes t.
func (f *flow) table(t table) {
	t.size = f.sizeOf(t)
	ws := t.widths(f.body.w)
	head := f.wrapped(t, ws, t.names(), true)
	for i, r := range t.rows {
		row := f.wrapped(t, ws, r, false)
		h := max(t.high, tall(row, t.size))
		if i == 0 {
			f.need(tall(head, t.size) + h)
			f.cells(t, ws, head, tall(head, t.size), true)
		} else if f.left() < h {
			f.turn()
			f.cells(t, ws, head, tall(head, t.size), true)
		}
		f.cells(t, ws, row, h, false)
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
		w := ws[i] - 2*pad
		if bold || t.cols[i].bold {
			w /= 1.12
		}
		out[i] = sheet.Wrap(s, t.size, w)
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

// cells draws a row of the table.
func (f *flow) cells(t table, ws []float64, row [][]string, h float64, head bool) {
	x := f.body.x
	for i, lines := range row {
		fill := sheet.None
		if head {
			fill = sheet.Light
		}
		f.frame(box{x, f.y, ws[i], h}, fill, thin)
		f.cell(t.cols[i], t.size, box{x, f.y, ws[i], h}, lines, head)
		x += ws[i]
	}
	f.y += h
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
		if over := t.Width() - (b.w - 2*pad); over > 0 { // a word longer than its column
			t.Size *= (b.w - 2*pad) / t.Width()
		}
		f.Put(t)
	}
}
