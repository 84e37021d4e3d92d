package row

import (
	"slices"

	"strake/lay"
	"strake/room"
	"strake/tape"
)

// usualBoard is what a board is taken for where lengths are not known.
const usualBoard = 3 * tape.Foot

// step marks the tapers whose row is stepped by a pin.
func (s *Score) step(pins []lay.Pin) {
	for i, t := range s.Tapers {
		s.Tapers[i].Hidden = s.longest > 0 && t.Fits >= s.longest
		if slices.ContainsFunc(pins, func(p lay.Pin) bool { return p.Kind == lay.PinStepped && p.Where == t.Edge }) {
			s.Tapers[i] = t.stepped(s.longest)
		}
	}
}

// stepped is a taper whose row has pieces of one width each: the step from one
// to the next is what the wall gains over the longest board.
func (t Taper) stepped(longest tape.Length) Taper {
	if longest == 0 {
		longest = usualBoard
	}
	t.Stepped = true
	t.Step = tape.Length(t.slope * float64(min(longest, t.run)))
	t.Over = max(0, t.Step-t.play)
	return t
}

// stepped is a candidate with each row that tapers along a wall stepped: false
// where none does, or each is anyhow.
func (p Place) stepped(c Candidate) (Candidate, bool) {
	any := false
	c.Score.Tapers = slices.Clone(c.Score.Tapers)
	for i, t := range c.Score.Tapers {
		if !t.Stepped && !t.Hidden && t.wall != (room.Wall{}) {
			c.Score.Tapers[i], any = t.stepped(p.Longest), true
		}
	}
	c.Variant = Stepped
	c.Name = c.Heading + ", " + string(Stepped)
	return c, any
}
