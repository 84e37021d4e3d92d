package plan_test

import (
	"context"
	"math/rand/v2"
	"strings"
	"testing"

	"strake/finding"
	"strake/lay"
	"strake/plan"
	"strake/stock"
	"strake/tape"
)

// fixed gives a random floor boards of one length in a fixed pattern.
func (f floors) fixed(seed uint64) (p plan.Plan) {
	j := f.job(seed)
	j.Boards.Known, j.Boards.Tally = stock.OneSize, nil
	j.Boards.One = tape.Length(24+f.IntN(60)) * tape.Inch
	j.Boards.Shift = stock.Shift{Num: 1 + f.IntN(2), Den: 3 + f.IntN(3)}
	if f.chance(0.5) {
		j.Boards.Shift = stock.Shift{Length: tape.Length(8+f.IntN(10)) * tape.Inch}
	}
	return plan.MakeWithin(context.Background(), j, light)
}

// Whatever the floor, a fixed pattern passes the checker, and every joint lies
// on its grid but in rows that are named.
func TestFixedPatternOnAnyFloor(t *testing.T) {
	t.Parallel()
	laid, on, off, broken := 0, 0, 0, 0
	for seed := range uint64(floorCount(80)) {
		f := floors{rand.New(rand.NewPCG(seed, 21))}
		p := f.fixed(seed)
		for _, g := range p.Findings {
			if g.Level == finding.Stop && g.Rule != "narrowest rip" { // rips are no matter of boards
				t.Errorf("floor %d: %v", seed, g)
			}
		}
		if len(p.Lay.Pieces) == 0 {
			continue
		}
		laid++
		holdsAsLaid(t, p.Job.Name, p)
		named := map[string]bool{}
		for _, g := range p.Findings {
			if g.Rule == "pattern broken" {
				broken++
				for _, n := range strings.FieldsFunc(strings.TrimPrefix(strings.TrimPrefix(g.Where, "rows "), "row "), func(r rune) bool { return r == ',' || r == ' ' }) {
					named[n] = true
				}
			}
		}
		a, b := onPattern(t, p, named)
		on, off = on+a, off+b
	}
	if laid*16 < floorCount(80)*15 || on < 3*off || broken == 0 {
		t.Errorf("%d floors, %d joints on the pattern, %d off it, %d findings: the test proves little", laid, on, off, broken)
	}
}

// onPattern counts the joints on the grid and those off it; a row that is off
// it has to be named.
func onPattern(t *testing.T, p plan.Plan, named map[string]bool) (on, off int) {
	t.Helper()
	b := p.Job.Boards
	phase := map[int]tape.Length{}
	for _, r := range p.Lay.Runs {
		z := p.Lay.Zones[r.Zone]
		if z.Kind != lay.Field || len(r.Pieces) < 2 || named[rowNamed(r)] {
			off += max(0, len(r.Pieces)-1)
			continue
		}
		row := r.Low / z.Width
		if r.Low%z.Width < 0 {
			row--
		}
		by := row * b.Shift.Length
		if b.Shift.Den > 0 {
			by = row * b.One * tape.Length(b.Shift.Num) / tape.Length(b.Shift.Den)
		}
		for _, k := range r.Pieces[1:] {
			lo, _ := p.Lay.Pieces[k].Outline.Box()
			at := ((lo.X-by)%b.One + b.One) % b.One
			field := p.FieldOf(r.Zone)
			was, ok := phase[field]
			if !ok {
				phase[field], was = at, at
			}
			d := (at - was).Abs()
			if min(d, b.One-d) > 8 { // thirds of a board are no whole ticks
				t.Errorf("%s: row %s, a joint %v off the pattern, and the row is not named", p.Job.Name, rowNamed(r), min(d, b.One-d))
			}
			on++
		}
	}
	return
}

// Marked boards of one length lie in the pattern where they may lie: what is
// twisted or kept out nowhere, what is crooked in no first and no last row.
func TestFixedPatternOfMarkedBoards(t *testing.T) {
	laid := 0
	for seed := range uint64(floorCount(20)) {
		f := floors{rand.New(rand.NewPCG(seed, 22))}
		j := f.job(seed)
		one := tape.Length(30+f.IntN(40)) * tape.Inch
		j.Boards.Shift = stock.Shift{Num: 1, Den: 3}
		j.Boards.Tally = nil
		for _, fault := range stock.Faults {
			c := stock.Class{Length: one, Count: 5, Marks: stock.Marks{Fault: fault}}
			if fault == stock.SpoiledGroove || fault == stock.SpoiledTongue {
				c.Spoiled = 3 * tape.Inch
			}
			j.Boards.Tally = append(j.Boards.Tally, c) // before the sound ones: they come to hand first
		}
		j.Boards.Tally = append(j.Boards.Tally, stock.Class{Length: one, Count: 600})
		p := plan.MakeWithin(context.Background(), j, light)
		for _, g := range p.Findings {
			if g.Level == finding.Stop && g.Rule != "narrowest rip" || g.Level == finding.Warn && g.Rule == "faults of boards" {
				t.Errorf("floor %d: %v", seed, g)
			}
		}
		laid += len(p.Lay.Pieces)
	}
	if laid == 0 {
		t.Error("nothing was laid")
	}
}
