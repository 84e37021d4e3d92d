package packet

import (
	"math"
	"slices"

	"strake/sheet"
)

// cross is half the size of a match mark, mm; clearCross is that with what is kept clear
// round it.
const (
	cross      = 3.0
	clearCross = 3.6
)

// crossed are the two match marks of neighbouring tiles, places of the sheet in what they
// share: on free paper where there is any, else off writing and heavy lines, else off
// writing; one in each half of the lap, as near to the middle of its half as that goes.
func crossed(a, b sheet.Tile) []sheet.Pt {
	lo := sheet.Pt{X: math.Max(a.From.X, b.From.X), Y: math.Max(a.From.Y, b.From.Y)}
	hi := sheet.Pt{X: math.Min(a.From.X+a.W, b.From.X+b.W), Y: math.Min(a.From.Y+a.H, b.From.Y+b.H)}
	near := onLap(a, b, lo, hi)
	var out []sheet.Pt
	for _, half := range [2]float64{0, 0.5} {
		places := append(marksAt(lo, hi, half), marksAt(lo, hi, 0.5-half)...)
		places = slices.DeleteFunc(places, func(c sheet.Pt) bool { return len(out) > 0 && nearby(c, out[0]) })
		if len(places) > 0 {
			out = append(out, bestMark(places, near))
		}
	}
	return out
}

// nearby tells whether two marks would lie so near each other that they do not hold a tile
// against turning.
func nearby(a, b sheet.Pt) bool { return math.Hypot(a.X-b.X, a.Y-b.Y) < 2*lap }

// bestMark is the first place that the best rule allows that allows any.
func bestMark(places []sheet.Pt, near []sheet.Item) sheet.Pt {
	for _, free := range []struct {
		of    func([4]sheet.Pt, []sheet.Item) bool
		clear float64
	}{{offAll, clearCross}, {offHeavy, clearCross}, {offWriting, clearCross}, {offWriting, cross}} {
		for _, c := range places {
			if free.of(square(c, free.clear), near) {
				return c
			}
		}
	}
	return places[0]
}

// marksAt are the places for a mark in a half of the lap, the nearest to the middle first.
func marksAt(lo, hi sheet.Pt, half float64) []sheet.Pt {
	w, h := hi.X-lo.X, hi.Y-lo.Y
	const ends = lap + clearCross // where four tiles meet there are other marks
	var out []sheet.Pt
	for off := 0.0; off < 0.25; off += 0.005 {
		for _, along := range []float64{half + 0.25 + off, half + 0.25 - off} {
			for _, across := range []float64{0, 1, -1, 2, -2, 3, -3, 4, -4} {
				c := sheet.Pt{X: lo.X + w*along, Y: lo.Y + h/2 + across}
				if h > w {
					c = sheet.Pt{X: lo.X + w/2 + across, Y: lo.Y + h*along}
				}
				if past := math.Max(w, h) * along; past > ends && past < math.Max(w, h)-ends {
					out = append(out, c)
				}
			}
		}
	}
	if len(out) == 0 {
		out = append(out, lo.Add(hi).Times(0.5))
	}
	return out
}

// onLap are the items of two tiles that reach into the stretch of the sheet from lo to hi.
func onLap(a, b sheet.Tile, lo, hi sheet.Pt) []sheet.Item {
	lap := [4]sheet.Pt{lo, {X: hi.X, Y: lo.Y}, hi, {X: lo.X, Y: hi.Y}}
	var out []sheet.Item
	for _, t := range []sheet.Tile{a, b} {
		for _, it := range sheet.Moved(t.Items, t.From, 1) {
			if !offAll(lap, []sheet.Item{it}) {
				out = append(out, it)
			}
		}
	}
	return out
}

// square is the outline r mm round a place.
func square(c sheet.Pt, r float64) [4]sheet.Pt {
	return [4]sheet.Pt{{X: c.X - r, Y: c.Y - r}, {X: c.X + r, Y: c.Y - r}, {X: c.X + r, Y: c.Y + r}, {X: c.X - r, Y: c.Y + r}}
}

// offAll tells whether nothing at all reaches into an outline.
func offAll(o [4]sheet.Pt, items []sheet.Item) bool {
	return offLines(o, items, 0) && offAreas(o, items) && offWriting(o, items)
}

// heavy is from where on a line is one that nothing lies on, mm.
const heavy = 0.3

// offHeavy tells whether no writing and no heavy line reaches into an outline.
func offHeavy(o [4]sheet.Pt, items []sheet.Item) bool {
	return offLines(o, items, heavy) && offWriting(o, items)
}

// offWriting tells whether no writing reaches into an outline.
func offWriting(o [4]sheet.Pt, items []sheet.Item) bool {
	for _, it := range items {
		if t, ok := it.(sheet.Text); ok {
			if b := t.PrintedBox(); sheet.Overlap(o[:], b[:]) {
				return false
			}
		}
	}
	return true
}

// offLines tells whether no line as wide as that reaches into an outline.
func offLines(o [4]sheet.Pt, items []sheet.Item, wide float64) bool {
	for _, it := range items {
		if l, ok := it.(sheet.Polyline); ok && l.Pen.Width >= wide && meets(o, l.Points) {
			return false
		}
		if g, ok := it.(sheet.Polygon); ok && g.Pen.Width >= wide && g.Pen.Width > 0 {
			for _, r := range g.Rings {
				if meets(o, append(append([]sheet.Pt{}, r...), r[0])) {
					return false
				}
			}
		}
	}
	return true
}

// meets tells whether a line of no width passes through a convex outline.
func meets(o [4]sheet.Pt, line []sheet.Pt) bool {
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		if sheet.Overlap(o[:], []sheet.Pt{a, b}) {
			return true
		}
	}
	return false
}

// offAreas tells whether no drawn area has a corner in an outline or holds its middle.
func offAreas(o [4]sheet.Pt, items []sheet.Item) bool {
	mid := o[0].Add(o[2]).Times(0.5)
	for _, it := range items {
		if g, ok := it.(sheet.Polygon); ok && (g.Fill != sheet.White || g.Name != "") && sheet.Holds(g.Rings, mid) {
			return false
		}
	}
	return true
}
