package plane

import (
	"testing"

	"pgregory.net/rapid"

	"strake/tape"
)

// Strips of a floor, stacked again, are the floor: the same area, and any
// place lies in both or in neither.
func TestStackOfStrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := func(name string, lo, hi int) tape.Length { return tape.Length(rapid.IntRange(lo, hi).Draw(t, name)) }
		w, h := n("w", 60, 400), n("h", 60, 400)
		g := Region{{P(0, n("slant", 0, 9)), P(w, 0), P(w+n("out", 0, 20), h/2), P(w, h), P(w/2, h), P(w/2, h/2+n("jog", 0, 9)), P(0, h/2)}}
		x, y := n("x", 10, 30), n("y", 12, int(h/2)-12)
		g = append(g, Rect(P(x, y), P(x+9, y+9)).Reverse())
		pitch := n("pitch", 5, 40)
		var parts []Region
		for low := tape.Length(0); low < h; low += pitch {
			parts = append(parts, g.Strip(low, low+pitch).Parts()...)
		}
		got := Stack(parts...)
		var sum tape.Area
		for _, p := range parts {
			sum += p.Area2()
		}
		if got.Area2() != sum {
			t.Fatalf("area %v, parts have %v", got.Area2(), sum)
		}
		for _, r := range got {
			for i, p := range r {
				if q := r[(i+1)%len(r)]; p == q {
					t.Fatalf("a side without length at %v", p)
				}
			}
		}
		if outer := len(got); outer > 4 {
			t.Fatalf("%d rings", outer)
		}
	})
}

// Two squares that share a corner only stay two outlines.
func TestStackAtACorner(t *testing.T) {
	got := Stack(Region{Rect(P(0, 0), P(5, 5))}, Region{Rect(P(5, 5), P(9, 9))})
	if len(got) != 2 || got.Area2() != 2*(25+16) {
		t.Errorf("%v", got)
	}
	ring := Stack(Region{Rect(P(0, 0), P(9, 3))}, Region{Rect(P(0, 3), P(3, 6))}, Region{Rect(P(6, 3), P(9, 6))}, Region{Rect(P(0, 6), P(9, 9))})
	if len(ring) != 2 || ring.Area2() != 2*(81-9) {
		t.Errorf("a ring has a hole: %v", ring)
	}
}
