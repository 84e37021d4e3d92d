package check

import (
	"fmt"
	"strings"

	"strake/finding"
)

// summary is what was looked at, with the smallest joint distance.
func (s *laidSite) summary() finding.Finding {
	f := finding.Finding{Level: finding.Note, Rule: "rows as laid"}
	joints := 0
	var untold []string
	for _, n := range s.runs {
		joints += len(n.joints)
		if !n.Told {
			untold = append(untold, n.Name)
		}
	}
	f.Measured = counted(len(s.runs), "row", "rows") + " looked at, " + counted(joints, "joint", "joints")
	if p, ok := s.closest(); ok {
		f.Where = rowNames(p.a, p.b)
		f.Measured += fmt.Sprintf("; the nearest two of neighbouring rows are %s apart here, at %s", s.tape.Of(p.apart()), s.both(p.a, p.b, p.x, p.y))
	}
	if len(untold) > 0 {
		f.Do = "Where the first piece begins was not read in row " + strings.Join(untold, ", ") + ": it is taken to lie at the least gap. Read it, and write it as start."
	}
	return f
}

// closest are the two joints of neighbouring rows that lie nearest each other.
func (s *laidSite) closest() (best laidPair, ok bool) {
	for _, ab := range s.neighbours() {
		for _, p := range pairs(ab) {
			if !ok || p.apart() < best.apart() {
				best, ok = p, true
			}
		}
	}
	return
}
