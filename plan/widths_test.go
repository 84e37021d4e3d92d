package plan_test

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/job"
	"strake/limits"
	"strake/plan"
	"strake/room"
	"strake/stock"
	"strake/tape"
)

// several gives a random job boards of two to four widths, with a pattern of
// its own or one to be proposed, and about a third more of each than its rows
// take, some of them marked and read as tapes are.
func (f floors) several(j *job.Job) {
	faces := []tape.Length{2 * tape.Inch, 9 * tape.Inch / 4, 3 * tape.Inch, 4 * tape.Inch, 5 * tape.Inch, 60 * tape.Millimetre, 130 * tape.Millimetre}
	f.Shuffle(len(faces), func(a, b int) { faces[a], faces[b] = faces[b], faces[a] })
	j.Boards.Tally, j.Boards.TenBoards = nil, 0
	n := 2 + f.IntN(3)
	for i, face := range faces[:n] {
		w := stock.Boards{Face: face, Known: stock.Tallied, Tally: []stock.Class{{Length: tape.Length(1+f.IntN(3)) * 100 * tape.Inch, Count: 1}}}
		if i == 0 || f.chance(0.5) {
			w.TenBoards = 10*face + tape.Length(f.IntN(12))*tape.Sixteenth
		}
		j.Boards.Widths = append(j.Boards.Widths, w)
	}
	if f.chance(0.6) {
		for range n + f.IntN(4) {
			j.Boards.Pattern = append(j.Boards.Pattern, faces[f.IntN(n)])
		}
	}
	settle(j)
	p := plan.Rows(*j)
	need := map[tape.Length]tape.Length{}
	for _, r := range p.Layout.Runs {
		need[r.High-r.Low] += r.Length()
	}
	for i := range j.Boards.Widths {
		w := &j.Boards.Widths[i]
		w.Tally = nil
		for sum := tape.Length(0); sum < need[w.Pitch()]+need[w.Pitch()]/3+100*tape.Inch; {
			l := tape.Nearest(tape.Length((12+72*math.Sqrt(f.Float64()*f.Float64()))*float64(tape.Inch)), tape.Eighth)
			w.Tally = append(w.Tally, stock.Class{Length: l, Count: 1})
			sum += l
		}
		one := job.Job{Boards: *w}
		f.marks(&one)
		w.Tally, w.ReadTo, w.Slip, j.Wishes.Shades = one.Boards.Tally, one.Boards.ReadTo, one.Boards.Slip, one.Wishes.Shades
	}
	if len(j.Boards.Pattern) == 0 { // the tallies are not quite what the pattern was proposed from
		j.Boards.Pattern = j.Boards.Faces()
	}
	settle(j)
}

// settle gives a job with boards of several widths what goes with the widest.
func settle(j *job.Job) {
	j.Boards = stock.Several(j.Boards)
	j.Limits = limits.Default(j.Boards.Face, j.Boards.Thickness)
	j.Limits.Widest = j.Boards.Pitch()
}

// TestRandomFloorsOfSeveralWidths plans random floors with rows that take
// turns: at least 95 in 100 get a plan that the checker passes, each run has
// boards of its width alone, and rows follow the pattern.
func TestRandomFloorsOfSeveralWidths(t *testing.T) {
	t.Parallel()
	n := floorCount(40)
	good, relaxed := 0, 0
	for seed := range uint64(n) {
		f := floors{rand.New(rand.NewPCG(seed, 78))}
		j := f.job(seed)
		f.several(&j)
		p := plan.MakeWithin(context.Background(), j, light)
		rowsFollow(t, seed, p)
		if finding.Worst(p.Findings) != finding.Stop {
			good++
			if len(p.Lay.Relaxed) > 0 {
				relaxed++
			}
			continue
		}
		for _, x := range p.Findings {
			if x.Level == finding.Stop {
				t.Logf("floor %d: %s", seed, x)
			}
		}
	}
	t.Logf("%d of %d floors planned, on %d the joint distance relaxed", good, n, relaxed)
	if good*100 < n*95 {
		t.Errorf("only %d of %d floors got a plan that holds", good, n)
	}
	if relaxed*100 > 10*n {
		t.Errorf("the joint distance was relaxed on %d of %d floors", relaxed, n)
	}
}

// rowsFollow holds a plan to its pattern by walking from strip to strip.
func rowsFollow(t *testing.T, seed uint64, p plan.Plan) {
	t.Helper()
	widths := p.Job.Boards.Pitches()
	next := map[tape.Length]bool{} // pairs that follow each other, as low * big + high
	pair := func(a, b tape.Length) tape.Length { return a<<32 + b }
	for i, w := range widths {
		next[pair(w, widths[(i+1)%len(widths)])] = true
	}
	for _, a := range p.Lay.Runs {
		for _, b := range p.Lay.Runs {
			if a.High == b.Low && !next[pair(a.High-a.Low, b.High-b.Low)] {
				t.Errorf("floor %d: a row of %v after one of %v, pattern %v", seed, b.High-b.Low, a.High-a.Low, widths)
				return
			}
		}
		for _, id := range a.Pieces {
			if w := p.Lay.Boards[p.Lay.Pieces[id].Board].Width; w != a.High-a.Low {
				t.Errorf("floor %d: a board of %v in a row of %v", seed, w, a.High-a.Low)
				return
			}
		}
	}
}

// mixed is a room with the boards of an example told by layers: twice the
// length of 2 and 3 in as of 4 and 5 in.
func mixed() job.Job {
	j := roomJob(180, 152, 5, 0.75, 0.5, 0.75)
	j.Boards.Tally = nil
	for i, feet := range []int{280, 280, 140, 140} {
		w := stock.Boards{Face: tape.Length(2+i) * tape.Inch, Known: stock.Tallied}
		for l, sum := 20*tape.Inch, tape.Length(0); sum < tape.Length(feet)*tape.Foot; sum += l {
			l = 20*tape.Inch + (l*7+5*tape.Inch)%(60*tape.Inch)
			l = tape.Nearest(l, tape.Sixteenth)
			w.Tally = append(w.Tally, stock.Class{Length: l, Count: 1})
		}
		j.Boards.Widths = append(j.Boards.Widths, w)
	}
	settle(&j)
	return j
}

// The proposed pattern has 19 in to a turn, no row is ripped under the limit of
// its own board, and what is left over of each width is told.
func TestMixedWidths(t *testing.T) {
	p := made(t, mixed())
	if got := p.Layout.Courses(); got.Period() != in(19) || len(got.Widths) != 6 {
		t.Fatalf("rows of %v", got.Widths)
	}
	var left, turn bool
	for _, f := range p.Findings {
		left = left || f.Rule == "boards left over" && strings.Contains(f.Measured, `of 4" (`)
		turn = turn || f.Rule == "rows of several widths" && strings.Contains(f.Measured, `19" to a turn; proposed`)
	}
	if !left || !turn {
		t.Errorf("left over told: %v, pattern told: %v", left, turn)
	}
	for _, r := range p.Layout.Rips {
		if r.Narrowest < r.Limit || r.Limit != min(in(2), r.Width/2) && r.Width != in(5) {
			t.Errorf("%s: %v of %v, at least %v", r.Edge, r.Narrowest, r.Width, r.Limit)
		}
	}
	spare := map[tape.Length]int{}
	for _, c := range p.Lay.Spare {
		spare[c.Width] += c.Count
	}
	used := map[tape.Length]int{}
	for _, b := range p.Lay.Boards {
		used[b.Width]++
	}
	for _, w := range p.Job.Boards.Each() {
		if spare[w.Pitch()]+used[w.Pitch()] != len(w.Tally) {
			t.Errorf("boards of %v: %d used and %d left of %d", w.Face, used[w.Pitch()], spare[w.Pitch()], len(w.Tally))
		}
	}
}

// Too little of one width is told by its name, and what it would take.
func TestTooFewOfOneWidth(t *testing.T) {
	j := mixed()
	j.Boards.Pattern = []tape.Length{in(2), in(3), in(5)}
	j.Boards.Widths[3].Tally = j.Boards.Widths[3].Tally[:4]
	p := plan.MakeWithin(context.Background(), j, 0)
	var warned, stopped bool
	for _, f := range p.Findings {
		warned = warned || f.Level == finding.Warn && f.Where == `boards of 5"` && strings.Contains(f.Do, "missing")
		stopped = stopped || f.Rule == "boards run out" && f.Where == `rows of 5"`
		if f.Rule == "boards run out" && f.Where != `rows of 5"` {
			t.Error(f)
		}
	}
	if !warned || !stopped {
		t.Errorf("warned %v, stopped %v: %v", warned, stopped, p.Findings)
	}
}

// Rows that turn at a doorway, and frames, are refused with rows of several
// widths, by name.
func TestSeveralWidthsRefuseTurns(t *testing.T) {
	j := mixed()
	j.Sketch.Stays = []room.Stay{{Name: "hearth", Kind: room.Hearth, Meets: room.MeetsFlush, Frame: "mitred", Wall: room.Wall{"A", "B"}, From: "A", At: in(40), Width: in(48), Depth: in(18)}}
	p := plan.Rows(j)
	if !slices.ContainsFunc(p.Findings, func(f finding.Finding) bool {
		return f.Level == finding.Stop && f.Rule == "rows of several widths" && f.Where == "hearth"
	}) {
		t.Errorf("not refused: %v", p.Findings)
	}
}

// Pins bind the pattern too: a rip of a width at an edge, a full board there, a
// row edge on a corner.
func TestPinsOnSeveralWidths(t *testing.T) {
	for name, pin := range map[string]func(*job.Pins){
		"rip":  func(p *job.Pins) { p.Rip = job.Rip{At: "A-B", Width: in(1.75)} },
		"full": func(p *job.Pins) { p.FullBoard = "A-B" },
		"edge": func(p *job.Pins) { p.RowEdge = "B" },
	} {
		j := mixed()
		pin(&j.Pins)
		p := plan.MakeWithin(context.Background(), j, 0)
		for _, f := range p.Findings {
			if f.Level == finding.Stop {
				t.Errorf("%s: %s", name, f)
			}
		}
		for _, r := range p.Layout.Rips {
			if r.Edge != "wall A-B" {
				continue
			}
			if name == "rip" && r.Narrowest != in(1.75) || name == "full" && !r.Full() {
				t.Errorf("%s: %v of %v", name, r.Narrowest, r.Width)
			}
		}
		if y, c := p.Layout.Dir.ToRow(p.Built.At["B"]).Y, p.Layout.Courses(); name == "edge" && min(y-c.Below(y), c.Above(y)-y) > tape.Tick {
			t.Errorf("no row edge on the corner")
		}
	}
}
