package check

import (
	"math/big"

	"strake/finding"
	"strake/floor"
	"strake/plane"
	"strake/tape"
)

var _ = declare("gap",
	"The part of the pieces, each drawn with every kept tongue that mates with nothing, outside its zone less the least gaps is at most the perimeter x 1 tick.",
	holdGap)

func holdGap(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, z := range s.zones {
		sum, worst := new(big.Rat), new(big.Rat)
		var at *piece
		var over []int
		for _, p := range z.pieces {
			a := s.outside(p)
			if a.Sign() == 0 {
				continue
			}
			sum.Add(sum, a)
			if a.Cmp(rat(perimeter(one(p.Outline)))) > 0 {
				over = append(over, p.ID)
			}
			if a.Cmp(worst) > 0 {
				worst, at = a, p
			}
		}
		if limit := rat(perimeterIn(z.at.Reach, z.bound)); sum.Cmp(limit) > 0 {
			out = append(out, s.tooFar(r, at, sum, limit, over))
		}
	}
	return out
}

// outside is the area of p and its free tongues outside its zone less the
// least gaps.
func (s *site) outside(p *piece) *big.Rat {
	sum := new(big.Rat)
	for _, r := range s.drawn(p) {
		g := one(r)
		sum.Add(sum, area(g))
		if len(p.zone.bound) > 0 {
			sum.Sub(sum, common(g, p.zone.at.Reach, p.zone.bound))
		} else {
			sum.Sub(sum, common(g, p.zone.at.Reach))
		}
	}
	return sum
}

func (s *site) tooFar(r Rule, p *piece, sum, limit *big.Rat, over []int) finding.Finding {
	if len(over) == 0 {
		over = []int{p.ID}
	}
	f := r.stop(p.label(), over...)
	f.Do = "Keep the least gap: cut the piece shorter, rip it narrower, or take the tongue off."
	e, d, ok := s.closest(p)
	if !ok {
		f.Measured, f.Limit = s.sayArea(sum)+" outside", s.sayArea(limit)
		return f
	}
	f.Where += ", " + e.Name
	f.Measured, f.Limit = s.say(d), "at least "+s.say(e.Range.Least)
	f.Source = s.gapSource(e)
	return f
}

// gapSource is where the least gap at an edge comes from.
func (s *site) gapSource(e floor.AlignedEdge) string {
	switch e.Kind {
	case floor.Jamb:
		return s.lim.JambLeast.Source
	case floor.Transition, floor.Nosing:
		return s.lim.TransitionLeast.Source
	case floor.Flush:
		if e.Beside {
			return s.lim.FlushSide.Source
		}
		return s.lim.FlushEnd.Source
	}
	return s.lim.GapLeast.Source
}

// closest is the edge of the floor that p, tongues drawn, comes nearer to than
// it may by the most, and how near it comes.
func (s *site) closest(p *piece) (edgeAt floor.AlignedEdge, d tape.Length, ok bool) {
	var most tape.Length
	for _, o := range s.drawn(p) {
		for _, e := range p.zone.at.Edges {
			line := edge{e.From, e.To}
			if e.From == e.To {
				continue
			}
			for _, q := range o {
				if !line.abreast(q) {
					continue
				}
				off := line.offLine(q)
				if off < -tape.Foot || e.Range.Least-off <= most {
					continue
				}
				most, edgeAt, d, ok = e.Range.Least-off, e, off, true
			}
		}
	}
	return edgeAt, d, ok
}

// abreast tells whether p lies square beside e, not past its ends.
func (e edge) abreast(p plane.Pt) bool {
	t := dot(e.step(), p.Sub(e.a))
	return t.Sign() >= 0 && t.Cmp(square2(e.step())) <= 0
}
