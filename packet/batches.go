package packet

import (
	"fmt"
	"strings"

	"strake/paper"
)

// setUps are the kinds of cut in the order they are made: boards are ripped while they
// are long, then cut to length, then worked.
var setUps = []paper.Kind{paper.Rip, paper.Crosscut, paper.Mitre, paper.NotchCut, paper.TongueOff}

// batches are the cuts of each card, by how the saw is set up: one walk to it.
func (d *desk) batches() {
	cuts := map[int][]paper.Cut{} // by the place of their row in the order of laying
	for _, c := range paper.CutList(d.in.Plan) {
		if !c.Same {
			cuts[c.Piece.Order] = append(cuts[c.Piece.Order], c)
		}
	}
	f := d.open("Cut lists, a walk to the saw each", false)
	f.para("Lengths are" + d.unitSaid() + ", as on the cards. A batch goes with a sheet of row cards. Lay its rows out loose, mark the pieces that end them at a wall, then cut all that stands without brackets in one walk to the saw. A figure in brackets is planned and waits: measure first, once the row beside it is nailed, and write what you cut in the box.")
	f.para("Read the saw's instructions; guard and riving knife stay on, eyes and ears are covered, no hand comes near the blade: push sticks and a jig for tapers.")
	for _, w := range d.walks {
		d.batch(f, w, cuts)
	}
}

func (d *desk) batch(f *flow, w card, cuts map[int][]paper.Cut) {
	f.heading(fmt.Sprintf("Batch for row cards, sheet %d: rows %s", w.no, rowNames(w)))
	n := 0
	for _, kind := range setUps {
		t := table{cols: []column{{name: "", w: 0.8}, {name: kindName(kind), w: 3, right: true, bold: true}, {name: "cut", w: 2.4}, {name: "board", w: 1.4, right: true},
			{name: "row", w: 1.2, right: true}, {name: "piece", w: 1.3, right: true}, {name: "what", w: 11.5}}, size: cardNote}
		for _, r := range w.rows {
			for _, c := range cuts[r.Order] {
				if c.Kind == kind {
					t.rows = append(t.rows, d.cutRow(r, c))
				}
			}
		}
		if n += len(t.rows); len(t.rows) > 0 {
			f.table(t)
		}
	}
	if n == 0 {
		f.para("Nothing to saw: whole boards and rests of earlier rows.")
	}
}

// kindName heads the figures of a kind.
func kindName(k paper.Kind) string {
	switch k {
	case paper.Rip:
		return "rip, saw at"
	case paper.NotchCut:
		return "notch"
	case paper.TongueOff:
		return "tongue off"
	}
	return string(k)
}

// cutRow is a line of a batch.
func (d *desk) cutRow(r paper.Row, c paper.Cut) []string {
	f := d.first(r, c.Piece)
	figure, box := d.bareSaw(c.Piece.Cuts.Long()), ""
	words := paper.CutWords(c, d.saw)
	measured := f.length
	switch c.Kind {
	case paper.Rip:
		figure, measured = d.saw.Rips(c.Piece.SawRip[0], c.Piece.SawRip[1]), f.rip
	case paper.NotchCut:
		figure, measured = "", f.notch
		words[0] = "(" + words[0] + ")"
	}
	if measured {
		box = toWrite
		if figure != "" {
			figure = "(" + figure + ")"
		}
	}
	if ends := c.Kind == paper.Crosscut || c.Kind == paper.Mitre; ends && f.loose && !measured {
		box = toWrite
		words = append(words, "mark it on the loose row")
	}
	switch {
	case measured && c.Kind == paper.Rip && d.starter(r):
		words = append(words, "only once the start line has been checked")
	case measured && c.Kind != paper.TongueOff:
		words = append(words, "MEASURE FIRST")
	}
	return []string{toTick, figure, box, c.Piece.Board, c.Piece.Row, fmt.Sprint(c.Piece.No), strings.Join(words, ", ")}
}

// rowNames are the rows of a card.
func rowNames(w card) string {
	var out []string
	for _, r := range w.rows {
		out = append(out, r.Name)
	}
	return strings.Join(out, ", ")
}
