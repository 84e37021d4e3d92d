package rack

import (
	"context"
	"math/rand/v2"
	"os"
	"slices"
	"testing"
	"time"

	"strake/row"
	"strake/tape"
)

type quality struct {
	waste          float64
	cuts, h, stair int
	near           float64
	least          tape.Length
	ms             float64
	unfilled       int
}

func benchRuns(play, t tape.Length) []run {
	var runs []run
	for i := range 40 {
		l := 276 * inch
		r := run{Run: row.Run{Low: tape.Length(i) * 5 * inch}, index: i, nearReach: 0, nearNeed: play, farNeed: l + t - play, farReach: l + t, start: i < 2}
		runs = append(runs, r)
	}
	return runs
}

func benchEngine(seed uint64, over float64, a, b float64, lo, hi float64) *engine {
	rng := rand.New(rand.NewPCG(seed, 99))
	e := &engine{ctx: context.Background(), rng: rand.New(rand.NewPCG(seed, 2)), budget: Budget, sign: 1, unit: tape.Sixteenth,
		shop: shop{blade: tape.Eighth, shortest: 8 * inch, jointMin: 6 * inch, preferred: 10 * inch, pitch: 5 * inch, tongue: inch / 4}}
	need := 40 * 276 * inch
	for sum, k := tape.Length(0), 0; float64(sum) < over*float64(need); k++ {
		l := tape.Nearest(tape.Length((lo+(hi-lo)*beta(rng, a, b))*float64(inch)), tape.Sixteenth)
		e.stock.boards = append(e.stock.boards, item{board: k, to: l, groove: true, tongue: true})
		sum += l
	}
	return e
}

func measure(fs []filled, e *engine) quality {
	q := quality{least: tape.Longest}
	var lost, need tape.Length
	var joints [][]tape.Length
	used := map[int]bool{}
	var laid, left tape.Length
	for _, f := range fs {
		var at []tape.Length
		if !f.ok {
			q.unfilled++
			joints = append(joints, nil)
			continue
		}
		for i, p := range f.pieces {
			laid += p.length()
			used[p.board] = true
			if p.farCut {
				q.cuts++
			}
			if p.nearCut {
				q.cuts++
			}
			if i > 0 {
				at = append(at, p.start)
			}
		}
		need += f.pieces[len(f.pieces)-1].end - f.pieces[0].start
		joints = append(joints, at)
	}
	var taken tape.Length
	for b := range used {
		taken += e.stock.boards[b].length()
	}
	for _, h := range slices.Concat(e.left.heads, e.left.tails) {
		left += h.length()
	}
	lost = taken - laid - left
	q.waste = float64(lost) / float64(need) * 100
	total, near := 0, 0
	for i := range joints {
		for _, x := range joints[i] {
			total++
			if i > 0 {
				if d := nearest(joints[i-1], x); d < 10*inch {
					near++
					q.least = min(q.least, d)
				} else {
					q.least = min(q.least, d)
				}
			}
			if i > 1 && nearest(joints[i-2], x) <= 2*inch {
				q.h++
			}
			if i > 1 {
				q.stair += int(stairs(x, behind{joints[i-1], joints[i-2]}) / costStair)
			}
		}
	}
	q.near = float64(near) / float64(total) * 100
	return q
}

func TestQuality(t *testing.T) {
	if os.Getenv("STRAKE_QUALITY") == "" {
		t.Skip("set STRAKE_QUALITY")
	}
	for _, c := range []struct {
		name         string
		play, tongue tape.Length
		wood         bool
		a, b         float64
	}{
		{"mixed play looks", inch / 4, inch / 4, false, 1.6, 2.2},
		{"mixed exact looks", 0, 0, false, 1.6, 2.2},
		{"mixed play wood", inch / 4, inch / 4, true, 1.6, 2.2},
		{"mixed exact wood", 0, 0, true, 1.6, 2.2},
		{"short play looks", inch / 4, inch / 4, false, 1.2, 3.2},
	} {
		var s quality
		s.least = tape.Longest
		for seed := range uint64(20) {
			e := benchEngine(seed, 1.03, c.a, c.b, 12, 84)
			e.woodFirst = c.wood
			t0 := time.Now()
			fs := e.fillAll(benchRuns(c.play, c.tongue))
			q := measure(fs, e)
			q.ms = float64(time.Since(t0).Microseconds()) / 1000
			s.waste += q.waste / 20
			s.cuts += q.cuts
			s.h += q.h
			s.stair += q.stair
			s.near += q.near / 20
			s.least = min(s.least, q.least)
			s.ms += q.ms / 20
			s.unfilled += q.unfilled
		}
		t.Logf("%-20s waste %.4f%% cuts %.2f H %.2f stairs %.2f near %.2f%% least %v ms %.0f unfilled %d", c.name, s.waste, float64(s.cuts)/20, float64(s.h)/20, float64(s.stair)/20, s.near, s.least, s.ms, s.unfilled)
	}
}
