package survey

import (
	"math"

	"strake/room"
	"strake/tape"
)

// besideJamb is how far (mm) off a jamb or a cabinet a mark on a wall stays.
const besideJamb = 60

// behind is how far off a wall something must stand that one gets behind it.
const behind = 12 * tape.Inch

// markAt is the place for a mark on a wall with its room at the left, as near
// as can be to this far (mm) from its first corner, in whole steps, where the
// wall is there and ok accepts it; false when there is none within a quarter of
// the wall.
func (r Result) markAt(w room.Wall, mm float64, step tape.Length, ok func(at tape.Length) bool) (tape.Length, bool) {
	length := r.Built.At[w[1]].Sub(r.Built.At[w[0]]).Len()
	unit := wholeStep(step)
	base := tape.Nearest(ticks(mm), unit)
	for k := 0; float64(k)*unit.Millimetres() <= length/4; k++ {
		for _, at := range []tape.Length{base + tape.Length(k)*unit, base - tape.Length(k)*unit} {
			if at > 0 && at.Millimetres() < length && r.solid(w, at.Millimetres()) && ok(at) {
				return at, true
			}
		}
	}
	return 0, false
}

// mark is a mark on a wall, this far from its first corner: measured from the
// other one where something stands in the way from the first alone.
func (r Result) mark(name string, w room.Wall, at, step tape.Length) room.Point {
	a, b := r.Built.At[w[0]], r.Built.At[w[1]]
	p, _ := r.square(w, at)
	if r.inTheWay(a, p) == "" || r.inTheWay(b, p) != "" {
		return room.Point{Name: name, Wall: w, From: w[0], At: at}
	}
	back := tape.Nearest(ticks(b.Sub(a).Len())-at, wholeStep(step))
	return room.Point{Name: name, Wall: w, From: w[1], At: back}
}

// solid tells whether a wall, with its room at the left, is there and free at a
// place this far (mm) from its first corner: no doorway, and nothing that stands
// up against it.
func (r Result) solid(w room.Wall, mm float64) bool {
	for _, d := range r.Built.Doorways {
		if r.covers(w, d.Wall, d.From, d.At, d.Width, mm) ||
			d.Beyond == room.BeyondRoom && r.covers(w, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width, mm) {
			return false
		}
	}
	for _, s := range r.Built.Stays {
		if s.StandsUp() && s.Off < behind && r.covers(w, s.Wall, s.From, s.At, s.Width, mm) {
			return false
		}
	}
	return true
}

// covers tells whether what is set out along wall v, from a corner of it, lies
// at this place of wall w.
func (r Result) covers(w, v room.Wall, from string, at, width tape.Length, mm float64) bool {
	if v != w && v != (room.Wall{w[1], w[0]}) {
		return false
	}
	if from == w[1] {
		mm = r.Built.At[w[1]].Sub(r.Built.At[w[0]]).Len() - mm
	}
	return math.Abs(mm-(at+width/2).Millimetres()) < (width/2).Millimetres()+besideJamb
}
