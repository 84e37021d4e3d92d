package subfloor

import (
	"math"

	"strake/tape"
)

// Grid is heights read at the corners of squares: Rows lines of Cols marks each,
// row by row. Only differences count: a grid that is tilted or lies higher is as
// flat as before.
type Grid struct {
	Step       tape.Length // between neighbouring marks, both ways
	Cols, Rows int
	Height     []tape.Length // up is more; of mark (col, row) at row*Cols+col
	Hole       []bool        // not read; nil: all are read
}

// Mark is a place of a grid, both counted from 0.
type Mark struct{ Col, Row int }

func (g Grid) index(m Mark) int { return m.Row*g.Cols + m.Col }

// At is the height at a mark; ok is false where it was not read.
func (g Grid) At(m Mark) (tape.Length, bool) {
	i := g.index(m)
	return g.Height[i], g.Hole == nil || !g.Hole[i]
}

// Holes are the marks without a height.
func (g Grid) Holes() []Mark {
	var out []Mark
	for i, hole := range g.Hole {
		if hole {
			out = append(out, Mark{i % g.Cols, i / g.Cols})
		}
	}
	return out
}

// line is marks in a straight row, all with heights, evenly apart.
type line struct {
	first, by Mark
	n         int
	step      tape.Length
}

func (l line) mark(k int) Mark { return Mark{l.first.Col + k*l.by.Col, l.first.Row + k*l.by.Row} }

// lines are all straight lines with three marks at least, in every direction
// that marks give, up to so long between neighbours that three fit in longest. A
// hole ends a line: nobody knows whether a straightedge would rest there.
func (g Grid) lines(longest tape.Length) []line {
	var out []line
	for dr := 0; dr <= (g.Rows-1)/2; dr++ {
		for dc := -(g.Cols - 1) / 2; dc <= (g.Cols-1)/2; dc++ {
			if dr == 0 && dc != 1 || gcd(dc, dr) != 1 {
				continue
			}
			step := tape.Length(math.Round(float64(g.Step) * math.Hypot(float64(dc), float64(dr))))
			if 2*step <= longest {
				out = g.along(out, Mark{dc, dr}, step)
			}
		}
	}
	return out
}

// along adds the lines of one direction.
func (g Grid) along(out []line, by Mark, step tape.Length) []line {
	for i := range g.Height {
		m := Mark{i % g.Cols, i / g.Cols}
		if !g.read(m) || g.read(Mark{m.Col - by.Col, m.Row - by.Row}) {
			continue
		}
		n := 1
		for g.read(Mark{m.Col + n*by.Col, m.Row + n*by.Row}) {
			n++
		}
		if n >= 3 {
			out = append(out, line{m, by, n, step})
		}
	}
	return out
}

// read tells whether a mark is on the grid and has a height.
func (g Grid) read(m Mark) bool {
	if m.Col < 0 || m.Row < 0 || m.Col >= g.Cols || m.Row >= g.Rows {
		return false
	}
	_, ok := g.At(m)
	return ok
}

func gcd(a, b int) int {
	if a < 0 {
		a = -a
	}
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
