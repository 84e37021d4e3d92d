package board

import (
	"slices"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// rest is what the piece leaves of its blank. Walking round the piece, each
// stretch of its outline that is not the blank's own cuts one part off: that
// stretch run backwards, closed along the blank.
func (s Saw) rest(b blank, piece plane.Ring) []lay.Part {
	rim := plane.Ring{b.left[0], b.right[0], b.right[1], b.left[1]}
	n := len(piece)
	edge := make([]int, n) // side of the rim that piece side i lies on, -1 none
	start := -1
	for i, p := range piece {
		edge[i] = rimSide(rim, p, piece[(i+1)%n])
		if edge[i] >= 0 {
			start = i
		}
	}
	if start < 0 {
		return []lay.Part{} // an island: no board is bought for it
	}
	var out []lay.Part
	var chain plane.Ring
	for k := 1; k <= n; k++ {
		i := (start + k) % n
		p, q := piece[i], piece[(i+1)%n]
		if edge[i] >= 0 {
			continue
		}
		if chain == nil {
			chain = plane.Ring{p}
		}
		chain = append(chain, q)
		if onRim(rim, q) {
			out = append(out, s.cutOff(rim, chain)...)
			chain = nil
		}
	}
	return out
}

// rimSide is the side of the rim that the step p to q lies on, -1 when none.
func rimSide(rim plane.Ring, p, q plane.Pt) int {
	for i, a := range rim {
		b := rim[(i+1)%len(rim)]
		if plane.Side(a, b, p) == 0 && plane.Side(a, b, q) == 0 {
			return i
		}
	}
	return -1
}

func onRim(rim plane.Ring, p plane.Pt) bool { return rim.Where(p) == 0 }

// cutOff is what lies between a chain of the piece's outline, from rim to rim,
// and the rim.
func (s Saw) cutOff(rim, chain plane.Ring) []lay.Part {
	way := along(rim, chain[0], chain[len(chain)-1])
	whole := append(slices.Clone(way), chain.Reverse()...)
	if i := s.ripOf(rim, chain); i >= 0 {
		return s.ripOff(rim, chain, i)
	}
	if r := whole.Tidy(); r != nil {
		return []lay.Part{part(lay.IsScrap, r)}
	}
	return nil
}

// along is the corners of the rim passed on the way from u round to v,
// counter-clockwise, u and v left out.
func along(rim plane.Ring, u, v plane.Pt) plane.Ring {
	n := len(rim)
	on := func(p plane.Pt) int {
		for i, a := range rim {
			b := rim[(i+1)%n]
			if p != b && plane.Side(a, b, p) == 0 && between(a, b, p) {
				return i
			}
		}
		return 0
	}
	i, j := on(u), on(v)
	var out plane.Ring
	if i == j && (far(rim[i], v) > far(rim[i], u)) {
		return nil
	}
	for k := i; ; {
		k = (k + 1) % n
		if rim[k] != v {
			out = append(out, rim[k])
		}
		if k == j {
			return out
		}
	}
}

func between(a, b, p plane.Pt) bool {
	return min(a.X, b.X) <= p.X && p.X <= max(a.X, b.X) && min(a.Y, b.Y) <= p.Y && p.Y <= max(a.Y, b.Y)
}

func far(a, p plane.Pt) tape.Length { d := p.Sub(a); return d.X.Abs() + d.Y.Abs() }

// ripOf is the step of a chain that a rip of the whole blank makes, -1 when
// there is none: along the board, longer than half the blank, with all of the
// piece on one side of it, and on the board from end to end. Only square blanks are ripped.
func (s Saw) ripOf(rim, chain plane.Ring) int {
	if rim[0].X != rim[3].X || rim[1].X != rim[2].X {
		return -1
	}
	length := rim[1].X - rim[0].X
	for i := 0; i+1 < len(chain); i++ {
		p, q := chain[i], chain[i+1]
		d := q.Sub(p)
		if 2*d.X.Abs() < length || d.Y.Abs() >= d.X.Abs() {
			continue
		}
		if slices.ContainsFunc(chain, func(c plane.Pt) bool { return plane.Side(p, q, c) < 0 }) {
			continue
		}
		if s.holds(at(p, q, rim[0].X)) && s.holds(at(p, q, rim[1].X)) {
			return i
		}
	}
	return -1
}

// holds tells whether a place lies on the board.
func (s Saw) holds(p plane.Pt) bool { return 0 <= p.Y && p.Y <= s.Width }

// ripOff splits what a chain cuts off along the line of its rip: beyond it a
// kerf and a strip over the whole blank, on the piece's side the scrap of the
// mitres and notches cut afterwards in the ripped width.
func (s Saw) ripOff(rim, chain plane.Ring, i int) []lay.Part {
	p, q := chain[i], chain[i+1]
	low := q.X > p.X // the piece lies above the rip
	from, to := rim[0].X, rim[1].X
	left, right := p, q
	if !low {
		left, right = q, p
	}
	line := plane.Ring{at(left, right, from)} // the rip from end to end, left to right
	for _, c := range []plane.Pt{left, right, at(left, right, to)} {
		if c != line[len(line)-1] {
			line = append(line, c)
		}
	}
	out := s.strip(line, low, left, right)
	// Scrap before and after the rip.
	ends := [2]plane.Pt{line[0], line[len(line)-1]}
	if !low {
		ends[0], ends[1] = ends[1], ends[0]
	}
	if i > 0 { // chain[0] .. p, then back along the line to its end and round the rim
		out = append(out, scrap(rim, append(plane.Ring{ends[0]}, chain[:i+1].Reverse()...))...)
	}
	if i+2 < len(chain) {
		out = append(out, scrap(rim, append(chain[i+1:].Reverse(), ends[1]))...)
	}
	return out
}

// scrap closes a path from rim to rim along the rim, on its left.
func scrap(rim, path plane.Ring) []lay.Part {
	whole := append(slices.Clone(path), along(rim, path[len(path)-1], path[0])...)
	if r := whole.Tidy(); r != nil && r.Area2() > 0 {
		return []lay.Part{part(lay.IsScrap, r)}
	}
	return nil
}

// at is the height of the line through a and b at x, rounded to a tick.
func at(a, b plane.Pt, x tape.Length) plane.Pt {
	if x == a.X || a.Y == b.Y {
		return plane.Pt{X: x, Y: a.Y}
	}
	n, d := int64(x-a.X)*int64(b.Y-a.Y), int64(b.X-a.X)
	q, r := n/d, n%d
	if r < 0 {
		q, r = q-1, r+d
	}
	if 2*r >= d {
		q++
	}
	return plane.Pt{X: x, Y: a.Y + tape.Length(q)}
}

// strip is the kerf beside a rip line and the strip beyond it, clipped to the
// board.
func (s Saw) strip(line plane.Ring, low bool, a, b plane.Pt) []lay.Part {
	k := slantKerf(s.Blade, b.Y-a.Y, b.X-a.X)
	rim := s.Width
	if low {
		k, rim = -k, 0
	}
	moved := line.Move(plane.Pt{Y: k})
	edge := func(r plane.Ring) plane.Region {
		if low {
			return plane.Region{r}.Above(0)
		}
		return plane.Region{r}.Below(s.Width)
	}
	var out []lay.Part
	for _, r := range edge(band(line, moved, low)) {
		out = append(out, part(lay.IsKerf, r))
	}
	var beyond plane.Ring // the rim moved out, so that a rip that runs out clips like the kerf
	for _, c := range []plane.Pt{line[0], line[len(line)-1]} {
		y := rim + s.Width
		if low {
			y = rim - s.Width
		}
		beyond = append(beyond, plane.Pt{X: c.X, Y: y})
	}
	for _, r := range edge(band(moved, beyond, low)) {
		out = append(out, part(lay.IsStrip, r))
	}
	return out
}

// band is the area between two lines that run left to right; the second lies
// below the first when low.
func band(a, b plane.Ring, low bool) plane.Ring {
	if low {
		a, b = b, a
	}
	return append(slices.Clone(a), b.Reverse()...)
}
