package rack

import (
	"context"
	"math/rand/v2"
	"slices"
	"testing"

	"strake/row"
	"strake/tape"
)

type quality struct {
	waste          float64
	cuts, h, stair int
	near           float64
	least          tape.Length
	unfilled       int
}

func benchRuns(play, t tape.Length) []run {
	var runs []run
	for i := range 40 {
		l := 276 * inch
		r := run{Run: row.Run{Low: tape.Length(i) * 5 * inch}, index: i, sign: 1, level: i, nearReach: 0, nearNeed: play, farNeed: l + t - play, farReach: l + t, start: i < 2}
		r.exact()
		runs = append(runs, r)
	}
	return runs
}

func benchEngine(seed uint64, over float64, a, b float64, lo, hi float64) *engine {
	rng := rand.New(rand.NewPCG(seed, 99))
	e := &engine{ctx: context.Background(), rng: rand.New(rand.NewPCG(seed, 2)), budget: Budget, polishing: Polishing, unit: tape.Sixteenth,
		shop: shop{blade: tape.Eighth, shortest: 8 * inch, jointMin: 6 * inch, preferred: 10 * inch, hReach: 2 * inch, stairReach: inch, stairFarthest: 14 * inch, tongue: inch / 4}}
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
				q.stair += int(e.stairs(x, behind{one: joints[i-1], two: joints[i-2]}) / costStair)
			}
		}
	}
	q.near = float64(near) / float64(total) * 100
	return q
}

// benchCases are the bench room (40 runs of 276 in, boards of 12 to 84 in, an
// invented room, for measuring only): with play and without, looks first and
// wood first, mixed lengths and many short ones.
var benchCases = []struct {
	name         string
	play, tongue tape.Length
	wood         bool
	a, b         float64 // of the Beta curve the lengths follow
}{
	{"mixed-play-looks", inch / 4, inch / 4, false, 1.6, 2.2},
	{"mixed-exact-looks", 0, 0, false, 1.6, 2.2},
	{"mixed-play-wood", inch / 4, inch / 4, true, 1.6, 2.2},
	{"mixed-exact-wood", 0, 0, true, 1.6, 2.2},
	{"short-play-looks", inch / 4, inch / 4, false, 1.2, 3.2},
}

// BenchmarkRack racks the bench room from a full tally of 1.03 times the need
// and reports what the layout is worth, as means over the seeds tried.
func BenchmarkRack(b *testing.B) {
	for _, c := range benchCases {
		b.Run(c.name, func(b *testing.B) {
			var s quality
			for i := range b.N {
				e := benchEngine(uint64(i), 1.03, c.a, c.b, 12, 84)
				e.woodFirst = c.wood
				s.add(measure(e.fillAll(benchRuns(c.play, c.tongue)), e))
			}
			n := float64(b.N)
			b.ReportMetric(s.waste/n, "waste-%")
			b.ReportMetric(float64(s.cuts)/n, "crosscuts")
			b.ReportMetric(float64(s.h)/n, "H-joints")
			b.ReportMetric(float64(s.stair)/n, "stairs")
			b.ReportMetric(s.near/n, "near-%")
			b.ReportMetric(s.least.Inches(), "least-in")
		})
	}
}

func (q *quality) add(r quality) {
	if q.least == 0 || r.least < q.least {
		q.least = r.least
	}
	q.waste, q.near = q.waste+r.waste, q.near+r.near
	q.cuts, q.h, q.stair, q.unfilled = q.cuts+r.cuts, q.h+r.h, q.stair+r.stair, q.unfilled+r.unfilled
}

// The bench room on three seeds: all filled, no H-joint, hardly a cut, hardly a
// joint under 10 in; and polishing never makes the layout dearer.
func TestBenchRoom(t *testing.T) {
	for _, c := range benchCases[:2] {
		var rough, fine quality
		for seed := range uint64(3) {
			e := benchEngine(seed, 1.03, c.a, c.b, 12, 84)
			e.polishing = 0
			fs := e.fillAll(benchRuns(c.play, c.tongue))
			rough.add(measure(fs, e))
			before := e.total(fs)
			e.polishing = 60_000_000
			better := e.polish(fs)
			fine.add(measure(better, e))
			if after := e.total(better); after > before {
				t.Errorf("%s seed %d: polishing took the cost from %d to %d", c.name, seed, before, after)
			}
		}
		if fine.unfilled > 0 || fine.h > 0 || fine.near > rough.near || fine.near/3 > 0.3 || fine.cuts > 12 {
			t.Errorf("%s: polished %+v, first answer %+v", c.name, fine, rough)
		}
	}
}

// total is the cost of a whole floor, each joint against both sides.
func (e *engine) total(fs []filled) int64 {
	joints := jointsOf(fs, nil)
	var c int64
	for _, f := range fs {
		c += e.joined(f, joints)
		cuts, _ := f.cuts()
		c += e.waste(crosscut) * int64(cuts)
	}
	return c
}
