package plan_test

import (
	"context"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"strake/finding"
	"strake/floor"
	"strake/job"
	"strake/jobfile"
	"strake/lay"
	"strake/plan"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// asLaid writes the rows of a lay down as they would be once laid: their pieces
// from left to right, and the gap that each begins at.
func asLaid(p plan.Plan) []job.Laid {
	var out []job.Laid
	for _, r := range p.Lay.Runs {
		z := p.Lay.Zones[r.Zone]
		if z.Kind != lay.Field || len(r.Pieces) == 0 {
			continue
		}
		l := job.Laid{Row: rowNamed(r)}
		for _, k := range r.Pieces {
			lo, hi := p.Lay.Pieces[k].Outline.Box()
			l.Pieces = append(l.Pieces, hi.X-lo.X)
		}
		if gap, ok := leftGap(p, r, z); ok {
			l.Start = job.Read{Told: true, At: gap}
		}
		out = append(out, l)
	}
	return out
}

func rowNamed(r lay.Run) string { return rowOf(r.Row, r.Part) }

func rowOf(row, part int) string {
	s := strconv.Itoa(row)
	if part > 0 {
		s += string(rune('a' + part - 1))
	}
	return s
}

// leftGap is the gap at the left end of a run, square to the edge it comes to.
func leftGap(p plan.Plan, r lay.Run, z lay.Zone) (tape.Length, bool) {
	run, part := planned(p, r)
	for _, e := range part.Edges {
		if e.Name != run.Left.Edge || e.To.Y >= e.From.Y || e.To.Y > run.High || e.From.Y < run.Low {
			continue
		}
		lo, _ := p.Lay.Pieces[r.Pieces[0]].Outline.Box()
		d := e.To.Sub(e.From)
		along := float64(lo.X - run.Left.Reach)
		return e.Range.Least + tape.Length(math.Round(along*math.Abs(float64(d.Y))/math.Hypot(float64(d.X), float64(d.Y)))), true
	}
	return 0, false
}

// planned is the run of the layout that a run of the lay fills, and the floor
// that it was laid out on.
func planned(p plan.Plan, r lay.Run) (row.Run, floor.Aligned) {
	f := p.Field(p.FieldOf(r.Zone))
	i := slices.IndexFunc(f.Layout.Runs, func(q row.Run) bool { return q.Row == r.Row && q.Part == r.Part })
	return f.Layout.Runs[i], f.Part
}

// holdsAsLaid wants that a lay made by the planner, written down as laid,
// breaks no limit but where the lay says that it had to.
func holdsAsLaid(t *testing.T, name string, p plan.Plan) {
	t.Helper()
	p.Job.Laid = asLaid(p)
	excused := map[string]bool{}
	for _, x := range p.Lay.Relaxed {
		for _, r := range p.Lay.Runs {
			if r.ID == x.Run {
				excused["row "+rowNamed(r)] = true
			}
		}
	}
	for _, g := range p.CheckLaid() {
		near := g.Rule == "joint distance" && slices.ContainsFunc(strings.Split(g.Where, " and "), func(s string) bool { return excused[s] })
		if g.Level == finding.Stop && !near {
			t.Errorf("%s: %v", name, g)
		}
	}
}

// Planned rows hold once laid; with one joint moved onto its neighbour, both
// rows are named.
func TestPlannedRowsHoldAsLaid(t *testing.T) {
	t.Parallel()
	moved := 0
	for seed := range uint64(floorCount(40)) {
		f := floors{rand.New(rand.NewPCG(seed, 11))}
		p := plan.MakeWithin(context.Background(), f.job(seed), light)
		if finding.Worst(p.Findings) == finding.Stop {
			continue
		}
		holdsAsLaid(t, p.Job.Name, p)
		if moveOne(t, p) {
			moved++
		}
	}
	if moved*8 < floorCount(40)*3 {
		t.Errorf("a joint was moved on %d floors only", moved)
	}
}

// A person reads to 1/16 in: rounded so, planned rows still hold.
func TestPlannedRowsHoldAsRead(t *testing.T) {
	t.Parallel()
	for seed := range uint64(floorCount(40)) {
		f := floors{rand.New(rand.NewPCG(seed, 11))}
		p := plan.MakeWithin(context.Background(), f.job(seed), light)
		if finding.Worst(p.Findings) == finding.Stop {
			continue
		}
		p.Job.Laid = asLaid(p)
		for i := range p.Job.Laid {
			l := &p.Job.Laid[i]
			for k, x := range l.Pieces {
				l.Pieces[k] = tape.Nearest(x, tape.Sixteenth)
			}
			l.Start.At = tape.Nearest(l.Start.At, tape.Sixteenth)
		}
		for _, g := range p.CheckLaid() {
			if g.Level == finding.Stop {
				t.Errorf("floor %d: %v", seed, g)
			}
		}
	}
}

// Whatever is written as laid, nothing panics, and every finding says enough.
func TestAnythingAsLaidIsToldOf(t *testing.T) {
	for seed := range uint64(60) {
		f := floors{rand.New(rand.NewPCG(seed, 12))}
		p := plan.Rows(f.job(seed))
		if finding.Worst(p.Findings) == finding.Stop {
			continue
		}
		length := func() tape.Length { return tape.Length(f.IntN(100_000)) * tape.Sixteenth / 50 }
		for _, r := range p.Layout.Runs {
			l := job.Laid{Row: rowNamed(lay.Run{Row: r.Row + f.IntN(2)*f.IntN(2), Part: r.Part}), Cut: []job.Cut{"", job.CutNone, job.CutBoth}[f.IntN(3)]}
			for range 1 + f.IntN(5) {
				l.Pieces = append(l.Pieces, 1+length())
			}
			wall := []room.Wall{{}, {"A", "B"}, {"B", "C"}, {"D", "A"}}
			l.Start = job.Read{Told: f.chance(0.7), At: length() - 50*tape.Inch, From: wall[f.IntN(4)]}
			l.Tongue = job.Read{Told: f.chance(0.7), At: length(), From: wall[f.IntN(4)]}
			p.Job.Laid = append(p.Job.Laid, l)
		}
		p.LaidJoints()
		for _, g := range p.CheckLaid() {
			if g.Rule == "" || g.Measured == "" || g.Do == "" && g.Level != finding.Note || strings.Contains(g.String(), "%!") {
				t.Fatalf("floor %d: a finding that says too little: %#v", seed, g)
			}
		}
	}
}

// So do rows that turn, that begin anew beyond a header, and backward ones.
func TestPlannedRowsOfTheCasesHoldAsLaid(t *testing.T) {
	files, err := filepath.Glob("../examples/cases/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatal(files, err)
	}
	fields, back := 0, 0
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		j, _, err := jobfile.ReadJob(name, data)
		if err != nil {
			t.Fatal(err)
		}
		p := plan.MakeWithin(context.Background(), j, light)
		holdsAsLaid(t, name, p)
		fields = max(fields, len(p.Fields))
		for _, z := range p.Lay.Zones {
			back += max(0, -z.Ahead)
		}
	}
	if fields < 2 || back == 0 {
		t.Errorf("%d fields at most and %d laid backwards: these cases prove nothing", fields, back)
	}
}

// moveOne moves the first joint of some row onto one of its neighbour, and
// tells whether there was such a row.
func moveOne(t *testing.T, p plan.Plan) bool {
	t.Helper()
	for i, a := range p.Lay.Runs {
		for k, b := range p.Lay.Runs {
			if a.High != b.Low || a.Zone != b.Zone || len(a.Pieces) < 2 || len(b.Pieces) < 2 {
				continue
			}
			x, _ := p.Lay.Pieces[a.Pieces[1]].Outline.Box()
			y, _ := p.Lay.Pieces[b.Pieces[1]].Outline.Box()
			by := x.X - y.X
			p.Job.Laid = asLaid(p)
			la, lb := named(p.Job.Laid, a), named(p.Job.Laid, b)
			if p.Lay.Runs[i].Row == p.Lay.Runs[k].Row || lb.Pieces[0]+by <= 0 || lb.Pieces[1]-by <= 0 {
				continue
			}
			lb.Pieces[0] += by
			lb.Pieces[1] -= by
			fs := p.CheckLaid()
			if !slices.ContainsFunc(fs, func(g finding.Finding) bool {
				return g.Level == finding.Stop && g.Rule == "joint distance" && g.Where == "row "+la.Row+" and row "+lb.Row
			}) {
				t.Errorf("the joint of row %s moved onto one of row %s: %v", lb.Row, la.Row, fs)
			}
			return true
		}
	}
	return false
}

func named(ls []job.Laid, r lay.Run) *job.Laid {
	return &ls[slices.IndexFunc(ls, func(l job.Laid) bool { return l.Row == rowNamed(r) })]
}
