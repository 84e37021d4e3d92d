package check

import (
	"fmt"

	"strake/finding"
)

var _ = declare("named exception",
	"Every relaxation and exemption in the lay is of a rule that allows one, and names a run or an edge that is there.",
	holdException)

func holdException(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	bad := func(where, what string) {
		f := r.stop(where)
		f.Measured, f.Do = what, "Take it out of the lay, or name what it is about."
		out = append(out, f)
	}
	for _, x := range s.lay.Relaxed {
		switch {
		case x.Rule != jointRule:
			bad(fmt.Sprintf("relaxation of %q", x.Rule), "this rule is not one that a lay may relax")
		case s.runOf[x.Run] == nil:
			bad("relaxation of the joint distance", fmt.Sprintf("names run %d, which is not there", x.Run))
		case x.To < 0 || x.To > s.lim.JointMin.Value:
			bad(s.runOf[x.Run].name, "relaxes the joint distance to "+s.say(x.To))
		}
	}
	for _, x := range s.lay.Exempt {
		switch {
		case x.Rule == shortRule && s.runOf[x.Run] == nil:
			bad("exemption from the shortest piece", fmt.Sprintf("names run %d, which is not there", x.Run))
		case x.Rule == ripRule && !s.edgeBeside(x.Edge):
			bad("exemption from the narrowest rip", fmt.Sprintf("names %q, which is no edge beside the rows", x.Edge))
		case x.Rule == coverRule && !s.edgeBeside(x.Edge):
			bad("exemption from the cover", fmt.Sprintf("names %q, which is no edge beside the rows", x.Edge))
		case x.Rule != shortRule && x.Rule != ripRule && x.Rule != coverRule:
			bad(fmt.Sprintf("exemption from %q", x.Rule), "this rule is not one that a lay may set aside")
		}
	}
	return out
}

// edgeBeside tells whether an edge of that name lies beside the rows of some
// zone.
func (s *site) edgeBeside(name string) bool {
	for _, z := range s.zones {
		for _, e := range z.at.Edges {
			if e.Beside && e.Name == name {
				return true
			}
		}
	}
	return false
}
