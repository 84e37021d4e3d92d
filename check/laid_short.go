package check

import (
	"fmt"
	"slices"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

var _ = declareLaid("shortest piece",
	"No piece at an end of a row as laid is below the limit, but for a row that is itself shorter and is one piece.",
	holdLaidShort)

func holdLaidShort(r laidRule, s *laidSite) []finding.Finding {
	var out []finding.Finding
	limit := s.lim.ShortestPiece
	for _, n := range s.runs {
		if len(n.Pieces) == 1 && n.plan.RightEnd.Reach-n.plan.LeftEnd.Reach < limit.Value {
			continue
		}
		for _, e := range []struct {
			k  int
			at laidEnd
		}{{0, s.leftEnd(n)}, {len(n.Pieces) - 1, s.rightEnd(n)}} {
			if n.Pieces[e.k] >= limit.Value || e.k == 0 && e.at.in < 0 {
				continue
			}
			f := r.breaks(fmt.Sprintf("%s, piece %d at %s", n.name, e.k+1, e.at.name()))
			f.Measured, f.Limit, f.Source = s.tape.Of(n.Pieces[e.k])+" long", "at least "+s.tape.Of(limit.Value), limit.Source
			f.Do = "Begin or end the row with a longer board."
			out = append(out, f)
		}
	}
	return out
}

var _ = declareLaid("length of a piece",
	"No piece of a row as laid is longer than the longest board on the pallet.",
	holdLaidLong)

func holdLaidLong(r laidRule, s *laidSite) []finding.Finding {
	longest := s.longest()
	var out []finding.Finding
	for _, n := range s.runs {
		for k, l := range n.Pieces {
			if longest == 0 || l <= longest+s.lim.EndFit.Value {
				continue
			}
			f := r.breaks(fmt.Sprintf("%s, piece %d, which begins %s", n.name, k+1, s.at(n, n.start(k))))
			f.Measured, f.Limit = s.tape.Of(l)+" long", "the longest board on the pallet is "+s.tape.Of(longest)
			f.Do = "Read the piece again; two boards may have been taken for one, or inches for feet."
			out = append(out, f)
		}
	}
	return out
}

// start is X where piece k begins.
func (r *laidRun) start(k int) tape.Length {
	if k == 0 {
		return r.From
	}
	return r.joints[k-1]
}

// longest is the longest board on the pallet, 0 where that is not known.
func (s *laidSite) longest() tape.Length {
	switch s.stock.Known {
	case stock.Tallied:
		if len(s.stock.Tally) == 0 {
			return 0
		}
		return slices.MaxFunc(s.stock.Tally, func(a, b stock.Class) int { return int(a.Length - b.Length) }).Length
	case stock.OneSize:
		return s.stock.One
	}
	return s.stock.Mix.Most
}
