package check

import (
	"math"

	"strake/finding"
	"strake/tape"
)

const (
	laidStartName = "gap at the start of a row"
	laidSumName   = "length of a row"
)

var _ = declareLaid(laidStartName,
	"A row as laid begins at no less than the least gap, and at no more than what covers the gap hides.",
	func(r laidRule, s *laidSite) []finding.Finding {
		var out []finding.Finding
		for _, n := range s.runs {
			if n.Told {
				out = append(out, s.gapOf(r, n, s.leftEnd(n))...)
			}
		}
		return out
	})

var _ = declareLaid(laidSumName,
	"The pieces of a row as laid end at no less than the least gap from what its far end comes to, and at no more than what covers the gap hides.",
	func(r laidRule, s *laidSite) []finding.Finding {
		var out []finding.Finding
		for _, n := range s.runs {
			out = append(out, s.gapOf(r, n, s.rightEnd(n))...)
		}
		return out
	})

// gapOf holds one end to its range. Up to what no end is cut closer than, and
// what the readings may add up to be off, a limit is only strained.
func (s *laidSite) gapOf(r laidRule, n *laidRun, e laidEnd) []finding.Finding {
	over, short := e.in*(e.Reach-e.at), e.in*(e.at-e.Need) // beyond the least, beyond the greatest gap
	off := max(over, short)
	if off <= s.tape.Step/2 { // it would print as nothing
		return nil
	}
	f := r.breaks(n.name + " at " + e.name())
	read := 1 // the gap at the start alone
	if e.in < 0 {
		read += len(n.Pieces)
	}
	if off <= s.lim.EndFit.Value+s.readTo(read) {
		f = r.strains(n.name + " at " + e.name())
	}
	what := "gap " + s.tape.Of(e.gap())
	if !e.met {
		what = "ends at " + s.away(n, e.at) + " from the left end as planned"
		if e.in > 0 {
			what = "begins " + s.tape.Of((e.at - e.Reach).Abs()) + " off its place"
		}
	}
	f.Measured, f.Limit, f.Do = what, s.gapLimit(e, over > 0), s.gapDo(n)
	if f.Rule == laidSumName {
		f.Measured = s.tape.Of(off) + " too short, " + what
		if over > 0 {
			f.Measured = s.tape.Of(off) + " too long, " + what
		}
	}
	f.Source = s.lim.Lap.Source
	if over > 0 {
		f.Source = s.lim.GapLeast.Source
	}
	return []finding.Finding{f}
}

// readTo is what so many readings to a step of the tape may be off together: two
// standard deviations of as many roundings.
func (s *laidSite) readTo(readings int) tape.Length {
	return tape.Length(2 * math.Sqrt(float64(readings)/12) * float64(s.tape.Step))
}

// gapLimit is the limit that a gap is beyond.
func (s *laidSite) gapLimit(e laidEnd, over bool) string {
	least, most := e.edge.Range.Least, e.edge.Range.Least+e.square(e.in*(e.Need-e.Reach))
	switch {
	case !e.met:
		return "where the row must end"
	case over:
		return "at least " + s.tape.Of(least)
	}
	return "at most " + s.tape.Of(most) + ", which what covers it hides"
}

func (s *laidSite) gapDo(n *laidRun) string {
	all := n.to - n.From
	most := n.plan.RightEnd.Reach - n.plan.LeftEnd.Reach
	least := n.plan.RightEnd.Need - n.plan.LeftEnd.Need
	slide := s.slide(n)
	switch {
	case slide > 0:
		return "Slide the row " + s.tape.Of(slide) + " to the right: it then fits at both ends."
	case slide < 0:
		return "Slide the row " + s.tape.Of(-slide) + " to the left: it then fits at both ends."
	case all > most:
		return "All of it is " + s.tape.Up(all-most) + " too long for both ends: take so much off an end piece, or lay a shorter one."
	}
	return "All of it is " + s.tape.Up(least-all) + " too short for both ends: lay a longer end piece, or cover a wider gap."
}

// slide is how far a run would have to be slid to fit at both ends; 0 where
// it lies well or would not.
func (s *laidSite) slide(n *laidRun) tape.Length {
	// It may begin from lo to hi for its left end, and for its right one.
	lo := max(n.plan.LeftEnd.Reach, n.plan.RightEnd.Need-(n.to-n.From))
	hi := min(n.plan.LeftEnd.Need, n.plan.RightEnd.Reach-(n.to-n.From))
	switch {
	case lo > hi:
		return 0
	case n.From < lo:
		return lo - n.From
	case n.From > hi:
		return hi - n.From
	}
	return 0
}
