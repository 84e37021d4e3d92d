package main

import (
	"slices"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// quality is what a lay is worth, told from the pieces as they lie.
type quality struct {
	waste     float64 // scrap and kerf in hundredths of the length of all runs
	cuts      float64 // crosscuts measured in place; a tongue taken off is none
	h         float64 // joints within 2 in of one two runs back
	clusters  float64 // joints that make three in neighbouring runs, each under 10 in from the next
	stairs    float64 // the same shift (1 in more or less, up to 14 in) twice running
	near      float64 // hundredths of the joints under 10 in from one in the run behind
	joints    float64
	least     tape.Length // smallest distance
	unfilled  float64
	relaxed   float64
	offcuts   float64 // usable, left at the end
	even      float64 // mean piece of the last third of the runs over that of the first
	firstTime float64 // seconds
	time      float64
	scrap     tape.Length
}

// judge measures a lay. It reads outlines and parts alone, not what the search
// thought of them.
func judge(l lay.Lay, need tape.Length) quality {
	q := quality{least: tape.Longest, relaxed: float64(len(l.Relaxed))}
	var runs [][]tape.Length
	for _, r := range l.Runs {
		if r.Unfilled {
			q.unfilled++
		}
		runs = append(runs, jointsOf(l, r))
	}
	q.cuts = crosscuts(l)
	for _, b := range l.Boards {
		for _, p := range b.Parts {
			switch p.Kind {
			case lay.IsKerf: // a whole one, even where less is left beyond the cut
				q.scrap += max(l.Kerf, lengthOf(p.Outline))
			case lay.IsScrap:
				q.scrap += lengthOf(p.Outline)
			case lay.IsOffcut:
				q.offcuts++
			}
		}
	}
	q.waste = 100 * float64(q.scrap) / float64(need)
	q.joined(runs)
	q.even = meanPiece(l, 2) / meanPiece(l, 0)
	return q
}

// meanPiece is the mean piece of the first, second or last third of the runs.
func meanPiece(l lay.Lay, third int) float64 {
	sum, n := 0.0, 0.0
	for i, r := range l.Runs {
		if i*3/len(l.Runs) != third {
			continue
		}
		for _, id := range r.Pieces {
			sum, n = sum+lengthOf(l.Pieces[id].Outline).Inches(), n+1
		}
	}
	return sum / max(1, n)
}

func lengthOf(r plane.Ring) tape.Length {
	lo, hi := r.Box()
	return hi.X - lo.X
}

// jointsOf are the places of a run's joints.
func jointsOf(l lay.Lay, r lay.Run) []tape.Length {
	var out []tape.Length
	for i, id := range r.Pieces {
		if lo, _ := l.Pieces[id].Outline.Box(); i > 0 {
			out = append(out, lo.X)
		}
	}
	return out
}

// crosscuts counts the cuts across boards. One cut makes two ends where what is
// left of a board begins another run.
func crosscuts(l lay.Lay) float64 {
	n := 0.0
	ends := map[int][]tape.Length{} // far cut ends by board
	for _, p := range l.Pieces {
		if p.Right == lay.Cut {
			_, hi := p.InBoard.Box()
			ends[p.Board] = append(ends[p.Board], hi.X)
			n++
		}
	}
	for _, p := range l.Pieces {
		lo, _ := p.InBoard.Box()
		if p.Left == lay.Cut && !slices.Contains(ends[p.Board], lo.X-l.Kerf) {
			n++
		}
	}
	return n
}

// What counts as an H-joint, as a stair-step and as near.
const (
	hReach    = 2 * tape.Inch
	stairSame = 1 * tape.Inch
	stairMost = 14 * tape.Inch
	nearReach = 10 * tape.Inch
)

// joined counts what the joints of the runs look like.
func (q *quality) joined(runs [][]tape.Length) {
	near := 0
	for i, at := range runs {
		q.joints += float64(len(at))
		if i == 0 {
			continue
		}
		for _, x := range at {
			d := nearest(runs[i-1], x)
			q.least = min(q.least, d)
			if d < nearReach {
				near++
			}
			if i > 1 && nearest(runs[i-2], x) <= hReach {
				q.h++
			}
			if i > 1 && clustered(x, runs[i-1], runs[i-2]) {
				q.clusters++
			}
			if i > 1 {
				q.stairs += stairs(x, runs[i-1], runs[i-2])
			}
		}
	}
	q.near = 100 * float64(near) / max(1, q.joints)
}

// clustered tells whether x is near a joint one run back that is near one two
// runs back.
func clustered(x tape.Length, one, two []tape.Length) bool {
	return slices.ContainsFunc(one, func(y tape.Length) bool { return (x-y).Abs() < nearReach && nearest(two, y) < nearReach })
}

func stairs(x tape.Length, one, two []tape.Length) float64 {
	n := 0.0
	for _, y := range one {
		if shift := x - y; shift.Abs() <= stairMost && nearest(two, y-shift) <= stairSame {
			n++
		}
	}
	return n
}

// nearest is the distance from x to the nearest of sorted places.
func nearest(at []tape.Length, x tape.Length) tape.Length {
	d := tape.Longest
	i, _ := slices.BinarySearch(at, x)
	if i < len(at) {
		d = at[i] - x
	}
	if i > 0 {
		d = min(d, x-at[i-1])
	}
	return d
}

// mean is the mean of several lays, but the smallest of their smallest
// distances.
func mean(qs []quality) quality {
	m := quality{least: tape.Longest}
	n := float64(len(qs))
	for _, q := range qs {
		m.least = min(m.least, q.least)
		m.scrap += q.scrap
		for _, f := range [][2]*float64{{&m.waste, &q.waste}, {&m.cuts, &q.cuts}, {&m.h, &q.h}, {&m.clusters, &q.clusters}, {&m.stairs, &q.stairs}, {&m.near, &q.near},
			{&m.joints, &q.joints}, {&m.unfilled, &q.unfilled}, {&m.relaxed, &q.relaxed}, {&m.offcuts, &q.offcuts}, {&m.even, &q.even}, {&m.firstTime, &q.firstTime}, {&m.time, &q.time}} {
			*f[0] += *f[1] / n
		}
	}
	return m
}

// far is how many of the lays keep every joint 10 in from the next.
func far(qs []quality) int {
	n := 0
	for _, q := range qs {
		if q.least >= nearReach {
			n++
		}
	}
	return n
}
