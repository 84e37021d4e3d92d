package check

import (
	"fmt"
	"slices"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

var _ = declare("stock",
	"The lay uses no board that the stock does not hold: of a tally no more of a length than were counted, of one length no other and no more than were bought, of a mix none outside its spread. What it names as left over is there too.",
	holdStock)

func holdStock(r Rule, s *site) []finding.Finding {
	used := map[tape.Length]int{}
	for _, b := range s.lay.Boards {
		used[b.Length]++
	}
	left := map[tape.Length]int{}
	if s.stock.Known != stock.MixOnly { // of a mix, what is left over is part of the example
		for _, c := range s.lay.Spare {
			left[c.Length] += c.Count
		}
	}
	var lengths []tape.Length
	for l := range used {
		lengths = append(lengths, l)
	}
	for l := range left {
		if used[l] == 0 {
			lengths = append(lengths, l)
		}
	}
	slices.Sort(lengths)
	var out []finding.Finding
	var told []string
	for _, l := range lengths {
		have, known := s.held(l)
		if !known || used[l]+left[l] <= have {
			continue
		}
		f := r.stop("boards of " + s.say(l))
		f.Measured, f.Limit = fmt.Sprintf("%d used", used[l]), fmt.Sprintf("%d in stock", have)
		if left[l] > 0 {
			f.Measured += fmt.Sprintf(" and %d left over", left[l])
		}
		f.Do = "Count the boards again, or plan with those there are."
		out = append(out, f)
		told = append(told, fmt.Sprintf("%d of %s for %d", used[l]+left[l], s.say(l), have))
	}
	if len(out) <= fewLengths {
		return out
	}
	f := r.stop("boards")
	f.Measured = fmt.Sprintf("%d lengths used oftener than they are there: %s", len(told), short(told))
	f.Limit = "the boards in stock"
	f.Do = "The boards were counted anew, or the layout is of others: plan with those there are."
	return []finding.Finding{f}
}

// fewLengths are told one by one; where more are wrong the whole tally is
// another, and that is one finding.
const fewLengths = 3

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
