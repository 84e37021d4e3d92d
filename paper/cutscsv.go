package paper

import (
	"io"
	"strings"

	"strake/lay"
	"strake/plan"
	"strake/saw"
	"strake/words"
)

var cutsHead = []string{"kind", "row", "piece", "board", "length", "short side", "rip on floor left", "rip on floor right",
	"rip on saw left", "rip on saw right", "keeps", "what", "measured in place", "remark"}

// cutsFigures are the lengths of a cut again, as numbers.
var cutsFigures = []string{"length", "rip on saw left", "rip on saw right"}

// CutsCSV writes cuts.csv, a line for each cut, grouped by kind.
func CutsCSV(w io.Writer, p plan.Plan) error {
	say := words.In(p.Job.Unit)
	lines := [][]string{append(append([]string(nil), cutsHead...), figureHeads(cutsFigures, p)...)}
	for _, c := range CutList(p) {
		line := append(cutCells(c, p, say), figure(c.Piece.Cuts.Long(), p))
		if c.Kind == Rip {
			line = append(line, ripFigures(c.Piece, p)...)
		} else {
			line = append(line, "", "")
		}
		lines = append(lines, line)
	}
	return table(w, lines)
}

func cutCells(c Cut, p plan.Plan, say words.Lengths) []string {
	pc := c.Piece
	cells := pieceCells(pc, say)
	rip, keep := cells[6:10], ""
	if c.Kind != Rip {
		rip = make([]string, 4)
	}
	switch c.Kind {
	case Rip:
		keep = keeps(pc)
	case Crosscut, Mitre:
		keep = keptEnd(c)
	}
	var remarks []string
	if c.Same {
		remarks = append(remarks, "the other side of a cut already listed")
	}
	if pc.Face > 0 {
		remarks = append(remarks, say.Rip(pc.Face)+" board")
	}
	if p.Lay.Example {
		remarks = append(remarks, example)
	}
	inPlace := ""
	if pc.InPlace && (c.Kind == Crosscut || c.Kind == Mitre) {
		inPlace = "yes"
	}
	out := append([]string{string(c.Kind), pc.Row, cells[0], pc.Board, cells[3], cells[4]}, rip...)
	return append(out, keep, what(c, say), inPlace, strings.Join(remarks, "; "))
}

// keptEnd names the end of the piece that the cut leaves as it is.
func keptEnd(c Cut) string {
	other := c.Piece.Lay.Left
	if c.Left {
		other = c.Piece.Lay.Right
	}
	switch other {
	case lay.Groove, lay.Tongue:
		return string(other) + " end"
	case lay.TongueOff:
		return "end with the tongue taken off"
	case lay.Plain:
		return "plain end"
	}
	return "no end"
}

// what says what a cut is beyond the sizes of its piece.
func what(c Cut, say words.Lengths) string {
	side := saw.RightEnd
	if c.Left {
		side = saw.LeftEnd
	}
	switch c.Kind {
	case Mitre:
		return mitre(c.Piece, c.Left, say)
	case NotchCut:
		return notches(c.Piece, say)[c.What]
	case TongueOff:
		return tongues(c.Piece, say)[c.What]
	case Rip:
		return ripText(c.Piece, say)
	}
	return "crosscut the " + string(side)
}
