package setout_test

import (
	"context"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/setout"
	"strake/tape"
)

func planned(t *testing.T, name string) plan.Plan {
	t.Helper()
	data, err := examples.Read(name)
	if err != nil {
		t.Fatal(err)
	}
	return planOf(t, name, data)
}

func planOf(t *testing.T, name string, data []byte) plan.Plan {
	t.Helper()
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return plan.MakeWithin(context.Background(), j, 0)
}

// cabinets stand in three corners of a room and leave walls without a corner
// in sight; a column stands in the middle.
const cabinets = `strake: 1
rooms: {store: {corners: [A, B, C, D]}}
readings: {A-B: 200, B-C: 150, C-D: 200, D-A: 150, A-C: 250, B-D: 250}
stays:
  west run: {kind: cabinet, wall: D-A, from: D, at: 0, width: 100, depth: 24}
  tall box: {kind: cabinet, wall: D-A, from: A, at: 0, width: 14, depth: 24}
  east run: {kind: cabinet, wall: B-C, from: B, at: 0, width: 60, depth: 24}
  post: {kind: column, wall: A-B, from: A, at: 90, off: 70, width: 12, depth: 12}
doorways: {way in: {wall: B-C, from: C, at: 20, width: 32, thickness: 5, beyond: transition}}
boards: {face: 5, thickness: 3/4, lengths: {one: 60}}
base: 1/2
shoe: 3/4
`

// plans are those that every line is tried on.
func plans(t *testing.T) map[string]plan.Plan {
	out := map[string]plan.Plan{"cabinets": planOf(t, "cabinets", []byte(cabinets))}
	for _, n := range []string{"ferry-parlour", "ticket-office", "sail-loft"} {
		out[n] = planned(t, n)
	}
	files, err := filepath.Glob("../examples/cases/*.yaml")
	if err != nil || len(files) < 8 {
		t.Fatalf("%d case rooms: %v", len(files), err)
	}
	for _, n := range files {
		data, err := os.ReadFile(n)
		if err != nil {
			t.Fatal(err)
		}
		out[n] = planOf(t, n, data)
	}
	return out
}

// Each mark lies on the front of its row, as far from the place that it is
// taped from as told; its check is as long as told, crosses no wall and nothing
// that stands up, and would show an error; no mark lies behind something.
func TestLinesTapedOutAgain(t *testing.T) {
	for name, p := range plans(t) {
		lines, none := setout.Lines(p)
		if len(lines) < 2 {
			t.Errorf("%s: %d lines", name, len(lines))
		}
		for _, n := range none {
			if n.Why == "" {
				t.Errorf("%s: row %d has no line and no reason", name, n.Row)
			}
		}
		for _, l := range lines {
			for _, m := range []setout.Mark{l.Left, l.Right} {
				if !onFront(p, l.Row, m.Place()) {
					t.Errorf("%s row %d: a mark is off the row", name, l.Row)
				}
				if d := m.Place().Sub(m.From.Place()).Len() - m.At.Millimetres(); math.Abs(d) > 0.01 {
					t.Errorf("%s row %d: the tape is %.2f mm off", name, l.Row, d)
				}
				if m.Check.Name == "" {
					t.Errorf("%s row %d: %v has no check", name, l.Row, m)
					continue
				}
				if d := m.Place().Sub(m.Check.Place()).Len() - m.CheckAt.Millimetres(); math.Abs(d) > 0.01 {
					t.Errorf("%s row %d: the check is %.2f mm off", name, l.Row, d)
				}
				if s := shown(m); s < 0.39 {
					t.Errorf("%s row %d: an error of 1 in the mark shows as %.2f", name, l.Row, s)
				}
				if w := crossed(p, l.Room, m.Place(), m.Check.Place()); w != "" {
					t.Errorf("%s row %d: the check from %s crosses %s", name, l.Row, m.Check.Name, w)
				}
				for _, s := range p.Floor.Stays {
					if inside(s.Corners, m.Place()) && !onRing(s.Corners, m.Place()) {
						t.Errorf("%s row %d: a mark lies behind %s", name, l.Row, s.Name)
					}
				}
			}
			if w := crossed(p, l.Room, l.Left.Place(), l.Right.Place()); w != "" {
				t.Errorf("%s row %d: the line crosses %s", name, l.Row, w)
			}
		}
	}
}

// Each row that is set to a line has it, or a reason; and none is more than
// nine rows from the next in a plain room.
func TestStartLinesAreThere(t *testing.T) {
	for name, p := range plans(t) {
		lines, none := setout.Lines(p)
		for _, f := range p.AllFields() {
			for _, q := range f.Layout.Runs {
				if !q.First || f.Kind != "field" {
					continue
				}
				found := false
				for _, l := range lines {
					found = found || l.Start && l.Row == q.Row
					for _, s := range l.Sets {
						found = found || s.Row == q.Row
					}
				}
				for _, n := range none {
					found = found || n.Row == q.Row
				}
				if !found {
					t.Errorf("%s: row %d is set to a line that is not told", name, q.Row)
				}
			}
		}
	}
}

// Where cabinets hide the corners of a wall, the tape runs from a cabinet's
// corner or a jamb; past a column there are two lines.
func TestTapedFromWhatStays(t *testing.T) {
	p := planOf(t, "cabinets", []byte(cabinets))
	lines, _ := setout.Lines(p)
	froms, rows := map[string]bool{}, map[int]int{}
	for _, l := range lines {
		rows[l.Row]++
		for _, m := range []setout.Mark{l.Left, l.Right} {
			froms[m.From.Name] = true
			if m.From.Name == "A" || m.From.Name == "B" || m.From.Name == "D" {
				t.Errorf("row %d is taped from %s, which a cabinet hides", l.Row, m.From.Name)
			}
		}
	}
	for _, want := range []string{"tall box, corner at wall D-A nearer D", "way in, jamb nearer B", "west run, front corner nearer A", "post, corner away from wall A-B nearer A", "C"} {
		if !froms[want] {
			t.Errorf("nothing is taped from %q: %v", want, froms)
		}
	}
	if k := rows[lineRow(lines, "post")]; k != 2 {
		t.Errorf("%d lines in a row with the column in it", k)
	}
}

func lineRow(lines []setout.Line, on string) int {
	for _, l := range lines {
		if strings.HasPrefix(l.Right.On, "on "+on) {
			return l.Row
		}
	}
	return -1
}

func rowFront(p plan.Plan, row int) tape.Length {
	for _, r := range p.Layout.Runs {
		if r.Row == row {
			return r.Front()
		}
	}
	return 0
}

// onFront tells whether a place lies on a front of a row.
func onFront(p plan.Plan, row int, at plane.XY) bool {
	for _, f := range p.AllFields() {
		for _, r := range f.Layout.Runs {
			if r.Row == row && (f.Layout.Dir.ToRow(at).Y-r.Front()).Abs() <= 20 {
				return true
			}
		}
	}
	return false
}

// shown is how much of an error along the tape of a mark shows in its check.
func shown(m setout.Mark) float64 {
	u := m.Place().Sub(m.From.Place())
	if u.Len() < 1 {
		return 1
	}
	return math.Abs(u.Unit().Dot(m.Check.Place().Sub(m.Place()).Unit()))
}

// crossed is a wall of the room, or something that stands up, that lies across
// the way from a to b, a little off its two ends.
func crossed(p plan.Plan, name string, a, b plane.XY) string {
	u := b.Sub(a).Unit().Times(8)
	a, b = a.Add(u), b.Sub(u)
	for _, r := range p.Built.Rooms {
		if r.Name != name {
			continue
		}
		points, walls := p.Built.Outline(r)
		for i, c := range points {
			if cross(a, b, c, points[(i+1)%len(points)]) {
				return walls[i].String()
			}
		}
	}
	for _, s := range p.Built.Stays {
		if !s.StandsUp() {
			continue
		}
		for _, o := range p.Floor.Stays {
			for i, c := range o.Corners {
				if o.Name == s.Name && cross(a, b, c, o.Corners[(i+1)%len(o.Corners)]) {
					return s.Name
				}
			}
		}
	}
	return ""
}

// cross tells whether a to b passes c to d, by more than a touch.
func cross(a, b, c, d plane.XY) bool {
	side := func(p, q, r plane.XY) float64 { return q.Sub(p).Unit().Cross(r.Sub(p)) }
	return side(a, b, c)*side(a, b, d) < -1 && side(c, d, a)*side(c, d, b) < -1
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

// onRing tells whether q lies on a side of a ring, within 1 mm.
func onRing(ring []plane.XY, q plane.XY) bool {
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		u := b.Sub(a).Unit()
		if t := q.Sub(a).Dot(u); math.Abs(u.Cross(q.Sub(a))) < 1 && t > -1 && t < b.Sub(a).Len()+1 {
			return true
		}
	}
	return false
}

// The story stick counts whole row widths; a row that closes against the far
// wall has no front, and no mark.
func TestStick(t *testing.T) {
	p := planned(t, "sail-loft")
	ripped := 0
	for _, d := range setout.Sticks(p)[0].Ticks {
		if d.Ripped {
			ripped++
			continue
		}
		rows := d.Row - p.Layout.StartRow
		if rows < 0 { // laid backwards: its front is the far edge
			rows--
		}
		if d.At != tape.Length(rows)*p.Layout.Pitch {
			t.Errorf("row %d is %v from the first", d.Row, d.At)
		}
	}
	if ripped != 2 { // at the far wall, and in the doorway behind the start
		t.Errorf("%d rows without a front", ripped)
	}
}

// A line into an opening where the floor ends lies between its jambs.
func TestLinesIntoOpenings(t *testing.T) {
	p := planned(t, "ticket-office")
	n := 0
	for _, l := range setout.DoorLines(p) {
		for _, d := range p.Built.Doorways {
			if d.Name == l.Doorway && d.Beyond != room.BeyondRoom {
				n++
				if l.Through || l.Along || l.Near <= 0 || l.Near >= d.Width {
					t.Errorf("%+v", l)
				}
			}
		}
	}
	if n != 1 {
		t.Errorf("%d openings told", n)
	}
}
