package saw

import (
	"strake/plane"
)

// pocket is a part of the box round a piece that the piece leaves free: the
// stretch of the outline that bounds it, run counter-clockwise round the
// piece, both ends on the box.
type pocket []plane.Pt

// pockets are what is missing from the box round a ring.
func pockets(r plane.Ring) []pocket {
	lo, hi := r.Box()
	start := 0
	for start < len(r) && !onBox(r[start], lo, hi) {
		start++
	}
	if start == len(r) {
		return nil
	}
	var out []pocket
	var open pocket
	for i := 0; i < len(r); i++ {
		a, b := r[(start+i)%len(r)], r[(start+i+1)%len(r)]
		if alongBox(a, b, lo, hi) {
			continue
		}
		if open == nil {
			open = pocket{a}
		}
		open = append(open, b)
		if onBox(b, lo, hi) {
			out, open = append(out, open), nil
		}
	}
	return out
}

func onBox(p, lo, hi plane.Pt) bool {
	return p.X == lo.X || p.X == hi.X || p.Y == lo.Y || p.Y == hi.Y
}

// alongBox tells whether the edge from a to b lies on a side of the box.
func alongBox(a, b, lo, hi plane.Pt) bool {
	return a.X == b.X && (a.X == lo.X || a.X == hi.X) || a.Y == b.Y && (a.Y == lo.Y || a.Y == hi.Y)
}

// The sides of a box in the order they are run through.
const (
	foot = iota
	right
	head
	left
)

// covers tells which sides of the box a pocket takes up whole.
func (c pocket) covers(lo, hi plane.Pt) (whole [4]bool) {
	from, to := round(c[0], lo, hi, false), round(c[len(c)-1], lo, hi, true)
	if to <= from {
		to += 4
	}
	for k := range 8 {
		if from <= float64(k) && float64(k+1) <= to {
			whole[k%4] = true
		}
	}
	return
}

// round is how far round the box p lies, in sides from the lower left corner.
// A corner ends one side and starts the next: the same number, but the lower
// left one is 0 as a start and 4 as an end.
func round(p, lo, hi plane.Pt, end bool) float64 {
	part := func(at, of int64) float64 { return float64(at) / float64(of) }
	w, h := int64(hi.X-lo.X), int64(hi.Y-lo.Y)
	switch {
	case p == lo && end:
		return 4
	case p.Y == lo.Y:
		return part(int64(p.X-lo.X), w)
	case p.X == hi.X:
		return 1 + part(int64(p.Y-lo.Y), h)
	case p.Y == hi.Y:
		return 2 + part(int64(hi.X-p.X), w)
	}
	return 3 + part(int64(hi.Y-p.Y), h)
}
