package paper

import (
	"strings"

	"strake/finding"
	"strake/plan"
)

var levelTitles = []struct {
	level finding.Level
	title string
}{
	{finding.Stop, "Stop: the plan does not hold until this is settled"},
	{finding.Warn, "Warn: look at this before going on"},
	{finding.Note, "Note: worth knowing"},
}

// Findings are all findings as text, the heaviest first, each kind in the
// order they were made.
func Findings(p plan.Plan) string {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "findings", p.Lay.Example))
	if len(p.Findings) == 0 {
		b.WriteString("None.\n")
	}
	blank := ""
	for _, l := range levelTitles {
		title := blank + l.title + "\n"
		for _, f := range p.Findings {
			if f.Level != l.level {
				continue
			}
			b.WriteString(title)
			title, blank = "", "\n"
			findingText(&b, f)
		}
	}
	return b.String()
}

func findingText(b *strings.Builder, f finding.Finding) {
	limit := f.Limit
	if limit != "" {
		limit = "limit " + limit
	}
	source := f.Source
	if source != "" {
		source = "Limit after: " + source
	}
	told(b, f.Rule, f.Where, f.Measured, limit, f.Do, source)
}

// told is a rule with where it was looked at, what was measured and the limit,
// then what to do and where the limit comes from; what is empty is left out.
func told(b *strings.Builder, rule, where, measured, limit, do, source string) {
	s := rule
	if where != "" {
		s += ", " + where
	}
	if measured != "" {
		s += ": " + measured
	}
	if limit != "" {
		s += " (" + limit + ")"
	}
	wrap(b, s, "  - ", "    ")
	wrap(b, do, "    ", "    ")
	wrap(b, source, "    ", "    ")
}
