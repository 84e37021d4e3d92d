package check

import (
	"cmp"
	"math/big"
	"slices"

	"strake/finding"
)

var _ = declare("overlap",
	"No two faces overlap: not by a tick within a zone, and between two zones by no more than 3 ticks x the length of their common line.",
	holdOverlap)

func holdOverlap(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for i, z := range s.zones {
		out = append(out, s.overlaps(r, z)...)
		for _, y := range s.zones[i+1:] {
			out = append(out, s.overlapBetween(r, z, y)...)
		}
	}
	return out
}

// overlaps goes through the pieces of a zone from left to right and holds each
// against those that begin before it ends.
func (s *site) overlaps(r Rule, z *zone) []finding.Finding {
	var out []finding.Finding
	ps := slices.Clone(z.pieces)
	slices.SortStableFunc(ps, func(a, b *piece) int { return cmp.Compare(a.box.lo.X, b.box.lo.X) })
	for i, p := range ps {
		for _, q := range ps[i+1:] {
			if q.box.lo.X >= p.box.hi.X {
				break
			}
			if _, ok := p.box.meet(q.box); !ok {
				continue
			}
			if a := common(one(p.Outline), one(q.Outline)); a.Sign() > 0 {
				out = append(out, s.overlapping(r, p, q, a))
			}
		}
	}
	return out
}

func (s *site) overlapping(r Rule, p, q *piece, a *big.Rat) finding.Finding {
	f := r.stop(p.label()+" and "+q.label(), p.ID, q.ID)
	f.Measured, f.Limit = s.sayArea(a), "none"
	f.Do = "Two boards cannot lie in one place: shorten one, or set the joint where they meet."
	return f
}

// overlapBetween holds two zones in the frame of the first. Corners of the
// second move by at most half a tick each way in turning, so by 0.71 tick; its
// own and the first zone's corners on the common line were each rounded
// before, by 0.71 tick at most: 2.13 in all, within the 3 ticks of the rule.
func (s *site) overlapBetween(r Rule, z, y *zone) []finding.Finding {
	sum, worst := new(big.Rat), new(big.Rat)
	var p, q *piece
	t := turn{y.Dir, z.Dir}
	for _, b := range y.pieces {
		o := t.of(b.Outline)
		for _, a := range z.pieces {
			if _, ok := a.box.meet(boxOf(o)); !ok {
				continue
			}
			v := common(one(a.Outline), one(o))
			if sum.Add(sum, v); v.Cmp(worst) > 0 {
				worst, p, q = v, a, b
			}
		}
	}
	limit := rat(3 * z.lineWith(y))
	if sum.Cmp(limit) <= 0 {
		return nil
	}
	f := s.overlapping(r, p, q, sum)
	f.Limit = s.sayArea(limit)
	return []finding.Finding{f}
}
