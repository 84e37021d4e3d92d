package plan_test

import (
	"context"
	"testing"

	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/plan"
	"strake/rack"
	"strake/tape"
)

// twoRooms are two rooms through an arch in whose depth the rows turn.
const twoRooms = `strake: 1
unit: in
rooms:
  a: {corners: [A, B, C, D], walk: counter-clockwise}
  b: {corners: [E, F, G, H], walk: counter-clockwise}
readings: {A-B: 100, B-C: 100, C-D: 100, D-A: 100, A-C: 141.42, B-D: 141.42, E-F: 100, F-G: 100, G-H: 100, H-E: 100, E-G: 141.42, F-H: 141.42}
doorways:
  arch: {wall: B-C, from: B, at: 30, width: 40, thickness: 5, rows: turn, beyond: {wall: H-E, from: E, at: 30}}
boards: {face: 5, thickness: 3/4, lengths: {mix: {least: 12, most: 84, mean: 40}}}
base: 1/2
shoe: 3/4
wishes: {rows_along: A-B}
`

// Rows are proposed beyond a doorway where rows turn too: what is laid of one
// field is not asked for again, and joints keep off the last row of the field
// that is gone on with, from where its first piece was read to begin.
func TestNextRowsOfAnyField(t *testing.T) {
	j, _, err := jobfile.ReadJob("two.yaml", []byte(twoRooms))
	if err != nil {
		t.Fatal(err)
	}
	p := plan.Rows(j)
	if len(p.Fields) != 2 {
		t.Fatalf("%d fields, want 2: %v", len(p.Fields), p.Findings)
	}
	last := func(k, i int) string {
		r := p.Fields[k].Layout.Runs[i]
		return rowOf(r.Row, r.Part)
	}
	in := tape.Inch
	end := len(p.Fields[0].Layout.Runs) - 1
	p.Job.Laid = []job.Laid{
		{Row: last(0, end), Pieces: []tape.Length{40 * in, 60 * in}},
		{Row: last(1, 0), Pieces: []tape.Length{30 * in, 40 * in, 20 * in}, Start: job.Read{Told: true, At: in}},
	}
	laid, fs := p.LaidJoints()
	if len(fs) > 0 {
		t.Fatal(fs)
	}
	var boards []plan.AtHand
	for l := 20 * in; l < 80*in; l += in {
		boards = append(boards, plan.AtHand{Length: l})
	}
	next := plan.Next(context.Background(), p, boards, laid, 2)
	if len(next) != 2 || !next[0].Filled {
		t.Fatalf("proposed %+v, want two rows", next)
	}
	order := rack.Order(p.Fields)
	if at := order[next[0].Run]; at.Field != 1 || at.Run != 1 {
		t.Errorf("the first row proposed is run %d of field %d, want the second of the second field", at.Run, at.Field)
	}
	from := p.Fields[1].Layout.Runs[0].Left.Reach + in/4 // an inch of gap, of which 3/4 in is the least
	for _, q := range next[0].Pieces[1:] {
		for _, x := range []tape.Length{from + 30*in, from + 70*in} {
			if d := (q.Start - x).Abs(); d < p.Job.Limits.JointMin.Value {
				t.Errorf("a joint lies %v from one laid", d)
			}
		}
	}
	p.Job.Laid = append(p.Job.Laid, job.Laid{Row: "99", Pieces: []tape.Length{in}})
	if _, fs := p.LaidJoints(); finding.Worst(fs) != finding.Stop {
		t.Errorf("row 99 is not told of: %v", fs)
	}
}
