package check

import (
	"strake/finding"
	"strake/stock"
)

var _ = declare("example layout",
	"A lay drawn for boards that are not yet known says so: rows, rips, order of laying and lines hold, piece lengths do not.",
	holdExample)

func holdExample(r Rule, s *site) []finding.Finding {
	f := r.note("lay")
	switch {
	case !s.lay.Example && s.stock.Known == stock.MixOnly:
		f.Level, f.Measured = finding.Stop, "it does not say that its boards are not known"
		f.Limit, f.Do = "the job knows a carton mix only", "Mark it as an example layout, or tally the boards."
		return []finding.Finding{f}
	case !s.lay.Example:
		return nil
	}
	f.Measured = "drawn for boards that are not yet known one by one"
	f.Do = "Rows, rips, order of laying and lines hold; plan again from the lengths when the boards are there."
	return []finding.Finding{f}
}
