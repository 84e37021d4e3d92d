package check

import (
	"fmt"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

var _ = declare("unfilled run",
	"Every run is filled with boards; the runs that the boards did not reach are named, with the length they want.",
	holdUnfilled)

// holdUnfilled makes one finding of all runs: they have one cause, and one
// remedy. Which they are stands with each run in the lay.
func holdUnfilled(r Rule, s *site) []finding.Finding {
	count, sum := 0, tape.Length(0)
	for _, n := range s.runs {
		if n.Unfilled {
			count++
			sum += boxOf(n.Outline).x().Len()
		}
	}
	if count == 0 {
		return nil
	}
	if s.stock.Known == stock.Unknown {
		f := r.note("floor")
		f.Measured = fmt.Sprintf("no boards chosen for %d rows, %s in all: their lengths are not known", count, s.tape.Up(sum))
		f.Do = "Pick them row by row by the rules at the head of the row list; write what lies under laid, and strake check --laid looks it over."
		return []finding.Finding{f}
	}
	f := r.stop(s.rowList(func(n *run) bool { return n.Unfilled }))
	f.Measured = "no boards for " + s.tape.Up(sum)
	if count > 1 {
		f.Measured = fmt.Sprintf("no boards for %d runs, %s in all", count, s.tape.Up(sum))
	}
	f.Limit = "none left bare"
	f.Do = "Buy more boards, or free some: allow shorter pieces or closer joints."
	return []finding.Finding{f}
}
