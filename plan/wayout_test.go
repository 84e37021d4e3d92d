package plan_test

import (
	"context"
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/job"
	"strake/plan"
	"strake/stock"
	"strake/tape"
)

var (
	boardsMore = regexp.MustCompile(`(\d+) boards? more of ([^,.]+)`)
	shorter    = regexp.MustCompile(`a shortest piece of (\S+) instead`)
)

// What is said to be enough where rows are not filled is enough: with so many
// boards more, or with so much shorter a shortest piece, a plan of the same job
// has boards for every row. One board less is not.
func TestWhatWouldDoDoes(t *testing.T) {
	t.Parallel()
	offered := map[string]int{}
	for seed := range uint64(12) {
		f := floors{rand.New(rand.NewPCG(seed, 404))}
		w, d := 60+f.Float64()*90, 40+f.Float64()*60
		j := roomJob(w, d, 5, 0.75, 0.5, 0.75)
		p := plan.Rows(j)
		j.Boards.Tally = nil
		var need, sum tape.Length
		for _, r := range p.Layout.Runs {
			need += r.Length()
		}
		stepped := seed%2 == 1 // few lengths, and enough of them: it is for their order that they do not fit
		part := tape.Length(90 + f.IntN(12))
		for sum < need*part/100 || stepped && sum < need {
			l := tape.Length(10+f.IntN(50)) * tape.Inch
			if stepped {
				l = tape.Length(12+18*f.IntN(3)) * tape.Inch
			}
			j.Boards.Tally, sum = append(j.Boards.Tally, stock.Class{Length: l, Count: 1}), sum+l
		}
		for _, x := range plan.MakeWithin(context.Background(), j, 0).Findings {
			if x.Rule != "boards run out" && x.Rule != "no way to fill a run" {
				continue
			}
			if m := boardsMore.FindStringSubmatch(x.Do); m != nil {
				offered["boards"]++
				n, _ := strconv.Atoi(m[1])
				l, err := tape.Parse(m[2], j.Unit)
				if err != nil {
					t.Fatalf("seed %d: %q: %v", seed, m[2], err)
				}
				if !fillsWith(j, l, n) {
					t.Errorf("seed %d: %d boards of %s more do not fill the floor", seed, n, l)
				}
				if n > 1 && fillsWith(j, l, n-1) {
					t.Errorf("seed %d: %d boards of %s more are said to be needed, %d fill it", seed, n, l, n-1)
				}
			}
			if m := shorter.FindStringSubmatch(x.Do); m != nil {
				offered["piece"]++
				l, err := tape.Parse(m[1], j.Unit)
				if err != nil {
					t.Fatalf("seed %d: %q: %v", seed, m[1], err)
				}
				k := j
				if k.Limits.ShortestPiece.Value = l; !fillsWith(k, 0, 0) {
					t.Errorf("seed %d: a shortest piece of %s does not fill the floor", seed, l)
				}
			}
		}
	}
	t.Logf("%v", offered)
	if offered["boards"] < 4 || offered["piece"] < 1 {
		t.Errorf("offered too seldom to be tested: %v", offered)
	}
}

// fillsWith tells whether a job with so many boards more has boards for every
// row.
func fillsWith(j job.Job, l tape.Length, n int) bool {
	if n > 0 {
		j.Boards.Tally = append(append([]stock.Class(nil), j.Boards.Tally...), stock.Class{Length: l, Count: n})
	}
	for _, x := range plan.MakeWithin(context.Background(), j, 0).Findings {
		if strings.HasPrefix(x.Rule, "unfilled") {
			return false
		}
	}
	return true
}
