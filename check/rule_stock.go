package check

import (
	"fmt"
	"slices"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

var _ = declare("stock",
	"The lay uses no board that the stock does not hold: of a tally no more of a length than were counted, of one length no other and no more than were bought, of a mix none outside its spread.",
	holdStock)

func holdStock(r Rule, s *site) []finding.Finding {
	used := map[tape.Length]int{}
	for _, b := range s.lay.Boards {
		used[b.Length]++
	}
	var lengths []tape.Length
	for l := range used {
		lengths = append(lengths, l)
	}
	slices.Sort(lengths)
	var out []finding.Finding
	for _, l := range lengths {
		have, told := s.held(l)
		if !told || used[l] <= have {
			continue
		}
		f := r.stop("boards of " + s.say(l))
		f.Measured, f.Limit = fmt.Sprintf("%d used", used[l]), fmt.Sprintf("%d in stock", have)
		f.Do = "Count the boards again, or plan with those there are."
		out = append(out, f)
	}
	return out
}

// held is how many boards of a length the stock has; false when it has no say.
func (s *site) held(l tape.Length) (int, bool) {
	b := s.stock
	switch b.Known {
	case stock.Tallied:
		n := 0
		for _, c := range b.Tally {
			if c.Length == l {
				n += c.Count
			}
		}
		return n, true
	case stock.OneSize:
		if l != b.One {
			return 0, true
		}
		return b.OneCount, b.OneCount > 0
	case stock.MixOnly:
		return 0, l < b.Mix.Least || l > b.Mix.Most
	}
	return 0, false
}
