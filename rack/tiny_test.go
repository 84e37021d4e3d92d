package rack

import (
	"context"
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/row"
	"strake/tape"
)

const inch = tape.Inch

// tinyFloor is a random floor of up to 4 runs and 8 boards, all in whole
// inches, kerf included, with hardly more stock than it needs.
func tinyFloor(t *rapid.T) (*engine, []run) {
	n := rapid.IntRange(1, tinyRuns).Draw(t, "runs")
	play := tape.Length(rapid.IntRange(0, 1).Draw(t, "play")) * inch
	e := &engine{ctx: context.Background(), rng: rand.New(rand.NewPCG(1, 2)), budget: 50_000_000, unit: inch,
		shop: shop{blade: inch, shortest: 8 * inch, jointMin: 6 * inch, preferred: 8 * inch, hReach: 2 * inch, stairReach: inch, stairFarthest: 14 * inch}}
	var runs []run
	var need tape.Length
	for i := range n {
		l := tape.Length(rapid.IntRange(9, 50).Draw(t, "run")) * inch
		need += l
		r := run{Run: row.Run{Low: tape.Length(i) * 5 * inch}, index: i, sign: 1, level: i, nearReach: 0, nearNeed: play, farNeed: l - play, farReach: l}
		r.nearCut = rapid.IntRange(0, 9).Draw(t, "near") == 0
		r.farCut = rapid.IntRange(0, 9).Draw(t, "far") == 0
		r.exact()
		runs = append(runs, r)
	}
	over := tape.Length(rapid.IntRange(-14, 2).Draw(t, "over")) * inch // enough of them cannot be filled for the sample to show something
	for sum, k := tape.Length(0), 0; sum < need+over && k < tinyBoards; k++ {
		l := tape.Length(rapid.IntRange(8, 40).Draw(t, "board")) * inch
		sum += l
		e.stock.boards = append(e.stock.boards, item{board: k, to: l, groove: true, tongue: true})
	}
	return e, runs
}

// TestRefusalsAreTrue: what the engine leaves unfilled on a tiny floor, no way
// of cutting the boards on whole inches can fill either.
func TestRefusalsAreTrue(t *testing.T) {
	refused, filledAll := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		e, runs := tinyFloor(t)
		out := e.fillAll(runs)
		ok := true
		for _, f := range out {
			ok = ok && f.ok
		}
		if ok {
			filledAll++
			soundFilling(t, e, out)
			return
		}
		refused++
		if w := (&worker{e: e, runs: runs, failed: map[string]bool{}}); w.fill(0, oracleStock(e)) {
			t.Fatal("refused, but it can be filled")
		}
	})
	t.Logf("%d filled, %d refused and confirmed", filledAll, refused)
	if refused == 0 || filledAll == 0 {
		t.Errorf("the sample has %d refusals and %d fillings: it shows nothing", refused, filledAll)
	}
}

// soundFilling holds a filling to the stock by itself: pieces meet, ends lie in
// their ranges, and no part of a board is used twice.
func soundFilling(t *rapid.T, e *engine, fs []filled) {
	used := map[int][]item{}
	for _, f := range fs {
		if s := f.pieces[0].start; s < f.nearReach || s > f.nearNeed {
			t.Fatalf("run %d starts at %v", f.index, s)
		}
		if s := f.pieces[len(f.pieces)-1].end; s < f.farNeed || s > f.farReach {
			t.Fatalf("run %d ends at %v", f.index, s)
		}
		for i, p := range f.pieces {
			if p.end-p.start != p.length() || i > 0 && p.start != f.pieces[i-1].end {
				t.Fatalf("run %d: piece %d of %v lies %v to %v", f.index, i, p.item, p.start, p.end)
			}
			for _, u := range used[p.board] {
				if p.from < u.to+e.blade && u.from < p.to+e.blade {
					t.Fatalf("board %d is cut at %v and %v", p.board, u, p.item)
				}
			}
			if p.from < 0 || p.to > e.stock.boards[p.board].to {
				t.Fatalf("board %d has no %v", p.board, p.item)
			}
			used[p.board] = append(used[p.board], p.item)
		}
	}
}

// The oracle shares no code with the engine: stock is lengths in whole inches
// with what each end shows, runs are filled from near to far, every cut length
// is tried.
type stick struct {
	l              int
	groove, tongue bool
}

func oracleStock(e *engine) []stick {
	var out []stick
	for _, b := range e.stock.boards {
		out = append(out, stick{int(b.length() / inch), true, true})
	}
	return out
}

type worker struct {
	e      *engine
	runs   []run
	failed map[string]bool
}

func (w *worker) fill(i int, s []stick) bool {
	if i == len(w.runs) {
		return true
	}
	have, need := 0, 0
	for _, t := range s {
		have += t.l
	}
	for _, r := range w.runs[i:] {
		need += int((r.farNeed - r.nearNeed) / inch)
	}
	if have < need || w.failed[state(i, s)] {
		return false
	}
	r := w.runs[i]
	least, most := int((r.farNeed-r.nearNeed)/inch), int((r.farReach-r.nearReach)/inch)
	if w.put(i, s, 0, least, most, true) {
		return true
	}
	w.failed[state(i, s)] = true
	return false
}

func state(i int, s []stick) string {
	var ks []string
	for _, t := range s {
		ks = append(ks, fmt.Sprint(t))
	}
	slices.Sort(ks)
	return fmt.Sprint(i, ks)
}

func without1(s []stick, k int, add ...stick) []stick {
	var out []stick
	out = append(out, s[:k]...)
	out = append(out, s[k+1:]...)
	for _, a := range add {
		if a.l >= 8 {
			out = append(out, a)
		}
	}
	return out
}

// put lays the next piece of run i, sum inches being laid. Every piece is some
// stick, near end whole or cut, far end whole or cut.
func (w *worker) put(i int, s []stick, sum, least, most int, first bool) bool {
	r := w.runs[i]
	kerf := int(w.e.blade / inch)
	tried := map[stick]bool{}
	for k, t := range s {
		if tried[t] {
			continue
		}
		tried[t] = true
		for from := 0; from < t.l; from++ {
			if from > 0 && !first || from > 0 && from < kerf {
				break
			}
			if from == 0 && (first && r.nearCut || !first && !t.groove) {
				continue
			}
			for to := from + 1; to <= t.l; to++ {
				l := to - from
				end := sum+l >= least && sum+l <= most && (to < t.l || !r.farCut)
				whole := to == t.l && t.tongue
				if !end && !whole {
					continue
				}
				if to < t.l && !end {
					continue
				}
				if l < 8 && (first || end) && int(r.length()/inch) >= 8 {
					continue
				}
				rest := without1(s, k, stick{from - kerf, t.groove, false}, stick{t.l - to - kerf, false, t.tongue})
				if end && w.fill(i+1, rest) {
					return true
				}
				if whole && sum+l < most && w.put(i, rest, sum+l, least, most, false) {
					return true
				}
			}
		}
	}
	return false
}
