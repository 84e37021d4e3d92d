package main

import "math"

// sawnCuts are the cuts of a piece by their kind, told from its corners alone.
type sawnCuts struct {
	ends    [2]bool // left, right: not as the mill made it
	slants  [2]float64
	mitred  [2]bool
	rips    int
	notches int
	tongues int
}

// lines is how many lines each kind of cut has.
func (c sawnCuts) lines() map[string]int {
	out := map[string]int{"rip": c.rips, "notch": c.notches, "tongue off": c.tongues, "crosscut": 0, "mitre": 0}
	for k, is := range c.ends {
		switch {
		case is && c.mitred[k]:
			out["mitre"]++
		case is:
			out["crosscut"]++
		}
	}
	return out
}

// sawnOf tells the cuts of a piece from its outlines and what its sides are said to be.
// An end is the mill's where a side of the piece lies on the end of its board. What of
// the piece's box is not the piece is a pocket: it takes up an end, a long side, or is a
// notch.
func sawnOf(p layPiece, board int64, imperial bool) sawnCuts {
	least, step := 2000.0, 8000.0 // 0.25 and 1 mm: what prints as nothing, and the step of lengths
	if imperial {
		least, step = 203200.0/64, 203200.0/16
	}
	var c sawnCuts
	c.ends = [2]bool{!onEnd(p.InBoard, 0), !onEnd(p.InBoard, board)}
	if p.Turned {
		c.ends[0], c.ends[1] = c.ends[1], c.ends[0]
	}
	if p.Behind == "ripped" || p.Ahead == "ripped" {
		c.rips = 1
	}
	for _, s := range []string{p.Left, p.Right, p.Behind, p.Ahead} {
		if s == "tongue off" {
			c.tongues++
		}
	}
	x0, y0, x1, y1 := box(p.Outline)
	for i := 0; i < len(p.Off); i += 2 {
		if math.Round(float64(p.Off[i]-x0)/step) != math.Round(float64(p.Off[i+1]-x0)/step) {
			c.tongues++
		}
	}
	for _, q := range pocketsOf(p.Outline) {
		left, right, side := q.takes(x0, y0, x1, y1)
		if !left && !right && !side {
			if w, h := q.size(); w >= least && h >= least {
				c.notches++
			}
			continue
		}
		for k, whole := range []bool{left, right} {
			if whole {
				over, steps := q.over(k == 0)
				c.slants[k] = over
				c.mitred[k] = math.Abs(over) >= least
				if !side && steps > 1 {
					c.notches += steps - 1
				}
			}
		}
	}
	return c
}

// onEnd tells whether a side of an outline lies across at x.
func onEnd(o []int64, x int64) bool {
	n := len(o)
	for i := 0; i < n; i += 2 {
		if o[i] == x && o[(i+2)%n] == x {
			return true
		}
	}
	return false
}

// hollow is a stretch of an outline, counter-clockwise, from where it leaves its box to
// where it comes back.
type hollow [][2]int64

func pocketsOf(o []int64) []hollow {
	x0, y0, x1, y1 := box(o)
	n := len(o) / 2
	at := func(i int) [2]int64 { return [2]int64{o[2*(i%n)], o[2*(i%n)+1]} }
	on := func(p [2]int64) bool { return p[0] == x0 || p[0] == x1 || p[1] == y0 || p[1] == y1 }
	along := func(a, b [2]int64) bool {
		return a[0] == b[0] && (a[0] == x0 || a[0] == x1) || a[1] == b[1] && (a[1] == y0 || a[1] == y1)
	}
	var out []hollow
	for i := range n {
		if !on(at(i)) || along(at(i), at(i+1)) {
			continue
		}
		h := hollow{at(i)}
		for k := i + 1; ; k++ {
			h = append(h, at(k))
			if on(at(k)) {
				break
			}
		}
		out = append(out, h)
	}
	return out
}

// takes tells which ends, and whether a long side, of the box a pocket takes up: the
// box's corners between its two ends, on the way round.
func (h hollow) takes(x0, y0, x1, y1 int64) (left, right, side bool) {
	corners := [][2]int64{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}
	w, d := x1-x0, y1-y0
	round := func(p [2]int64) int64 { // how far round the box a place on it is
		switch {
		case p[1] == y0:
			return p[0] - x0
		case p[0] == x1:
			return w + p[1] - y0
		case p[1] == y1:
			return w + d + x1 - p[0]
		}
		return 2*w + d + y1 - p[1]
	}
	all := 2 * (w + d)
	from := round(h[0])
	reach := (round(h[len(h)-1]) - from + all) % all
	in := func(k int) bool { return (round(corners[k%4])-from+all)%all <= reach }
	whole := func(k int) bool {
		a := (round(corners[k]) - from + all) % all
		b := (round(corners[(k+1)%4]) - from + all) % all
		return in(k) && in(k+1) && a < b
	}
	return whole(3), whole(1), whole(0) || whole(2)
}

func (h hollow) size() (w, d float64) {
	var flat []int64
	for _, p := range h {
		flat = append(flat, p[0], p[1])
	}
	x0, y0, x1, y1 := box(flat)
	return float64(x1 - x0), float64(y1 - y0)
}

// over is how much further right a sawn end lies ahead than behind, by the slope of its
// parts that run across over all its height, and how many of them there are.
func (h hollow) over(left bool) (over float64, steps int) {
	var dx, dy float64
	for i := 0; i+1 < len(h); i++ {
		x, y := float64(h[i+1][0]-h[i][0]), float64(h[i+1][1]-h[i][1])
		if 2*math.Abs(y) <= math.Abs(x) || (y < 0) != left {
			continue
		}
		steps++
		if math.Abs(y) > math.Abs(dy) {
			dx, dy = x, y
		}
	}
	if dy == 0 {
		return 0, steps
	}
	_, high := h.size()
	if steps < 2 {
		return dx * dy / math.Abs(dy), steps
	}
	return dx / dy * high, steps
}
