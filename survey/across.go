package survey

import (
	"math"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Across is the width across the boards between two walls, square to the rows,
// at both ends of the stretch along the rows that the walls have in common, in
// order along the rows; mm. Where they have none, it is from the start's nearer
// end to both ends of the other. The places along the rows are those of the
// fitted room: it is the width there that is in doubt. Bows are left out: they
// are read, not fitted.
func (r Result) Across(rows Heading, start, end room.Wall) (ends [2]Doubt, ok bool) {
	return r.width(rows, start, edgeLine{line: r.wallLine(end)})
}

// AcrossStay is Across to a side of something that stays. Its place is in
// doubt by the corners that it hangs on and by its own distances, each read
// with the tape.
func (r Result) AcrossStay(rows Heading, start room.Wall, st room.Stay, side int) (ends [2]Doubt, ok bool) {
	to, ok := r.stayLine(st, side)
	if !ok {
		return ends, false
	}
	return r.width(rows, start, to)
}

// line is a straight line by two places on it, from the unknowns and from
// figures of its own.
type line func(x, own []float64) (a, b plane.XY)

// edgeLine is a line with those figures.
type edgeLine struct {
	line line
	owns []own
}

func (e edgeLine) values() []float64 {
	out := make([]float64, len(e.owns))
	for i, o := range e.owns {
		out[i] = o.mm
	}
	return out
}

func (r Result) wallLine(w room.Wall) line {
	return func(x, _ []float64) (a, b plane.XY) {
		at := r.places(x)
		return at(w[0]), at(w[1])
	}
}

// stayLine is a side of something that stays: between two of its corners, or
// set out from its wall.
func (r Result) stayLine(st room.Stay, side int) (edgeLine, bool) {
	if n := len(st.Corners); n > 0 {
		return edgeLine{line: r.wallLine(room.Wall{st.Corners[side%n], st.Corners[(side+1)%n]})}, true
	}
	i, ccw, ok := r.Built.FindWall(st.Wall)
	if !ok {
		return edgeLine{}, false
	}
	owns := []own{r.read(st.At), r.read(st.Width), r.read(st.Off), r.read(st.Depth), {}}
	if !r.Built.Rooms[i].Bowed(ccw) {
		owns[4].sd = r.model.WallMM // it is set out from the face, the rectangle from the line of the wall
	}
	return edgeLine{owns: owns, line: r.rectangleSide(st, ccw, side%4)}, true
}

// rectangleSide is side k of a rectangle set out from wall w: own are its
// distance along the wall, width, distance off it, depth, and how far the face
// of the wall lies off its line.
func (r Result) rectangleSide(st room.Stay, w room.Wall, k int) line {
	return func(x, own []float64) (p, q plane.XY) {
		a, b := r.net.at(w[0], x), r.net.at(w[1], x)
		u := unit(b.Sub(a))
		long := 1 + x[r.net.scale()]/1000 // what the tape says of a metre
		start, end := own[0]/long, (own[0]+own[1])/long
		if st.From == w[1] {
			l := b.Sub(a).Len()
			start, end = l-end, l-start
		}
		near, far := own[2]/long+own[4], (own[2]+own[3])/long+own[4]
		corners := [4][2]float64{{start, near}, {end, near}, {end, far}, {start, far}}
		at := func(k int) plane.XY {
			return a.Add(u.Times(corners[k%4][0])).Add(u.Left().Times(corners[k%4][1]))
		}
		return at(k), at(k + 1)
	}
}

// read is a length read with the tape; 0 was not read: the thing stands
// against the wall or in its corner.
func (r Result) read(l tape.Length) own {
	if l == 0 {
		return own{}
	}
	return own{l.Millimetres(), r.model.deviation(Reading{Step: r.step})}
}

func (r Result) width(rows Heading, start room.Wall, to edgeLine) (ends [2]Doubt, ok bool) {
	from := r.wallLine(start)
	at, ok := r.where(rows, from, to)
	if !ok {
		return ends, false
	}
	for i, t := range at {
		ends[i] = r.doubt(func(x, own []float64) float64 {
			d := rows(r.places(x))
			if d.Len() == 0 {
				return 0
			}
			return math.Abs(level(d.Unit(), to.line, x, own, t[1]) - level(d.Unit(), from, x, own, t[0]))
		}, to.owns)
	}
	return ends, true
}

// where are the places along the rows of the two widths, abreast.
func (r Result) where(rows Heading, from line, to edgeLine) (at [2][2]float64, ok bool) {
	d := rows(r.places(r.x))
	if d.Len() == 0 {
		return at, false
	}
	own := to.values()
	return abreast(spanOf(d.Unit(), from, r.x, own), spanOf(d.Unit(), to.line, r.x, own))
}

// PastAcross names what stands up in the way of the widths that Across speaks
// of, "" nothing.
func (r Result) PastAcross(rows Heading, start, end room.Wall) string {
	return r.pastWidth(rows, start, edgeLine{line: r.wallLine(end)})
}

// PastAcrossStay is PastAcross for AcrossStay.
func (r Result) PastAcrossStay(rows Heading, start room.Wall, st room.Stay, side int) string {
	to, ok := r.stayLine(st, side)
	if !ok {
		return ""
	}
	return r.pastWidth(rows, start, to)
}

func (r Result) pastWidth(rows Heading, start room.Wall, to edgeLine) string {
	from, own := r.wallLine(start), to.values()
	at, ok := r.where(rows, from, to)
	if !ok {
		return ""
	}
	u := rows(r.places(r.x)).Unit()
	for _, t := range at {
		p := u.Times(t[0]).Add(u.Left().Times(level(u, from, r.x, own, t[0])))
		q := u.Times(t[1]).Add(u.Left().Times(level(u, to.line, r.x, own, t[1])))
		d := q.Sub(p)
		if d.Len() <= 4*clearOf {
			continue
		}
		off := d.Unit().Times(2 * clearOf) // what the width ends at is not in its way
		if past := r.inTheWay(p.Add(off), q.Sub(off)); past != "" {
			return past
		}
	}
	return ""
}

// spanOf is how far a line reaches along u, from low to high.
func spanOf(u plane.XY, l line, x, own []float64) [2]float64 {
	a, b := l(x, own)
	return [2]float64{math.Min(u.Dot(a), u.Dot(b)), math.Max(u.Dot(a), u.Dot(b))}
}

// abreast are two places along the rows to measure between, each as the place
// on the start and on the other line: the ends of the stretch that they have in
// common, else the start's nearer end with both ends of the other.
func abreast(start, to [2]float64) (at [2][2]float64, ok bool) {
	if to[1]-to[0] < 1 || start[1]-start[0] < 1 {
		return at, false
	}
	lo, hi := math.Max(start[0], to[0]), math.Min(start[1], to[1])
	if hi-lo >= 1 {
		return [2][2]float64{{lo, lo}, {hi, hi}}, true
	}
	near := start[0]
	if to[0] > start[0] {
		near = start[1]
	}
	return [2][2]float64{{near, to[0]}, {near, to[1]}}, true
}

// level is how far a line lies across the rows, which run along u, at t along
// them.
func level(u plane.XY, l line, x, own []float64, t float64) float64 {
	a, b := l(x, own)
	run := u.Dot(b.Sub(a))
	if run == 0 {
		return u.Cross(a)
	}
	return u.Cross(a) + (t-u.Dot(a))/run*u.Cross(b.Sub(a))
}
