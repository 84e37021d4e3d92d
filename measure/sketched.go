package measure

import (
	"slices"

	"strake/room"
	"strake/survey"
	"strake/tape"
)

// Guesses of a doorway that was not measured yet: common sizes, no source. They
// only shape the sketch, and the sheet says that they are guesses.
const (
	guessedOpening = 30 * tape.Inch
	guessedWall    = 9 * tape.Inch / 2
)

// sketched is the sketch as far as the survey can use it: doorways not yet
// measured in the middle of their walls, and nothing that stays by corners that
// no reading and no guess reaches.
func (s Sheet) sketched() room.Sketch {
	out := s.Ask.Sketch
	out.Doorways = slices.Clone(out.Doorways)
	for i := range out.Doorways {
		if d := &out.Doorways[i]; slices.Contains(s.Ask.Unplaced, d.Name) {
			s.guess(d)
		}
	}
	out.Stays = slices.DeleteFunc(slices.Clone(out.Stays), s.unknown)
	return out
}

// guess gives a doorway the figures that it lacks.
func (s Sheet) guess(d *room.Doorway) {
	if d.Width == 0 {
		d.Width = guessedOpening
	}
	if d.Thickness == 0 {
		d.Thickness = guessedWall
	}
	if d.At == 0 {
		d.At = s.middle(d.Wall, d.Width)
	}
	if d.Beyond == room.BeyondRoom && d.OtherAt == 0 {
		d.OtherAt = s.middle(d.OtherWall, d.Width)
	}
}

// middle is where an opening starts that lies in the middle of a wall; near
// its corner where the wall is not known or too short.
func (s Sheet) middle(w room.Wall, opening tape.Length) tape.Length {
	plain := s.Ask.Sketch
	plain.Doorways, plain.Stays = nil, nil
	rs := append(append([]survey.Reading(nil), s.Ask.Rough...), s.Ask.Have...)
	at := survey.Adjust(plain, rs, s.Ask.Model).Built.At
	long := tape.Length(at[w[1]].Sub(at[w[0]]).Len() * float64(tape.Millimetre))
	return max(0, tape.Nearest((long-opening)/2, tape.Tick))
}

// unreached tells whether something stays by corners that too few readings
// reach to place them.
func (s Sheet) unreached(st room.Stay) bool { return !reached(st, s.Ask.Have) }

// unknown is unreached by guesses too, or with no place along its wall.
func (s Sheet) unknown(st room.Stay) bool {
	return slices.Contains(s.Ask.Floating, st.Name) || !reached(st, append(append([]survey.Reading(nil), s.Ask.Rough...), s.Ask.Have...))
}

func reached(st room.Stay, rs []survey.Reading) bool {
	for _, c := range st.Corners {
		n := 0
		for _, r := range rs {
			if r.From == c || r.To == c {
				n++
			}
		}
		if n < 2 {
			return false
		}
	}
	return true
}
