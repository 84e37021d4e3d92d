package check

import (
	"fmt"
	"slices"
	"strings"

	"strake/finding"
	"strake/tape"
)

// three are three runs as laid, each beside the next.
type three [3]*laidRun

func (s *laidSite) threes() []three {
	var out []three
	ns := s.neighbours()
	for _, ab := range ns {
		for _, bc := range ns {
			if ab[1] == bc[0] {
				out = append(out, three{ab[0], ab[1], bc[1]})
			}
		}
	}
	return out
}

var _ = declareLaid("H-joint",
	"No joint of a row as laid lies in line with one of the row after the next.",
	func(r laidRule, s *laidSite) []finding.Finding {
		var out []finding.Finding
		seen := map[laidPair]bool{}
		for _, t := range s.threes() {
			for _, p := range pairs([2]*laidRun{t[0], t[2]}) {
				over := t[1].extent()
				if p.apart() > s.lim.HReach.Value || seen[p] || p.x <= over.From || p.x >= over.To {
					continue
				}
				seen[p] = true
				f := r.strains(rowNames(t[0], t[2]))
				f.Measured = fmt.Sprintf("joints %s out of line with %s between, at %s", s.tape.Of(p.apart()), t[1].name, s.both(p.a, p.b, p.x, p.y))
				f.Limit, f.Source, f.Do = "better over "+s.tape.Of(s.lim.HReach.Value), s.lim.HReach.Source, laidPreferredDo
				out = append(out, f)
			}
		}
		return out
	})

var _ = declareLaid("stair-step",
	"Joints of rows as laid do not go on by the same shift twice running, unless a fixed shift is chosen.",
	func(r laidRule, s *laidSite) []finding.Finding {
		var out []finding.Finding
		if s.stock.Shift.Fixed() {
			return nil
		}
		for _, t := range s.threes() {
			for _, p := range pairs([2]*laidRun{t[0], t[1]}) {
				for _, z := range t[2].joints {
					shift, next := p.y-p.x, z-p.y
					far, same := s.lim.StairFarthest.Value, s.lim.StairReach.Value
					if (shift-next).Abs() > same || shift.Abs() > far || next.Abs() > far || shift.Abs() <= same {
						continue
					}
					f := r.strains(rowNames(t[:]...))
					f.Measured = fmt.Sprintf("joints go on by %s and %s, from %s on", s.tape.Of(shift.Abs()), s.tape.Of(next.Abs()), s.at(t[0], p.x))
					f.Limit, f.Source = "better not twice by the same within "+s.tape.Of(same), s.lim.StairReach.Source
					f.Do = laidPreferredDo
					out = append(out, f)
				}
			}
		}
		return out
	})

// laidJoint is one joint.
type laidJoint struct {
	n *laidRun
	x tape.Length
}

var _ = declareLaid("cluster of joints",
	"No three joints of neighbouring rows as laid lie each under the preferred distance from the next.",
	func(r laidRule, s *laidSite) []finding.Finding {
		next := map[laidJoint][]laidJoint{}
		var all []laidJoint
		for _, ab := range s.neighbours() {
			for _, p := range pairs(ab) {
				if p.apart() >= s.lim.JointPreferred.Value {
					continue
				}
				a, b := laidJoint{p.a, p.x}, laidJoint{p.b, p.y}
				next[a], next[b] = append(next[a], b), append(next[b], a)
				all = append(all, a, b)
			}
		}
		var out []finding.Finding
		seen := map[laidJoint]bool{}
		for _, j := range all {
			if c := reached(j, next, seen); len(c) >= laidCluster {
				out = append(out, s.cluster(r, c))
			}
		}
		return out
	})

// reached are the joints that hang together with j and were not seen before.
func reached(j laidJoint, next map[laidJoint][]laidJoint, seen map[laidJoint]bool) []laidJoint {
	if seen[j] {
		return nil
	}
	seen[j] = true
	out := []laidJoint{j}
	for _, k := range next[j] {
		out = append(out, reached(k, next, seen)...)
	}
	return out
}

func (s *laidSite) cluster(r laidRule, c []laidJoint) finding.Finding {
	slices.SortStableFunc(c, func(a, b laidJoint) int { return int(a.n.plan.Low - b.n.plan.Low) })
	var rows []*laidRun
	var says []string
	for _, j := range c {
		if !slices.Contains(rows, j.n) {
			rows = append(rows, j.n)
		}
		says = append(says, s.away(j.n, j.x))
	}
	f := r.strains(rowNames(rows...))
	f.Measured = fmt.Sprintf("%d joints each near the next, at %s from %s", len(c), strings.Join(says, ", "), s.from(c[0].n))
	f.Limit, f.Source, f.Do = "better "+s.tape.Of(s.lim.JointPreferred.Value)+" from one to the next", s.lim.JointPreferred.Source, laidPreferredDo
	return f
}
