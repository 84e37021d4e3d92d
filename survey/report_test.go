package survey

import (
	"math"
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/room"
	"strake/tape"
)

func first(fs []finding.Finding, rule string) (finding.Finding, bool) {
	i := slices.IndexFunc(fs, func(f finding.Finding) bool { return f.Rule == rule })
	if i < 0 {
		return finding.Finding{}, false
	}
	return fs[i], true
}

var inches16 = tape.Paper(tape.UnitInch)

// The out-of-square room with 1 in too much on B-D: it shows, and it cannot be
// said where; a 1 in slip fits only the diagonals, which come first.
func TestBlunderWithOneToSpare(t *testing.T) {
	rs := []Reading{in("A", "B", 180), in("B", "C", 144), in("C", "D", 184), in("D", "A", 144.5), in("A", "C", 232.875), in("B", "D", 232.625)}
	r := Adjust(quad(false), rs, Tape())
	rep := r.Report(rs)
	if rep.Spare != 1 || !rep.Wrong || rep.Locatable || len(rep.Suspects) != 6 {
		t.Fatalf("spare %d, wrong %v, locatable %v, suspects %v", rep.Spare, rep.Wrong, rep.Locatable, rep.Suspects)
	}
	if got := rep.names(rep.Suspects[:2], rs); got != "A-C, B-D" {
		t.Errorf("first suspects %s", got)
	}
	if rep.Locate == nil {
		t.Fatal("no reading is named that would tell them apart")
	}
	f, ok := first(r.Findings(rs, inches16), "readings that do not agree")
	if !ok || !strings.Contains(f.Do, "With one reading to spare an error shows, but not where it is") || !strings.Contains(f.Do, "burnt inch") {
		t.Errorf("finding %v", f)
	}
}

// The L-shaped room with B-D read 12 in too long: the loop A B C D finds it, and
// of the five that cannot be told apart it is the one that a foot explains.
func TestFootInLRoom(t *testing.T) {
	s, rs := lroom()
	rs[8].Value += tape.Foot
	rep := Adjust(s, rs, Tape()).Report(rs)
	top := rep.Verdicts[rep.Suspects[0]]
	if rs[top.Reading].Name() != "B-D" || len(top.Slips) == 0 || top.Slips[0].Name != "read 1 ft too long" || top.Slips[0].Meant != rs[8].Value-tape.Foot {
		t.Errorf("suspects %s, slips %v", rep.names(rep.Suspects, rs), top.Slips)
	}
	want := []string{"A-B, B-C, C-D, A-C, B-D", "D-E, E-F, F-A, D-F, A-E"}
	for i, set := range rep.Alike {
		if got := rep.names(set, rs); got != want[i] {
			t.Errorf("alike %s, want %s", got, want[i])
		}
	}
}

// Local redundancies of the L-shaped room sum to the redundancy, 11 readings
// less 9 (theory), and each smallest blunder is 4.13 sd over its root.
func TestRedundancySums(t *testing.T) {
	s, rs := lroom()
	rep := Adjust(s, rs, Tape()).Report(rs)
	sum := 0.0
	for _, v := range rep.Verdicts {
		sum += v.Redundancy
		if want := 4.13 * v.SD / math.Sqrt(v.Redundancy); math.Abs(v.Smallest-want) > 1e-9 || v.Checked != (want <= 12.7) {
			t.Errorf("%s: smallest %.3f, want %.3f", rs[v.Reading].Name(), v.Smallest, want)
		}
	}
	if math.Abs(sum-2) > 0.01 || rep.Spare != 2 {
		t.Errorf("redundancies sum to %.4f, spare %d", sum, rep.Spare)
	}
}

// Each unchecked reading gets the readings that would check it; taking them does
// it.
func TestRemediesCheck(t *testing.T) {
	s, rs := lroom()
	rep := Adjust(s, rs, Tape()).Report(rs)
	if got := rep.names(rep.unchecked(), rs); got != "A-B, B-C, F-A" {
		t.Fatalf("unchecked %s", got)
	}
	more := slices.Clone(rs)
	for _, m := range rep.Remedies {
		s.Points = append(s.Points, m.Ask.Marks...)
		a := m.Ask.Reading
		with := Adjust(s, rs, Tape())
		a.Value = ticks(with.Built.At[a.From].Sub(with.Built.At[a.To]).Len())
		more = append(more, a)
	}
	after := Adjust(s, more, Tape()).Report(more)
	for _, k := range rep.unchecked() {
		if !after.Verdicts[k].Checked {
			t.Errorf("%s is still unchecked: %.1f mm", rs[k].Name(), after.Verdicts[k].Smallest)
		}
	}
}

// Square corners check nothing: length and width alone are unchecked, and three
// walls that no square room has push the corners, which is said of the corners.
func TestSquaresCheckNothing(t *testing.T) {
	rs := []Reading{in("A", "B", 180), in("B", "C", 144), in("C", "D", 168)}
	r := Adjust(quad(false), rs, Tape())
	rep := r.Report(rs)
	if rep.Spare != 0 || rep.Assumed != 2 || rep.Wrong || len(rep.unchecked()) != 3 {
		t.Errorf("spare %d, assumed %d, wrong %v", rep.Spare, rep.Assumed, rep.Wrong)
	}
	if len(rep.Strained) == 0 {
		t.Error("no corner is pushed")
	}
	if f, ok := first(r.Findings(rs, inches16), "corners taken for square"); !ok || f.Do == "" {
		t.Errorf("finding %v", f)
	}
}

// A room that is 2 degrees out of square, read well, is no slip of the tape.
func TestCrookedRoomIsNoSlip(t *testing.T) {
	at := map[string][2]float64{"A": {0, 0}, "B": {4000, 0}, "C": {4105, 3000}, "D": {-90, 3010}}
	var rs []Reading
	for _, p := range [][2]string{{"A", "B"}, {"B", "C"}, {"C", "D"}, {"D", "A"}, {"A", "C"}, {"B", "D"}} {
		d := math.Hypot(at[p[0]][0]-at[p[1]][0], at[p[0]][1]-at[p[1]][1])
		rs = append(rs, Reading{From: p[0], To: p[1], Value: tape.Nearest(ticks(d), tape.Millimetre), Step: tape.Millimetre})
	}
	rep := Adjust(quad(false), rs, Tape()).Report(rs)
	if rep.Wrong || len(rep.Strained) > 0 {
		t.Errorf("wrong %v, strained %v", rep.Wrong, rep.Strained)
	}
}

// Slips in the written digits.
func TestSlips(t *testing.T) {
	mm := func(v int64, text string) Reading {
		return Reading{From: "A", To: "B", Value: tape.Length(v) * tape.Millimetre, Step: tape.Millimetre, Text: text, Unit: tape.UnitMillimetre}
	}
	cases := []struct {
		r       Reading
		blunder float64 // mm
		name    string
		meant   tape.Length
	}{
		{mm(4152, "4152"), 4152 - 4512, "digits swapped: 4512 written as 4152", 4512 * tape.Millimetre},
		{mm(3961, "3961"), 3961 - 3691, "digits swapped: 3691 written as 3961", 3691 * tape.Millimetre},
		{mm(2695, ""), 2695 - 2995, "a 6 and a 9 mistaken: 2995 mm written as 2695 mm", 2995 * tape.Millimetre},
		{mm(3100, ""), 100, "read 10 cm too long; a tape started at its 10 cm mark does that", 3000 * tape.Millimetre},
		{mm(3100, ""), -10, "read 1 cm too short", 3110 * tape.Millimetre},
		{in("A", "B", 151.375), (151.375 - 115.375) * 25.4, `digits swapped: 115-3/8" written as 151-3/8"`, 115*tape.Inch + 3*tape.Eighth},
		{Reading{From: "A", To: "B", Value: 12*tape.Foot + 9*tape.Inch, Text: `12' 9"`, Unit: tape.UnitFoot}, 3 * 25.4, `a 6 and a 9 mistaken: 12' 6" written as 12' 9"`, 12*tape.Foot + 6*tape.Inch},
		{in("A", "B", 150), 25.4, "read 1 in too long; a tape started at its 1 in mark (the burnt inch) does that", 149 * tape.Inch},
		{in("A", "B", 150), -25.4, "read 1 in too short", 151 * tape.Inch},
	}
	for _, c := range cases {
		got := slips(c.r, c.blunder+0.4, 0.5)
		if len(got) == 0 || got[0].Name != c.name || got[0].Meant != c.meant {
			t.Errorf("%v, %.1f mm: %v", c.r.Value, c.blunder, got)
		}
	}
	if got := slips(in("A", "B", 150), 40, 1); len(got) > 0 {
		t.Errorf("40 mm is no known slip: %v", got)
	}
}

// A given angle that the readings do not bear out is named itself.
func TestGivenAngleWrong(t *testing.T) {
	s := quad(false)
	s.Rooms[0].Angles = map[string]float64{"B": 95}
	rs := []Reading{in("A", "B", 180), in("B", "C", 144), in("C", "D", 180), in("D", "A", 144), in("A", "C", 230.5), in("B", "D", 230.5)}
	rep := Adjust(s, rs, Tape()).Report(rs)
	if len(rep.Others) != 1 || rep.Others[0] != "corner B" {
		t.Errorf("others %v", rep.Others)
	}
}

// A doorway set out from the wrong place on one side shows where ties between
// the rooms check it, and is named itself.
func TestDoorwayWrong(t *testing.T) {
	s := room.Sketch{
		Rooms: []room.Room{{Name: "a", Corners: []string{"A", "B", "C", "D"}}, {Name: "b", Corners: []string{"E", "F", "G", "H"}}},
		Doorways: []room.Doorway{{Name: "d", Wall: room.Wall{"B", "C"}, From: "B", At: 30 * tape.Inch, Width: 32 * tape.Inch, Thickness: 4 * tape.Inch,
			Beyond: room.BeyondRoom, OtherWall: room.Wall{"H", "E"}, OtherFrom: "E", OtherAt: 36 * tape.Inch}}, // truly 30
	}
	at := map[string][2]float64{"A": {0, 0}, "B": {120, 0}, "C": {120, 100}, "D": {0, 100}, "E": {124, 0}, "F": {244, 0}, "G": {244, 100}, "H": {124, 100}}
	var rs []Reading
	for _, p := range []string{"AB", "BC", "CD", "DA", "AC", "BD", "EF", "FG", "GH", "HE", "EG", "FH", "AF", "DG", "DF", "AG"} {
		a, b := p[:1], p[1:]
		rs = append(rs, in(a, b, math.Round(16*math.Hypot(at[a][0]-at[b][0], at[a][1]-at[b][1]))/16))
	}
	rep := Adjust(s, rs, Tape()).Report(rs)
	if len(rep.Others) == 0 || rep.Others[0] != "doorway d, distance along the wall" {
		t.Errorf("others %v, suspects %s", rep.Others, rep.names(rep.Suspects, rs))
	}
}

// One reading to spare, nothing wrong: an error would show, but not in which,
// and the reading that would tell is named, though all are checked. For the
// L-shaped room it is none that was read, and is named for each set.
func TestNamesWhatWouldTellApart(t *testing.T) {
	rs := []Reading{in("A", "B", 180), in("B", "C", 144), in("C", "D", 184), in("D", "A", 144.5), in("A", "C", 232.875), in("B", "D", 231.625)}
	r := Adjust(quad(false), rs, Tape())
	rep := r.Report(rs)
	if rep.Spare != 1 || rep.Wrong || len(rep.Alike) != 1 || rep.Apart[0] == nil {
		t.Fatalf("spare %d, wrong %v, alike %v, apart %v", rep.Spare, rep.Wrong, rep.Alike, rep.Apart)
	}
	f, ok := first(r.Findings(rs, inches16), "readings that cannot be told apart")
	if !ok || !strings.HasPrefix(f.Do, "One reading more, from ") || !strings.Contains(f.Do, "mark on wall") {
		t.Errorf("finding %v", f)
	}
	s, ls := lroom()
	rep = Adjust(s, ls, Tape()).Report(ls)
	for i, m := range rep.Apart {
		if m == nil {
			t.Errorf("nothing named for %s", rep.names(rep.Alike[i], ls))
		}
	}
}

// What is in doubt is said in the unit of the job.
func TestDoubtInTheJobsUnit(t *testing.T) {
	rs := []Reading{in("A", "B", 151.375), in("B", "C", 122)}
	r := Adjust(quad(false), rs, Tape())
	f, ok := first(r.Findings(rs, inches16), "shape rests on assumed square corners")
	if !ok || strings.Contains(f.Do, "mm") || !strings.Contains(f.Do, "\" (2 standard deviations)") {
		t.Errorf("finding %v", f)
	}
	rs = append(rs, in("C", "D", 151.5), in("D", "A", 122.25))
	f, ok = first(Adjust(quad(false), rs, Tape()).Findings(rs, inches16), "shape rests on assumed square corners")
	if !ok || f.Measured != "1 independent reading short of a fixed shape" {
		t.Errorf("finding %v", f)
	}
}

// Readings written to whole inches check nothing that a floor would show: that
// is what to mend, not more of the same.
func TestCoarseReadings(t *testing.T) {
	rs := []Reading{in("A", "B", 120), in("B", "C", 100), in("C", "D", 120), in("D", "A", 100), in("A", "C", 156), in("B", "D", 156)}
	for i := range rs {
		rs[i].Step = tape.Inch
	}
	f, ok := first(Adjust(quad(false), rs, Tape()).Findings(rs, inches16), "unchecked readings")
	if !ok || !strings.HasPrefix(f.Do, `They are written to 1" only: take them again to 1/16", and write the fractions.`) {
		t.Errorf("finding %v", f)
	}
	for i := range rs {
		rs[i].Step = tape.Sixteenth
	}
	if f, ok := first(Adjust(quad(false), rs, Tape()).Findings(rs, inches16), "unchecked readings"); ok {
		t.Errorf("finding %v", f)
	}
}
