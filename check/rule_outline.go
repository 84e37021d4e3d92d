package check

import (
	"math/big"

	"strake/finding"
	"strake/plane"
)

var _ = declare("outline of a run",
	"The outline that the lay gives for a run lies in its strip and between the least gaps, ends where its pieces end, holds all of them and none of another run, to its perimeter x 1 tick.",
	holdOutline)

// holdOutline leaves it to "cover" that the pieces fill the outline: what
// boards must cover is covered, and by no other run's pieces, so what an
// outline has beyond its pieces is play at a wall beside the row.
func holdOutline(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		if what, limit := s.outlineMiss(n); what != "" {
			f := r.stop(n.name, n.Pieces...)
			f.Measured, f.Limit = what, limit
			f.Do = "Give the run the outline that its pieces fill: plan again, or mend the file."
			out = append(out, f)
		}
	}
	return out
}

// outlineMiss is the first thing wrong with the outline of a run, and what it
// was held to.
func (s *site) outlineMiss(n *run) (what, limit string) {
	if n.fault != "" {
		return "its outline " + n.fault, "a simple outline in the strip of its row"
	}
	x := boxOf(n.Outline).x()
	if len(n.pieces) > 0 {
		first, last := n.pieces[0].box.lo.X, n.pieces[len(n.pieces)-1].box.hi.X
		if x.From != first || x.To != last {
			return "its outline runs from " + s.say(x.From) + " to " + s.say(x.To),
				"its pieces, from " + s.say(first) + " to " + s.say(last)
		}
	}
	room := rat(perimeter(one(n.Outline)))
	for _, v := range []struct {
		area *big.Rat
		what string
	}{
		{n.piecesBeside(), " of its pieces outside its outline"},
		{n.foreign(), " of its outline under pieces of another run"},
		{n.outlineOutside(), " of its outline nearer to an edge than the least gap"},
	} {
		if v.area.Cmp(room) > 0 {
			return s.sayArea(v.area) + v.what, s.sayArea(room)
		}
	}
	return "", ""
}

// piecesBeside is the area of the run's pieces outside its outline.
func (n *run) piecesBeside() *big.Rat {
	sum := new(big.Rat)
	for _, p := range n.pieces {
		sum.Add(sum, area(one(p.Outline)))
		sum.Sub(sum, common(one(p.Outline), one(n.Outline)))
	}
	return sum
}

// foreign is the area of the outline under pieces of other runs of the zone
// that do not lie on pieces of this one: that is for "overlap" to tell.
func (n *run) foreign() *big.Rat {
	sum := new(big.Rat)
	b := boxOf(n.Outline)
	for _, p := range n.zone.pieces {
		if _, ok := p.box.meet(b); !ok || p.run == n {
			continue
		}
		sum.Add(sum, common(one(p.Outline), one(n.Outline)))
		for _, q := range n.pieces {
			sum.Sub(sum, common(one(p.Outline), one(n.Outline), one(q.Outline)))
		}
	}
	return sum
}

// outlineOutside is the area of the outline outside the zone less its least
// gaps where no piece of the run lies: where one does, "gap" tells. A hole that
// the row runs round is no part of this: an outline is an outer line.
func (n *run) outlineOutside() *big.Rat {
	within := n.zone.filled()
	outside := func(r plane.Ring) *big.Rat {
		a := area(one(r))
		return a.Sub(a, common(append(within, one(r))...))
	}
	sum := outside(n.Outline)
	if sum.Sign() == 0 {
		return sum
	}
	for _, p := range n.pieces {
		sum.Sub(sum, common(one(p.Outline), one(n.Outline)))
		sum.Add(sum, common(append(within, one(p.Outline), one(n.Outline))...))
	}
	return sum
}

// filled are the regions whose common part the zone's boards may lie in, holes
// in the floor and in the zone filled up.
func (z *zone) filled() []plane.Region {
	out := []plane.Region{outlines(z.at.Reach)}
	if len(z.bound) > 0 {
		out = append(out, outlines(z.bound))
	}
	return out
}

// outlines are the outer lines of a region.
func outlines(g plane.Region) plane.Region {
	var out plane.Region
	for _, r := range g {
		if area2(r).Sign() > 0 {
			out = append(out, r)
		}
	}
	return out
}
