package row

import (
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// lines are the row lines.
type lines struct{ lay.Courses }

// from is the first row line at or above y (s 1), or at or below it (s -1).
func (l lines) from(y tape.Length, s int) tape.Length {
	if s > 0 {
		return l.Above(y)
	}
	return l.Below(y)
}

// face is what boards are to fill: Reach, with every edge beside the rows made
// straight along them where its play takes up its slant. A rip there is then
// of one width, and the gap varies instead, inside its range. Where a row line
// lies in what is left of the play, the boards end at it.
func face(a floor.Aligned, l lines) plane.Region {
	out := make(plane.Region, len(a.Reach))
	for r, ring := range a.Reach {
		out[r] = l.straighten(ring, a.ReachEdge[r], a)
	}
	return out
}

// straighten levels each chain of sides beside the rows that face one way.
func (l lines) straighten(ring plane.Ring, ids []int, a floor.Aligned) plane.Ring {
	out := append(plane.Ring(nil), ring...)
	n := len(ring)
	side := func(i int) int { // 1: floor above, -1: floor below, 0: rows end at it
		i = (i + n) % n
		id := ids[i]
		if id < 0 || !a.Edges[id].Beside {
			return 0
		}
		if ring[(i+1)%n].X > ring[i].X {
			return 1
		}
		return -1
	}
	for i := range n {
		s := side(i)
		if s == 0 || side(i-1) == s {
			continue
		}
		count := 1
		for count < n && side(i+count) == s {
			count++
		}
		if count < n {
			l.levelChain(out, ring, ids, a, i, count, s)
		}
	}
	return out
}

// levelChain moves count sides from corner i to one height: the farthest into
// the floor that Reach comes, if Need allows it. The corners at its two ends
// slide along the sides that meet it there.
func (l lines) levelChain(out, ring plane.Ring, ids []int, a floor.Aligned, i, count, s int) {
	n := len(ring)
	y := ring[i].Y
	for k := 1; k <= count; k++ {
		c := ring[(i+k)%n].Y
		if s > 0 {
			y = max(y, c)
		} else {
			y = min(y, c)
		}
	}
	line := l.from(y, s)
	for k := range count {
		need, ok := needOf(a, ids[(i+k)%n], s)
		if !ok || s > 0 && y > need || s < 0 && y < need {
			return
		}
		if s > 0 && line > need || s < 0 && line < need {
			line = y
		}
	}
	y = line
	before, after := ring[(i+n-1)%n], ring[(i+count+1)%n]
	first, last := ring[i], ring[(i+count)%n]
	for k := range count + 1 {
		out[(i+k)%n].Y = y
	}
	out[i].X = slide(before, first, y)
	out[(i+count)%n].X = slide(after, last, y)
}

// needOf is the nearest to the wall that Need comes along an edge.
func needOf(a floor.Aligned, id, s int) (tape.Length, bool) {
	var y tape.Length
	found := false
	for r, ring := range a.Need {
		for k, p := range ring {
			if a.NeedEdge[r][k] != id {
				continue
			}
			q := ring[(k+1)%len(ring)]
			c := min(p.Y, q.Y)
			if s < 0 {
				c = max(p.Y, q.Y)
			}
			if !found || s > 0 && c < y || s < 0 && c > y {
				y = c
			}
			found = true
		}
	}
	return y, found
}

// slide is where the line through p and corner q has height y; q's own X when
// they are level.
func slide(p, q plane.Pt, y tape.Length) tape.Length {
	if p.Y == q.Y {
		return q.X
	}
	t := float64(y-q.Y) / float64(p.Y-q.Y)
	return q.X + tape.Length(roundHalf(t*float64(p.X-q.X)))
}

func roundHalf(v float64) float64 {
	if v < 0 {
		return -float64(int64(-v + 0.5))
	}
	return float64(int64(v + 0.5))
}
