package row

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/floor"
	"strake/limits"
	"strake/plane"
	"strake/tape"
)

// patternProblem is edges and rows of several widths in ticks, so small that
// every offset can be tried.
func patternProblem(t *rapid.T) problem {
	length := func(lo, hi int) tape.Length { return tape.Length(rapid.IntRange(lo, hi).Draw(t, "l")) }
	var p problem
	for range rapid.IntRange(2, 6).Draw(t, "rows") {
		w := length(30, 130)
		p.widths, p.limits = append(p.widths, w), append(p.limits, min(40, w/2))
	}
	for range rapid.IntRange(1, 5).Draw(t, "edges") {
		reach, spare := length(-900, 900), length(-20, 30)
		e := edge{above: rapid.Bool().Draw(t, "above"), reach: reach, low: reach, high: reach, need: reach + spare}
		if !e.above {
			e.need = reach - spare
		}
		p.closing = append(p.closing, e)
		p.corners = append(p.corners, e.reach, e.need)
	}
	p.low, p.high = -1000, 1000
	return p
}

// bruteRips are the rips at an offset found by walking from row line to row
// line: what is left of each closing row, and of how much.
func bruteRips(p problem, offset tape.Length) []ripped {
	var out []ripped
	for _, e := range p.closing {
		low := offset
		for low > -4000 { // a turn of the pattern at a time
			for _, w := range p.widths {
				low -= w
			}
		}
		for k := 0; low < 4000; k++ {
			w := p.widths[k%len(p.widths)]
			high := low + w
			closes := low <= e.need && e.need < high
			left := min(w, high-e.reach)
			if !e.above {
				closes = low < e.need && e.need <= high
				left = min(w, e.reach-low)
			}
			if closes {
				out = append(out, ripped{max(0, left), w, p.limits[k%len(p.widths)]})
			}
			low = high
		}
	}
	return out
}

// worst is the least share of its board that a rip keeps, and whether some rip
// is under its limit.
func worst(rs []ripped) (share float64, sliver bool) {
	share = 1
	for _, r := range rs {
		share = min(share, float64(r.left)/float64(r.of))
		sliver = sliver || r.left < r.limit
	}
	return
}

// With rows of several widths the offset ranges over all of the pattern, and
// none tried one by one is better: a sliver where one can be spared, or a rip
// that keeps less of its board.
func TestPatternOffsetAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := patternProblem(t)
		at, s := p.best()
		share, sliver := worst(bruteRips(p, at))
		if told, is := worst(s.rips); told != share || is != sliver || len(s.rips) != len(p.closing) {
			t.Fatalf("offset %d: told %v of rips %v, walked %v %v", at, told, s.rips, share, bruteRips(p, at))
		}
		for o := range p.lines(0).Period() {
			got, bad := worst(bruteRips(p, o))
			if sliver && !bad || sliver == bad && got > share+1e-12 {
				t.Fatalf("offset %d keeps %.4f (sliver %v), the chosen %d keeps %.4f (sliver %v)", o, got, bad, at, share, sliver)
			}
		}
	})
}

// A pattern of one row is that row alone, and one of equal rows is as good.
func TestPatternOfEqualRows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := patternProblem(t)
		w := p.widths[0]
		p.widths, p.limits = p.widths[:1], p.limits[:1]
		q := p
		q.widths, q.limits = []tape.Length{w, w, w}, []tape.Length{p.limits[0], p.limits[0], p.limits[0]}
		_, a := p.best()
		_, b := q.best()
		if a.narrowest(w) != b.narrowest(w) {
			t.Fatalf("one row leaves %d, three alike %d", a.narrowest(w), b.narrowest(w))
		}
	})
}

// The length of a slanted edge along which its rows are too narrow, counted
// height by height.
func TestUnderAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := patternProblem(t)
		e := p.closing[0]
		e.low = tape.Length(rapid.IntRange(-300, 300).Draw(t, "low"))
		e.high = e.low + tape.Length(rapid.IntRange(1, 500).Draw(t, "slant"))
		e.run = e.high - e.low
		c := p.lines(tape.Length(rapid.IntRange(-50, 400).Draw(t, "offset")))
		var want tape.Length
		for y := e.low; y < e.high; y++ { // the stretch from y to the next tick, by its middle
			n := c.Row(y)
			left := 2*c.Line(n+1) - (2*y + 1)
			if !e.above {
				left = 2*y + 1 - 2*c.Line(n)
			}
			if left < 2*p.limits[index(n, len(p.limits))] {
				want++
			}
		}
		if got := e.under(c, p.limits); (got - want).Abs() > 1 { // rounded down once
			t.Fatalf("%d of %d is under, counted %d", got, e.run, want)
		}
	})
}

// On rooms out of square, with play and slanted walls, no start tried every
// 1/64 in over the whole pattern is better than the one chosen.
func TestPatternStartOnRooms(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inches := func(lo, hi int) tape.Length {
			return tape.Length(rapid.IntRange(lo, hi).Draw(t, "sixteenths")) * tape.Sixteenth
		}
		b := rectangle(200, 0)
		for i, c := range []string{"A", "B", "C", "D"} {
			x, y := 0.0, inches(-24, 24).Millimetres()
			if i == 1 || i == 2 {
				x = 200 * 25.4
			}
			if i > 1 {
				y += inches(40*16, 90*16).Millimetres()
			}
			b.At[c] = plane.XY{X: x, Y: y}
		}
		var widths []tape.Length
		for range rapid.IntRange(2, 4).Draw(t, "rows") {
			widths = append(widths, inches(28, 90))
		}
		lim := limits.Default(slices.Max(widths), in(0.75))
		lim.Widest = slices.Max(widths)
		f, _ := floor.New(b, floor.Trim{Base: in(0.5), Shoe: in(0.75)}, lim, style)
		p := newProblem(f.In(plane.DirOf(b.At["A"], b.At["B"])), widths, lim)
		_, s := p.best()
		for o := tape.Length(0); o < p.lines(0).Period(); o += tape.SixtyFourth {
			u := p.at(o)
			if s.sliver() && !u.sliver() || s.sliver() == u.sliver() && u.spares(s) {
				t.Fatalf("rows of %v: a start at %v leaves %v, the chosen %v", widths, o, u.rips, s.rips)
			}
		}
	})
}
