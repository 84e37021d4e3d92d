package check

import (
	"cmp"
	"fmt"
	"slices"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

var _ = declare("stock",
	"The lay uses no board that the stock does not hold: of a tally no more of a length than were counted, of one length no other and no more than were bought, of a mix none outside its spread. What it names as left over is there too.",
	holdStock)

// kind is a length of boards, and where there are several widths the row width.
type kind struct{ width, length tape.Length }

func holdStock(r Rule, s *site) []finding.Finding {
	used := map[kind]int{}
	for _, b := range s.lay.Boards {
		used[s.kindOf(b.Width, b.Length)]++
	}
	left := map[kind]int{}
	for _, c := range s.lay.Spare {
		k := s.kindOf(c.Width, c.Length)
		if s.boardsOf(k).Known != stock.MixOnly { // of a mix, what is left over is part of the example
			left[k] += c.Count
		}
	}
	var kinds []kind
	for k := range used {
		kinds = append(kinds, k)
	}
	for k := range left {
		if used[k] == 0 {
			kinds = append(kinds, k)
		}
	}
	slices.SortFunc(kinds, func(a, b kind) int { return cmp.Or(cmp.Compare(a.width, b.width), cmp.Compare(a.length, b.length)) })
	var out []finding.Finding
	var told []string
	for _, k := range kinds {
		have, known := s.held(k)
		if !known || used[k]+left[k] <= have {
			continue
		}
		f := r.stop("boards of " + s.sayKind(k))
		f.Measured, f.Limit = fmt.Sprintf("%d used", used[k]), fmt.Sprintf("%d in stock", have)
		if left[k] > 0 {
			f.Measured += fmt.Sprintf(" and %d left over", left[k])
		}
		f.Do = "Count the boards again, or plan with those there are."
		out = append(out, f)
		told = append(told, fmt.Sprintf("%d of %s for %d", used[k]+left[k], s.sayKind(k), have))
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

// kindOf is the kind of a board; the width is no matter where all are alike. A
// length that was taken down by less than 1/64 in, for want of a common step, is
// that of the tally.
func (s *site) kindOf(width, length tape.Length) kind {
	if len(s.stock.Widths) == 0 {
		width = 0
	}
	k := kind{width, length}
	b, taken := s.boardsOf(k), tape.SixtyFourth
	for _, c := range b.Tally {
		if d := c.Length - length; d >= 0 && d < taken {
			k.length, taken = c.Length, d
		}
	}
	return k
}

func (s *site) sayKind(k kind) string {
	if k.width == 0 {
		return s.say(k.length)
	}
	return s.say(k.length) + ", for rows of " + s.say(k.width)
}

// boardsOf is the stock that a kind is from; nothing where there is none.
func (s *site) boardsOf(k kind) stock.Boards {
	if k.width == 0 && len(s.stock.Widths) == 0 {
		return s.stock
	}
	b, _ := s.ofPitch(k.width)
	return b
}

// fewLengths are told one by one; where more are wrong the whole tally is
// another, and that is one finding.
const fewLengths = 3

// held is how many boards of a kind the stock has; false when it has no say.
func (s *site) held(k kind) (int, bool) {
	b := s.boardsOf(k)
	switch b.Known {
	case stock.Tallied:
		n := 0
		for _, c := range b.Tally {
			if c.Length == k.length {
				n += c.Count
			}
		}
		return n, true
	case stock.OneSize:
		if k.length != b.One {
			return 0, true
		}
		return b.OneCount, b.OneCount > 0
	case stock.MixOnly:
		return 0, k.length < b.Mix.Least || k.length > b.Mix.Most
	}
	return 0, len(s.stock.Widths) > 0
}
