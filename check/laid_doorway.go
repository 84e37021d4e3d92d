package check

import (
	"strings"

	"strake/finding"
	"strake/floor"
	"strake/tape"
)

// jambOf begins the name of an edge beside an opening.
const jambOf = "jamb of "

const srcLaidDoorway = "common practice, no source: long boards in doorways, no joint between the jambs"

var _ = declareLaid("joint in a doorway",
	"Where rows run through a doorway no joint of a row as laid lies between its jambs.",
	holdLaidDoorway)

func holdLaidDoorway(r laidRule, s *laidSite) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		for _, x := range n.joints {
			name := s.doorwayAt(n, x)
			if name == "" {
				continue
			}
			f := r.strains(n.name + ", " + name)
			f.Measured, f.Limit, f.Source = "a joint "+s.at(n, x)+", between the jambs", "better none there", srcLaidDoorway
			f.Do = "Let one long board pass through, if the row is not nailed yet."
			out = append(out, f)
		}
	}
	return out
}

// doorwayAt names the doorway that a run passes at a place along it: jambs lie
// beside it there, above and below.
func (s *laidSite) doorwayAt(n *laidRun, x tape.Length) string {
	above, below := map[string]bool{}, map[string]bool{}
	for _, e := range s.At[n.zone.ID].Edges {
		if name, is := strings.CutPrefix(e.Name, jambOf); is && spans(e, x) {
			if e.From.Y >= n.plan.High {
				above[name] = true
			}
			if e.From.Y <= n.plan.Low {
				below[name] = true
			}
			if above[name] && below[name] {
				return name
			}
		}
	}
	return ""
}

// spans tells whether an edge beside the rows passes a place along them.
func spans(e floor.AlignedEdge, x tape.Length) bool {
	return e.Beside && min(e.From.X, e.To.X) < x && x < max(e.From.X, e.To.X)
}
