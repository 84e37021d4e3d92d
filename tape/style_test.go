package tape_test

import (
	"testing"

	"strake/tape"
)

// Every mark of both tapes over 30 m prints and reads back as itself, in the
// exact form and in the styles of paper fine enough for it.
func TestEveryMarkReadsBack(t *testing.T) {
	back := func(l tape.Length, s string) {
		if got, err := tape.Parse(s, ""); err != nil || got != l {
			t.Fatalf("%d ticks print as %s, which reads as %d (%v)", int64(l), s, int64(got), err)
		}
	}
	const far = 30 * tape.Metre
	feet, inches := tape.Style{Unit: tape.UnitFoot, Step: tape.SixtyFourth}, tape.Style{Unit: tape.UnitInch, Step: tape.SixtyFourth}
	n := 0
	for l := tape.Length(0); l <= far; l += tape.SixtyFourth {
		back(l, l.String())
		back(l, feet.Of(l))
		back(l, inches.Of(l))
		n++
	}
	var metric []tape.Style
	for _, u := range []tape.Unit{tape.UnitMillimetre, tape.UnitCentimetre, tape.UnitMetre} {
		metric = append(metric, tape.Style{Unit: u, Step: mm / 10})
	}
	for l := tape.Length(0); l <= far; l += mm / 10 {
		back(l, l.String())
		back(l, metric[n%len(metric)].Of(l))
		n++
	}
	if n != 75_591+300_001 { // 30,000/25.4*64 = 75,590.55; 30,000/0.1
		t.Errorf("%d marks were tried", n)
	}
}

func TestEveryTickReadsBack(t *testing.T) {
	for l := tape.Length(-25_000); l <= 25_000; l++ {
		if got, err := tape.ParseSigned(l.String(), ""); err != nil || got != l {
			t.Fatalf("%d ticks print as %s, which reads as %d (%v)", int64(l), l, int64(got), err)
		}
	}
}

func TestPrinting(t *testing.T) {
	foot, inch := tape.Style{Unit: tape.UnitFoot}, tape.Style{Unit: tape.UnitInch}
	half := tape.Style{Unit: tape.UnitMillimetre, Step: mm / 2}
	l := 151*in + 3*tape.Eighth
	tests := []struct{ got, want string }{
		{foot.Of(l), `12' 7-3/8"`},
		{foot.Of(7*in + 3*tape.Eighth), `7-3/8"`},
		{foot.Of(144 * in), `12' 0"`},
		{foot.Of(0), `0"`},
		{foot.Of(-l), `-12' 7-3/8"`},
		{inch.Of(l), `151-3/8"`},
		{inch.Of(3 * tape.Eighth), `3/8"`},
		{inch.Of(l + tape.SixtyFourth), `151-3/8"`},
		{inch.Up(l + tape.SixtyFourth), `151-7/16"`},
		{inch.Up(l), `151-3/8"`},
		{inch.Down(l - 1), `151-5/16"`},
		{inch.Down(-l + 1), `-151-3/8"`},
		{inch.Up(-l - 1), `-151-3/8"`},
		{inch.Of(l + tape.SixtyFourth*2), `151-7/16"`}, // a half goes up
		{inch.Of(-l - tape.SixtyFourth*2), `-151-7/16"`},
		{tape.Style{Unit: tape.UnitInch, Step: in / 1000}.Of(l + in/100), "151.385 in"},
		{half.Of(38445 * mm / 10), "3844.5 mm"},
		{half.Of(38448 * mm / 10), "3845 mm"},
		{half.Down(38449 * mm / 10), "3844.5 mm"},
		{half.Up(38446 * mm / 10), "3845 mm"},
		{tape.Style{Unit: tape.UnitCentimetre}.Of(3844 * mm), "384.4 cm"},
		{tape.Style{Unit: tape.UnitMetre}.Of(3844 * mm), "3.844 m"},
		{tape.Style{}.Of(3844 * mm), "3844 mm"},
		{tape.Paper(tape.UnitMetre).Of(3844*mm + mm/4), "3844 mm"},
		{tape.Paper(tape.UnitFoot).Of(l), `12' 7-3/8"`},
		{foot.Of(12*in - 1), `1' 0"`},
		{tape.Length(1).String(), "0.000125 mm"},
		{(38449 * mm / 10).String(), "3844.9 mm"},
		{(-in / 2).String(), `-1/2"`},
		{tape.Length(0).String(), `0"`},
		{tape.Paper(tape.UnitFoot).Area(20 * tape.Area(tape.Foot) * tape.Area(tape.Foot)), "20.0 sq ft"},
		{tape.Paper(tape.UnitMillimetre).Area(9 * tape.Area(tape.Metre) * tape.Area(tape.Metre) / 5), "1.80 m2"},
	}
	for i, tt := range tests {
		if tt.got != tt.want {
			t.Errorf("line %d: %s; want %s", i, tt.got, tt.want)
		}
	}
}

// Up and Down lie round every length, less than a step apart from it, and
// Nearest is the nearer one.
func TestRounding(t *testing.T) {
	for _, step := range []tape.Length{1, 2, 3, tape.SixtyFourth, tape.Sixteenth, mm, mm / 2} {
		for l := -3*step - 2; l <= 3*step+2; l += max(1, step/50) {
			up, down, near := tape.Up(l, step), tape.Down(l, step), tape.Nearest(l, step)
			if up < l || up-l >= step || up%step != 0 || down > l || l-down >= step || down%step != 0 {
				t.Fatalf("%d to %d: up %d, down %d", l, step, up, down)
			}
			if near%step != 0 || (near-l).Abs() != min(up-l, l-down) || near != -tape.Nearest(-l, step) {
				t.Fatalf("%d to %d: nearest %d", l, step, near)
			}
		}
	}
}

func TestAreas(t *testing.T) {
	sqft, sqm := tape.Area(tape.Foot)*tape.Area(tape.Foot), tape.Area(tape.Metre)*tape.Area(tape.Metre)
	for text, want := range map[string]tape.Area{
		"20 sq ft": 20 * sqft, "20 ft2": 20 * sqft, "20ft²": 20 * sqft, "20 sq. ft.": 20 * sqft, "20 SF": 20 * sqft, "20 square feet": 20 * sqft, "20.5 sqft": 41 * sqft / 2,
		"1.8 m2": 9 * sqm / 5, "1.8 m²": 9 * sqm / 5, "1.8 sq m": 9 * sqm / 5, ".5 m2": sqm / 2, "40000 m2": tape.Largest,
	} {
		if got, err := tape.ParseArea(text); err != nil || got != want {
			t.Errorf("ParseArea(%q) = %d, %v; want %d", text, got, err, want)
		}
	}
	for _, text := range []string{"", "20", "sq ft", "20 ft", "20 in2", "1,8 m2", "-1 m2", "20 x 3 ft2", "40001 m2", "1/2 m2", "20 sq ft 3"} {
		if got, err := tape.ParseArea(text); err == nil || got != 0 {
			t.Errorf("ParseArea(%q) = %d, %v; want a question", text, got, err)
		}
	}
}

// 20 sq ft is 1.8581 m2: 0.3048 x 0.3048 x 20, the foot being 0.3048 m exactly
// (international foot, 1959).
func TestAreaUnits(t *testing.T) {
	a, _ := tape.ParseArea("20 sq ft")
	b, _ := tape.ParseArea("1.8580608 m2")
	if a != b || a.SquareFeet() != 20 {
		t.Errorf("20 sq ft is %d square ticks, 1.8580608 m2 is %d", a, b)
	}
}
