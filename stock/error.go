package stock

import (
	"math"
	"slices"

	"strake/tape"
)

// LengthError is how far the tallied length of a board may well be off, as a
// standard deviation in ticks: half a reading step either way, evenly spread,
// and the slip of hand and eye. Over n boards it grows as the root of n. Boards
// that are not tallied are taken for exact.
//
// Read to 1/8 in with a slip of 1/16 in it is 0.072 in; seven boards miss by
// 0.19 in.
func (b Boards) LengthError() float64 {
	if b.Known != Tallied {
		return 0
	}
	step, slip := float64(b.ReadTo), float64(b.Slip)
	return math.Sqrt(float64(step*step)/12 + float64(slip*slip))
}

// CloseChance is how likely boards that sum to this length by the tally close a
// run whose faces may measure from short to long, n boards in all.
func (b Boards) CloseChance(sum, short, long tape.Length, n int) float64 {
	sd := b.LengthError() * math.Sqrt(float64(n))
	if sd == 0 {
		if short <= sum && sum <= long {
			return 1
		}
		return 0
	}
	below := func(l tape.Length) float64 { return 0.5 * math.Erfc(-float64(l-sum)/sd/math.Sqrt2) }
	return below(long) - below(short)
}

// UsualSlip is how far the reading of a board may well be off where nothing else
// is said: common practice, no source. Seven boards read to 1/8 in then miss by
// 3/16 in.
const UsualSlip = tape.Inch / 16

// StepOf is the step that a tally was read to: the coarsest of the usual ones
// that all its lengths are whole numbers of.
func StepOf(tally []Class) tape.Length {
	for _, step := range []tape.Length{tape.Inch / 4, tape.Inch / 8, tape.Inch / 16, tape.Inch / 32, tape.Inch / 64, 5 * tape.Millimetre, tape.Millimetre, tape.Millimetre / 2} {
		if !slices.ContainsFunc(tally, func(c Class) bool { return c.Length%step != 0 }) {
			return step
		}
	}
	return tape.Millimetre / 10
}
