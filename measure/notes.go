package measure

import (
	"fmt"
	"slices"
	"strings"

	"strake/survey"
)

// buys says what each check buys, in the order in which they were chosen: one
// may stop after any of them.
func (s *Sheet) buys() {
	before := -1
	number := 0
	for k, it := range s.plan.Items {
		if it.Purpose != survey.Proves {
			before = k
			continue
		}
		if number++; number == 1 && before >= 0 {
			s.Buys = append(s.Buys, "without checks: "+left(s.plan.Items[before]))
		}
		s.Buys = append(s.Buys, fmt.Sprintf("with check %d, %s: %s", number, s.what(it), left(it)))
	}
	if number == 0 && s.Ask.Checks < 0 && before >= 0 {
		s.Buys = append(s.Buys, "without checks: "+left(s.plan.Items[before]))
	}
}

// left is what still stands against the readings up to an item.
func left(it survey.Item) string {
	switch {
	case it.Unchecked == 0 && it.Alike == 0:
		return "an error in any reading shows, and which one it is"
	case it.Unchecked == 0:
		return fmt.Sprintf("an error in any reading shows, but of %d not in which", it.Alike)
	case it.Alike == 0:
		return fmt.Sprintf("an error in %s would not show", readings(it.Unchecked))
	}
	return fmt.Sprintf("an error in %s would not show, of %d not in which", readings(it.Unchecked), it.Alike)
}

func readings(n int) string {
	if n == 1 {
		return "1 reading"
	}
	return fmt.Sprintf("%d readings", n)
}

// notes says what the sheet rests on and what it leaves open.
func (s *Sheet) notes() {
	a := s.Ask
	if len(a.Rough)+len(a.Have) == 0 {
		s.Notes = append(s.Notes, "No size is known yet, so every wall was taken for 3 m. Give guesses under “rough” for a better choice.")
	}
	if len(a.Unplaced) > 0 {
		s.Notes = append(s.Notes, fmt.Sprintf("Not measured yet, so guessed here, each in the middle of its wall: %s. Measure doorways first; a reading through one that the tape cannot pass is left out.", strings.Join(a.Unplaced, ", ")))
	}
	if lost := s.lost(); len(lost) > 0 {
		s.Notes = append(s.Notes, fmt.Sprintf("It is not known yet where these stand, so readings may run across them: %s. Give the place and size under “stays”, guesses do, and the readings keep off.", strings.Join(lost, ", ")))
	}
	if past := s.past(); len(past) > 0 {
		s.Notes = append(s.Notes, fmt.Sprintf("Something stands in the way of %s, and without these nothing fixes the shape. Hold the tape level above it with a helper, or snap the line on both sides and read it in parts.", strings.Join(past, ", ")))
	}
	if len(s.Built.Rooms) > 1 && !s.joined() {
		s.Notes = append(s.Notes, "No doorway joins some of these rooms, so no reading can say how they lie to each other.")
	}
	switch {
	case s.plan.Unmet != "":
		s.Notes = append(s.Notes, fmt.Sprintf("Not all is checked: %s.", s.plan.Unmet))
	case len(s.plan.Items) == 0:
		s.Notes = append(s.Notes, "The readings taken are enough: an error in any of them would show, and in which.")
	}
}

// lost is what stands up and has no place yet.
func (s *Sheet) lost() []string {
	var out []string
	for _, st := range s.Ask.Sketch.Stays {
		if st.StandsUp() && !slices.ContainsFunc(s.Stays, func(o Outline) bool { return o.Name == st.Name }) {
			out = append(out, st.Name)
		}
	}
	return out
}

// past are the readings that something stands in the way of.
func (s *Sheet) past() []string {
	var out []string
	for _, it := range s.plan.Items {
		if it.Ask.Past != "" {
			out = append(out, s.what(it))
		}
	}
	return out
}

// joined tells whether doorways join all rooms.
func (s *Sheet) joined() bool {
	at := map[int]int{}
	for i := range s.Built.Rooms {
		at[i] = i
	}
	left := len(s.Built.Rooms) - 1
	for _, d := range s.Built.Doorways {
		i, _, ok := s.Built.FindWall(d.Wall)
		j, _, ok2 := s.Built.FindWall(d.OtherWall)
		if !ok || !ok2 || at[i] == at[j] {
			continue
		}
		left--
		from, to := at[i], at[j]
		for k := range at {
			if at[k] == from {
				at[k] = to
			}
		}
	}
	return left == 0
}

// How is where to hold the tape and how, a line each. All of it is common
// practice, no source.
var How = []string{
	"Measure at the wall, just above the base while it is on. Take the widths where rows close again at floor level once the base is off.",
	"Inside corners: push the case into the corner and add its length, or burn the first inch (100 mm): start at that mark, read, and take it off again.",
	"Alone: hook the tape over a nail in a block where the sheet says “hook at”, walk, and read at the other end.",
	"The hook slides by its own thickness so that it reads true both pushed and pulled: see that it does.",
	"A wall that bows: pull a string from corner to corner over two equal blocks and measure from string to wall in the middle and at the quarters.",
	"Widths where rows close: pull square to the wall that you start from, by a framing square held at the mark.",
	"Write down what the tape says, to the mark, and do not correct anything: readings that disagree say which one is wrong.",
}
