package check

import "strake/finding"

var _ = declare("example layout",
	"A lay drawn for boards that are not yet known says so: rows, rips, order of laying and lines hold, piece lengths do not.",
	holdExample)

func holdExample(r Rule, s *site) []finding.Finding {
	if !s.lay.Example {
		return nil
	}
	f := r.note("lay")
	f.Measured = "example layout, boards not yet known"
	f.Do = "Rows, rips, order of laying and lines hold; plan again from the lengths when the boards are there."
	return []finding.Finding{f}
}
