// Package board is what becomes of one board at the saw: the pieces cut from
// it and, around them, the kerfs, offcuts, strips and scrap that make up the
// rest of it exactly.
//
// A board of 84 in gives a last piece of 46 in; the blade takes 1/8 in, and
// 37-7/8 in are left over as an offcut. Ripped to 3-1/4 in of its 5, the piece
// also leaves a strip of 1-5/8 in by 46 in and a kerf of 1/8 in between.
//
// A mitred end is cut straight across the whole board; where the piece is
// ripped too, the end is first squared at its long side and the mitre cut in
// the ripped width. The kerf of a notch belongs to its scrap.
package board

import (
	"math"
	"slices"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// Piece is one piece to be had from a board, in the board's frame.
type Piece struct {
	ID      int
	Outline plane.Ring // counter-clockwise
}

// Saw is what the cutting depends on.
type Saw struct {
	Length, Width tape.Length // of the board
	Blade         tape.Length
	Useful        tape.Length // an end left over is an offcut from this length on
}

// Parts is the whole board as parts that partition its rectangle: doubled
// areas sum exactly. Pieces must lie in the board and leave a blade between
// them.
func (s Saw) Parts(pieces []Piece) []lay.Part {
	pieces = slices.Clone(pieces)
	slices.SortFunc(pieces, func(a, b Piece) int { return int(boxLow(a.Outline) - boxLow(b.Outline)) })
	var out []lay.Part
	blanks := make([]blank, len(pieces))
	for i, p := range pieces {
		blanks[i] = s.blank(p.Outline)
		if i > 0 {
			s.share(&blanks[i-1], &blanks[i])
		}
	}
	at := side{{X: 0, Y: 0}, {X: 0, Y: s.Width}} // what is used up so far ends here
	for i, p := range pieces {
		b := blanks[i]
		out = append(out, s.between(at, b.left)...)
		out = append(out, lay.Part{Kind: lay.IsPiece, Piece: p.ID, Outline: p.Outline})
		out = append(out, s.rest(b, p.Outline)...)
		at = b.right
	}
	out = append(out, s.between(at, side{{X: s.Length, Y: 0}, {X: s.Length, Y: s.Width}})...)
	return slices.DeleteFunc(out, func(p lay.Part) bool { // a blade that takes nothing leaves no kerf
		return p.Kind != lay.IsPiece && (len(p.Outline) == 0 || p.Outline.Area2() == 0)
	})
}

func boxLow(r plane.Ring) tape.Length { lo, _ := r.Box(); return lo.X }

// side is a straight line across the board, from its groove edge (Y 0) to its
// tongue edge.
type side [2]plane.Pt

func (s side) move(dx tape.Length) side {
	return side{{X: s[0].X + dx, Y: s[0].Y}, {X: s[1].X + dx, Y: s[1].Y}}
}

// kerf is what the blade takes along the board at a cut on this line: blade
// over the cosine of the mitre, rounded up.
func (s side) kerf(blade tape.Length) tape.Length {
	return slantKerf(blade, s[1].X-s[0].X, s[1].Y-s[0].Y)
}

// slantKerf is blade x sqrt(1 + (rise/run)^2), rounded up to a tick; exact for
// a square cut.
func slantKerf(blade, rise, run tape.Length) tape.Length {
	if rise == 0 {
		return blade
	}
	t := float64(rise) / float64(run)
	return tape.Length(math.Ceil(float64(blade) * math.Sqrt(1+float64(t*t))))
}

// blank is the stretch of full board that a piece is made from.
type blank struct{ left, right side }

// blank is square at the ends of the piece's box; where the piece has the full
// width at a mitred end, it ends with the mitre. Where a ripped piece ends in
// a mitre, the square cut leaves the blade its way along the mitre.
func (s Saw) blank(r plane.Ring) blank {
	lo, hi := r.Box()
	b := blank{left: s.square(max(0, lo.X-s.room(r, lo.X))), right: s.square(min(s.Length, hi.X+s.room(r, hi.X)))}
	for i, p := range r {
		q := r[(i+1)%len(r)]
		switch {
		case p.Y == 0 && q.Y == s.Width && (p.X == hi.X || q.X == hi.X):
			b.right = side{p, q}
		case p.Y == s.Width && q.Y == 0 && (p.X == lo.X || q.X == lo.X):
			b.left = side{q, p}
		}
	}
	return b
}

// share parts two blanks that the blade's way along both mitres makes overlap:
// they end at one line halfway, and no cut of its own is made there.
func (s Saw) share(a, b *blank) {
	if l, r := a.right, b.left; l[0].X == l[1].X && r[0].X == r[1].X && l[0].X > r[0].X {
		a.right = s.square(r[0].X + (l[0].X-r[0].X)/2)
		b.left = a.right
	}
}

func (s Saw) square(x tape.Length) side { return side{{X: x, Y: 0}, {X: x, Y: s.Width}} }

// room is what the blade takes along the board at the slanted end of a piece
// that comes to a corner at x; none where the end is square.
func (s Saw) room(r plane.Ring, x tape.Length) tape.Length {
	var most tape.Length
	n := len(r)
	for i, p := range r {
		if p.X != x {
			continue
		}
		for _, q := range []plane.Pt{r[(i+1)%n], r[(i+n-1)%n]} {
			d := q.Sub(p)
			if d.X == 0 {
				return 0
			}
			if d.Y.Abs() >= d.X.Abs() {
				most = max(most, slantKerf(s.Blade, d.X, d.Y)+2)
			}
		}
	}
	return most
}

// between is what lies between two lines across the board: a kerf at each cut,
// and an offcut or scrap in the middle. A gap no wider than a kerf is one.
func (s Saw) between(from, to side) []lay.Part {
	if from == to {
		return nil
	}
	end := to[0].X == s.Length && to[1].X == s.Length
	start := from[0].X == 0 && from[1].X == 0
	switch {
	case start && end:
		return s.middle(from, to)
	case start: // as at the other end, seen from there
		return s.mirror(s.between(s.flip(to), s.square(s.Length)))
	}
	a, b := from.move(from.kerf(s.Blade)), to
	if !end {
		b = to.move(-to.kerf(s.Blade))
	}
	if a[0].X >= b[0].X && a[1].X >= b[1].X || crossed(a, b) {
		return s.tight(from, to, a)
	}
	out := append([]lay.Part{part(lay.IsKerf, quad(from, a))}, s.middle(a, b)...)
	if !end {
		out = append(out, part(lay.IsKerf, quad(b, to)))
	}
	return out
}

// flip is a line seen from the board's other end (left for right).
func (s Saw) flip(l side) side {
	return side{{X: s.Length - l[0].X, Y: 0}, {X: s.Length - l[1].X, Y: s.Width}}
}

// mirror turns parts found from the other end back.
func (s Saw) mirror(ps []lay.Part) []lay.Part {
	for i := range ps {
		r := ps[i].Outline.Reverse()
		for k := range r {
			r[k].X = s.Length - r[k].X
		}
		ps[i].Outline = r
	}
	return ps
}

// tight is a gap in which the blades' ways overlap or leave the board: the
// first takes what it can, the rest is scrap.
func (s Saw) tight(from, to, a side) []lay.Part {
	gap := quad(from, to)
	if gap == nil {
		return nil
	}
	if a[0].X >= to[0].X && a[1].X >= to[1].X {
		return []lay.Part{part(lay.IsKerf, gap)}
	}
	if to[0].X != to[1].X { // two slanted lines: no straight clipping; all of it is waste
		return []lay.Part{part(lay.IsScrap, gap)}
	}
	var out []lay.Part
	for _, r := range (plane.Region{quad(from, a)}).LeftOf(to[0].X) {
		out = append(out, part(lay.IsKerf, r))
	}
	beyond := side{{X: max(a[0].X, to[0].X) + s.Width, Y: 0}, {X: max(a[1].X, to[1].X) + s.Width, Y: s.Width}}
	for _, r := range (plane.Region{quad(a, beyond)}).LeftOf(to[0].X) {
		out = append(out, part(lay.IsScrap, r))
	}
	return out
}

func crossed(a, b side) bool {
	return (a[0].X < b[0].X) != (a[1].X < b[1].X) && a[0].X != b[0].X && a[1].X != b[1].X
}

// middle is the part between two cuts: an offcut when it is long enough to use.
func (s Saw) middle(a, b side) []lay.Part {
	k := lay.IsScrap
	if min(b[0].X, b[1].X)-max(a[0].X, a[1].X) >= s.Useful {
		k = lay.IsOffcut
	}
	return []lay.Part{part(k, quad(a, b))}
}

func quad(a, b side) plane.Ring { return plane.Ring{a[0], b[0], b[1], a[1]}.Tidy() }

func part(k lay.PartKind, r plane.Ring) lay.Part { return lay.Part{Kind: k, Piece: -1, Outline: r} }
