package row

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// runs cuts the face into strips at the row lines and each strip into its
// runs. What Need does not ask for is left out: a row line in the play of an
// edge is its own end.
func runs(a floor.Aligned, f plane.Region, c lay.Courses, shortest tape.Length) []Run {
	lo, hi := f.Box()
	var out []Run
	row := 0
	for n := c.Row(lo.Y); c.Line(n) < hi.Y; n++ {
		low, high := c.Line(n), c.Line(n+1)
		strip := stripRuns(a, f.Strip(low, high), a.Need.Strip(low, high), low, high, shortest)
		if len(strip) == 0 {
			continue
		}
		row++
		for i := range strip {
			strip[i].Row = row
			if len(strip) > 1 {
				strip[i].Part = i + 1
			}
			strip[i].Order = len(out) + i + 1
		}
		out = append(out, strip...)
	}
	return out
}

// stripRuns are the runs of one strip, from left to right.
func stripRuns(a floor.Aligned, strip, need plane.Region, low, high, shortest tape.Length) []Run {
	parts := strip.Parts()
	want := make([][]plane.Ring, len(parts))
	for _, n := range need {
		if n.Area2() > 0 && !film(n) {
			i := owner(parts, n)
			if i >= 0 {
				want[i] = append(want[i], n)
			}
		}
	}
	var out []Run
	for i, p := range parts {
		if len(want[i]) > 0 {
			p[0] = dehorned(p[0], want[i])
			out = append(out, newRun(a, p, want[i], low, high, shortest))
		}
	}
	return out
}

// film is what rounding alone leaves: no higher than a tick all along.
func film(r plane.Ring) bool {
	lo, hi := r.Box()
	return tape.Length(r.Area2()) <= 2*max(hi.X-lo.X, hi.Y-lo.Y)
}

// owner is the part that holds most corners of n.
func owner(parts []plane.Region, n plane.Ring) int {
	best, most := -1, 0
	for i, p := range parts {
		in := 0
		for _, c := range n {
			if p[0].Where(c) >= 0 {
				in++
			}
		}
		if in > most {
			best, most = i, in
		}
	}
	if best < 0 && len(parts) == 1 {
		return 0
	}
	return best
}

func newRun(a floor.Aligned, shape plane.Region, need []plane.Ring, low, high, shortest tape.Length) Run {
	left, right := need[0].Box()
	for _, n := range need[1:] {
		lo, hi := n.Box()
		left.X, right.X = min(left.X, lo.X), max(right.X, hi.X)
	}
	r := Run{Low: low, High: high, Shape: shape}
	r.Left = leftEnd(a, shape[0], left.X)
	r.Right = mirrorEnd(leftEnd(mirrorEdges(a), mirror(shape[0]), -right.X))
	r.stretch(shortest)
	r.split()
	r.measure()
	return r
}

// stretch gives a run that a point makes shorter than the shortest piece more
// of that point, as far as it goes.
func (r *Run) stretch(shortest tape.Length) {
	lo, hi := r.Shape[0].Box()
	if d := shortest - r.Length(); d > 0 && r.Left.Edge == "" {
		r.Left.Reach = max(lo.X, r.Left.Reach-d)
		r.Left.Need = r.Left.Reach
	}
	if d := shortest - r.Length(); d > 0 && r.Right.Edge == "" {
		r.Right.Reach = min(hi.X, r.Right.Reach+d)
		r.Right.Need = r.Right.Reach
	}
}

// leftEnd is the range of the faces at the left end of a run: square where the
// end's slant across the row is within the play, else mitred to the edge; a
// taper that runs out to a point is cut square where Need lets it end, and
// counts as mitred: there is nothing to choose. The edge named is the one that
// the farthest place of the end lies on: a square end comes as far as the side
// that stops it first, a mitred one as far as its point.
func leftEnd(a floor.Aligned, ring plane.Ring, need tape.Length) lay.EndRange {
	s := leftSide(ring)
	e := lay.EndRange{Reach: s.far, Need: need}
	on := s.stops
	switch {
	case s.stops < 0: // a point
		e.Reach, e.Need, e.Mitred = max(s.lo, need), max(s.lo, need), true
	case need < s.far || stepsBack(ring, s.far, need):
		e.Reach, e.Need, e.Mitred = s.lo, s.lo, true
		on = s.outermost
	}
	if on >= 0 {
		p, q := ring[on], ring[(on+1)%len(ring)]
		if id := edgeNear(a, p, q); id >= 0 {
			e.Edge, e.InPlace = a.Edges[id].Name, a.Edges[id].InPlace
		}
	}
	return e
}

// stepsBack tells whether a slanted side that rows end at, set back from the first
// by a step, begins where a square end could lie: it would end square for a part
// only.
func stepsBack(ring plane.Ring, far, need tape.Length) bool {
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		if q.Y < p.Y && p.X != q.X && min(p.X, q.X) > far && min(p.X, q.X) < need {
			return true
		}
	}
	return false
}

// sidesLeft are the sides of a ring that rows end at, by the corner they start
// from; -1: there are none, and the ring comes to a point between two sides
// along the rows.
type sidesLeft struct {
	lo, far          tape.Length // how far left they reach, how far right they come
	outermost, stops int         // the side that reaches lo, of two the longer; the one that comes to far
}

// leftSide walks the sides of a ring that rows end at, down from and up to its
// leftmost corner.
func leftSide(ring plane.Ring) sidesLeft {
	n := len(ring)
	at := 0
	for i, p := range ring {
		if p.X < ring[at].X {
			at = i
		}
	}
	s := sidesLeft{ring[at].X, ring[at].X, -1, -1}
	// A mitre of 45 degrees may be off by the rounding of its corners.
	steep := func(p, q plane.Pt) bool { return q.Y < p.Y && (q.Y-p.Y).Abs()+4 >= (q.X-p.X).Abs() }
	high := func(i int) tape.Length { return ring[i].Y - ring[(i+1)%n].Y }
	take := func(i int, end tape.Length) {
		if s.stops < 0 || end > s.far || end == s.far && high(i) > high(s.stops) {
			s.far, s.stops = max(s.far, end), i
		}
		p, q := ring[i], ring[(i+1)%n]
		if min(p.X, q.X) == s.lo && (s.outermost < 0 || high(i) > high(s.outermost)) {
			s.outermost = i
		}
	}
	for k := range n {
		i := (at + k) % n
		if !steep(ring[i], ring[(i+1)%n]) {
			break
		}
		take(i, ring[(i+1)%n].X)
	}
	for k := 1; k < n; k++ {
		i := (at + n - k) % n
		if !steep(ring[i], ring[(i+1)%n]) {
			break
		}
		take(i, ring[i].X)
	}
	return s
}

// edgeNear is the edge of the floor that a side of Reach from p down to q
// comes from, -1 when it lies on none.
func edgeNear(a floor.Aligned, p, q plane.Pt) int {
	best, at := tape.Length(1000), -1
	for r, ring := range a.Reach {
		for i, c := range ring {
			d := ring[(i+1)%len(ring)]
			if a.ReachEdge[r][i] < 0 || d == c || (d.Y < c.Y) != (q.Y < p.Y) {
				continue
			}
			if off := max(lineOff(c, d, p), lineOff(c, d, q)); off < best {
				best, at = off, a.ReachEdge[r][i]
			}
		}
	}
	return at
}

// lineOff is how far p lies off the segment c to d, measured along X or Y,
// whichever d-c runs less in; large when it lies beyond its ends.
func lineOff(c, d, p plane.Pt) tape.Length {
	const far = tape.Longest
	u := d.Sub(c)
	if u.Y.Abs() >= u.X.Abs() {
		t := float64(p.Y-c.Y) / float64(u.Y)
		if t < -0.001 || t > 1.001 {
			return far
		}
		return (p.X - c.X - tape.Length(t*float64(u.X))).Abs()
	}
	t := float64(p.X-c.X) / float64(u.X)
	if t < -0.001 || t > 1.001 {
		return far
	}
	return (p.Y - c.Y - tape.Length(t*float64(u.Y))).Abs()
}

func mirror(r plane.Ring) plane.Ring {
	out := make(plane.Ring, len(r))
	for i, p := range r {
		out[len(r)-1-i] = plane.Pt{X: -p.X, Y: p.Y}
	}
	return out
}

// mirrorEdges is a with only what edgeNear needs turned left for right.
func mirrorEdges(a floor.Aligned) floor.Aligned {
	m := floor.Aligned{Edges: a.Edges}
	for r, ring := range a.Reach {
		ids := slices.Clone(a.ReachEdge[r])
		n := len(ids)
		flipped := make([]int, n)
		for i := range ids { // side i of the mirrored ring was side n-2-i
			flipped[i] = ids[((n-2-i)%n+n)%n]
		}
		m.Reach, m.ReachEdge = append(m.Reach, mirror(ring)), append(m.ReachEdge, flipped)
	}
	return m
}

func mirrorEnd(e lay.EndRange) lay.EndRange {
	e.Reach, e.Need = -e.Reach, -e.Need
	return e
}

// split finds where something that stays parts the row: inside it a joint must
// fall at it, so that no piece has a hole; at an end none may, or a piece
// would fall in two.
func (r *Run) split() {
	for _, hole := range r.Shape[1:] {
		lo, hi := hole.Box()
		r.Must = append(r.Must, plane.Span{From: lo.X, To: hi.X})
	}
	var xs []tape.Length
	for _, ring := range r.Shape {
		for _, p := range ring {
			xs = append(xs, p.X)
		}
	}
	slices.Sort(xs)
	xs = slices.Compact(xs)
	for i := 0; i+1 < len(xs); i++ {
		mid := xs[i] + (xs[i+1]-xs[i])/2
		if len(r.Shape.Section(mid, false)) < 2 || r.inMust(mid) {
			continue
		}
		r.Never = append(r.Never, plane.Span{From: xs[i], To: xs[i+1]})
	}
	r.steep()
}

// steep keeps joints off the sides that slant steeply across a part of the row
// (a jamb met askew): a piece that ended there would have no square end left.
func (r *Run) steep() {
	for _, ring := range r.Shape {
		for i, p := range ring {
			q := ring[(i+1)%len(ring)]
			if dx := (q.X - p.X).Abs(); dx > 0 && (q.Y-p.Y).Abs() >= dx {
				r.Never = append(r.Never, plane.Span{From: min(p.X, q.X) - 1, To: max(p.X, q.X) + 1})
			}
		}
	}
}

func (r *Run) inMust(x tape.Length) bool {
	return slices.ContainsFunc(r.Must, func(s plane.Span) bool { return s.From < x && x < s.To })
}

// measure fills the widths: at both ends, just inside them, the narrowest and
// the widest along the run.
func (r *Run) measure() {
	from, to := r.Left.Reach, r.Right.Reach
	r.WidthLeft, r.WidthRight = r.widthAt(from, false), r.widthAt(to, true)
	r.Narrowest, r.Widest = min(r.WidthLeft, r.WidthRight), max(r.WidthLeft, r.WidthRight)
	for _, p := range r.Shape[0] {
		if p.X <= from || p.X >= to {
			continue
		}
		for _, leftwards := range []bool{false, true} {
			w := r.widthAt(p.X, leftwards)
			r.Narrowest, r.Widest = min(r.Narrowest, w), max(r.Widest, w)
		}
	}
}

func (r *Run) widthAt(x tape.Length, leftwards bool) tape.Length {
	var w tape.Length
	for _, s := range r.Shape.Section(x, leftwards) {
		w += s.Len()
	}
	return w
}
