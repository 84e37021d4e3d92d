package check

import (
	"cmp"
	"fmt"
	"slices"

	"strake/finding"
	"strake/tape"
)

var _ = declare("row numbers",
	"The strips of a zone are numbered 1, 2, 3 ... the way its side tongues face, all runs of one strip alike; a run that has its strip to itself has no letter, several have a, b, c ... from left to right.",
	holdNumber)

// holdNumber does not ask for a strip at every row line: the floor may be in
// two parts with nothing to board between.
func holdNumber(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, z := range s.zones {
		for i, strip := range z.strips() {
			for j, n := range strip {
				part := 0
				if len(strip) > 1 {
					part = j + 1
				}
				if n.Row == i+1 && n.Part == part {
					continue
				}
				f := r.stop(n.name, n.Pieces...)
				f.Measured = fmt.Sprintf("named %d%s", n.Row, letters(n.Part))
				f.Limit = fmt.Sprintf("%d%s, by its place on the floor", i+1, letters(part))
				f.Do = "Number the rows from the start and letter their parts from left to right: papers name pieces by them."
				out = append(out, f)
			}
		}
	}
	return out
}

// strips are the runs of a zone, strip by strip from the start, each strip
// from left to right.
func (z *zone) strips() [][]*run {
	byLow := map[tape.Length][]*run{}
	var lows []tape.Length
	for _, n := range z.runs {
		if byLow[n.Low] == nil {
			lows = append(lows, n.Low)
		}
		byLow[n.Low] = append(byLow[n.Low], n)
	}
	slices.SortFunc(lows, func(a, b tape.Length) int { return z.Ahead * cmp.Compare(a, b) })
	var out [][]*run
	for _, y := range lows {
		slices.SortStableFunc(byLow[y], func(a, b *run) int { return cmp.Compare(a.left(), b.left()) })
		out = append(out, byLow[y])
	}
	return out
}

// left is where a run begins: its first piece, or its outline while it has no
// pieces.
func (n *run) left() tape.Length {
	if len(n.pieces) > 0 {
		return n.pieces[0].box.lo.X
	}
	return boxOf(n.Outline).lo.X
}
