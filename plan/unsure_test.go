package plan_test

import (
	"context"
	"math/rand/v2"
	"regexp"
	"strconv"
	"testing"

	"strake/job"
	"strake/lay"
	"strake/plan"
	"strake/stock"
	"strake/tape"
)

// cutRows counts the rows of a lay that end in a cut, and the others.
func cutRows(p plan.Plan) (cut, whole int) {
	for _, r := range p.Lay.Runs {
		if len(r.Pieces) == 0 {
			continue
		}
		end := p.Lay.Pieces[r.Pieces[len(r.Pieces)-1]].Right
		if !p.Lay.Zones[r.Zone].TongueRight() {
			end = p.Lay.Pieces[r.Pieces[0]].Left
		}
		if end == lay.Cut {
			cut++
		} else {
			whole++
		}
	}
	return
}

// toldNumber is the number that a finding of a rule begins with; 0 without one.
func toldNumber(p plan.Plan, rule string, says *regexp.Regexp) int {
	for _, f := range p.Findings {
		if m := says.FindStringSubmatch(f.Measured + " " + f.Do); f.Rule == rule && m != nil {
			n, _ := strconv.Atoi(m[1])
			return n
		}
	}
	return 0
}

var (
	endInACut  = regexp.MustCompile(`^(\d+) rows? end in a cut`)
	couldClose = regexp.MustCompile(`about (\d+) of them could close whole`)
	haveTo     = regexp.MustCompile(`^(\d+) rows? have to close`)
)

// What the findings say of rows cut for want of surety is what the lays show:
// how many, and how many fewer with a finer tally. Of a tally as fine as that
// nothing is said.
func TestLengthErrorIsToldAsItIs(t *testing.T) {
	with := func(readTo, slip tape.Length) plan.Plan {
		j := roomJob(180, 144, 5, 0.75, 0.5, 0.75)
		j.Boards.ReadTo, j.Boards.Slip = readTo, slip
		return plan.MakeWithin(context.Background(), j, 0)
	}
	rough, fine := with(tape.Eighth, tape.Sixteenth), with(tape.Inch/32, tape.Inch/64)
	cut, _ := cutRows(rough)
	if n := toldNumber(rough, "length error", endInACut); n == 0 || n > cut {
		t.Errorf("%d rows told to end in a cut, %d do", n, cut)
	}
	fewer, _ := cutRows(fine)
	if n := toldNumber(rough, "length error", couldClose); n != cut-fewer || n == 0 {
		t.Errorf("%d rows told to be saved; %d are cut, %d with the finer tally", n, cut, fewer)
	}
}

// Where boards are scarce some rows have to close whole for all that, no more
// than the boards ask for, and they are counted; with an untrusted tally none.
func TestScarceBoardsAreDaring(t *testing.T) {
	job := func() job.Job {
		j := roomJob(180, 60, 5, 0.75, 0.5, 0.75)
		j.Boards.Tally = nil
		rng := rand.New(rand.NewPCG(1, 2))
		for range 12 { // four boards that come to 178-1/4 in: a row, and nothing to spare
			left := in(178.25)
			for k := range 3 {
				l := in(24) + tape.Length(rng.IntN(160))*in(0.25)
				if k == 2 {
					l = max(in(24), left-in(60))
				}
				j.Boards.Tally, left = append(j.Boards.Tally, stock.Class{Length: l, Count: 1}), left-l
			}
			j.Boards.Tally = append(j.Boards.Tally, stock.Class{Length: left, Count: 1})
		}
		j.Boards.ReadTo, j.Boards.Slip = tape.Eighth, tape.Sixteenth
		return j
	}
	p := plan.MakeWithin(context.Background(), job(), 0)
	_, whole := cutRows(p)
	if n := toldNumber(p, "length error", haveTo); n != whole || n == 0 {
		t.Errorf("%d rows told to have to close whole, %d do", n, whole)
	}
	j := job()
	j.Boards.Doubted = true
	if _, whole := cutRows(plan.MakeWithin(context.Background(), j, 0)); whole > 0 {
		t.Errorf("%d rows close whole with a tally that is not trusted", whole)
	}
}
