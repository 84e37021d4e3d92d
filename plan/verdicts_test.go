package plan_test

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"strake/fasten"
	"strake/finding"
	"strake/job"
	"strake/lay"
	"strake/limits"
	"strake/plan"
	"strake/plane"
	"strake/ready"
	"strake/room"
	"strake/subfloor"
	"strake/tape"
)

// verdict is the one of a rule at a place.
func verdict(p plan.Plan, rule, where string) (ready.Verdict, bool) {
	for _, v := range p.Ready() {
		if v.Rule == rule && strings.HasPrefix(v.Where, where) {
			return v, true
		}
	}
	return ready.Verdict{}, false
}

// What the job does not tell is not judged, and what it tells does not keep
// anybody from planning: the papers are made, with a stop among the findings.
func TestVerdictsOfAPlan(t *testing.T) {
	j := roomJob(180, 143, 5, 0.75, 0.5, 0.75)
	if fs := made(t, j).ReadyFindings(); len(fs) != 0 {
		t.Errorf("of nothing told: %v", fs)
	}
	if v, ok := verdict(made(t, j), "subfloor", ""); !ok || v.Say != ready.Look {
		t.Error("a subfloor that nobody looked at is not asked for")
	}
	j.Subfloor = job.Subfloor{On: subfloor.OnWood, Built: 1962, Layers: []subfloor.Layer{{Material: subfloor.Sheet}, {Material: subfloor.Plywood, Thickness: in(.75)}}}
	j.Joists = job.Joists{Along: room.Wall{"A", "B"}, Spacing: in(16)}
	p := plan.Make(context.Background(), j)
	if v, ok := verdict(p, "layer under the floor", ""); !ok || !v.Holds || finding.Worst(p.Findings) != finding.Stop || len(p.Lay.Pieces) == 0 {
		t.Errorf("%+v with %d pieces", v, len(p.Lay.Pieces))
	}
	if v, ok := verdict(p, "rows along the joists", ""); !ok || v.Say != ready.Fix {
		t.Error("rows along the joists are not told")
	}
	if v, _ := verdict(p, "panel over joists", ""); v.Say != ready.Go {
		t.Errorf("3/4 in plywood over joists 16 in apart: %+v", v)
	}
	j.Joists.Along = room.Wall{"B", "C"}
	if _, ok := verdict(plan.Make(context.Background(), j), "rows along the joists", ""); ok {
		t.Error("rows across the joists are told")
	}
}

// Corner A lies at 0, 0 and wall A-B along the X axis: what falls into a
// rectangle set out from it is counted here from the places alone, and the same
// rectangle set out from the other corner, or from the wall across, holds the same.
func TestKeepFree(t *testing.T) {
	j := roomJob(180, 143, 5, 0.75, 0.5, 0.75)
	ab, cd := room.Wall{"A", "B"}, room.Wall{"C", "D"}
	j.KeepFree = []job.KeepFree{
		{Name: "a", What: "pipe", Wall: ab, From: "A", At: in(20), Off: in(30), Width: in(70), Depth: in(11)},
		{Name: "b", What: "pipe", Wall: ab, From: "B", At: in(90), Off: in(30), Width: in(70), Depth: in(11)},
		{Name: "c", What: "pipe", Wall: cd, From: "D", At: in(20), Off: in(102), Width: in(70), Depth: in(11)},
	}
	p := made(t, j)
	_, u, _ := p.Nailing().Use()
	want := 0
	for _, x := range fasten.Places(p.Lay, u) {
		d := p.Lay.Zones[0].Dir
		a, b := d.FromRow(x.At), d.FromRow(x.Tip)
		ox, oy := p.Built.At["A"].X, p.Built.At["A"].Y
		y0, y1 := math.Min(a.Y, b.Y)-oy, math.Max(a.Y, b.Y)-oy
		if x := a.X - ox; x >= 20*25.4 && x <= 90*25.4 && y1 >= 30*25.4 && y0 <= 41*25.4 {
			want++
		}
	}
	for _, name := range []string{"a", "b", "c"} {
		v, ok := verdict(p, "keep free of fasteners", name)
		if s := fmt.Sprintf("pipe: %d fasteners", want); !ok || want == 0 || !strings.HasPrefix(v.Measured, s) {
			t.Errorf("%s: %+v, want %s", name, v, s)
		}
	}
}

// The marks of a grid lie where the job sets them out, from either corner.
func TestMarksOfHeights(t *testing.T) {
	j := roomJob(180, 143, 5, 0.75, 0.5, 0.75)
	for from, first := range map[string]plane.XY{"A": {X: 10, Y: 7}, "B": {X: 170, Y: 7}} {
		j.Subfloor = job.Subfloor{On: subfloor.OnWood, Heights: job.Heights{Wall: room.Wall{"A", "B"}, From: from, At: in(10), Off: in(7),
			Grid: subfloor.Grid{Step: in(12), Cols: 5, Rows: 4, Height: make([]tape.Length, 20)}}}
		j.Subfloor.Heights.Height[7] = -in(1)
		p := plan.Rows(j)
		marks, w := p.Heights()
		if len(marks) != 20 || !w.Flat {
			t.Fatalf("%d marks", len(marks))
		}
		way := 1.0
		if from == "B" {
			way = -1
		}
		a, b := p.Built.At["A"], p.Built.At["B"]
		u := b.Sub(a).Unit()
		for i, m := range marks {
			at := plane.XY{X: first.X + way*12*float64(i%5), Y: first.Y + 12*float64(i/5)}.Times(25.4)
			want := a.Add(u.Times(at.X)).Add(u.Left().Times(at.Y))
			if from == "B" { // measured back from B
				want = want.Add(u.Times(b.Sub(a).Len() - 180*25.4))
			}
			if m.At.Sub(want).Len() > 0.01 {
				t.Fatalf("from %s, mark %d at %v, want %v", from, i, m.At, want)
			}
			if (m.Change != 0) != (i == 7) || i == 7 && !m.Over {
				t.Errorf("mark %d: %+v", i, m)
			}
		}
	}
}

// On real floors each board has two fasteners at least, each of them in its own
// board, none too far from the next, and those of the nailer only where the plan
// has the nailer.
func TestFastenersOfRandomFloors(t *testing.T) {
	for seed := range uint64(floorCount(25)) {
		f := floors{rand.New(rand.NewPCG(seed, 78))}
		j := f.job(seed)
		p := plan.MakeWithin(context.Background(), j, 0)
		_, u, ok := p.Nailing().Use()
		if !ok || j.Limits == (limits.Limits{}) {
			t.Fatal("no schedule")
		}
		each := map[int]int{}
		run := map[int]lay.Run{}
		for _, r := range p.Lay.Runs {
			run[r.ID] = r
		}
		ps := fasten.Places(p.Lay, u)
		for _, x := range ps {
			each[x.Piece]++
			pc := p.Lay.Pieces[x.Piece]
			if pc.Outline.Where(x.At) < 0 {
				t.Errorf("floor %d: a fastener at %v, outside its board %v", seed, x.At, pc.Outline)
			}
			if x.By != lay.Nailer {
				continue
			}
			in := false
			for _, s := range run[pc.Run].Nailing {
				in = in || s.By == lay.Nailer && s.Along.From <= x.At.X && x.At.X <= s.Along.To
			}
			if !in {
				t.Errorf("floor %d: the nailer at %v, where there is no room for it", seed, x.At)
			}
		}
		for _, pc := range p.Lay.Pieces {
			lo, hi := pc.Outline.Box()
			if each[pc.ID] < 2 || each[pc.ID] < int((hi.X-lo.X)/u.Spacing)-1 {
				t.Errorf("floor %d: %d fasteners in a piece of %v", seed, each[pc.ID], hi.X-lo.X)
			}
		}
	}
}
