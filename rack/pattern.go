package rack

import (
	"math/bits"
	"slices"

	"strake/stock"
	"strake/tape"
)

// steps are rows of boards of one length whose joints move by the same shift
// from row to row. Boards of 36 in moved by 13-1/2 in: 3/8 of a board a row, so
// that row 9 is like row 1.
type steps struct {
	board    tape.Length
	num, den int64 // the shift in boards, in lowest terms
	kerf     tape.Length
	shortest tape.Length
}

// stepsOf is the pattern of a fixed shift.
func stepsOf(board tape.Length, by stock.Shift, kerf, shortest tape.Length) steps {
	num, den := int64(by.Length), int64(board)
	if by.Den > 0 {
		num, den = int64(by.Num), int64(by.Den)
	}
	num %= den
	for a, b := num, den; ; a, b = b, a%b {
		if b == 0 {
			return steps{board, num / a, den / a, kerf, shortest}
		}
	}
}

// stretch is what the boards of one row fill: from one face to the other, in
// row so many of the pattern.
type stretch struct {
	row      int
	from, to tape.Length
	// By so much less, at the left and at the right, may the boards fill it: a
	// whole board may lie there instead of one with next to nothing beside it.
	left, right tape.Length
}

// period is after how many rows the pattern is back where it was.
func (s steps) period() int { return int(s.den) }

// off is how far joints lie on from those of row 0, less whole boards.
func (s steps) off(row int) tape.Length {
	if row == 0 {
		return 0
	}
	k := (int64(row)%s.den + s.den) % s.den * s.num % s.den // in boards, over den
	hi, lo := bits.Mul64(uint64(k), uint64(s.board))
	q, _ := bits.Div64(hi, lo, uint64(s.den))
	return tape.Length(q)
}

// shift is how far joints move from row to row.
func (s steps) shift() tape.Length { return s.off(1) }

// apart is how far joints lie from the nearest so many rows off.
func (s steps) apart(rows int) tape.Length {
	d := s.off(rows)
	return min(d, s.board-d)
}

// over is l less whole boards: more than 0, up to one board.
func (s steps) over(l tape.Length) tape.Length {
	if l %= s.board; l <= 0 {
		l += s.board
	}
	return l
}

// ends are the first and the last piece of a row where a joint of row 0 lies at
// the phase. A whole board counts as its length; in a row that no joint falls in
// both are the one piece.
func (s steps) ends(r stretch, phase tape.Length) (first, last tape.Length) {
	x := phase + s.off(r.row)
	first = s.over(x - r.from)
	if all := r.to - r.from; first >= all {
		return all, all
	}
	last = s.over(r.to - x)
	if first <= r.left {
		first = s.board
	}
	if last <= r.right {
		last = s.board
	}
	return first, last
}

// smallest is the smallest end piece of some rows.
func (s steps) smallest(rows []stretch, phase tape.Length) tape.Length {
	out := tape.Longest
	for _, r := range rows {
		first, last := s.ends(r, phase)
		out = min(out, first, last)
	}
	return out
}

// holds tells whether a row can have such ends: neither too short, nor longer
// than can be sawn off a board; a whole board always.
func (s steps) holds(first, last tape.Length) bool {
	for _, l := range []tape.Length{first, last} {
		if l < s.shortest || l > s.board || l > s.board-s.kerf && l < s.board {
			return false
		}
	}
	return true
}

// broken is how many of the rows cannot have the ends that a phase gives them.
func (s steps) broken(rows []stretch, phase tape.Length) int {
	n := 0
	for _, r := range rows {
		if !s.holds(s.ends(r, phase)) {
			n++
		}
	}
	return n
}

// jumps are the phases, sorted, at which a first or a last piece of some row is
// a whole board: past it the piece is next to nothing, or was before.
func (s steps) jumps(rows []stretch) []tape.Length {
	var out []tape.Length
	for _, r := range rows {
		from, to := r.from-s.off(r.row), r.to-s.off(r.row)
		out = append(out, s.over(from), s.over(to), s.over(from+r.left), s.over(to-r.right))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// phases are all that matter: between two jumps the smallest first piece grows
// with the phase and the smallest last piece shrinks, so that the smaller of the
// two is greatest at one of the jumps or where both are equal. Where pieces have
// limits, the phases at which they just keep them matter too.
func (s steps) phases(rows []stretch) []tape.Length {
	at := s.jumps(rows)
	out := slices.Clone(at)
	for i, a := range at {
		next := at[(i+1)%len(at)]
		if i+1 == len(at) {
			next += s.board
		}
		if next-a < 2 {
			continue
		}
		inside := a + 1
		first, last := tape.Longest, tape.Longest
		for _, r := range rows {
			f, l := s.ends(r, inside)
			first, last = min(first, f), min(last, l)
		}
		if move := (last - first) / 2; move > 0 && inside+move < next {
			out = append(out, s.over(inside+move))
		}
		out = append(out, s.over(inside), s.over(next-1))
	}
	for _, r := range rows {
		from, to := r.from-s.off(r.row), r.to-s.off(r.row)
		out = append(out, s.over(from+s.shortest), s.over(to-s.shortest), s.over(from+s.board-s.kerf), s.over(to-s.board+s.kerf))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// best is the phase with the longest smallest piece; where that is too short,
// the one that leaves the fewest rows with an end that cannot be.
func (s steps) best(rows []stretch) tape.Length {
	rows = s.inRowZero(rows)
	var best tape.Length
	most, fewest := tape.Length(-1), len(rows)
	for _, phase := range s.phases(rows) {
		n, l := s.judge(rows, phase, fewest)
		if n < fewest || n == fewest && l > most {
			best, most, fewest = phase, l, n
		}
	}
	return best
}

// judge is broken and smallest at once, up to so many rows broken.
func (s steps) judge(rows []stretch, phase tape.Length, most int) (broken int, smallest tape.Length) {
	smallest = tape.Longest
	for _, r := range rows {
		first, last := s.ends(r, phase)
		smallest = min(smallest, first, last)
		if !s.holds(first, last) {
			if broken++; broken > most {
				break
			}
		}
	}
	return
}

// inRowZero are rows moved along so that the pattern has them all in row 0.
func (s steps) inRowZero(rows []stretch) []stretch {
	var out []stretch
	for _, r := range rows {
		d := s.off(r.row)
		d = s.over(r.from-d) - r.from
		out = append(out, stretch{from: r.from + d, to: r.to + d, left: r.left, right: r.right})
	}
	return out
}

// farOn is how many rows on an offcut is thought of.
const farOn = 100

// reuse is how many rows on what is left of a last piece begins another row
// with the least lost, where it is long enough, and how much that is, the kerf
// counted: rows as long as this one, 0 for the row itself. false where nothing
// is ever left to begin one with.
func (s steps) reuse(length tape.Length) (rows int, lost tape.Length, ok bool) {
	for j := range min(s.period(), farOn) {
		spare := (s.off(j) - length) % s.board
		if spare < 0 {
			spare += s.board
		}
		if spare >= s.kerf && (!ok || spare < lost) {
			rows, lost, ok = j, spare, true
		}
	}
	return
}
