package row

import (
	"cmp"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/floor"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Rooms whose long walls both slant to the rows: the rip that Make tells of is
// the one measured on the outline at many places, and no other start line, in
// steps of 1/16 in, leaves a wider one.
func TestOffsetBetweenSlantedWalls(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		num := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		long, wide := num("long", 120, 240), num("wide", 90, 200)
		mm := func(x, y float64) plane.XY { return plane.XY{X: x * 25.4, Y: y * 25.4} }
		b := rectangle(long, wide)
		b.At["B"] = mm(long, num("B", -0.6, 0.6))
		b.At["C"] = mm(long, wide+num("C", -0.6, 0.6))
		b.At["D"] = mm(0, wide+num("D", -0.6, 0.6))
		pitch := in(num("pitch", 2.25, 7))
		lim := limits.Default(pitch, in(0.75))
		f, _ := floor.New(b, floor.Trim{Base: in(num("base", 0.5, 0.75)), Shoe: in(num("shoe", 0, 0.75))}, lim, style)
		l, a := Make(f, b, pitch, lim, Wishes{Between: [2]room.Wall{{"A", "B"}, {"C", "D"}}}, style)
		told := pitch
		for _, r := range l.Rips {
			told = min(told, r.Narrowest)
		}
		const hair = tape.Inch / 256 // outlines are of whole ticks, and places between them are not
		if got := measured(a, l.Offset, pitch); (got - told).Abs() > hair {
			t.Fatalf("the narrowest rip measures %v, told %v", got, told)
		}
		for o := tape.Length(0); o < pitch; o += tape.Sixteenth {
			if got := measured(a, o, pitch); got > told+hair {
				t.Fatalf("a start line at %v leaves %v, the chosen one at %v only %v", o, got, l.Offset, told)
			}
		}
	})
}

// measured is the narrowest rip along the low and the high wall of a room with
// four corners, looked up at many places: the first row is the one that the
// floor to be covered begins in, and as wide as the space that boards may use.
func measured(a floor.Aligned, offset, pitch tape.Length) tape.Length {
	needLo, needHi := a.Need.Box()
	first := offset + floorDiv(needLo.Y-offset, pitch)*pitch
	last := offset + floorDiv(needHi.Y-1-offset, pitch)*pitch
	corners := slices.Clone(a.Reach[0])
	slices.SortFunc(corners, func(p, q plane.Pt) int { return cmp.Compare(p.Y, q.Y) })
	narrowest := pitch
	eachPlace(corners[:2], func(x tape.Length) {
		from := a.Reach.Section(x, false)[0].From
		narrowest = min(narrowest, max(0, first+pitch-max(first, from)))
	})
	eachPlace(corners[2:], func(x tape.Length) {
		to := a.Reach.Section(x, false)[0].To
		narrowest = min(narrowest, max(0, min(last+pitch, to)-last))
	})
	return narrowest
}

// eachPlace calls look at many places between two ends of a wall.
func eachPlace(ends []plane.Pt, look func(x tape.Length)) {
	const places = 40
	left, right := min(ends[0].X, ends[1].X)+2, max(ends[0].X, ends[1].X)-2
	for k := range tape.Length(places + 1) {
		look(left + k*(right-left)/places)
	}
}

func floorDiv(a, b tape.Length) tape.Length {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}
