package paper

import (
	"fmt"
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
	s := f.Rule
	if f.Where != "" {
		s += ", " + f.Where
	}
	if f.Measured != "" {
		s += ": " + f.Measured
	}
	if f.Limit != "" {
		s += fmt.Sprintf(" (limit %s)", f.Limit)
	}
	wrap(b, s, "  - ", "    ")
	if f.Do != "" {
		wrap(b, f.Do, "    ", "    ")
	}
	if f.Source != "" {
		wrap(b, "Limit after: "+f.Source, "    ", "    ")
	}
}
