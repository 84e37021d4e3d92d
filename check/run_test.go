package check

import (
	"math"
	"testing"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// An unfilled run has an outline alone, and "cover" leaves out what that
// covers: it must lie on the floor.
func TestOutlineOfAnUnfilledRun(t *testing.T) {
	b := plainRoom()
	b.runOut()
	b.told = true
	n := &b.lay.Runs[2]
	n.Outline = rc(0, 8, 100.5, 11.5)
	n.RightEnd = lay.EndRange{Reach: in(100.5), Need: in(100.5)}
	n.Nailing[0].Along.To = in(100.5)
	rules := map[string]int{}
	for _, f := range stops(b.held()) {
		rules[f.Rule]++
	}
	if len(rules) != 2 || rules["outline of a run"] != 1 || rules["unfilled run"] != 1 {
		t.Errorf("got %v", rules)
	}
}

// Where the nailer has no room is told to the tick; what is too short for a
// fastener is let pass, a longer stretch stops.
func TestNailerWithoutRoom(t *testing.T) {
	for _, c := range []struct {
		from  float64 // the stretch for the nailer, up to 100 in
		level finding.Level
	}{{93, finding.Note}, {91, finding.Stop}, {75, finding.Stop}} {
		b := plainRoom()
		b.told = true
		b.nailed(0, lay.Nailer, c.from, c.from, 100)
		fs := b.held()
		if got := finding.Worst(fs); got != c.level || (c.level == finding.Note) != (len(fs) == 0) {
			t.Errorf("from %g in: %v", c.from, fs)
		}
	}
}

// Room is measured from the tongue edge, exactly: with a wall just as far as
// the limit the nailer fits, and a tick nearer it does not.
func TestNailerRoomToTheTick(t *testing.T) {
	for d, want := range map[tape.Length]int{0: 0, 1: 1} {
		b := plainRoom() // row 2: 8-3/4 in from the wall behind, 4-1/4 to the wall ahead
		b.told = true
		b.lim.NailerBehind.Value, b.lim.NailerAhead.Value = in(8.75), in(4.25)+d
		b.nailed(1, lay.Nailer, 0, 0, 100)
		if fs := b.held(); len(fs) != want {
			t.Errorf("%v short: %v", d, fs)
		}
	}
}

// Between the gaps a wall at an oblique corner begins well before its own end:
// here, in mm, 23.4 before it with a gap of 19.05.
func TestEdgeBeginsBeforeItsCorner(t *testing.T) {
	mm := func(v float64) tape.Length { return tape.Length(math.Round(v * float64(tape.Millimetre))) }
	wall := floor.AlignedEdge{Name: "wall B-C", Range: floor.Range{Least: in(0.75), Greatest: in(0.8125)},
		From: plane.P(mm(5926.03375), mm(1847.521)), To: plane.P(mm(5267.990125), mm(4260.316125))}
	z := &zone{at: floor.Aligned{Edges: []floor.AlignedEdge{wall}}}
	n := &run{Run: lay.Run{Low: mm(1824.882625), High: mm(1926.641375)}, zone: z}
	e := runEnd{lay.EndRange{Reach: mm(5912.46225)}, n, rightEnd, -1, mm(5912.46225)}
	if !e.meets(wall) {
		t.Error("the wall is not found at the end of the row")
	}
	e.Reach += in(0.25)
	if e.meets(wall) {
		t.Error("the wall is found though the row ends in its gap")
	}
}
