package check

import (
	"cmp"
	"fmt"
	"slices"

	"strake/finding"
	"strake/lay"
	"strake/tape"
)

var _ = declare("row numbers",
	"The strips of a zone are numbered 1, 2, 3 ... the way its side tongues face, all runs of one strip alike; a run that has its strip to itself has no letter, several have a, b, c ... from left to right. Fields that share their row lines, laid ahead here and backwards there, may be numbered through, and so may one field after another.",
	holdNumber)

// holdNumber does not ask for a strip at every row line: the floor may be in
// two parts with nothing to board between.
func holdNumber(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	before := 0 // strips of the fields before
	for _, z := range s.numbered() {
		from := 0
		if strips := z.strips(); len(strips) > 0 && strips[0][0].Row == before+1 {
			from = before
		}
		for i, strip := range z.strips() {
			for j, n := range strip {
				part := 0
				if len(strip) > 1 {
					part = j + 1
				}
				if n.Row == from+i+1 && n.Part == part {
					continue
				}
				f := r.stop(n.name, n.Pieces...)
				f.Measured = fmt.Sprintf("named %d%s", n.Row, letters(n.Part))
				f.Limit = fmt.Sprintf("%d%s, by its place on the floor", from+i+1, letters(part))
				f.Do = "Number the rows from the start and letter their parts from left to right: papers name pieces by them."
				out = append(out, f)
			}
		}
		before += len(z.strips())
	}
	return out
}

// numbered are the zones, those of one grid of rows as one where no two of
// their runs have one number.
func (s *site) numbered() []*zone {
	var out []*zone
	for _, z := range s.zones {
		k := slices.IndexFunc(out, func(o *zone) bool {
			return o.Kind == lay.Field && z.Kind == lay.Field && o.Dir == z.Dir && sameLines(o, z) &&
				numberedThrough(append(runsOf(o), runsOf(z)...))
		})
		if k < 0 {
			one := *z
			out = append(out, &one)
			continue
		}
		out[k].runs = slices.Concat(out[k].runs, z.runs)
		out[k].Ahead = max(out[k].Ahead, z.Ahead)
	}
	return out
}

func runsOf(z *zone) []lay.Run {
	var out []lay.Run
	for _, n := range z.runs {
		out = append(out, n.Run)
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
