package paper

import (
	"io"
	"strconv"

	"strake/fasten"
	"strake/plan"
	"strake/words"
)

var fastenersHead = []string{"row", "boards", "by nailer", "by hand through the tongue", "through the face", "with a pilot hole"}

// FastenersCSV writes fasteners.csv, a line for each row in the order of laying;
// without a total, so that a column can be summed.
func FastenersCSV(w io.Writer, p plan.Plan) error {
	lines := [][]string{fastenersHead}
	_, u, ok := p.Nailing().Use()
	if ok {
		of := perRow(p, fasten.Places(p.Lay, u))
		for _, r := range p.Lay.Runs {
			if len(of[r.ID]) > 0 {
				t := fasten.Sum(of[r.ID])
				lines = append(lines, []string{words.Row(r), strconv.Itoa(t.Pieces), strconv.Itoa(t.Nailer), strconv.Itoa(t.Hand), strconv.Itoa(t.Face), strconv.Itoa(t.Pilots)})
			}
		}
	}
	return table(w, lines)
}

// perRow are fasteners by the run that their board lies in.
func perRow(p plan.Plan, ps []fasten.Place) map[int][]fasten.Place {
	of := map[int][]fasten.Place{}
	for _, x := range ps {
		of[p.Lay.Pieces[x.Piece].Run] = append(of[p.Lay.Pieces[x.Piece].Run], x)
	}
	return of
}
