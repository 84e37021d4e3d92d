package check

import (
	"fmt"

	"strake/finding"
	"strake/lay"
)

// names takes up the rows that the plan has, and tells of those that it has
// not, that are named twice, or that are no rows of a field.
func (s *laidSite) names() []finding.Finding {
	var out []finding.Finding
	bad := func(row LaidRow, what, do string) {
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "rows as laid", Where: "row " + row.Name, Measured: what, Do: do})
	}
	for _, row := range s.LaidFloor.Rows {
		switch {
		case row.Run < 0:
			bad(row, "the plan has no row of that name", "Name it as the row list does: "+s.known()+"; where the row lies in parts each is named by itself, such as 12a and 12b.")
		case s.byRun[row.Run] != nil:
			bad(row, "named twice", "Leave the one out that does not lie.")
		case s.kindOf(s.Runs[row.Run]) != lay.Field:
			bad(row, "a board of a "+string(s.kindOf(s.Runs[row.Run])), "Boards of headers and frames are not held to anything here: check them by eye, and leave them out.")
		case len(row.Pieces) == 0:
			bad(row, "no pieces", "Write its pieces from left to right.")
		default:
			s.place(row)
		}
	}
	return out
}

// known says which rows there are.
func (s *laidSite) known() string {
	lo, hi := 0, 0
	for _, r := range s.Runs {
		if s.kindOf(r) != lay.Field {
			continue
		}
		if lo == 0 || r.Row < lo {
			lo = r.Row
		}
		hi = max(hi, r.Row)
	}
	return fmt.Sprintf("rows %d to %d", lo, hi)
}

func (s *laidSite) kindOf(r lay.Run) lay.ZoneKind {
	for _, z := range s.Zones {
		if z.ID == r.Zone {
			return z.Kind
		}
	}
	return lay.Field
}
