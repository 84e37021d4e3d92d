package check

import (
	"slices"

	"strake/stock"
	"strake/tape"
)

// otherWidths tells whether the rows of a field take up other widths than the
// boards on the pallet, or take turns otherwise than the job has them. Where it
// has no pattern any order of its widths will do.
func (s *site) otherWidths(z *zone) bool {
	rows := widthsOf(z.Zone)
	if len(s.stock.Widths) == 0 {
		return len(z.Pattern) > 0 || z.Width != s.stock.Pitch()
	}
	for _, w := range rows {
		if _, ok := s.ofPitch(w); !ok {
			return true
		}
	}
	if len(s.stock.Pattern) == 0 {
		return false
	}
	return !slices.Equal(rows, s.jobPattern())
}

// ofPitch is the boards whose rows are so wide.
func (s *site) ofPitch(w tape.Length) (stock.Boards, bool) {
	each := s.stock.Each()
	i := slices.IndexFunc(each, func(b stock.Boards) bool { return b.Pitch() == w })
	if i < 0 {
		return stock.Boards{}, false
	}
	return each[i], true
}

// jobPattern is what the rows take up in turn as the job has them.
func (s *site) jobPattern() []tape.Length {
	var out []tape.Length
	for _, face := range s.stock.Pattern {
		for _, b := range s.stock.Each() {
			if b.Face == face {
				out = append(out, b.Pitch())
			}
		}
	}
	return out
}

// pattern says what rows may take up.
func (s *site) pattern() string {
	if len(s.stock.Pattern) > 0 {
		return s.sayWidths(s.jobPattern()) + " in turn"
	}
	var all []tape.Length
	for _, b := range s.stock.Each() {
		all = append(all, b.Pitch())
	}
	return s.sayWidths(all) + ", in any order"
}

func (s *site) sayWidths(ws []tape.Length) string {
	var out []string
	for _, w := range ws {
		out = append(out, s.say(w))
	}
	return short(out)
}
