package plan_test

import (
	"slices"
	"strings"
	"testing"

	"strake/check"
	"strake/finding"
	"strake/job"
	"strake/lay"
	"strake/plan"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// Each pin alone is kept, also where it leaves a sliver; the lay then names the
// edge as exempt by that pin, the plan says so, and the checker, which has the
// pins from the job, finds the lay of any other start at fault.
func TestEachPinIsKept(t *testing.T) {
	free := made(t, roomJob(180, 143, 5, 0.75, 0.5, 0.5))
	for _, tt := range []struct {
		name string
		pin  func(*job.Pins)
		kept func(plan.Plan) bool
	}{
		{"rip", func(p *job.Pins) { p.Rip = job.Rip{At: "B-A", Width: in(1)} }, func(p plan.Plan) bool { return pinnedRip(p, "wall A-B") == in(1) }},
		{"full board", func(p *job.Pins) { p.FullBoard = "C-D" }, func(p plan.Plan) bool { return pinnedRip(p, "wall C-D") == in(5) }},
		{"row edge", func(p *job.Pins) { p.RowEdge = "M" }, func(p plan.Plan) bool { return onLine(p, "M") }},
		{"spline", func(p *job.Pins) { p.Spline = "M" }, func(p plan.Plan) bool {
			return onLine(p, "M") && len(p.Layout.Splines) == 1 && (p.Layout.Splines[0].Y-p.Aligned.Dir.ToRow(p.Built.At["M"]).Y).Abs() <= 1
		}},
		{"tongues", func(p *job.Pins) { p.Tongues = room.Wall{"A", "B"} }, func(p plan.Plan) bool { return p.Layout.Dir.X < 0 }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := roomJob(180, 143, 5, 0.75, 0.5, 0.5)
			j.Sketch.Points = []room.Point{{Name: "M", Wall: room.Wall{"B", "C"}, From: "B", At: in(61.3)}}
			tt.pin(&j.Pins)
			p := made(t, j)
			if !tt.kept(p) {
				t.Errorf("not kept: offset %v, rips %v", p.Layout.Offset, p.Layout.Rips)
			}
			narrow := slices.IndexFunc(p.Layout.Rips, func(r row.Rip) bool { return r.Narrowest < j.Limits.NarrowestRip.Value }) >= 0
			named := slices.ContainsFunc(p.Lay.Exempt, func(x lay.Exemption) bool { return x.Pin != "" })
			if narrow != named {
				t.Errorf("a sliver: %v; an edge exempt by the pin: %v", narrow, named)
			}
			fs := check.Lay(free.Lay, p.Floor, j.Limits, j.Boards, p.Pins...)
			if !slices.ContainsFunc(fs, func(f finding.Finding) bool { return f.Rule == "pin" && f.Measured != "" && f.Level >= finding.Warn }) {
				t.Errorf("the lay without the pin passes: %v", fs)
			}
		})
	}
}

// Two pins that cannot both hold: the first is kept, the other reported.
func TestPinsThatDisagree(t *testing.T) {
	j := roomJob(180, 143, 5, 0.75, 0.5, 0.5)
	j.Pins.Rip = job.Rip{At: "A-B", Width: in(3)}
	j.Pins.FullBoard = "A-B"
	p := made(t, j)
	if got := pinnedRip(p, "wall A-B"); got != in(3) {
		t.Errorf("the first pin is not kept: %v", got)
	}
	if !slices.ContainsFunc(p.Findings, func(f finding.Finding) bool {
		return f.Rule == "pin" && strings.Contains(f.Where, "full board") && strings.Contains(f.Do, "Both cannot hold")
	}) {
		t.Error("the second is not reported")
	}
}

func pinnedRip(p plan.Plan, edge string) tape.Length {
	for _, r := range p.Layout.Rips {
		if r.Edge == edge {
			return r.Narrowest
		}
	}
	return 0
}

func onLine(p plan.Plan, corner string) bool {
	d := (p.Aligned.Dir.ToRow(p.Built.At[corner]).Y - p.Layout.Offset) % p.Layout.Pitch
	return d.Abs() <= 1 || (d.Abs()-p.Layout.Pitch).Abs() <= 1
}

// A row that is pinned to boards has them, in that order, and the rest of the
// floor is racked round it; boards that are not there are told of.
func TestBoardsOfARowArePinned(t *testing.T) {
	for _, backwards := range []bool{false, true} {
		j := roomJob(180, 143, 5, 0.75, 0.5, 0.5)
		if backwards { // the first rows lie in the middle, row 5 is laid backwards
			j.Wishes.Middle = true
		}
		want := []tape.Length{in(45.5), in(61.25), in(14), in(71.75)}
		for i := range want { // such as the tally has
			best := j.Boards.Tally[0].Length
			for _, c := range j.Boards.Tally {
				if (c.Length - want[i]).Abs() < (best - want[i]).Abs() {
					best = c.Length
				}
			}
			want[i] = best
		}
		j.Pins.Boards = map[string][]tape.Length{"5": want}
		p := made(t, j)
		for _, r := range p.Lay.Runs {
			if r.Row != 5 {
				continue
			}
			if len(r.Pieces) != len(want) {
				t.Fatalf("row 5 has %d pieces", len(r.Pieces))
			}
			for i, id := range r.Pieces {
				q := p.Lay.Pieces[id]
				if got := p.Lay.Boards[q.Board].Length; got != want[i] {
					t.Errorf("piece %d is of a board of %v, want %v", i+1, got, want[i])
				}
				if p.Lay.Zones[r.Zone].Ahead < 0 != backwards {
					t.Errorf("row 5 is laid ahead: %v", !backwards)
				}
			}
		}
		told := 0
		for _, f := range p.Findings {
			if f.Rule == "pin" && f.Where == "boards of row 5" && strings.HasPrefix(f.Do, "Kept") {
				told++
			}
		}
		if told != 1 {
			t.Errorf("the pin is told of %d times", told)
		}
	}
}

// A rip or a full board that is pinned at an ordinary wall, bowed or out of
// parallel by less than the play of its gap, stops no plan.
func TestPinsAtOrdinaryWalls(t *testing.T) {
	t.Parallel()
	for _, bow := range []float64{0.0625, 0.125, 0.1875} {
		for _, pin := range []job.Pins{{Rip: job.Rip{At: "A-B", Width: in(3)}}, {FullBoard: "A-B"}, {Rip: job.Rip{At: "C-D", Width: in(3)}}} {
			j := roomJob(180.3, 143, 5, 0.75, 0.5, 0.5)
			for i, r := range j.Readings {
				if r.From == "D" {
					j.Readings[i].Value += in(0.1875)
				}
			}
			for _, w := range []room.Wall{{"A", "B"}, {"C", "D"}} {
				j.Sketch.Rooms[0].Bows = append(j.Sketch.Rooms[0].Bows, room.Bow{Wall: w, From: w[0], At: in(71.3), Out: in(bow)})
			}
			j.Pins = pin
			made(t, j)
		}
	}
}

// A rip that is wider than every row is told of.
func TestRipPinWiderThanTheRows(t *testing.T) {
	j := roomJob(180, 143, 5, 0.75, 0.5, 0.5)
	j.Pins.Rip = job.Rip{At: "A-B", Width: in(6)}
	for _, f := range plan.Rows(j).Findings {
		if f.Rule == "pin" && strings.Contains(f.Do, "No row is that wide") {
			return
		}
	}
	t.Error("nothing is said")
}
