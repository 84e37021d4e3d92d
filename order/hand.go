package order

import (
	"math"
	"math/rand/v2"
	"slices"

	"gonum.org/v1/gonum/stat/distuv"

	"strake/tape"
)

// hand lays floors: what a layer holds while one is laid.
type hand struct {
	m     Model
	layer Layer
	floor tape.Length
	r     *rand.Rand
	culls float64           // share of culls in this lay's lot
	lots  [lotParts]float64 // quantiles of the share of culls

	boards []tape.Length   // in hand, in the order they came
	pile   []rest          // what a run may begin with
	joints [][]tape.Length // of each run laid, rising
	near   []tape.Length   // joints of the runs beside the one being laid, rising
	past   int             // so many of near lie too far behind to matter
	n      Need
}

// rest is a piece kept: what a cut left, or the good part of a cull.
type rest struct {
	long tape.Length
	cull bool
}

// lotParts is how many equal parts the share of culls is cut into.
const lotParts = 1024

func newHand(m Model, layer Layer) *hand {
	h := &hand{m: m, layer: layer, floor: m.Floor(), joints: make([][]tape.Length, len(m.Runs))}
	for i := range h.lots {
		h.lots[i] = m.Lot.Quantile((float64(i) + 0.5) / lotParts)
	}
	return h
}

// Seen is what is known of a lot once so many of its boards were looked through and
// so many of them culled: the Beta curve of lots, with what was counted added to its
// two shapes (Bayes' rule). A lot that does not vary stays what it is.
func (l Lot) Seen(boards, culls int) Lot {
	if boards <= 0 || l.Mean <= 0 || l.Varies <= 0 || l.Mean >= 1 {
		return l
	}
	sum := max(0.01, (1-l.Mean)/(l.Mean*l.Varies*l.Varies)-1)
	a, b := l.Mean*sum+float64(culls), (1-l.Mean)*sum+float64(boards-culls)
	mean := a / (a + b)
	return Lot{Mean: mean, Varies: math.Sqrt((1 - mean) / (mean * (a + b + 1)))}
}

// Quantile is the share of culls that a part p of all lots do not exceed: a Beta
// curve with the mean and the spread of the lot.
func (l Lot) Quantile(p float64) float64 {
	if l.Mean <= 0 || l.Varies <= 0 {
		return min(1, max(0, l.Mean))
	}
	// var = mean^2 cv^2 = mean (1 - mean) / (a + b + 1); where that asks for a
	// curve that has no shape the widest one that has is taken
	sum := max(0.01, (1-l.Mean)/(l.Mean*l.Varies*l.Varies)-1)
	return distuv.Beta{Alpha: l.Mean * sum, Beta: (1 - l.Mean) * sum}.Quantile(p)
}

// lay lays the floor once.
func (h *hand) lay(r *rand.Rand) Need {
	h.r = r
	h.boards, h.pile, h.n = h.boards[:0], h.pile[:0], Need{Floor: h.floor}
	h.culls = h.lots[r.Uint32()%lotParts]
	for i, run := range h.m.Runs {
		h.lookBeside(run)
		h.joints[i] = h.run(run, h.joints[i][:0])
		if h.layer == Strict && len(h.pile) > 1 {
			h.pile = append(h.pile[:0], h.pile[len(h.pile)-1]) // only the last rest is kept
		}
	}
	for _, o := range h.pile { // no use was found for it
		if o.cull {
			h.n.Culls += o.long
		}
	}
	for _, b := range h.boards { // what lies in hand was not used
		h.n.Taken -= b
	}
	h.n.Cut = h.n.Taken - h.n.Floor - h.n.Culls - h.n.Mistakes
	return h.n
}

// lookBeside gathers the joints that this run's have to keep off.
func (h *hand) lookBeside(run Run) {
	h.near, h.past = h.near[:0], 0
	for _, b := range run.Beside {
		h.near = append(h.near, h.joints[b]...)
	}
	if len(run.Beside) > 1 {
		slices.Sort(h.near)
	}
}

// passTo leaves out of the joints beside those that no joint from x on comes near to.
func (h *hand) passTo(x tape.Length) {
	for h.past < len(h.near) && h.near[h.past] <= x-h.m.Joint {
		h.past++
	}
}

// free tells whether a joint may fall at x, not before the place passed to last.
func (h *hand) free(x tape.Length) bool {
	for _, n := range h.near[h.past:] {
		if n >= x+h.m.Joint {
			return true
		}
		if n > x-h.m.Joint {
			return false
		}
	}
	return true
}

// distance is how far x is from the nearest joint beside, at most the joint
// distance.
func (h *hand) distance(x tape.Length) tape.Length {
	best := h.m.Joint
	for _, n := range h.near {
		best = min(best, (n - x).Abs())
	}
	return best
}

// take opens boards until one is good, and puts it in hand.
func (h *hand) take() {
	for {
		l := h.m.Lengths.Draw(h.r)
		h.n.Taken += l
		if h.culls == 0 || h.r.Float64() >= h.culls {
			h.boards = append(h.boards, l)
			return
		}
		good := tape.Length(0)
		if h.layer == Careful {
			good = tape.Length(h.r.Float64() * h.m.Salvaged * float64(l))
		}
		if good < h.m.Shortest {
			good = 0
		} else {
			h.pile = append(h.pile, rest{good, true})
		}
		h.n.Culls += l - good
	}
}

// run lays one run and returns its joints.
func (h *hand) run(run Run, at []tape.Length) []tape.Length {
	x := run.From
	if first := h.begin(run); first > 0 {
		x += first
		if x < run.To {
			at = append(at, x)
		}
	}
	for x < run.To {
		l := h.next(x, run.To)
		if x+l < run.To {
			x += l
			at = append(at, x)
			continue
		}
		h.cut(l, run.To-x)
		x = run.To
	}
	return at
}

// cut ends a run with a board: what is left of it may begin another run. A cut
// that goes wrong costs the piece, and the rest is what it would have been.
func (h *hand) cut(board, piece tape.Length) {
	if board == piece {
		return
	}
	if h.m.Spoiled > 0 && h.r.Float64() < h.m.Spoiled {
		h.n.Taken += piece
		h.n.Mistakes += piece
	}
	if left := board - piece - h.m.Kerf; left >= h.m.Shortest {
		h.pile = append(h.pile, rest{long: left})
	}
}
