package check

import (
	"slices"

	"strake/finding"
	"strake/tape"
)

var _ = declare(jointRule,
	"End joints of neighbouring runs are at least the limit apart, one over another included; where the lay relaxes that by name for a run, at least the figure it gives.",
	holdJoint)

func holdJoint(r Rule, s *site) []finding.Finding {
	out := s.relaxations(r)
	for _, j := range s.jointPairs() {
		limit := s.jointLimit(j)
		if j.apart() >= limit {
			continue
		}
		f := r.stop(j.a.name+" and "+j.b.name, s.atJoint(j.a, j.x), s.atJoint(j.b, j.y))
		f.Measured, f.Limit = "end joints "+s.say(j.apart())+" apart", "at least "+s.say(limit)
		f.Source = s.lim.JointMin.Source
		f.Do = "Change the order of the boards in one of the rows, or begin it with another length."
		out = append(out, f)
	}
	return out
}

// relaxations tells which runs are relaxed; those relaxed to the same figure for
// the same reason are one finding.
func (s *site) relaxations(r Rule) []finding.Finding {
	type kind struct {
		to  tape.Length
		why string
	}
	kindOf := map[*run]kind{}
	var kinds []kind
	for _, n := range s.runs {
		if x, ok := s.relaxed(n); ok {
			kindOf[n] = kind{x.To, x.Why}
			if !slices.Contains(kinds, kindOf[n]) {
				kinds = append(kinds, kindOf[n])
			}
		}
	}
	var out []finding.Finding
	for _, k := range kinds {
		f := r.note(s.rowList(func(n *run) bool { got, ok := kindOf[n]; return ok && got == k }))
		f.Measured, f.Limit = "relaxed to "+s.say(k.to), s.say(s.lim.JointMin.Value)
		f.Do, f.Source = k.why, s.lim.JointMin.Source
		out = append(out, f)
	}
	return out
}

// jointLimit is what two joints are held to: the run laid second may relax it.
func (s *site) jointLimit(j jointPair) tape.Length {
	limit := s.lim.JointMin.Value
	if x, ok := s.relaxed(j.later()); ok {
		limit = min(limit, x.To)
	}
	return limit
}

// atJoint is the piece that begins at a joint.
func (s *site) atJoint(r *run, x tape.Length) int {
	for _, p := range r.pieces {
		if p.box.lo.X == x {
			return p.ID
		}
	}
	return r.pieces[0].ID
}
