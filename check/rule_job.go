package check

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"strake/finding"
	"strake/lay"
	"strake/plane"
)

var jobRule = declare("made for this job",
	"The lay is one of this floor: two thirds of its boards lie on it and cover two thirds of it, all but 3 in 100 where its boards have another width or a run ends at an edge that the floor has not, or nothing else is measured; and every edge that a run ends at is one of the floor's.",
	holdJob)

// otherFloor tells of a lay that was made for another floor, so that one
// finding says it and not each rule many times over. A wall that was measured
// again moves a lay by inches; another room leaves a third of it bare, or
// a little and is boarded otherwise.
func (s *site) otherFloor() []finding.Finding {
	on, covered := s.fit()
	least, odd := 67, ""
	if s.otherPitch() {
		least, odd = 97, "; its boards have another width"
	}
	if names, _ := s.unknownEdges(); len(names) > 0 {
		least, odd = 97, odd+"; its rows end at "+short(names)+", which this floor has not"
	}
	if min(on, covered) >= least {
		return nil
	}
	f := jobRule.stop("lay")
	f.Measured = fmt.Sprintf("%d %% of its boards lie on the floor of this job and cover %d %% of it", on, covered) + odd
	f.Limit = fmt.Sprintf("%d %% of both, or it was made for another floor", least)
	f.Do = "Give the job that this layout was made for, or plan this job anew; nothing else was measured."
	return []finding.Finding{f}
}

// fit is how many hundredths of what is laid lie on the floor, and how many of
// what must be covered are.
func (s *site) fit() (on, covered int) {
	laid, upon, floor, over := new(big.Rat), new(big.Rat), new(big.Rat), new(big.Rat)
	for _, z := range s.zones {
		floor.Add(floor, common(z.must()...))
		for _, r := range z.rings() {
			laid.Add(laid, area(one(r)))
			upon.Add(upon, common(z.at.Bare, one(r)))
			over.Add(over, common(append(z.must(), one(r))...))
		}
	}
	return share(upon, laid), share(over, floor)
}

// otherPitch tells whether the boards of a field take up another width than
// those on the pallet.
func (s *site) otherPitch() bool {
	return slices.ContainsFunc(s.zones, func(z *zone) bool { return z.Kind == lay.Field && s.otherWidths(z) })
}

// rings are what lies in a zone: its pieces, and the outlines of runs that are
// still to be filled.
func (z *zone) rings() []plane.Ring {
	var out []plane.Ring
	for _, p := range z.pieces {
		out = append(out, p.Outline)
	}
	for _, n := range z.runs {
		if n.Unfilled && n.fault == "" {
			out = append(out, n.Outline)
		}
	}
	return out
}

// share is a part of a whole in whole hundredths, rounded down and no more than
// all; all of nothing.
func share(part, whole *big.Rat) int {
	if whole.Sign() <= 0 {
		return 100
	}
	q := new(big.Rat).Quo(part, whole)
	q.Mul(q, big.NewRat(100, 1))
	if q.Cmp(big.NewRat(100, 1)) > 0 {
		return 100
	}
	return int(new(big.Int).Quo(q.Num(), q.Denom()).Int64())
}

// holdJob names the edges that the floor has not: all in one finding, as they
// have one cause.
func holdJob(r Rule, s *site) []finding.Finding {
	names, ends := s.unknownEdges()
	if ends == 0 {
		return nil
	}
	f := r.stop("lay")
	f.Measured = fmt.Sprintf("%s at edges that this floor has not: %s", counted(ends, "end of a run", "ends of runs"), short(names))
	f.Limit = "the edges of this floor"
	f.Do = "Were corners renamed, or is it the layout of another job? Give the job that it was made for, or plan this job anew."
	return []finding.Finding{f}
}

// unknownEdges are the edges that runs are said to end at and the floor has
// not, and how many ends name one.
func (s *site) unknownEdges() (names []string, ends int) {
	for _, n := range s.runs {
		for _, e := range []string{n.LeftEnd.Edge, n.RightEnd.Edge} {
			if e == "" || n.zone.hasEdge(e) {
				continue
			}
			if ends++; !slices.Contains(names, e) {
				names = append(names, e)
			}
		}
	}
	slices.Sort(names)
	return names, ends
}

// short lists the first few names, and tells how many more there are.
func short(names []string) string {
	const most = 6
	if n := len(names) - most; n > 1 {
		return strings.Join(names[:most], ", ") + fmt.Sprintf(" and %d more", n)
	}
	return strings.Join(names, ", ")
}

func (z *zone) hasEdge(name string) bool {
	for _, e := range z.at.Edges {
		if e.Name == name {
			return true
		}
	}
	return false
}

func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
