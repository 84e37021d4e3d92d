package main

import (
	"slices"

	"strake/tape"
)

// layer is a plain careful layer, simulated: nothing is measured ahead. Eight
// boards lie in hand, offcuts in a pile. A run begins with the longest offcut
// that keeps the joint distance, else with a board; goes on with the first
// board in hand that keeps it, else with the one that comes nearest to keeping
// it; and ends with the board whose offcut is of most use: none at all, then
// the longest that can start a run, then the least scrap. Invented as a
// yardstick, after what layers say they do (no source).
type layer struct {
	place
	boards []tape.Length // still in the cartons
	hand   []tape.Length
	pile   []tape.Length
	lost   tape.Length
	cuts   float64
	runs   [][]tape.Length
}

const inHand = 8

// careful is what the layer makes of the room.
func careful(p place, boards []tape.Length) quality {
	l := &layer{place: p, boards: slices.Clone(boards)}
	for range p.runs {
		l.run()
	}
	q := quality{least: tape.Longest, scrap: l.lost, cuts: l.cuts, offcuts: float64(len(l.pile))}
	q.waste = 100 * float64(l.lost) / float64(p.need())
	q.joined(l.runs)
	return q
}

func (l *layer) refill() {
	n := min(inHand-len(l.hand), len(l.boards))
	l.hand = append(l.hand, l.boards[:n]...)
	l.boards = l.boards[n:]
}

// behind are the joints of the run behind.
func (l *layer) behind() []tape.Length {
	if len(l.runs) == 0 {
		return nil
	}
	return l.runs[len(l.runs)-1]
}

func (l *layer) run() {
	var at []tape.Length
	x := l.begin()
	for x < l.length {
		if x > 0 {
			at = append(at, x)
		}
		l.refill()
		if end, ok := l.end(x); ok {
			x = end
			continue
		}
		k := l.next(x)
		if k < 0 {
			break // out of boards
		}
		x += l.hand[k]
		l.hand = slices.Delete(l.hand, k, k+1)
	}
	l.runs = append(l.runs, at)
}

// begin starts a run with the longest offcut that keeps the joint distance.
func (l *layer) begin() tape.Length {
	slices.Sort(l.pile)
	for k := len(l.pile) - 1; k >= 0; k-- {
		if o := l.pile[k]; nearest(l.behind(), o) >= l.joint && l.leaves(o) {
			l.pile = slices.Delete(l.pile, k, k+1)
			return o
		}
	}
	return 0
}

// leaves tells whether what is left of the run after a joint at x is no sliver.
func (l *layer) leaves(x tape.Length) bool { return l.length-x >= l.shortest }

// next is the board to go on with.
func (l *layer) next(x tape.Length) int {
	best, most := -1, tape.Length(-1)
	for k, b := range l.hand {
		if !l.leaves(x + b) {
			continue
		}
		d := min(nearest(l.behind(), x+b), l.joint)
		if d == l.joint {
			return k
		}
		if d > most {
			best, most = k, d
		}
	}
	return best
}

// end closes the run where a board in hand reaches the end and none that is
// shorter could be laid before it with its joint far enough off.
func (l *layer) end(x tape.Length) (tape.Length, bool) {
	best, worth := -1, tape.Length(-1)
	for k, b := range l.hand {
		if w := l.use(b - (l.length - x)); w > worth {
			best, worth = k, w
		}
	}
	if best < 0 {
		return 0, false
	}
	spare := l.hand[best] - (l.length - x)
	l.hand = slices.Delete(l.hand, best, best+1)
	if spare <= 0 && spare >= -l.play {
		return l.length, true
	}
	l.cuts++
	if o := spare - l.kerf; o >= l.shortest {
		l.pile = append(l.pile, o)
		l.lost += l.kerf
	} else {
		l.lost += spare
	}
	return l.length, true
}

// use is what so much of a board beyond the end of a run is worth.
func (l *layer) use(spare tape.Length) tape.Length {
	switch o := spare - l.kerf; {
	case spare < -l.play:
		return -1
	case spare <= 0:
		return tape.Longest
	case o >= l.shortest:
		return 100*tape.Foot + o
	default:
		return 100*tape.Foot - spare
	}
}
