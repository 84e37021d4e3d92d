package paper

import (
	"io"
	"strconv"
	"strings"

	"strake/plan"
	"strake/words"
)

var rowsHead = []string{
	"order", "row", "row length", "left at", "left meets", "right at", "right meets",
	"width left", "width right", "row kind", "fastening", "laid", "closes",
	"piece", "board", "from", "length", "short side", "ends", "rip on floor left", "rip on floor right",
	"rip on saw left", "rip on saw right", "rip keeps", "notches", "measured in place", "placed", "rest goes to", "board marks", "remark",
}

// rowsFigures are the lengths of a piece again, as numbers to reckon with.
var rowsFigures = []string{"row length", "length", "rip on saw left", "rip on saw right"}

// RowsCSV writes rows.csv: a line for each piece, in the order of laying, and
// one for each row without boards. Lengths are text to the job's steps; the last
// columns hold them as numbers, inches or mm.
func RowsCSV(w io.Writer, p plan.Plan) error {
	say := words.In(p.Job.Unit)
	lines := [][]string{append(append([]string(nil), rowsHead...), figureHeads(rowsFigures, p)...)}
	remark := ""
	if p.Lay.Example {
		remark = example
	}
	for _, r := range Rows(p) {
		head := rowCells(r, say)
		if len(r.Pieces) == 0 {
			line := append(head, make([]string, len(rowsHead)-len(head))...)
			line[len(line)-1] = strings.Trim(unfilledText(p)+"; "+remark, "; ")
			lines = append(lines, append(line, figure(r.Length, p), "", "", ""))
		}
		for _, pc := range r.Pieces {
			line := append(append(append([]string(nil), head...), pieceCells(pc, say)...), remark, figure(r.Length, p), figure(pc.Cuts.Long(), p))
			lines = append(lines, append(line, ripFigures(pc, p)...))
		}
	}
	return table(w, lines)
}

// What is said of a layout that is not the last word, and of a row left open.
const (
	example  = "example layout, boards not yet known"
	noBoards = "no boards left"
)

func rowCells(r Row, say words.Lengths) []string {
	return []string{strconv.Itoa(r.Order), r.Name, say.Of(r.Length), say.Of(r.Left.At), EndText(r.Left), say.Of(r.Right.At), EndText(r.Right),
		say.Rip(r.WidthLeft), say.Rip(r.WidthRight), r.Kind + ofFace(r.Face, say), r.Fasten, laid(r), r.Closes}
}

// laid says which way the tongues of a row lead.
func laid(r Row) string {
	if r.Turned {
		return "backwards"
	}
	return "ahead"
}

// EndText is what an end of a row meets, and how.
func EndText(e End) string {
	if e.Meets == "" {
		return e.Edge
	}
	return e.Edge + ": " + e.Meets
}

func pieceCells(p Piece, say words.Lengths) []string {
	rip := make([]string, 5)
	if r := p.Cuts.Rip; r.Done {
		rip = []string{say.Rip(r.Left), say.Rip(r.Right), say.Rip(p.SawRip[0]), say.Rip(p.SawRip[1]), keeps(p)}
	}
	short := ""
	if say.Of(p.Cuts.Short()) != say.Of(p.Cuts.Long()) {
		short = say.Of(p.Cuts.Short())
	}
	inPlace := ""
	if p.InPlace {
		inPlace = "yes"
	}
	out := []string{strconv.Itoa(p.No), p.Board, p.From, say.Of(p.Cuts.Long()), short, ends(p)}
	out = append(out, rip...)
	return append(out, strings.Join(notches(p, say), "; "), inPlace, string(p.Lay.How), strings.Join(p.Rest, "; "), strings.Join(p.Marks, "; "))
}
