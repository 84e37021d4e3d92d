package check

import (
	"fmt"

	"strake/finding"
)

var _ = declare("preferred joint distance",
	"How many pairs of end joints keep the limit but not the preferred distance, and the smallest among them.",
	holdPreferred)

func holdPreferred(r Rule, s *site) []finding.Finding {
	n := 0
	var least jointPair
	for _, j := range s.jointPairs() {
		d := j.apart()
		if d >= s.lim.JointPreferred.Value || d < s.jointLimit(j) {
			continue
		}
		if n == 0 || d < least.apart() {
			least = j
		}
		n++
	}
	if n == 0 {
		return nil
	}
	f := r.note(least.a.name+" and "+least.b.name, s.atJoint(least.a, least.x), s.atJoint(least.b, least.y))
	closest := s.tape.Of(least.apart() - least.apart()%s.tape.Step) // down, so that it never reads as enough
	f.Measured = fmt.Sprintf("%d pairs of end joints closer, the closest %s apart here", n, closest)
	if n == 1 {
		f.Measured = "one pair of end joints closer, " + closest + " apart"
	}
	f.Limit = "better " + s.say(s.lim.JointPreferred.Value)
	f.Do, f.Source = "Nothing need change; swap boards while racking where it shows.", s.lim.JointPreferred.Source
	return []finding.Finding{f}
}
