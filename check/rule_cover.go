package check

import (
	"fmt"
	"math/big"

	"strake/finding"
	"strake/plane"
	"strake/tape"
)

var _ = declare(coverRule,
	"The part of each zone less its greatest gaps that no piece covers is at most its perimeter x 1 tick; what an unfilled run should have covered is left out. Along a wall whose row a pin steps, the greatest gap is as wide as the lay says.",
	holdCover)

func holdCover(r Rule, s *site) []finding.Finding {
	out := s.wideSteps(r)
	for _, z := range s.zones {
		bare := z.uncovered(nil)
		limit := rat(perimeterIn(z.at.Need, z.bound))
		if bare.Cmp(limit) <= 0 {
			continue
		}
		f := r.stop(z.barest())
		f.Measured, f.Limit = s.sayArea(bare)+" bare", s.sayArea(limit)
		f.Do = "Let the boards reach at least as far as what covers the gap, and leave no hole between them."
		out = append(out, f)
	}
	return out
}

// uncovered is the area of what must be covered that no piece lies on, in all
// of the zone or, where given, inside a box. Pieces that overlap count twice:
// the rule "overlap" sees to that.
func (z *zone) uncovered(in *box) *big.Rat {
	where := z.must()
	if z.need != nil {
		where[0] = z.need
	}
	if in != nil {
		where = append(where, one(in.ring()))
	}
	sum := common(where...)
	less := func(r plane.Ring) {
		if in != nil {
			if _, ok := boxOf(r).meet(*in); !ok {
				return
			}
		}
		sum.Sub(sum, common(append(where, one(r))...))
	}
	for _, r := range z.runs {
		if r.Unfilled {
			less(r.Outline)
		}
	}
	for _, p := range z.pieces {
		less(p.Outline)
	}
	return sum
}

// must are the regions whose common part the zone's pieces must cover.
func (z *zone) must() []plane.Region {
	if len(z.bound) == 0 {
		return []plane.Region{z.at.Need}
	}
	return []plane.Region{z.at.Need, z.bound}
}

// barest names the row with the most left bare.
func (z *zone) barest() string {
	name, most, rows := "", new(big.Rat), new(big.Rat)
	need := boxOfRegion(z.at.Need)
	seen := map[tape.Length]bool{}
	for _, r := range z.runs {
		if seen[r.Low] {
			continue
		}
		seen[r.Low] = true
		strip := box{plane.P(need.lo.X, r.Low), plane.P(need.hi.X, r.High)}
		a := z.uncovered(&strip)
		if rows.Add(rows, a); a.Cmp(most) > 0 {
			most, name = a, fmt.Sprintf("row %d", r.Row)
		}
	}
	if rest := new(big.Rat).Sub(z.uncovered(nil), rows); rest.Cmp(most) > 0 {
		name = "where no row lies"
	}
	if z.name != "" {
		name += " of the " + z.name
	}
	return name
}
