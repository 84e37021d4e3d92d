package check

import (
	"fmt"

	"strake/finding"
	"strake/tape"
)

// laidDrift is how far a tongue edge may lie off its place before it is worth
// steering back.
const (
	laidDrift    = tape.Eighth
	srcLaidDrift = "common practice, no source: a row more than 1/8 in off its line is steered back, or planned anew"
)

var _ = declareLaid("drift",
	"The tongue edge of a row as laid lies where it was planned.",
	holdLaidDrift)

func holdLaidDrift(r laidRule, s *laidSite) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		if n.Front == nil {
			continue
		}
		off := n.Front.off()
		if off.Abs() <= laidDrift {
			continue
		}
		f := r.strains(n.name + ", tongue edge")
		side := "beyond"
		if off < 0 {
			side = "short of"
		}
		f.Measured = fmt.Sprintf("%s from %s, %s %s its place", s.tape.Of(n.Front.Read), n.Front.From, s.tape.Of(off.Abs()), side)
		f.Limit, f.Source = "within "+s.tape.Of(laidDrift)+" of "+n.Front.planned(s.tape), srcLaidDrift
		f.Do = "Read it at both ends of the row. If it is so at both, measure ten boards pushed tight again, write that under ten_boards, and look at the last rips before you go on."
		if n.Front.Rows > 0 && len(n.zone.Pattern) == 0 {
			each := n.zone.Width + off/tape.Length(n.Front.Rows)
			f.Do = fmt.Sprintf("At this rate ten boards take up %s instead of %s: measure ten pushed tight again, write that under ten_boards, and look at the last rips before you go on.",
				s.tape.Of(10*each), s.tape.Of(10*n.zone.Width))
		}
		out = append(out, f)
	}
	return out
}

// off is how far beyond its place the edge lies, negative: short of it.
func (f LaidFront) off() tape.Length {
	switch {
	case f.Read > f.Most:
		return f.Read - f.Most
	case f.Read < f.Least:
		return f.Read - f.Least
	}
	return 0
}

func (f LaidFront) planned(style tape.Style) string {
	if f.Least == f.Most {
		return style.Of(f.Least)
	}
	return style.Of(f.Least) + " to " + style.Of(f.Most)
}
