package rack

import (
	"math"
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"

	"strake/tape"
)

// drawnRun is a run with any play at its ends.
func drawnRun(t *rapid.T) run {
	near := tape.Length(rapid.IntRange(0, 64).Draw(t, "near play")) * tape.Sixteenth
	far := tape.Length(rapid.IntRange(0, 64).Draw(t, "far play")) * tape.Sixteenth
	l := tape.Length(rapid.IntRange(40, 400).Draw(t, "length")) * inch
	r := run{nearReach: 0, nearNeed: near, farNeed: l - far, farReach: l}
	r.exact()
	return r
}

// What is taken from the play is twice the length error at the short and at
// the long limit, no less and, but for rounding, no more: every sum of boards
// between the two has a place, and none beyond.
func TestPlayIsNarrowedByTwiceTheLengthError(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawnRun(t)
		e := &engine{lengthError: float64(rapid.IntRange(1, 2000).Draw(t, "error")), meanBoard: 40 * inch}
		n := math.Ceil(float64(r.length()) / float64(e.meanBoard))
		margin := tape.Length(math.Ceil(2 * e.lengthError * math.Sqrt(n)))
		short, long := r.farNeed-r.nearNeed+margin, r.length()-margin
		got := e.doubted(r)
		if got.unsure != (short > long) || got.farCut != got.unsure {
			t.Fatalf("unsure %v with sums from %s to %s", got.unsure, short, long)
		}
		if got.unsure {
			return
		}
		least, most := got.wholeLeast-got.startMost, got.wholeMost-got.startLeast
		if d := least - short; d < 0 || d > 1 {
			t.Errorf("the least sum is %s, want %s", least, short)
		}
		if d := long - most; d < 0 || d > 1 {
			t.Errorf("the greatest sum is %s, want %s", most, long)
		}
		if got.startLeast < r.nearReach || got.startMost > r.nearNeed || got.wholeLeast < r.farNeed || got.wholeMost > r.farReach {
			t.Errorf("the windows leave the play: %+v", got)
		}
	})
}

// Runs planned to close with whole boards close so in nearly every case when
// the boards are as far off as the tally may be: drawn anew, board by board,
// from the reading step and the slip of the hand.
func TestRunsPlannedWholeCloseWhole(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 8))
	step, slip := float64(tape.Sixteenth), float64(tape.Inch)/64
	e := benchEngine(3, 1.06, 1.6, 2.2, 12, 84)
	e.lengthError, e.meanBoard = math.Sqrt(step*step/12+slip*slip), 42*inch
	runs := benchRuns(inch/2, 0)
	for i := range runs {
		runs[i] = e.doubted(runs[i])
		if runs[i].unsure {
			t.Fatal("half an inch at each end is play enough for seven boards")
		}
	}
	whole, closed := 0, 0
	for _, f := range e.fillAll(runs) {
		if cuts, _ := f.cuts(); cuts > 0 || !f.ok {
			continue
		}
		for range 500 {
			var sum float64
			for _, q := range f.pieces {
				sum += float64(q.length()) + (rng.Float64()-0.5)*step + rng.NormFloat64()*slip
			}
			whole++
			if float64(f.farNeed-f.nearNeed) <= sum && sum <= float64(f.length()) {
				closed++
			}
		}
	}
	// two standard deviations on either side: 95.4 % where both bind
	if part := float64(closed) / float64(max(1, whole)); whole == 0 || part < 0.954 {
		t.Errorf("%d of %d closed", closed, whole)
	}
}

// Where lengths are off by more than the play allows, every run ends in a cut;
// and so it does where the tally is not trusted.
func TestUnsureRunsEndInACut(t *testing.T) {
	for _, untrusted := range []bool{false, true} {
		e := benchEngine(5, 1.1, 1.6, 2.2, 12, 84)
		e.lengthError, e.meanBoard = float64(tape.Sixteenth), 42*inch
		if e.untrusted = untrusted; untrusted {
			e.lengthError = 0
		}
		runs := benchRuns(inch/8, 0)[:12]
		for i := range runs {
			runs[i] = e.doubted(runs[i])
		}
		for _, f := range e.fillAll(runs) {
			last := f.pieces[len(f.pieces)-1]
			if over := e.stock.boards[last.board].length() - last.to; !f.ok || !last.farCut || last.end != f.farReach || over < max(e.blade, e.margin(f.run)) {
				t.Errorf("untrusted %v: run %d ends %+v", untrusted, f.index, last)
			}
		}
	}
}

// A row whose tongue would stay on but for the unit is moved until it does: 64 in
// of whole boards in a run of 64-1/4 less 1/32 in, tongue 1/4 in, with play at
// the near end.
func TestRowsSlideToKeepTheirTongue(t *testing.T) {
	e := benchEngine(1, 0, 1, 1, 12, 84)
	e.stock.boards = nil
	for i, l := range []tape.Length{30 * inch, 34 * inch} {
		e.stock.boards = append(e.stock.boards, item{board: i, to: l, groove: true, tongue: true})
	}
	far := 64*inch + inch/4 + inch/32
	r := run{nearReach: 0, nearNeed: inch / 4, farNeed: far - inch/2, farReach: far}
	r.exact()
	f := e.fillAll([]run{r})[0]
	last := f.pieces[len(f.pieces)-1]
	if !f.ok || last.tongueOff || last.end > far-e.tongue || f.pieces[0].start < 0 {
		t.Errorf("%+v", f.pieces)
	}
	b := behind{}
	off := []placed{{start: inch / 16, end: 30*inch + inch/16}, {start: 30*inch + inch/16, end: 64*inch + inch/16, tongueOff: true}}
	if got := e.slid(off, r, b, 0); got[1].tongueOff || got[1].end != far-e.tongue || got[0].start != inch/32 {
		t.Errorf("slid to %+v", got)
	}
	r.startLeast = inch / 16
	if got := e.slid(off, r, b, 0); !got[1].tongueOff {
		t.Errorf("slid beyond its play: %+v", got)
	}
}
