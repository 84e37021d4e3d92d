package rack

import (
	"strake/row"
	"strake/tape"
)

// A run is racked from its near end, where boards show their groove, to its
// far end, where they show their tongue. Near is left for boards with the end
// tongue to the right, else right; place counts from left in the first case
// and is mirrored in the second.
type run struct {
	row.Run
	index int         // of all runs
	field int         // which field it lies in
	level int         // of its strip, counted across the rows; those of other fields far off
	alone bool        // a header: whole boards, no offcuts of others and none for others
	sign  tape.Length // 1: racked from left to right, -1: from right to left
	// nearReach <= nearNeed <= farNeed <= farReach: the faces lie between.
	nearReach, nearNeed, farNeed, farReach tape.Length
	// A run closes with whole boards that begin between startLeast and startMost
	// and end between wholeLeast and wholeMost: the play less what lengths may be off.
	startLeast, startMost, wholeLeast, wholeMost tape.Length
	nearCut, farCut                              bool        // that end is always cut: mitred, or measured in place
	spare                                        tape.Length // a board that is cut to end the run is longer by this at the least
	unsure                                       bool        // farCut only because lengths may be off by more than the play
	nearMitre, farMitre                          bool
	must, never                                  []span
	start                                        bool // a starter row: the longest boards
}

type span struct{ from, to tape.Length }

// orient is r as racked; sign is 1 with the tongues to the right, else -1.
func orient(r row.Run, index int, sign tape.Length) run {
	near, far := r.Left, r.Right
	if sign < 0 {
		near, far = far, near
	}
	out := run{
		Run: r, index: index, sign: sign,
		nearReach: sign * near.Reach, nearNeed: sign * near.Need,
		farReach: sign * far.Reach, farNeed: sign * far.Need,
		nearCut: near.Mitred || near.InPlace, farCut: far.Mitred || far.InPlace,
		nearMitre: near.Mitred, farMitre: far.Mitred,
	}
	out.exact()
	for _, s := range r.Must {
		out.must = append(out.must, turn(s.From, s.To, sign))
	}
	for _, s := range r.Never {
		out.never = append(out.never, turn(s.From, s.To, sign))
	}
	return out
}

func turn(from, to, sign tape.Length) span {
	if sign < 0 {
		return span{-to, -from}
	}
	return span{from, to}
}

// over is how much longer a board is at the least that is cut to end the run.
func (r run) over() tape.Length { return max(1, r.spare) }

// length is the most that the faces of the run may measure.
func (r run) length() tape.Length { return r.farReach - r.nearReach }

// gcd is the largest unit that all lengths are whole numbers of.
func gcd(ls []tape.Length) tape.Length {
	var g tape.Length
	for _, l := range ls {
		for a, b := g, l; ; a, b = b, a%b {
			if b == 0 {
				g = a
				break
			}
		}
	}
	return g
}
