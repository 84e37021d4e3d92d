package rack

import (
	"context"
	"math/rand/v2"
	"reflect"
	"testing"

	"strake/stock"
	"strake/tape"
)

// inches is a length in inches that is a whole number of ticks.
func inches(v float64) tape.Length { return tape.Length(v * float64(tape.Inch)) }

// A real floor retold: 134 in wide, boards of 36 in, joints moved by 13-1/2 in a
// row (common practice, no source: figures of one job, no kerf and no shortest
// piece).
func TestFixedStepsOfOneJob(t *testing.T) {
	s := stepsOf(inches(36), stock.Shift{Length: inches(13.5)}, 0, 0)
	if s.period() != 8 || s.shift() != inches(13.5) || 8*s.shift() != 3*s.board {
		t.Errorf("repeats after %d rows with a shift of %v, want 8 and 13-1/2 in", s.period(), s.shift())
	}
	for n, want := range map[int]float64{1: 13.5, 2: 9, 3: 4.5} {
		if got := s.apart(n); got != inches(want) {
			t.Errorf("joints %d rows apart lie %v apart, want %v in", n, got, want)
		}
	}
	pairs := [][2]float64{{20, 6}, {6.5, 19.5}, {29, 33}, {15.5, 10.5}, {2, 24}, {24.5, 1.5}, {11, 15}, {33.5, 28.5}}
	var rows []stretch
	for i, want := range pairs {
		// In that job the first piece grows shorter from row to row.
		r := stretch{row: -i, to: inches(134)}
		rows = append(rows, r)
		first, last := s.ends(r, inches(20))
		if first != inches(want[0]) || last != inches(want[1]) {
			t.Errorf("row %d: %v and %v, want %v in and %v in", i+1, first, last, want[0], want[1])
		}
		// Three whole boards and 26 in.
		whole := (inches(134) - first - last) / s.board
		if first+last != inches(134)-whole*s.board || first+last != inches(26) && first+last != inches(62) {
			t.Errorf("row %d: %v and %v leave %d whole boards", i+1, first, last, whole)
		}
	}
	if n, lost, ok := s.reuse(inches(134)); !ok || n != 2 || lost != inches(1) {
		t.Errorf("what is left begins a row %d rows on with %v lost, want 2 rows and 1 in (2 x 13-1/2 - 26)", n, lost)
	}
	if got := s.smallest(rows, inches(20)); got != inches(1.5) {
		t.Errorf("with a first piece of 20 in the smallest is %v, want 1-1/2 in", got)
	}
	phase := s.best(rows)
	if got := s.smallest(rows, phase); got != inches(4) {
		t.Errorf("the best phase %v leaves %v as the smallest piece, want 4 in", phase, got)
	}
}

// Over all phases in steps of 1/16 in none leaves a longer smallest piece than
// the one found, nor fewer rows that cannot be, and the first is one of those
// that are said to matter.
func TestBestPhaseAgainstAllPhases(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		sixteenths := func(lo, hi int) tape.Length { return tape.Length(lo+rng.IntN(hi-lo+1)) * tape.Sixteenth }
		board := sixteenths(16*12, 16*60)
		by := stock.Shift{Length: sixteenths(16, int(board/tape.Sixteenth)-16)}
		if rng.IntN(2) == 0 {
			by = stock.Shift{Num: 1 + rng.IntN(3), Den: 2 + rng.IntN(5)}
		}
		s := stepsOf(board, by, sixteenths(0, 3), sixteenths(0, 16*10))
		rows := make([]stretch, 1+rng.IntN(14))
		uneven := rng.IntN(2) * 16 * 30
		length := sixteenths(16*30, 16*200)
		play := sixteenths(0, 4)
		for i := range rows {
			rows[i] = stretch{row: i - 3, from: sixteenths(0, uneven), to: length + sixteenths(0, uneven) + tape.Length(uneven)*tape.Sixteenth, left: play, right: play}
		}
		phase := s.best(rows)
		n, l := s.broken(rows, phase), s.smallest(rows, phase)
		for at := tape.Length(0); at < board; at += tape.Sixteenth {
			m, k := s.broken(rows, at), s.smallest(rows, at)
			if m < n || m == n && k > l {
				t.Fatalf("%+v, %+v: phase %v breaks %d rows and leaves %v; %v breaks %d and leaves %v", s, rows, phase, n, l, at, m, k)
			}
		}
	}
}

// Where rows are alike and a whole period is laid, the longest smallest piece is
// half of what length leaves over the finest step, and one step more.
func TestBestPhaseByFormula(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		den := 2 + rng.IntN(9)
		g := tape.Length(2+rng.IntN(12)) * tape.Inch
		s := stepsOf(g*tape.Length(den), stock.Shift{Num: 1, Den: den}, 0, 0)
		length := s.board + tape.Length(rng.IntN(4000))*tape.Sixteenth
		var rows []stretch
		for i := range den {
			rows = append(rows, stretch{row: i, to: length})
		}
		over := length % g
		if over == 0 {
			over = g
		}
		if got := s.smallest(rows, s.best(rows)); got != (over+g)/2 {
			t.Fatalf("boards of %v moved by 1/%d in rows of %v: %v, want %v", s.board, den, length, got, (over+g)/2)
		}
	}
}

// With boards of one length at hand and a fixed shift, the next rows go on with
// the pattern that the last rows as laid have, however many are asked for.
func TestNextGoesOnWithThePattern(t *testing.T) {
	a := nextAsk(1)
	a.Boards.Shift = stock.Shift{Num: 1, Den: 3}
	a.Boards.Tally = []stock.Class{{Length: 48 * inch, Count: 400}}
	joints := func(p Proposal) (out []tape.Length) {
		for _, q := range p.Pieces[1:] {
			out = append(out, q.Start)
		}
		return
	}
	all := Next(context.Background(), a, nil, 40)
	for i, p := range all {
		if !p.Filled {
			t.Fatalf("run %d is not filled", i)
		}
		if d := (joints(p)[0] - joints(all[0])[0] - tape.Length(i)*16*inch) % (48 * inch); d != 0 {
			t.Errorf("run %d: joints %v off the pattern", i, d)
		}
	}
	if few := Next(context.Background(), a, nil, 2); !reflect.DeepEqual(joints(few[1]), joints(all[1])) {
		t.Errorf("two rows asked for: %v, want %v", joints(few[1]), joints(all[1]))
	}
	laid := []Laid{{Run: 0, Joints: []tape.Length{20 * inch, 68 * inch, 116 * inch, 164 * inch, 212 * inch, 260 * inch}}}
	next := Next(context.Background(), a, laid, 1)
	if got := joints(next[0]); len(got) == 0 || (got[0]-36*inch)%(48*inch) != 0 {
		t.Errorf("after a row with joints from 20 in on: %v, want 36 in on", got)
	}
	if next[0].Off != 0 || next[0].Nearest != 16*inch {
		t.Errorf("joints lie %v from those beside, want 16 in", next[0].Nearest)
	}
}
