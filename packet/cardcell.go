package packet

import (
	"fmt"
	"slices"
	"strings"

	"strake/lay"
	"strake/paper"
	"strake/sheet"
	"strake/tape"
)

// Of a cell, mm: the least it takes, a box that a
// measured figure is written in, the one to tick; and the distance of lines over the size of writing.
const (
	cellLeast = 24.0
	boxWide   = 22.0
	boxHigh   = 8.6
	tickWide  = 6.4
	noteLead  = 1.25
)

// cell is a piece on a card: its figure with its box, and what to do.
type cell struct {
	piece paper.Piece
	big   string
	first first
	todo  string
	long  float64 // of todo on one line, mm
	w     float64
	notes []string
}

// cells are the pieces of a row, each as wide as its figure, and as its writing needs
// that takes that many lines.
func (c *carder) cells(r paper.Row, lines int) []cell {
	var out []cell
	alike := c.d.alike(r)
	for _, p := range r.Pieces {
		x := cell{piece: p, big: c.d.bareSaw(p.Cuts.Long()), first: c.d.first(r, p), todo: c.d.pieceNote(r, p, alike)}
		if c.oneRip(r) && slices.Contains(alike.of, p.No) {
			x.first.rip = false // its box stands at the head of the row
		}
		if x.first.length {
			x.big = "(" + x.big + ")"
		}
		x.w = bigWide(x.big) + tickWide + boxWide*float64(len(x.first.boxes()))
		x.long = sheet.Text{Text: x.todo, Size: cardNote}.Printed()
		x.w = min(c.w, max(cellLeast, x.w, x.long/(float64(lines)-0.2)+4))
		out = append(out, x)
	}
	return out
}

// mostUnder is the most lines of writing that are tried under a figure.
const mostUnder = 4

// packed are the cells of a row in lines, with as much writing under their figures as
// makes the row low.
func (c *carder) packed(r paper.Row) [][]cell {
	if best, ok := c.made[r.Order]; ok {
		return best
	}
	var best [][]cell
	for n := 1; n <= mostUnder; n++ {
		if l := c.lined(c.cells(r, n)); best == nil || tallOf(l) < tallOf(best)-0.1 {
			best = l
		}
	}
	c.made[r.Order] = best
	return best
}

func tallOf(lines [][]cell) float64 {
	h := 0.0
	for _, l := range lines {
		h += lineTall(l)
	}
	return h
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
		c.widen(line)
		for i, x := range line {
			line[i].notes = sheet.WrapPrinted(x.todo, cardNote, x.w-3, false)
		}
	}
	return out
}

// given is how much width goes to a cell at a time, mm.
const given = 2.0

// widen spreads what a line leaves free over its cells: to those whose writing takes
// most lines, and what none of them needs to all.
func (c *carder) widen(line []cell) {
	free := c.w
	for _, x := range line {
		free -= x.w
	}
	for free > given {
		most, at := 1.0, -1
		for i, x := range line {
			if n := x.long / (x.w - 5); n > most {
				most, at = n, i
			}
		}
		if at < 0 {
			break
		}
		line[at].w += given
		free -= given
	}
	for i := range line {
		line[i].w += free / float64(len(line))
	}
}

func lineTall(line []cell) float64 {
	h := lineHigh
	for _, x := range line {
		h = max(h, x.under()+float64(len(x.notes)-1)*cardNote*noteLead+1.1)
	}
	return h
}

// under is where the writing under a figure begins: brackets hang below the line.
func (c cell) under() float64 {
	if c.first.length {
		return 13.8
	}
	return 11.5
}

// pieceNote is what to know of a piece: its board and what is done to it, but for what
// the head of its row says of all its pieces.
func (d *desk) pieceNote(r paper.Row, p paper.Piece, alike shared) string {
	parts := []string{"board " + p.Board}
	if from, ok := strings.CutPrefix(p.From, "rest of board "+p.Board+", from "); ok {
		parts[0] += ", rest of " + from
	} else if p.From != "board "+p.Board {
		parts = append(parts, p.From)
	}
	for _, s := range d.work(r, p) {
		if s != "whole" && s != alike.rip {
			s = strings.Replace(s, "crosscut the ", "crosscut ", 1)
			parts = append(parts, strings.TrimSuffix(s, ", measured in place")) // its brackets say so
		}
	}
	parts = append(parts, paper.Splined(p, d.saw)...)
	switch p.Lay.How {
	case lay.Dropped:
		parts = append(parts, "dropped in: lower groove lip off, glue, face-nail")
	case lay.Angled:
		parts = append(parts, "angled in")
	}
	return strings.Join(append(parts, p.Marks...), "; ")
}

// shared is a rip that several pieces of a row get alike, and which pieces they are.
type shared struct {
	rip string
	of  []int
	all bool
}

// said is how the head of the row tells it.
func (s shared) said() string {
	switch {
	case s.rip == "":
		return ""
	case s.all:
		return "every piece: " + s.rip
	}
	return "pieces " + numbers(s.of) + ": " + s.rip
}

// alike is the rip that most pieces of a row get, where two do.
func (d *desk) alike(r paper.Row) shared {
	var best shared
	of := map[string][]int{}
	for _, p := range r.Pieces {
		for _, s := range d.work(r, p) {
			if strings.Contains(s, "rip to") {
				of[s] = append(of[s], p.No)
				if n := len(of[s]); n > 1 && n > len(best.of) {
					best = shared{s, of[s], n == len(r.Pieces)}
				}
			}
		}
	}
	return best
}

// oneRip tells whether a row has one box for the rip of all its pieces: the starter,
// whose line is checked once. A closing row is measured at each piece.
func (c *carder) oneRip(r paper.Row) bool { return c.d.starter(r) && c.d.alike(r).rip != "" }

// numbers are written as 1 to 3, 5.
func numbers(ns []int) string {
	var out []string
	for i := 0; i < len(ns); i++ {
		k := i
		for k+1 < len(ns) && ns[k+1] == ns[k]+1 {
			k++
		}
		switch {
		case k > i+1:
			out = append(out, fmt.Sprintf("%d to %d", ns[i], ns[k]))
			i = k
		default:
			out = append(out, fmt.Sprint(ns[i]))
		}
	}
	return strings.Join(out, ", ")
}

// bareSaw is a length for the saw without the name of its unit, which heads the card:
// inches where the job is in feet and inches, since one figure is read at once.
func (d *desk) bareSaw(l tape.Length) string {
	return strings.TrimSuffix(strings.TrimSuffix(d.saw.Of(l), `"`), d.unit())
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
	return " in inches"
}
