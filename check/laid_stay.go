package check

import (
	"fmt"

	"strake/finding"
	"strake/plane"
	"strake/tape"
)

var _ = declareLaid("joint at what stays",
	"No joint of a row as laid lies where something parts the row in two, and no piece has something that stays inside it.",
	holdLaidStay)

func holdLaidStay(r laidRule, s *laidSite) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		strip := s.strip(n)
		for _, x := range n.joints {
			if len(strip.Section(x, true)) < 2 || len(strip.Section(x, false)) < 2 {
				continue
			}
			if insideHole(strip, x) {
				continue
			}
			f := r.breaks(n.name)
			f.Measured, f.Limit = "a joint "+s.at(n, x)+", where the row is parted in two", "no joint there: a piece that ends there falls in two"
			f.Do = "Let one board pass the place, notched, or end a board before it."
			out = append(out, f)
		}
		out = append(out, s.holes(r, n, strip)...)
	}
	return out
}

// insideHole tells whether x lies along something that stands wholly inside
// the row: there a joint has to fall.
func insideHole(strip plane.Region, x tape.Length) bool {
	for _, h := range strip[min(1, len(strip)):] {
		if lo, hi := h.Box(); lo.X < x && x < hi.X {
			return true
		}
	}
	return false
}

// holes are pieces that have something that stays inside them.
func (s *laidSite) holes(r laidRule, n *laidRun, strip plane.Region) []finding.Finding {
	var out []finding.Finding
	for _, h := range strip[min(1, len(strip)):] {
		lo, hi := h.Box()
		for k, l := range n.Pieces {
			if a := n.start(k); a >= lo.X || a+l <= hi.X {
				continue
			}
			f := r.breaks(fmt.Sprintf("%s, piece %d", n.name, k+1))
			f.Measured = fmt.Sprintf("something that stays lies inside the piece, %s to %s", s.away(n, lo.X), s.at(n, hi.X))
			f.Limit, f.Do = "a joint there", "Let a joint fall beside it, so that the boards can be slid together round it."
			out = append(out, f)
		}
	}
	return out
}
