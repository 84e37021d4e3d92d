package check

import "strake/finding"

var _ = declare("unfilled run",
	"Every run is filled with boards; a run the boards did not reach is named.",
	holdUnfilled)

func holdUnfilled(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		if !n.Unfilled {
			continue
		}
		f := r.stop(n.name)
		f.Measured = "no boards for " + s.say(boxOf(n.Outline).x().Len())
		f.Do = "Buy more boards, or free some: allow shorter pieces or closer joints."
		out = append(out, f)
	}
	return out
}
