package plan_test

import (
	"context"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"gonum.org/v1/gonum/stat/distuv"

	"strake/examples"
	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/limits"
	"strake/plan"
	"strake/room"
	"strake/stock"
	"strake/survey"
	"strake/tape"
)

// BenchmarkPlan is the whole of plan.Make, from readings to a checked lay, for
// each example and for the bench room.
func BenchmarkPlan(b *testing.B) {
	for _, e := range examples.List() {
		b.Run(strings.TrimSuffix(e.Name, ".yaml"), func(b *testing.B) { benchmark(b, exampleJob(b, e.Name)) })
	}
	b.Run("bench-room", func(b *testing.B) { benchmark(b, benchRoom(b, 3*tape.Inch/4, 3*tape.Inch/4)) })
	b.Run("bench-room-no-play", func(b *testing.B) { benchmark(b, benchRoom(b, 3*tape.Eighth, 0)) })
}

func benchmark(b *testing.B, j job.Job) {
	var p plan.Plan
	n := 0
	start := time.Now()
	for b.Loop() {
		p = plan.Make(context.Background(), j)
		n++
	}
	b.ReportMetric(float64(time.Since(start).Microseconds())/1000/float64(n), "ms/plan")
	b.ReportMetric(float64(len(p.Lay.Runs)), "runs")
	b.ReportMetric(float64(len(p.Lay.Boards)), "boards")
	for _, f := range p.Findings {
		if f.Level == finding.Stop {
			b.Fatal(f)
		}
	}
}

func exampleJob(tb testing.TB, name string) job.Job {
	data, err := examples.Read(name)
	if err != nil {
		tb.Fatal(err)
	}
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		tb.Fatal(err)
	}
	return j
}

// benchRoom is an invented room for measuring only: 383 sq ft of boards, 40
// rows of 5 in and 276 in long inside the least gaps. Its boards are 12 to
// 84 in long by a Beta(1.6, 2.2) curve, to 1/16 in, 1.10 times the need. With
// a gap of 3/4 in and a shoe of 3/4 in the gap range is [3/4, 1] in; with 3/8
// in and no shoe it is [3/8, 3/8].
func benchRoom(tb testing.TB, gap, shoe tape.Length) job.Job {
	j := job.Job{Name: "bench room", Unit: tape.UnitInch, Seed: 1, Base: tape.Inch / 2, Shoe: shoe, Limits: limits.Default(5*tape.Inch, 3*tape.Inch/4)}
	j.Limits.GapLeast = limits.Figure{Value: gap, Source: "bench"}
	j.Limits.JointPreferred.Value = 10 * tape.Inch
	j.Boards = stock.Boards{Face: 5 * tape.Inch, Thickness: 3 * tape.Inch / 4, SideTongue: tape.Inch / 4, EndTongue: tape.Inch / 4, Hand: stock.RightHand, Known: stock.Tallied}
	j.Wishes.Direction = room.Wall{"A", "B"}
	j.Sketch.Rooms = []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D"}}}
	w, h := 276*tape.Inch+2*gap, 200*tape.Inch+2*gap
	for _, r := range []struct {
		from, to string
		is       tape.Length
	}{{"A", "B", w}, {"B", "C", h}, {"C", "D", w}, {"D", "A", h}} {
		j.Readings = append(j.Readings, survey.Reading{From: r.from, To: r.to, Value: r.is, Step: tape.Sixteenth})
	}
	curve := distuv.Beta{Alpha: 1.6, Beta: 2.2, Src: rand.NewPCG(1, 2)}
	const need = 40 * 276 * tape.Inch
	for sum := tape.Length(0); sum < need*11/10; {
		l := tape.Nearest(12*tape.Inch+tape.Length(curve.Rand()*float64(72*tape.Inch)), tape.Sixteenth)
		j.Boards.Tally = append(j.Boards.Tally, stock.Class{Length: l, Count: 1})
		sum += l
	}
	return j
}

// The bench room is what it is said to be, and its plan holds.
func TestBenchRoom(t *testing.T) {
	p := plan.Make(context.Background(), benchRoom(t, 3*tape.Inch/4, 3*tape.Inch/4))
	if finding.Worst(p.Findings) == finding.Stop {
		t.Error(p.Findings)
	}
	if len(p.Layout.Runs) != 40 {
		t.Errorf("%d runs, want 40", len(p.Layout.Runs))
	}
	for _, r := range p.Layout.Runs {
		if off := (r.Length() - 276*tape.Inch).Abs(); off > tape.Sixteenth {
			t.Errorf("row %d is %v long, want 276 in", r.Row, r.Length())
		}
	}
	var area tape.Area
	for _, piece := range p.Lay.Pieces {
		area += piece.Outline.Area2()
	}
	if sqft := (area / 2).SquareFeet(); sqft < 382 || sqft > 384 {
		t.Errorf("%.1f sq ft of boards, want 383", sqft)
	}
}
