package words

import (
	"fmt"
	"slices"

	"strake/plan"
	"strake/row"
)

// RipLine is the row along one closing edge, in words.
type RipLine struct {
	Edge   string // "wall C-D", with the places it runs between where another stretch of it differs
	Row    int
	Widths string // on the floor
}

// Rips are the rows along the closing edges, each way they come once. Where
// one row meets one wall in two stretches and not alike, as beside a closet
// doorway, the places along the row tell them apart: "wall C-D, 0" to 21"".
func Rips(p plan.Plan, s Lengths) []RipLine {
	var out []RipLine
	for _, f := range p.AllFields() {
		for _, r := range f.Layout.Rips {
			l := RipLine{r.Edge, r.Row, RipWidths(r, s)}
			for _, q := range f.Layout.Rips {
				if q.Edge == r.Edge && q.Row == r.Row && RipWidths(q, s) != l.Widths {
					l.Edge = r.Edge + ", " + stretch(f, r, s)
					break
				}
			}
			if !slices.Contains(out, l) {
				out = append(out, l)
			}
		}
	}
	return out
}

// stretch is where along the row an edge runs, counted like all places along
// rows: from the left-most end of the boards.
func stretch(p row.Field, r row.Rip, s Lengths) string {
	left, _ := p.Part.Reach.Box()
	e := p.Aligned.Edges[r.Index]
	lo, hi := min(e.From.X, e.To.X), max(e.From.X, e.To.X)
	for _, f := range p.Aligned.Edges { // the other parts of a bowed wall
		if f.Group == e.Group && f.Name == e.Name && f.Beside {
			lo, hi = min(lo, f.From.X, f.To.X), max(hi, f.From.X, f.To.X)
		}
	}
	return fmt.Sprintf("%s to %s", s.Of(max(0, lo-left.X)), s.Of(max(0, hi-left.X)))
}

// RipWidths says how wide the row along a closing edge is at its two ends,
// with two standard deviations where readings or the row width leave it in
// doubt.
func RipWidths(r row.Rip, s Lengths) string {
	doubt := ""
	if r.SD > 0 {
		doubt = " ± " + s.fine.Up(2*r.SD)
	}
	return ripWidths(r, s) + doubt
}

func ripWidths(r row.Rip, s Lengths) string {
	switch {
	case r.Full():
		return "a full board"
	case s.Rip(r.Left) == s.Rip(r.Right):
		return s.Rip(r.Left)
	}
	return s.Rip(r.Left) + " at its left end, " + s.Rip(r.Right) + " at its right end"
}
