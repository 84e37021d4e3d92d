package setout_test

import (
	"context"
	"math"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/plan"
	"strake/plane"
	"strake/setout"
	"strake/tape"
)

func planned(t *testing.T, name string) plan.Plan {
	t.Helper()
	data, err := examples.Read(name)
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return plan.Make(context.Background(), j)
}

// Taped out again from the corners, both marks lie on the front of their row,
// the diagonal is theirs, and no mark is behind the hearth.
func TestLinesTapedOutAgain(t *testing.T) {
	for _, name := range []string{"ferry-parlour", "ticket-office", "sail-loft"} {
		p := planned(t, name)
		lines := setout.Lines(p)
		if len(lines) < 3 {
			t.Errorf("%s: %d lines", name, len(lines))
		}
		for _, l := range lines {
			a, b := taped(p, l.Left), taped(p, l.Right)
			for _, xy := range []plane.XY{a, b} {
				if d := p.Aligned.Dir.ToRow(xy).Y - rowFront(p, l.Row); d.Abs() > 20 {
					t.Errorf("%s row %d: a mark is %v off the row", name, l.Row, d)
				}
			}
			from := p.Built.At[l.Left.From]
			if d := b.Sub(from).Len() - l.Check.Millimetres(); math.Abs(d) > 0.01 {
				t.Errorf("%s row %d: the diagonal is %.2f mm off", name, l.Row, d)
			}
			for _, s := range p.Floor.Stays {
				if inside(s.Corners, a) || inside(s.Corners, b) {
					t.Errorf("%s row %d: a mark lies behind %s", name, l.Row, s.Name)
				}
			}
		}
	}
}

func rowFront(p plan.Plan, row int) tape.Length {
	for _, r := range p.Layout.Runs {
		if r.Row == row {
			return r.Front()
		}
	}
	return 0
}

// taped is a mark set out from its corner along its wall.
func taped(p plan.Plan, m setout.Mark) plane.XY {
	other := m.Wall[0]
	if other == m.From {
		other = m.Wall[1]
	}
	a, b := p.Built.At[m.From], p.Built.At[other]
	return a.Add(b.Sub(a).Unit().Times(m.At.Millimetres()))
}

func inside(ring []plane.XY, q plane.XY) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y > q.Y) != (b.Y > q.Y) && q.X < a.X+(q.Y-a.Y)*(b.X-a.X)/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}

// The story stick counts whole row widths.
func TestStick(t *testing.T) {
	p := planned(t, "sail-loft")
	for _, d := range setout.Stick(p.Field(0)) {
		rows := d.Row - p.Layout.StartRow
		if rows < 0 { // laid backwards: its front is the far edge
			rows--
		}
		if d.At != tape.Length(rows)*p.Layout.Pitch {
			t.Errorf("row %d is %v from the first", d.Row, d.At)
		}
	}
}
