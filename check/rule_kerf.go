package check

import (
	"fmt"
	"math/big"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

var _ = declare("kerf",
	"Wherever two useful parts of a board (pieces, offcuts, strips) lie beside each other the saw has taken its blade's width between them, square to the cut; and no kerf is wider than the blade.",
	holdKerf)

func holdKerf(r Rule, s *site) []finding.Finding {
	if s.lay.Kerf != s.lim.Kerf.Value {
		f := r.stop("lay")
		f.Measured, f.Limit, f.Source = s.say(s.lay.Kerf), s.say(s.lim.Kerf.Value), s.lim.Kerf.Source
		f.Do = "Plan with the blade of the job."
		return []finding.Finding{f} // each board would only say so again
	}
	var out []finding.Finding
	for _, b := range s.lay.Boards {
		for i, p := range b.Parts {
			if p.Kind == lay.IsKerf && s.tooWide(p.Outline) {
				out = append(out, s.kerf(r, b, "wider than the blade", p))
			}
			for _, q := range b.Parts[:i] {
				if useful(p) && useful(q) {
					if d, bad := s.tooClose(p.Outline, q.Outline); bad {
						out = append(out, s.kerf(r, b, s.say(d)+" between", q, p))
					}
				}
			}
		}
	}
	return out
}

// rounded is what rounding may do to a slanted kerf: a tick at each side.
const rounded = 2 * tape.Tick

func useful(p lay.Part) bool {
	return p.Kind == lay.IsPiece || p.Kind == lay.IsOffcut || p.Kind == lay.IsStrip
}

func (s *site) kerf(r Rule, b lay.Board, what string, of ...lay.Part) finding.Finding {
	f := r.stop(fmt.Sprintf("board %d", b.ID))
	for _, p := range of {
		f.Where += fmt.Sprintf(", %s", p.Kind)
		if p.Kind == lay.IsPiece {
			f.Where += fmt.Sprintf(" id %d", p.Piece)
			f.Pieces = append(f.Pieces, p.Piece)
		}
	}
	f.Measured, f.Limit, f.Source = what, s.say(s.lim.Kerf.Value)+", square to the cut", s.lim.Kerf.Source
	f.Do = "Leave the saw its kerf: move the cut, or make the offcut shorter by it."
	return f
}

// tooClose tells whether two parts come closer than the saw allows where
// their sides face each other, and how close they come there, rounded down.
func (s *site) tooClose(a, b plane.Ring) (tape.Length, bool) {
	for _, e := range sides(a) {
		for _, f := range sides(b) {
			if e.faces() != f.faces().opposite() {
				continue
			}
			if d, ok := apart(e, f); ok && d.Cmp(rat(s.blade(e, f))) < 0 {
				return floorOf(d), true
			}
		}
	}
	return 0, false
}

// opposite is the side across.
func (s side) opposite() side {
	return map[side]side{leftEnd: rightEnd, rightEnd: leftEnd, lowEdge: highEdge, highEdge: lowEdge}[s]
}

// apart is the least distance between two edges that face each other, along
// the board between ends and across it between long edges. False when they
// share no stretch or look away from each other.
func apart(e, f edge) (*big.Rat, bool) {
	switch e.faces() {
	case rightEnd:
		return rise(e.swap(), f.swap())
	case leftEnd:
		return rise(f.swap(), e.swap())
	case highEdge:
		return rise(e, f)
	default:
		return rise(f, e)
	}
}

// rise is how far high lies over low where it is nearest, over the stretch of
// X they share.
func rise(low, high edge) (*big.Rat, bool) {
	x := low.x().Meet(high.x())
	if x.Empty() {
		return nil, false
	}
	var least *big.Rat
	for _, at := range []*big.Rat{rat(x.From), rat(x.To)} {
		d := new(big.Rat).Sub(high.at(at), low.at(at))
		if d.Sign() < 0 {
			return nil, false
		}
		if least == nil || d.Cmp(least) < 0 {
			least = d
		}
	}
	return least, true
}

// blade is the least that the saw takes between two facing sides: its width
// square to the cut that parted them, measured along the board (across it for
// long edges) and rounded up to a tick. Where the sides run at different
// angles one of them was sawn again later, when the other part was gone: the
// smaller figure holds. Where a slanted cut meets another or leaves the board
// its corners were rounded to a tick on either side, so rounded ticks may be
// missing.
func (s *site) blade(e, f edge) tape.Length {
	least := min(s.taken(e), s.taken(f))
	if !e.square() && !f.square() {
		least = max(s.lim.Kerf.Value, least-rounded)
	}
	return least
}

// taken is blade / cos(mitre) along the board for a cut across it, blade /
// cos(taper) across the board for one along it, rounded up to a tick.
func (s *site) taken(cut edge) tape.Length {
	if cut.square() {
		return s.lim.Kerf.Value
	}
	d := cut.step()
	base := d.Y
	if cut.long() {
		base = d.X
	}
	q := new(big.Rat).SetFrac(square2(d), new(big.Int).Mul(bigInt(base), bigInt(base)))
	k := rat(s.lim.Kerf.Value)
	return tape.Length(rootUp(q.Mul(q, k.Mul(k, k))).Int64())
}

// tooWide tells whether a kerf is wider than the blade whichever of its sides
// the saw ran along. A slanted one may have rounded ticks more at its corners.
func (s *site) tooWide(kerf plane.Ring) bool {
	for _, e := range sides(kerf) {
		room, base := s.taken(e), e.step().Y
		if e.long() {
			base = e.step().X
		}
		if !e.square() {
			room += rounded
		}
		limit := new(big.Int).Mul(bigInt(room), bigInt(base.Abs()))
		fits := true
		for _, p := range kerf {
			if cross(e.step(), p.Sub(e.a)).CmpAbs(limit) > 0 {
				fits = false
			}
		}
		if fits {
			return false
		}
	}
	return true
}

// floorOf is q rounded down to a tick.
func floorOf(q *big.Rat) tape.Length {
	return tape.Length(new(big.Int).Div(q.Num(), q.Denom()).Int64())
}
