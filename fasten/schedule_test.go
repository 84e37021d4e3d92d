package fasten

import (
	"math"
	"testing"

	"strake/tape"
)

const in = tape.Inch

// NWFA fastener schedule, 2019 revision, as reprinted by Hardwood Floors, Aug/Sep
// 2025 p. 68 (its columns run into each other there; rows paired again in order).
func TestSchedule(t *testing.T) {
	for _, tt := range []struct {
		thickness, face tape.Length
		engineered      bool
		cleat, staple   string
		least           tape.Length
		from, to        tape.Length
		endTo           tape.Length
	}{
		{in / 2, 5 * in, true, "18 to 20 gauge", "narrow crown", 5 * in / 4, 3 * in, 4 * in, 2 * in},
		{5 * in / 8, 5 * in, true, "16 to 18 gauge", "15.5 gauge", 3 * in / 2, 6 * in, 8 * in, 3 * in},
		{3 * in / 4, 5 * in, true, "16 to 18 gauge", "15.5 gauge", 3 * in / 2, 6 * in, 8 * in, 3 * in},
		{3 * in / 4, 9 * in / 4, false, "16 to 18 gauge", "15.5 gauge", 3 * in / 2, 8 * in, 10 * in, 3 * in},
		{3 * in / 4, 3 * in, false, "16 to 18 gauge", "15.5 gauge", 3 * in / 2, 6 * in, 8 * in, 3 * in},
		{20 * tape.Millimetre, 140 * tape.Millimetre, false, "16 to 18 gauge", "15.5 gauge", 3 * in / 2, 6 * in, 8 * in, 3 * in},
		{5 * in / 8, 9 * in / 4, false, "18 gauge", "18 gauge", 3 * in / 2, 6 * in, 8 * in, 3 * in},
		{in / 2, 9 * in / 4, false, "18 to 20 gauge", "narrow crown", 5 * in / 4, 3 * in, 4 * in, 2 * in},
		{3 * in / 8, 2 * in, false, "18 to 20 gauge", "narrow crown", 5 * in / 4, 3 * in, 4 * in, 2 * in},
	} {
		s, ok := ScheduleFor(tt.thickness, tt.face, tt.engineered)
		if !ok || s.Cleat != tt.cleat || s.Staple != tt.staple || s.Least != tt.least || s.SpacingFrom != tt.from || s.SpacingTo != tt.to ||
			s.EndFrom != in || s.EndTo != tt.endTo || s.PerBoard != 2 || s.Source == "" {
			t.Errorf("%v by %v: %+v", tt.thickness, tt.face, s)
		}
	}
	if _, ok := ScheduleFor(in, 5*in, false); ok {
		t.Error("a row for boards an inch thick")
	}
	if s := SquareEdged(); !s.TopNailed || s.Least != in || s.SpacingFrom != 13*in/2 || s.SpacingTo != 7*in {
		t.Errorf("square-edged: %+v", s)
	}
}

func TestChosen(t *testing.T) {
	s, _ := ScheduleFor(3*in/4, 5*in, false)
	if u := Chosen(s, Cleat, 3*in/4, false); u.Length != 2*in || u.Spacing != 8*in || u.End != 2*in || u.PerBoard != 2 || u.Source == "" {
		t.Errorf("%+v", u)
	}
	if u := Chosen(s, Cleat, 3*in/4, true); u.Length != 3*in/2 {
		t.Errorf("short: %+v", u)
	}
	s, _ = ScheduleFor(in/2, 3*in, false)
	if u := Chosen(s, Staple, in/2, false); u.Length != 5*in/4 || u.Spacing != 4*in || u.End != 3*in/2 {
		t.Errorf("thin: %+v", u)
	}
}

// Glue-assist is for boards wider than 5 in (NWFA, as quoted by Floor Covering
// Installer and Hardwood Floors, Nov 2020).
func TestGlue(t *testing.T) {
	if Glue(5*in) || !Glue(5*in+tape.Tick) || !Glue(7*in) {
		t.Error("glue-assist above 5 in")
	}
}

// Computed from the formula: no published values.
func TestCount(t *testing.T) {
	for _, tt := range []struct {
		length, end, spacing tape.Length
		want                 int
	}{{45, 3, 10, 5}, {45, 2, 8, 7}, {84, 3, 8, 11}, {18, 3, 8, 3}, {12, 3, 8, 2}, {9, 1, 10, 2}, {5, 3, 8, 2}, {1, 3, 8, 2}} {
		if got := Count(tt.length*in, tt.end*in, tt.spacing*in); got != tt.want {
			t.Errorf("%+v: %d", tt, got)
		}
		u := Use{Spacing: tt.spacing * in, End: tt.end * in, PerBoard: 2}
		if got := len(u.Along(tt.length * in)); got != tt.want {
			t.Errorf("%+v: %d places", tt, got)
		}
	}
}

// A square foot takes 144 over width times spacing; 2-1/4 in at 8 in is the 8,000
// per 1,000 sq ft that a public rule of thumb gives. The average No. 1 Common
// board, 33 in long, takes five where its area alone would want four.
func TestRate(t *testing.T) {
	for _, tt := range []struct{ width, spacing, want float64 }{
		{2.25, 10, 6.40}, {2.25, 8, 8}, {3.25, 8, 5.54}, {3.25, 6, 7.38}, {5, 8, 3.60}, {5, 6, 4.80}, {7, 6, 3.43},
	} {
		if got := Rate(tape.Length(tt.width*float64(in)), tape.Length(tt.spacing*float64(in))); math.Abs(got-tt.want) > 0.005 {
			t.Errorf("%+v: %.3f", tt, got)
		}
	}
	if n := float64(Count(33*in, 2*in, 8*in)) / (33 * 2.25 / 144); math.Abs(n-9.7) > 0.05 {
		t.Errorf("%.2f per sq ft of 33 in boards", n)
	}
	if Boxes(950, 1000) != 1 || Boxes(960, 1000) != 2 || Boxes(8000, 5000) != 2 || Boxes(0, 1000) != 0 {
		t.Error("boxes")
	}
}

// A 2 in cleat at 45 degrees that enters 0.54 in above the subfloor ends 7/8 in
// below its top (a case retold from trade talk: common practice, no source), 1/8
// in below a 3/4 in panel; a 1-1/2 in one ends 0.52 in down.
func TestTip(t *testing.T) {
	s, _ := ScheduleFor(3*in/4, 5*in, false)
	u := Chosen(s, Cleat, 3*in/4, false)
	if u.Entry != 54*in/100 {
		t.Errorf("enters %v above", u.Entry)
	}
	if tip := u.Tip(0); (tip - 7*in/8).Abs() > in/128 {
		t.Errorf("the tip is %.4f in down", tip.Inches())
	}
	if out := u.Out(0, 3*in/4); (out - in/8).Abs() > in/128 {
		t.Errorf("%.4f in below a 3/4 in panel", out.Inches())
	}
	if u.Out(0, in) != 0 || u.Tip(in/32) != u.Tip(0)-in/32 {
		t.Error("paper lifts the entry, a thick panel keeps the tip")
	}
	short := Chosen(s, Cleat, 3*in/4, true)
	if tip := short.Tip(0).Inches(); math.Abs(tip-0.5207) > 0.001 || short.Out(0, 3*in/4) != 0 {
		t.Errorf("1-1/2 in: %.4f in down", tip)
	}
	if u.Hidden(3*in/4, 5*in/4) || !u.Hidden(5*in/8, 5*in/4) {
		t.Error("gap and edge distance under the cover")
	}
}
