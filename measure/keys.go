package measure

import (
	"fmt"
	"io"
	"strings"

	"strake/survey"
)

// Keys writes the lines of a job file that the sheet asks for, without their
// figures: marks under points, readings, widths. A line left empty is an error
// when the job is read, so that none is forgotten.
func (s Sheet) Keys(w io.Writer) error {
	var b strings.Builder
	b.WriteString("# What the measuring sheet asks for, to fill in and move into the job file, each\n# under the key of that name. Take out the lines that you did not read.\n")
	if len(s.Marks) > 0 {
		b.WriteString("points:\n")
	}
	for _, p := range s.Marks {
		fmt.Fprintf(&b, "  %s: {wall: %s, from: %s, at: %s}\n", p.Name, p.Wall, p.From, s.Ask.style().Of(p.At))
	}
	var between, widths []string
	for _, k := range s.plan.Walk {
		switch r := s.plan.Items[k].Ask.Reading; r.Kind {
		case survey.Between:
			between = append(between, fmt.Sprintf("  %s-%s:\n", r.From, r.To))
		case survey.Width:
			widths = append(widths, fmt.Sprintf("  - {from: %s, wall: %s, is: }\n", r.From, r.Wall))
		}
	}
	for _, part := range []struct {
		key   string
		lines []string
	}{{"readings:\n", between}, {"widths:\n", widths}} {
		if len(part.lines) > 0 {
			b.WriteString(part.key + strings.Join(part.lines, ""))
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}
