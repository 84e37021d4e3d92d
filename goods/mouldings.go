package goods

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"strake/tape"
)

// Stretch is one piece of base as it goes along a wall: from corner or opening to
// corner or the outer edge of a casing, counter-clockwise round the room.
type Stretch struct {
	Wall   string      // A-B
	From   tape.Length // from the wall's first corner
	Length tape.Length
	Turns  [2]float64 // degrees that the wall turns away from the room at either end: 90 at an outside corner, else 0
}

// scarfRest is the shortest piece that a wall longer than a bar ends in.
const scarfRest = 16 * tape.Inch

// mouldings are base and shoe.
func (k *work) mouldings() {
	k.moulding("base", BaseItem, k.w.Base, k.f.Base, k.w.BaseSold)
	k.moulding("shoe", ShoeItem, k.w.Shoe, k.f.Shoe, k.w.ShoeSold)
}

func (k *work) moulding(what string, item Item, way Way, thick tape.Length, sold []tape.Length) {
	if thick == 0 || way == NoWay || len(k.f.Stretches) == 0 {
		return
	}
	names, pieces, whole := k.pieces(thick, sold, way == Buy)
	var sum tape.Length
	for _, s := range k.f.Stretches {
		sum += s.Length
	}
	from := fmt.Sprintf("%s of wall, openings with their casings and what stands against it taken off: %d pieces", k.long(sum), whole)
	source, cased := k.cased()
	if way == Refit {
		l := Line{Group: Mould, What: what + " as it is", Count: whole, Unit: "piece", From: from,
			Do: "Take it off with a wide blade behind it, write wall and number on the back of each piece (A-B 1 is the one nearest to corner A), pull the nails through from behind. Buy a bar to spare for what splits."}
		l.Source, l.Notes = source, cased
		for i, n := range names {
			l.Notes = append(l.Notes, n+" "+k.say(pieces[i]))
		}
		k.add(l)
		return
	}
	k.cut(Line{Group: Mould, What: what, Item: item, From: from, Source: joined(SrcBase, SrcFit, source), Notes: cased,
		Do: "Cope inside corners, mitre outside ones, scarf long walls over a stud. Cut each piece long, by the wall and not by this list."}, names, pieces, sold, true)
}

// cased says which casings are taken for the usual ones, and where that comes from.
func (k *work) cased() (source string, notes []string) {
	if len(k.f.Casings) == 0 {
		return "", nil
	}
	if !k.w.CasingTold {
		source = SrcCasing
	}
	return source, []string{fmt.Sprintf("pieces end %s from the jambs of %s, at the casing's outer edge (casing, at the doorway)", k.say(k.w.Casing), listed(k.f.Casings))}
}

// joined is sources one after the other, those there are.
func joined(ss ...string) string {
	return strings.Join(slices.DeleteFunc(ss, func(s string) bool { return s == "" }), "; ")
}

// pieces are the pieces along the walls: longer at outside corners by the mitre, in
// parts where a wall is longer than a bar. Whole is how many stretches there are.
func (k *work) pieces(thick tape.Length, sold []tape.Length, parted bool) (names []string, out []tape.Length, whole int) {
	count := map[string]int{}
	longest := tape.Length(0)
	for _, l := range sold {
		longest = max(longest, l)
	}
	for _, s := range k.f.Stretches {
		count[s.Wall]++
		l := s.Length
		if parted {
			l += k.w.Fit + mitre(thick, s.Turns[0]) + mitre(thick, s.Turns[1])
		}
		name := s.Wall + " " + strconv.Itoa(count[s.Wall])
		if !parted {
			names, out = append(names, name), append(out, l)
			continue
		}
		for i, part := range scarfed(l, longest, thick) {
			n := name
			if l > longest {
				n += string(rune('a' + i%26))
			}
			names, out = append(names, n), append(out, part)
		}
	}
	return names, out, len(k.f.Stretches)
}

// mitre is what a moulding is longer by at a wall that turns away so much.
func mitre(thick tape.Length, turn float64) tape.Length {
	if turn <= 0 {
		return 0
	}
	return tape.Up(tape.Length(math.Round(float64(thick)*math.Tan(min(turn, 150)*math.Pi/360))), tape.Sixteenth)
}

// scarfed is a length in parts of at most the longest bar, each lapping the next by
// the moulding's thickness, none shorter than a stud's spacing.
func scarfed(l, longest, thick tape.Length) []tape.Length {
	var out []tape.Length
	for l > longest && longest > 2*(scarfRest+thick) {
		part := longest
		if rest := l - part + thick; rest < scarfRest {
			part -= scarfRest - rest
		}
		out = append(out, part)
		l -= part - thick
	}
	return append(out, l)
}
