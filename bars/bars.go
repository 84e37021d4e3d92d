package bars

import (
	"slices"

	"strake/tape"
)

// Ask is what has to be cut out of what.
type Ask struct {
	Pieces []tape.Length
	Sold   []tape.Length // lengths that bars are sold in
	Kerf   tape.Length
}

// Bar is one bar and the pieces out of it, by their index, the longest first.
type Bar struct {
	Length tape.Length
	Pieces []int
}

// Cut is what is bought and how it is cut.
type Cut struct {
	Bars   []Bar
	Long   []int       // pieces that no bar is long enough for
	Bought tape.Length // of all bars
	Scrap  tape.Length // of all bars: what is no piece, kerfs too
	Fewest int         // no way of cutting takes fewer bars
	Least  tape.Length // no way with so many bars as here buys less
	Proved bool        // no way is better: fewer bars, or as many of less length
}

// Tries is how many places for pieces are tried before the best cut found counts
// without a proof.
const Tries = 200_000

// Of cuts the pieces of a. Two pieces of one bar have a kerf between them; a piece
// as long as its bar has none.
func Of(a Ask) Cut { return within(a, Tries) }

func within(a Ask, tries int) Cut {
	s := newSearch(a)
	out := Cut{Long: s.long}
	if len(s.sizes) > 0 {
		s.tries = tries
		s.best = s.firstFit()
		s.place(0)
		out.Bars = s.bars(a)
	}
	for _, b := range out.Bars {
		out.Bought += b.Length
		out.Scrap += b.Length
		for _, i := range b.Pieces {
			out.Scrap -= a.Pieces[i]
		}
	}
	out.Fewest, out.Least = s.fewest, s.least(len(out.Bars))
	out.Proved = s.tries > 0 || len(out.Bars) == s.fewest && out.Bought == out.Least
	if s.tries > 0 {
		out.Fewest, out.Least = len(out.Bars), out.Bought
	}
	return out
}

// Lengths are how many bars of each length are bought, longest first.
func (c Cut) Lengths() []Bought {
	var out []Bought
	for _, b := range c.Bars {
		i := slices.IndexFunc(out, func(x Bought) bool { return x.Length == b.Length })
		if i < 0 {
			out = append(out, Bought{Length: b.Length})
			i = len(out) - 1
		}
		out[i].Count++
	}
	slices.SortFunc(out, func(a, b Bought) int { return int(b.Length - a.Length) })
	return out
}

// Bought is a number of bars of one length.
type Bought struct {
	Length tape.Length
	Count  int
}
