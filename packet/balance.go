package packet

import (
	"slices"

	"strake/sheet"
)

// grid is what widths that follow from content are a multiple of, mm.
const grid = 0.5

// byContent tells whether the columns of a table are as wide as what is in them wants:
// none of them has a share of the page.
func (t table) byContent() bool {
	return !slices.ContainsFunc(t.cols, func(c column) bool { return c.w > 0 })
}

// worded is a cell as widths of its words, in font sizes, and of the space between them.
type worded struct {
	words []float64
	space float64
}

// lines is how many lines a cell takes in so much room, in font sizes; as
// sheet.WrapPrinted breaks it.
func (c worded) lines(room float64) int {
	n, have := 1, 0.0
	for i, w := range c.words {
		switch {
		case i == 0:
			have = w
		case have+c.space+w > room:
			n, have = n+1, w
		default:
			have += c.space + w
		}
	}
	return n
}

// long is the cell in one line, in font sizes; and its longest word.
func (c worded) long() (all, word float64) {
	for i, w := range c.words {
		if i > 0 {
			all += c.space
		}
		all, word = all+w, max(word, w)
	}
	return all, word
}

func wordsOf(s string, bold bool) worded {
	long := func(s string) float64 { return sheet.Text{Text: s, Size: 1, Bold: bold}.Printed() }
	out := worded{space: long(" ")}
	if s == toTick || s == toWrite {
		return out
	}
	for _, w := range sheet.Words(s) {
		out.words = append(out.words, long(w))
	}
	return out
}

// balance finds widths of columns, mm, that together are w: those with which a table is
// the lowest. A column is never narrower than its longest word.
type balance struct {
	size  float64
	cells [][]worded // by column: its head, then its rows
	fixed []float64  // of columns of boxes to tick; 0 of others
	seen  []map[float64][]int
}

// boxColumn is a column of boxes to tick, mm.
const boxColumn = 5.6

func (t table) balance() balance {
	b := balance{size: t.size, fixed: make([]float64, len(t.cols))}
	for i, c := range t.cols {
		col := []worded{wordsOf(c.name, true)}
		ticks := len(t.rows) > 0 && c.name == ""
		for _, r := range t.rows {
			if t.part(r) {
				continue
			}
			ticks = ticks && (r[i] == toTick || r[i] == "")
			col = append(col, wordsOf(r[i], c.bold))
		}
		if ticks {
			b.fixed[i] = boxColumn
		}
		b.cells, b.seen = append(b.cells, col), append(b.seen, map[float64][]int{})
	}
	return b
}

// limits are the least width of each column and that which breaks none of its cells.
func (b balance) limits() (least, whole []float64) {
	for i, col := range b.cells {
		all, word := 0.0, 0.0
		for _, c := range col {
			a, w := c.long()
			all, word = max(all, a), max(word, w)
		}
		if b.fixed[i] > 0 {
			least, whole = append(least, b.fixed[i]), append(whole, b.fixed[i])
			continue
		}
		least, whole = append(least, b.stepped(word)), append(whole, b.stepped(all))
	}
	return least, whole
}

// stepped is a room for writing, in font sizes, as a width on the grid.
func (b balance) stepped(room float64) float64 {
	w := room*b.size + 2*pad
	return float64(int(w/grid)+1) * grid
}

// in are the widths.
func (b balance) in(w float64) []float64 {
	least, whole := b.limits()
	switch {
	case sum(whole) <= w: // nothing is broken: what is left goes to those with most in them
		return b.spread(whole, w, whole)
	case sum(least) >= w: // long words are set smaller where they stand
		out := slices.Clone(least)
		for i := range out {
			out[i] *= w / sum(least)
		}
		return out
	}
	free := w - sum(least)
	out := slices.Clone(least)
	for i := range out {
		out[i] += float64(int(free*(whole[i]-least[i])/(sum(whole)-sum(least))/grid)) * grid
	}
	for step := 32.0; step >= grid; step /= 2 {
		for b.better(out, least, step) {
		}
	}
	return b.spread(out, w, whole)
}

// spread gives what is left of w to columns in the proportion of what is in them, none of
// it to boxes to tick.
func (b balance) spread(ws []float64, w float64, whole []float64) []float64 {
	out, all, free := slices.Clone(ws), 0.0, w-sum(ws)
	for i := range out {
		if b.fixed[i] == 0 {
			all += whole[i]
		}
	}
	for i := range out {
		if b.fixed[i] == 0 && all > 0 {
			out[i] += free * whole[i] / all
		}
	}
	return out
}

// better takes so much from one column for another where that makes the table lower, or
// leaves it as high with fewer lines in its cells; false where no such pair is left.
func (b balance) better(ws, least []float64, step float64) bool {
	high, lines := b.high(ws)
	from, to := -1, -1
	for i := range ws {
		if b.fixed[i] > 0 || ws[i]-step < least[i] {
			continue
		}
		for k := range ws {
			if k == i || b.fixed[k] > 0 {
				continue
			}
			ws[i], ws[k] = ws[i]-step, ws[k]+step
			if h, n := b.high(ws); h < high || h == high && n < lines {
				high, lines, from, to = h, n, i, k
			}
			ws[i], ws[k] = ws[i]+step, ws[k]-step
		}
	}
	if from < 0 {
		return false
	}
	ws[from], ws[to] = ws[from]-step, ws[to]+step
	return true
}

// high is how many lines the rows of a table take together, and how many all cells.
func (b balance) high(ws []float64) (rows, cells int) {
	var cols [][]int
	for i, w := range ws {
		cols = append(cols, b.column(i, w))
	}
	for r := range cols[0] {
		most := 1
		for _, c := range cols {
			most = max(most, c[r])
			cells += c[r]
		}
		rows += most
	}
	return rows, cells
}

// column are the lines of the cells of a column of a width.
func (b balance) column(i int, w float64) []int {
	if out, ok := b.seen[i][w]; ok {
		return out
	}
	out := make([]int, len(b.cells[i]))
	for k, c := range b.cells[i] {
		out[k] = c.lines((w - 2*pad) / b.size)
	}
	b.seen[i][w] = out
	return out
}

func sum(ws []float64) float64 {
	s := 0.0
	for _, w := range ws {
		s += w
	}
	return s
}
