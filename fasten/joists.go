package fasten

import (
	"math"
	"slices"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// Joists are where the joists lie, where that is known: lines on the floor plan,
// evenly spaced.
type Joists struct {
	At      plane.XY // a place on the centre line of one, mm
	Along   plane.XY // their direction, of length 1
	Spacing tape.Length
}

// known tells whether there is anything to nail into.
func (j Joists) known() bool { return j.Spacing > 0 }

// along is below which angle rows lie along the joists: they then cross none
// that a nail could be moved to.
const along = 15 * math.Pi / 180

// crossings are where a line along the rows at height y, of the frame of d, crosses
// joists within a stretch.
func (j Joists) crossings(d plane.Dir, y tape.Length, s plane.Span) []tape.Length {
	n := j.Along.Left()
	per := n.Dot(plane.XY(d)) // how much farther across the joists a millimetre along the rows lies
	if !j.known() || math.Abs(per) < math.Sin(along) {
		return nil
	}
	off := n.Dot(d.FromRow(plane.P(0, y)).Sub(j.At))
	at := func(x tape.Length) float64 { return (off + per*x.Millimetres()) / j.Spacing.Millimetres() }
	lo, hi := math.Min(at(s.From), at(s.To)), math.Max(at(s.From), at(s.To))
	var out []tape.Length
	for k := math.Ceil(lo); k <= math.Floor(hi); k++ {
		out = append(out, tape.Length(math.Round((k*j.Spacing.Millimetres()-off)/per*float64(tape.Millimetre))))
	}
	slices.Sort(out)
	return out
}

// overJoists moves nails through the face to stand over joists: for each joist that
// the stretch crosses the nearest nail, where no nail is then farther from the next
// than the spacing; else a nail more. Nails keep off the ends as they did.
func (p placer) overJoists(xs []tape.Length, z lay.Zone, y tape.Length) []tape.Length {
	if len(xs) < 2 || !p.u.Joists.known() {
		return xs
	}
	xs = slices.Clone(xs)
	taken := map[tape.Length]bool{}
	for _, c := range p.u.Joists.crossings(z.Dir, y, plane.Span{From: xs[0], To: xs[len(xs)-1]}) {
		i, _ := slices.BinarySearch(xs, c)
		if i == len(xs) || i > 0 && c-xs[i-1] < xs[i]-c {
			i--
		}
		if (xs[i] - c).Abs() > p.u.Spacing {
			continue // the boards are nailed through the tongue there
		}
		first, last := i == 0, i == len(xs)-1 // these mark how near to the ends nails stand
		fits := !taken[xs[i]] && !first && !last && xs[i+1]-c <= p.u.Spacing && c-xs[i-1] <= p.u.Spacing
		switch {
		case xs[i] == c:
		case fits:
			xs[i] = c
		default:
			at, _ := slices.BinarySearch(xs, c)
			xs = slices.Insert(xs, at, c)
		}
		taken[c] = true
	}
	return xs
}
