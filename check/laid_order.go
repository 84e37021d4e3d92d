package check

import (
	"slices"

	"strake/finding"
	"strake/plane"
)

var _ = declareLaid("rows between",
	"Between two rows as laid no row is missing: what it does to the joints beside it cannot be told.",
	holdLaidOrder)

func holdLaidOrder(r laidRule, s *laidSite) []finding.Finding {
	var out []finding.Finding
	told := map[int]bool{}
	for _, n := range s.runs {
		for _, i := range s.missing(n.Run, map[int]bool{}) {
			if told[i] {
				continue
			}
			told[i] = true
			f := r.breaks(rowName(s.Runs[i], ""))
			f.Measured = "not written as laid, though rows on both sides of it are"
			f.Limit, f.Do = "every row between "+n.name+" and the rows behind", "Write its pieces too, or leave out what lies beyond it."
			out = append(out, f)
		}
	}
	return out
}

// missing are the runs behind one that are not laid, though one behind them
// is.
func (s *laidSite) missing(i int, seen map[int]bool) []int {
	var out []int
	for _, k := range s.behind(i) {
		if seen[k] || s.byRun[k] != nil {
			continue
		}
		seen[k] = true
		if s.goesOn(k) {
			out = append(append(out, k), s.missing(k, seen)...)
		}
	}
	return out
}

// goesOn tells whether some run behind one is laid.
func (s *laidSite) goesOn(i int) bool {
	return slices.ContainsFunc(s.behind(i), func(k int) bool { return s.byRun[k] != nil || s.goesOn(k) })
}

// behind are the planned runs that a run is pushed against: laid before it,
// their strip next to its own.
func (s *laidSite) behind(i int) []int {
	var out []int
	for k, q := range s.Runs {
		if q.Order < s.Runs[i].Order && s.adjoin(i, k) {
			out = append(out, k)
		}
	}
	return out
}

// adjoin tells whether two planned runs lie beside each other for a stretch.
func (s *laidSite) adjoin(i, k int) bool {
	a, b := s.Runs[i], s.Runs[k]
	if s.dirOf(a.Zone) != s.dirOf(b.Zone) || a.High != b.Low && b.High != a.Low {
		return false
	}
	x := plane.Span{From: a.LeftEnd.Reach, To: a.RightEnd.Reach}
	return !x.Meet(plane.Span{From: b.LeftEnd.Reach, To: b.RightEnd.Reach}).Empty()
}

func (s *laidSite) dirOf(zone int) plane.Dir {
	for _, z := range s.Zones {
		if z.ID == zone {
			return z.Dir
		}
	}
	return plane.Dir{}
}
