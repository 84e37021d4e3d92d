package sheet

import (
	"math"
	"strings"
	"testing"
)

// Arial and Liberation Sans set a figure 0.556 of the size wide (Adobe's core
// font metrics for Helvetica, from memory); the table must not be narrower.
func TestWidthIsNotTooSmall(t *testing.T) {
	text := `0123456789`
	if got, least := (Text{Text: text, Size: 2.5}).Width(), 10*0.556*2.5; got < least || got > 1.3*least {
		t.Errorf("ten figures are %v mm wide; Helvetica sets them %v", got, least)
	}
	r, b := Text{Text: "row 12a", Size: 3}, Text{Text: "row 12a", Size: 3, Bold: true}
	if r.Width() >= b.Width() {
		t.Errorf("bold %v is not wider than %v", b.Width(), r.Width())
	}
	if (Text{Text: "é", Size: 1}).Width() < 0.6 {
		t.Error("a letter outside the table takes too little")
	}
}

func TestBox(t *testing.T) {
	x := Text{Text: "88", Size: 10, At: Pt{100, 50}}
	w := x.Width()
	for _, tt := range []struct {
		anchor Anchor
		turn   float64
		want   Pt // upper left as read
	}{
		{Start, 0, Pt{100, 42.4}}, {Middle, 0, Pt{100 - w/2, 42.4}}, {End, 0, Pt{100 - w, 42.4}},
		{Start, -90, Pt{92.4, 50}}, {Start, 90, Pt{107.6, 50}},
		{Start, 30, Pt{100 + 7.6*math.Sin(math.Pi/6), 50 - 7.6*math.Cos(math.Pi/6)}},
	} {
		x.Anchor, x.Turn = tt.anchor, tt.turn
		if got := x.Box()[3]; math.Hypot(got.X-tt.want.X, got.Y-tt.want.Y) > 1e-9 {
			t.Errorf("anchor %v turn %v: corner at %v, want %v", tt.anchor, tt.turn, got, tt.want)
		}
	}
}

func TestOverlap(t *testing.T) {
	sq := func(x, y, s float64) []Pt { return []Pt{{x, y}, {x + s, y}, {x + s, y + s}, {x, y + s}} }
	diamond := func(x, y, r float64) []Pt { return []Pt{{x, y - r}, {x + r, y}, {x, y + r}, {x - r, y}} }
	for _, tt := range []struct {
		name string
		a, b []Pt
		want bool
	}{
		{"apart", sq(0, 0, 1), sq(2, 0, 1), false},
		{"touching along a side", sq(0, 0, 1), sq(1, 0, 1), false},
		{"touching at a corner", sq(0, 0, 1), sq(1, 1, 1), false},
		{"crossing", sq(0, 0, 2), sq(1, 1, 2), true},
		{"one in the other", sq(0, 0, 4), sq(1, 1, 1), true},
		{"boxes cross, shapes do not", diamond(0, 0, 2), sq(1.1, 1.1, 2), false},
		{"turned and crossing", diamond(0, 0, 2), sq(0.9, 0.9, 2), true},
	} {
		if got := Overlap(tt.a, tt.b); got != tt.want {
			t.Errorf("%s: %v", tt.name, got)
		}
		if got := Overlap(tt.b, tt.a); got != tt.want {
			t.Errorf("%s, the other way: %v", tt.name, got)
		}
	}
}

// The lines of a hatch, times their distance, make the area they cover.
func TestHatchCoversTheArea(t *testing.T) {
	ring := []Pt{{0, 0}, {40, 0}, {40, 30}, {25, 30}, {25, 10}, {0, 10}}
	hole := []Pt{{28, 5}, {36, 5}, {36, 25}, {28, 25}}
	const area = 40*10 + 15*20 - 8*20
	for _, angle := range []float64{0, 45, -45, 30} {
		sum := 0.0
		for _, it := range Hatch([][]Pt{ring, hole}, angle, 0.05, Pen{}) {
			p := it.(Polyline).Points
			sum += math.Hypot(p[1].X-p[0].X, p[1].Y-p[0].Y)
			mid := p[0].Add(p[1]).Times(0.5)
			if mid.X > 28.1 && mid.X < 35.9 && mid.Y > 5.1 && mid.Y < 24.9 {
				t.Fatalf("angle %v: a line in the hole, at %v", angle, mid)
			}
		}
		if got := sum * 0.05; math.Abs(got-area) > 0.01*area {
			t.Errorf("angle %v: covers %v of %v", angle, got, float64(area))
		}
	}
	if Hatch([][]Pt{ring}, 0, 0, Pen{}) != nil {
		t.Error("no distance between lines must draw none")
	}
}

func TestHatchAngle(t *testing.T) {
	p := Hatch([][]Pt{{{0, 0}, {10, 0}, {10, 10}, {0, 10}}}, 45, 2, Pen{})[2].(Polyline).Points
	if d := p[1].Sub(p[0]); math.Abs(d.X+d.Y) > 1e-9 {
		t.Errorf("45 degrees runs up to the right; this line runs %v", d)
	}
}

func TestWrap(t *testing.T) {
	text := `Snap the working line 2' 9" from wall A-B and 15 mm from the hearth, unbreakableunbreakableunbreakable end`
	lines := Wrap(text, 2.5, 30)
	if got := strings.Join(lines, " "); got != text {
		t.Errorf("words lost: %q", got)
	}
	for _, l := range lines {
		if w := (Text{Text: l, Size: 2.5}).Width(); w > 30 && strings.Contains(l, " ") {
			t.Errorf("%q is %v wide", l, w)
		}
		if strings.HasSuffix(l, "2'") || strings.HasSuffix(l, "15") {
			t.Errorf("a length is broken at the end of %q", l)
		}
	}
	if Wrap("", 3, 10) != nil {
		t.Error("nothing takes no lines")
	}
}
