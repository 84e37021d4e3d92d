package plan_test

import (
	"math"
	"strings"
	"testing"

	"strake/finding"
	"strake/plan"
	"strake/room"
	"strake/stock"
	"strake/tape"
)

// The doubt of the last rip is that of the width across and, once for each row
// between, that of the row width: without a ten-board width far larger.
func TestDoubtOfTheLastRip(t *testing.T) {
	j := roomJob(180, 144, 5, 0.75, 0.5, 0.75)
	printed := lastRip(t, plan.Rows(j))
	j.Boards.TenBoards = in(50)
	measured := lastRip(t, plan.Rows(j))
	if measured == 0 || measured >= printed {
		t.Errorf("measured ten boards: %v, printed face: %v", measured, printed)
	}
	n := float64(28)
	least := n * j.Boards.PitchSD().Millimetres()
	if got := measured.Millimetres(); got < least || got > math.Hypot(least, 3) {
		t.Errorf("doubt %.2f mm, row width alone gives %.2f", got, least)
	}
}

func lastRip(t *testing.T, p plan.Plan) tape.Length {
	t.Helper()
	for _, r := range p.Layout.Rips {
		if !r.Above {
			return r.SD
		}
		if r.SD != 0 {
			t.Errorf("the rip at the start wall has a doubt of %v: it is set from that wall", r.SD)
		}
	}
	t.Fatal("no last rip")
	return 0
}

// A last rip that doubt may turn into nothing: the plan says so and what
// settles it.
func TestRowCountInDoubt(t *testing.T) {
	j := roomJob(180, 141.9, 5, 0.75, 0.5, 0.5)
	j.Boards.Known, j.Boards.Tally, j.Boards.One = stock.OneSize, nil, in(48)
	for _, f := range plan.Rows(j).Findings {
		if f.Rule == "number of rows in doubt" || f.Rule == "narrowest rip in doubt" {
			if !strings.Contains(f.Do, "ten boards") {
				t.Errorf("what settles it: %s", f.Do)
			}
			return
		}
	}
	t.Error("nothing says that a rip is in doubt")
}

// A wall that bows: within the play the row stays straight, beyond it it is
// scribed; the checker passes both.
func TestBowedWall(t *testing.T) {
	for _, c := range []struct {
		bow   float64
		level finding.Level
		do    string
	}{{0.2, finding.Note, "ripped straight"}, {0.6, finding.Warn, "Scribe"}, {-0.6, finding.Warn, "Scribe"}} {
		j := roomJob(180, 144, 5, 0.75, 0.5, 0.75)
		j.Sketch.Rooms[0].Bows = []room.Bow{
			{Wall: room.Wall{"C", "D"}, From: "C", At: in(60), Out: in(c.bow)},
			{Wall: room.Wall{"C", "D"}, From: "C", At: in(120), Out: in(c.bow)},
		}
		p := made(t, j)
		found := false
		for _, f := range p.Findings {
			if f.Rule == "wall that bows" {
				found = true
				if f.Level != c.level || !strings.Contains(f.Do, c.do) {
					t.Errorf("bow %g: %s", c.bow, f)
				}
			}
		}
		if !found {
			t.Errorf("bow %g is not told", c.bow)
		}
		last := p.Lay.Runs[len(p.Lay.Runs)-1]
		straight := true
		for _, k := range last.Pieces {
			straight = straight && len(p.Lay.Pieces[k].Outline) == 4
		}
		if straight != (c.level == finding.Note) {
			t.Errorf("bow %g: the last row's pieces have %v corners", c.bow, last.Outline)
		}
	}
}
