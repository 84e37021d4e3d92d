package plan_test

import (
	"context"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"strake/check"
	"strake/finding"
	"strake/jobfile"
	"strake/lay"
	"strake/limits"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// slanted is a store 20 ft long, 15 ft wide at one end and 15 ft 2 in at the
// other, rows along wall A-B: 2 in over 20 ft, and a play of 1/4 in.
const slanted = `strake: 1
rooms: {store: {corners: [A, B, C, D]}}
readings: {A-B: 240, B-C: 182, C-D: 240-1/16, D-A: 180, A-C: 301-3/16, B-D: 300}
wishes: {rows_along: A-B}
boards: {face: 5, thickness: 3/4, lengths: {mix: {least: 12, most: 84, mean: 42}}}
base: 1/2
shoe: 3/4
`

func slantedPlan(t *testing.T, pins string) plan.Plan {
	t.Helper()
	j, _, err := jobfile.ReadJob("slanted", []byte(slanted+pins))
	if err != nil {
		t.Fatal(err)
	}
	return plan.MakeWithin(context.Background(), j, 0)
}

// widths are those of a piece at its two ends.
func widths(p lay.Piece) (left, right tape.Length) {
	lo, hi := p.Outline.Box()
	at := func(x tape.Length, leftwards bool) tape.Length {
		var w tape.Length
		for _, s := range (plane.Region{p.Outline}).Section(x, leftwards) {
			w += s.Len()
		}
		return w
	}
	return at(lo.X, false), at(hi.X, true)
}

// Left to itself each piece of the last row that the trim lets be is ripped to
// one width, and a longer one tapers; stepped by a pin each is, and how far the
// last step shows is told: a board of 30 in gains 1/4 in on the wall, the play.
func TestSteppedByAPin(t *testing.T) {
	for _, pinned := range []bool{false, true} {
		pins := ""
		if pinned {
			pins = "pins: {stepped_at: D-C}\n"
		}
		p := slantedPlan(t, pins)
		last := p.Lay.Runs[len(p.Lay.Runs)-1]
		tapers, most := 0, tape.Length(0)
		for _, id := range last.Pieces {
			q := p.Lay.Pieces[id]
			lo, hi := q.Outline.Box()
			long := hi.X - lo.X
			if l, r := widths(q); (l - r).Abs() > 1 {
				tapers++
				if long < in(29) {
					t.Errorf("a piece of %v tapers", long)
				}
			} else if !pinned && long > in(31) && l < in(5) {
				t.Errorf("a piece of %v is ripped to one width", long)
			}
			most = max(most, long)
		}
		shown := tape.Length(0)
		for _, f := range p.Findings {
			if f.Level == finding.Stop {
				t.Errorf("pinned %v: %v", pinned, f)
			}
		}
		for _, x := range p.Lay.Exempt {
			if x.Rule == "cover" && x.Edge == "wall C-D" {
				shown = x.To - in(1) // what base and shoe cover
			}
		}
		if pinned != (tapers == 0) || pinned != (shown > 0) {
			t.Errorf("pinned %v: %d pieces taper, a step shows by %v", pinned, tapers, shown)
		}
		if limit := tape.Length(float64(most)*2/240) - in(0.25) + in(0.05); pinned && shown > limit {
			t.Errorf("a step shows by %v, the longest piece of %v makes no more than %v", shown, most, limit)
		}
		if told := slices.ContainsFunc(p.Findings, func(f finding.Finding) bool {
			return f.Rule == "cover" && strings.HasPrefix(f.Do, "A step shows by up to")
		}); told != pinned {
			t.Errorf("pinned %v: told %v", pinned, told)
		}
	}
}

// The checker takes the exemption for the job's pin alone, for no more than it
// says, and finds a tapered piece at fault where the pin stands.
func TestSteppedIsHeld(t *testing.T) {
	p := slantedPlan(t, "pins: {stepped_at: C-D}\n")
	holds := func(l lay.Lay, pins []lay.Pin) []string {
		var rules []string
		for _, f := range check.Lay(l, p.Floor, p.Job.Limits, p.Job.Boards, pins...) {
			if f.Level == finding.Stop {
				rules = append(rules, f.Rule)
			}
		}
		return rules
	}
	if got := holds(p.Lay, p.Pins); len(got) > 0 {
		t.Errorf("the lay itself: %v", got)
	}
	l := p.Lay
	l.Pins = nil
	if got := holds(l, nil); !slices.Contains(got, "cover") {
		t.Errorf("without the pin: %v", got)
	}
	l = p.Lay
	l.Exempt = slices.Clone(l.Exempt)
	for i := range l.Exempt {
		if l.Exempt[i].Rule == "cover" {
			l.Exempt[i].To -= in(0.05)
		}
	}
	if got := holds(l, p.Pins); !slices.Contains(got, "cover") {
		t.Errorf("farther off than it says: %v", got)
	}
	free := slantedPlan(t, "")
	l = free.Lay
	l.Pins = p.Pins
	if got := holds(l, p.Pins); !slices.Contains(got, "pin") {
		t.Errorf("with tapered pieces: %v", got)
	}
}

// In a room like a C two walls face the same way, one behind the other: steps at
// the far one are measured from it, not from the one abreast of it.
func TestStepsAreMeasuredFromTheirOwnWall(t *testing.T) {
	p := planText(t, `strake: 1
rooms: {cee: {corners: [A, B, C, D, E, F, G, H], into: [D, E]}}
readings: {A-B: 240, A-C: 247-3/8, A-D: 117-15/16, A-E: 154-3/4, A-F: 268-5/16, A-G: 300, A-H: 183, B-C: 60, B-D: 153-3/8, B-E: 183, B-F: 120, B-G: 180, B-H: 301-13/16, C-D: 140, C-E: 151-5/8, C-F: 60, C-G: 120, C-H: 269-7/16, D-E: 55-1/2, D-F: 151-3/8, D-G: 182-15/16, D-H: 156-13/16, E-F: 140, E-G: 153-1/16, E-H: 119-5/16, F-G: 60, F-H: 248-3/16, G-H: 240}
wishes: {rows_along: A-B}
boards: {face: 5, thickness: 3/4, lengths: {mix: {least: 12, most: 84, mean: 42}}}
base: 1/2
shoe: 3/4
pins: {stepped_at: G-H}
`)
	for _, x := range p.Lay.Exempt {
		if x.Rule == "cover" && (x.Edge != "wall G-H" || x.To > in(2.25)) {
			t.Errorf("%v", x)
		}
	}
	for _, f := range p.Findings {
		if f.Level == finding.Stop {
			t.Error(f)
		}
	}
}

// Random rooms out of parallel hold with their last row stepped.
func TestSteppedRooms(t *testing.T) {
	n := floorCount(10)
	for seed := range uint64(n) {
		f := floors{rand.New(rand.NewPCG(seed, 808))}
		j := f.job(seed)
		j.Sketch, j.Readings, j.Boards.Tally, j.Limits.NarrowestRip = room.Sketch{}, nil, nil, limits.Default(j.Boards.Face, j.Boards.Thickness).NarrowestRip
		w, h := f.mm(2500, 6500), f.mm(2000, 4500)
		s := shape{at: []plane.XY{{X: 0, Y: 0}, {X: w, Y: 0}, {X: w, Y: h + f.mm(-40, 40)}, {X: 0, Y: h}}}
		f.addRoom(&j, "store", "", s)
		f.stock(&j, s)
		j.Wishes.Direction, j.Wishes.Across, j.Pins.Stepped = room.Wall{"A", "B"}, false, room.Wall{"C", "D"}
		p := plan.MakeWithin(context.Background(), j, light/20)
		for _, x := range p.Findings {
			if x.Level == finding.Stop {
				t.Errorf("room %d: %v", seed, x)
			}
		}
	}
}

// A stepped closing row is a candidate of its own where a wall is out of
// parallel, told with the step of the longest board: 84 in on 2 in in 20 ft make
// 0.7 in, of which the play of 1/4 in hides its part.
func TestSteppedIsACandidate(t *testing.T) {
	p := slantedPlan(t, "")
	c := plan.Choose(p.Job)
	i := slices.IndexFunc(c.Candidates, func(k row.Candidate) bool { return k.Variant == row.Stepped })
	if i < 0 {
		t.Fatal("no stepped row is offered")
	}
	for _, x := range c.Candidates[i].Score.Tapers {
		share := 1.0
		if len(c.Candidates[i].Score.Tapers) == 2 { // halfway between the walls
			share = 0.5
		}
		if want := in(0.7 * share); !x.Stepped || (x.Step-want).Abs() > in(0.02) || (x.Over-max(0, x.Step-in(0.25))).Abs() > 10 {
			t.Errorf("%s: step %v, %v shows", x.Edge, x.Step, x.Over)
		}
	}
	if x := c.Candidates[0].Score.Tapers[0]; x.Stepped || (x.Fits-in(30)).Abs() > in(1) {
		t.Errorf("left to itself: %+v", x)
	}
	j, _, err := jobfile.ReadJob("slanted", []byte(slanted+"pins: {stepped_at: C-D}\n"))
	if err != nil {
		t.Fatal(err)
	}
	if x := plan.Choose(j).Candidates[0].Score.Tapers[0]; !x.Stepped {
		t.Errorf("pinned: %+v", x)
	}
	square := made(t, roomJob(240, 180, 5, 0.75, 0.5, 0.75))
	for _, k := range plan.Choose(square.Job).Candidates {
		if k.Variant == row.Stepped {
			t.Errorf("a square room: %s", k.Name)
		}
	}
}
