package plane

import (
	"math/bits"

	"strake/tape"
)

// Ring is a closed outline; the last corner joins the first. Outlines that
// hold area run counter-clockwise (seen from above, X to the right, Y up),
// holes clockwise.
type Ring []Pt

// Area2 is twice the area enclosed, positive when the ring runs
// counter-clockwise. It is exact while the ring is no larger than
// tape.Longest each way: the corners are taken from the first one, so the
// products are those of the ring's own size.
func (r Ring) Area2() tape.Area {
	if len(r) < 3 {
		return 0
	}
	var sum int64
	o := r[0]
	for i := 1; i+1 < len(r); i++ {
		a, b := r[i].Sub(o), r[i+1].Sub(o)
		sum += int64(a.X)*int64(b.Y) - int64(a.Y)*int64(b.X)
	}
	return tape.Area(sum)
}

// Box is the smallest upright rectangle round the ring: its low and its high
// corner.
func (r Ring) Box() (lo, hi Pt) {
	if len(r) == 0 {
		return
	}
	lo, hi = r[0], r[0]
	for _, p := range r[1:] {
		lo.X, lo.Y = min(lo.X, p.X), min(lo.Y, p.Y)
		hi.X, hi.Y = max(hi.X, p.X), max(hi.Y, p.Y)
	}
	return
}

// Move is the ring shifted by d.
func (r Ring) Move(d Pt) Ring {
	out := make(Ring, len(r))
	for i, p := range r {
		out[i] = p.Add(d)
	}
	return out
}

// Turn is the ring turned by half a turn about the middle of a rectangle of
// size w by h that stands on the origin: x, y becomes w-x, h-y.
func (r Ring) Turn(w, h tape.Length) Ring {
	out := make(Ring, len(r))
	for i, p := range r {
		out[i] = Pt{w - p.X, h - p.Y}
	}
	return out
}

// Reverse is the ring run the other way round.
func (r Ring) Reverse() Ring {
	out := make(Ring, len(r))
	for i, p := range r {
		out[len(r)-1-i] = p
	}
	return out
}

// Rect is the upright rectangle from lo to hi, counter-clockwise.
func Rect(lo, hi Pt) Ring {
	return Ring{lo, {hi.X, lo.Y}, hi, {lo.X, hi.Y}}
}

// Tidy drops corners that repeat the one before and corners that lie exactly
// on the straight line through their neighbours (spikes included). Nil when
// fewer than three are left.
func (r Ring) Tidy() Ring {
	out := append(Ring(nil), r...)
	for changed := true; changed && len(out) >= 3; {
		changed = false
		for i := 0; i < len(out) && len(out) >= 3; i++ {
			a, b, c := out[(i+len(out)-1)%len(out)], out[i], out[(i+1)%len(out)]
			if a == b || Side(a, c, b) == 0 {
				out = append(out[:i], out[i+1:]...)
				changed = true
				i--
			}
		}
	}
	if len(out) < 3 {
		return nil
	}
	return out
}

// Side tells where p lies, looking from a to b: 1 left, -1 right, 0 on the
// line. Exact: the products are taken to 128 bits.
func Side(a, b, p Pt) int {
	d, e := b.Sub(a), p.Sub(a)
	return cmpMul(int64(d.X), int64(e.Y), int64(d.Y), int64(e.X))
}

// cmpMul compares a*b with c*d exactly.
func cmpMul(a, b, c, d int64) int {
	h1, l1 := mul128(a, b)
	h2, l2 := mul128(c, d)
	switch {
	case h1 != h2:
		if h1 < h2 {
			return -1
		}
		return 1
	case l1 < l2:
		return -1
	case l1 > l2:
		return 1
	}
	return 0
}

// mul128 is a*b as a signed 128-bit number, high word first.
func mul128(a, b int64) (hi int64, lo uint64) {
	h, l := bits.Mul64(uint64(a), uint64(b))
	if a < 0 {
		h -= uint64(b)
	}
	if b < 0 {
		h -= uint64(a)
	}
	return int64(h), l
}

// Region is an area: outer rings counter-clockwise, holes clockwise, in any
// order. Rings do not cross; the zero value is nowhere.
type Region []Ring

// Area2 is twice the area of the region.
func (g Region) Area2() tape.Area {
	var sum tape.Area
	for _, r := range g {
		sum += r.Area2()
	}
	return sum
}

// Box is the smallest upright rectangle round the region.
func (g Region) Box() (lo, hi Pt) {
	first := true
	for _, r := range g {
		if len(r) == 0 {
			continue
		}
		a, b := r.Box()
		if first {
			lo, hi, first = a, b, false
			continue
		}
		lo.X, lo.Y = min(lo.X, a.X), min(lo.Y, a.Y)
		hi.X, hi.Y = max(hi.X, b.X), max(hi.Y, b.Y)
	}
	return
}
