package check

import (
	"fmt"

	"strake/finding"
	"strake/lay"
)

var _ = declare("order of laying",
	"The runs are numbered 1 to n, and each can be laid in its turn: a piece is slid in while the row its tongue goes into is still to come, else it is dropped in; one angled in closes against an edge; neither lies under a jamb.",
	holdOrder)

func holdOrder(r Rule, s *site) []finding.Finding {
	out := s.numbers(r)
	if len(out) > 0 {
		return out
	}
	told := map[[2]*run]bool{}
	for _, c := range s.contacts {
		tongue, groove, ok := across(c)
		pair := [2]*run{}
		if ok {
			pair = [2]*run{tongue.run, groove.run}
		}
		if ok && !told[pair] && !inTurn(tongue, groove) {
			told[pair] = true
			out = append(out, buried(r, tongue, groove))
		}
	}
	for _, p := range s.pieces {
		if p.How != lay.Slid && p.underJamb() {
			f := r.stop(p.label(), p.ID)
			f.Measured, f.Do = string(p.How)+" in under an undercut jamb", "Slide it in, or lay this run earlier."
			out = append(out, f)
		}
	}
	return append(out, s.waysIn(r)...)
}

// numbers holds the places in the order of laying to 1 .. n.
func (s *site) numbers(r Rule) []finding.Finding {
	var out []finding.Finding
	seen := map[int]bool{}
	for _, n := range s.runs {
		if n.Order >= 1 && n.Order <= len(s.runs) && !seen[n.Order] {
			seen[n.Order] = true
			continue
		}
		f := r.stop(n.name, n.Pieces...)
		f.Measured = fmt.Sprintf("place %d", n.Order)
		f.Limit = fmt.Sprintf("each of 1 to %d once", len(s.runs))
		f.Do = "Number the runs in the order they are laid."
		out = append(out, f)
	}
	return out
}

// across tells, for a long edge that two runs share, which piece has the
// tongue there and which the groove. A spline counts as the tongue of the edge
// it is glued into. Ends slide in along the row and bind no order.
func across(c contact) (tongue, groove *piece, ok bool) {
	if !c.ea.long() || !c.eb.long() || c.a.run == c.b.run {
		return nil, nil, false
	}
	a, b := c.profiles()
	switch {
	case !mates(a, b):
		return nil, nil, false // the rule "tongue and groove" says so
	case a == lay.Groove:
		return c.b, c.a, true
	}
	return c.a, c.b, true
}

// inTurn tells whether a tongue and the groove it goes into are laid in that
// order. If the groove lies there first, the tongue must be brought into it
// from behind, which only a piece that is dropped in can do. A piece that is
// angled in closes: nothing goes on to its tongue.
func inTurn(tongue, groove *piece) bool {
	return tongue.How == lay.Dropped || tongue.How != lay.Angled && tongue.run.Order < groove.run.Order
}

func buried(r Rule, tongue, groove *piece) finding.Finding {
	ahead := groove.run
	f := r.stop(tongue.label()+" and "+ahead.name, tongue.ID, groove.ID)
	f.Measured = fmt.Sprintf("%s in at place %d, and %s, at place %d, lies ahead of it", tongue.How, tongue.run.Order, ahead.name, ahead.Order)
	f.Limit = "behind before ahead"
	f.Do = "Lay it before the row ahead, or drop it in: lower groove lip off, glued, face-nailed."
	if tongue.How == lay.Angled {
		f.Limit, f.Do = "no row ahead: what is angled in closes", "Slide it in before the row ahead."
	}
	return f
}

// underJamb tells whether p reaches past the floor's edges, as it may behind
// the face of an undercut jamb.
func (p *piece) underJamb() bool {
	g := one(p.Outline)
	past := area(g)
	past.Sub(past, common(g, p.zone.at.Bare))
	return past.Cmp(rat(perimeter(g))) > 0
}

// waysIn tells of the pieces that do not slide in, run by run.
func (s *site) waysIn(r Rule) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		for _, how := range []lay.How{lay.Dropped, lay.Angled} {
			var ids []int
			for _, p := range n.pieces {
				if p.How == how {
					ids = append(ids, p.ID)
				}
			}
			if len(ids) == 0 {
				continue
			}
			f := r.note(n.name, ids...)
			f.Measured = fmt.Sprintf("%d of %d pieces %s in", len(ids), len(n.pieces), how)
			if how == lay.Dropped {
				f.Do = "Take the lower groove lip off, glue and face-nail."
			}
			out = append(out, f)
		}
	}
	return out
}
