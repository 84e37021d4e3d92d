package check

import (
	"fmt"
	"slices"
	"strings"

	"strake/finding"
	"strake/limits"
	"strake/tape"
)

const (
	laidCluster     = 3 // so many joints near each other are a cluster
	laidJointDo     = "Change the order of the boards in one of the rows, or begin it with another length."
	laidPreferredDo = "Swap two boards of a row that is not nailed yet, if it is easily done."
)

// neighbours are all pairs of runs as laid, the second on the far side of the
// first one's high line, that lie beside each other.
func (s *laidSite) neighbours() [][2]*laidRun {
	var out [][2]*laidRun
	for _, a := range s.runs {
		for _, b := range s.runs {
			if a.plan.High == b.plan.Low && a.zone.Dir == b.zone.Dir && !a.extent().Meet(b.extent()).Empty() {
				out = append(out, [2]*laidRun{a, b})
			}
		}
	}
	return out
}

// laidPair are two joints of neighbouring runs as laid.
type laidPair struct {
	a, b *laidRun
	x, y tape.Length
}

func (p laidPair) apart() tape.Length { return (p.x - p.y).Abs() }

// pairs are the pairs of joints of two neighbours inside what they share.
func pairs(ab [2]*laidRun) []laidPair {
	both := ab[0].extent().Meet(ab[1].extent())
	var out []laidPair
	for _, x := range ab[0].within(both) {
		for _, y := range ab[1].within(both) {
			out = append(out, laidPair{ab[0], ab[1], x, y})
		}
	}
	return out
}

var _ = declareLaid(jointRule,
	"End joints of neighbouring rows as laid are at least the limit apart.",
	func(r laidRule, s *laidSite) []finding.Finding {
		var out []finding.Finding
		for _, ab := range s.neighbours() {
			near := slices.DeleteFunc(pairs(ab), func(p laidPair) bool { return p.apart() >= s.lim.JointMin.Value })
			out = append(out, s.nearJoints(r.breaks(rowNames(ab[0], ab[1])), near, "at least ", s.lim.JointMin, laidJointDo)...)
		}
		return out
	})

var _ = declareLaid("preferred joint distance",
	"End joints of neighbouring rows as laid are better the preferred distance apart.",
	func(r laidRule, s *laidSite) []finding.Finding {
		var out []finding.Finding
		for _, ab := range s.neighbours() {
			near := slices.DeleteFunc(pairs(ab), func(p laidPair) bool {
				return p.apart() < s.lim.JointMin.Value || p.apart() >= s.lim.JointPreferred.Value
			})
			out = append(out, s.nearJoints(r.strains(rowNames(ab[0], ab[1])), near, "better ", s.lim.JointPreferred, laidPreferredDo)...)
		}
		return out
	})

// nearJoints is one finding of all pairs of joints of two rows that lie nearer
// than a limit, each with its place.
func (s *laidSite) nearJoints(f finding.Finding, near []laidPair, word string, limit limits.Figure, do string) []finding.Finding {
	if len(near) == 0 {
		return nil
	}
	var says []string
	for _, p := range near {
		says = append(says, fmt.Sprintf("%s apart, at %s", s.under(p.apart(), limit.Value), s.both(p.a, p.b, p.x, p.y)))
	}
	f.Measured, f.Limit, f.Source, f.Do = "end joints "+strings.Join(says, "; "), word+s.tape.Of(limit.Value), limit.Source, do
	return []finding.Finding{f}
}

// under prints a length that is under a limit, never so that it reads as enough.
func (s *laidSite) under(l, limit tape.Length) string {
	if tape.Nearest(l, s.tape.Step) < limit {
		return s.tape.Of(l)
	}
	return s.tape.Down(l)
}
