package survey

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"strake/finding"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// What cannot be is said, with the readings it is about and what to measure.
func TestCannotBe(t *testing.T) {
	l, lrs := lroom()
	cases := []struct {
		name, rule, where, do string
		s                     room.Sketch
		rs                    []Reading
	}{
		{"triangle", "readings that can close", "A-C, A-B, B-C", "Measure A-C first", quad(false),
			[]Reading{in("A", "B", 100), in("B", "C", 80), in("C", "D", 100), in("D", "A", 80), in("A", "C", 190)}},
		{"wall longer than the other three", "readings that can close", "A-B, D-A, C-D, B-C", "Measure A-B first", quad(false),
			[]Reading{in("A", "B", 300), in("B", "C", 80), in("C", "D", 100), in("D", "A", 80)}},
		{"one wall", "readings that fix the shape", "B-C, D-A", "Measure B-C next", quad(false), []Reading{in("A", "B", 100)}},
		{"L with two walls", "readings that fix the shape", "", "Measure ", l, lrs[:2]},
		{"one spot", "corners apart", "C, D", "Measure C-D", quad(false),
			[]Reading{in("A", "B", 100), in("B", "C", 80), in("D", "A", 128.0625), in("A", "C", 128.0625), in("B", "D", 80), in("C", "D", 1.0/8)}},
		{"nothing", "readings that fix the shape", "A-B, B-C, C-D, D-A", "Measure A-B next", quad(false), nil},
	}
	for _, c := range cases {
		r := Adjust(c.s, c.rs, Tape())
		fs := r.Findings(c.rs, inches16)
		f, ok := first(fs, c.rule)
		if !ok || f.Level != finding.Stop || !strings.Contains(f.Where, c.where) || !strings.Contains(f.Do, c.do) {
			t.Errorf("%s: %v; all: %v", c.name, f, fs)
		}
	}
}

// A good room is told nothing that stops.
func TestGoodRoomIsNotStopped(t *testing.T) {
	s, rs := lroom()
	if fs := Adjust(s, rs, Tape()).Findings(rs, inches16); finding.Worst(fs) == finding.Stop {
		t.Errorf("findings %v", fs)
	}
}

// Whatever is sketched and written, nothing panics, no finding speaks of a
// number that is none, and every warning says what to do.
func TestGarbage(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, rs := garbageSketch(t), garbageReadings(t)
		r := Adjust(s, rs, Tape())
		for _, f := range r.Findings(rs, inches16) {
			text := f.String()
			if strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
				t.Fatalf("finding %s", text)
			}
			if f.Level != finding.Note && (f.Do == "" || f.Where == "" && f.Rule != "readings that close") {
				t.Fatalf("finding without a place or advice: %s", text)
			}
		}
		for _, st := range s.Stays {
			for side := range 4 {
				if ends, ok := r.AcrossStay(Toward(plane.XY{X: 1}), room.Wall{"A", "B"}, st, side); ok && math.IsNaN(ends[0].SD+ends[1].SD) {
					t.Fatalf("doubt at the %s is no number", st.Name)
				}
			}
		}
		if len(rs)%3 == 0 {
			Suggest(s, Want{Have: rs, Step: tape.Sixteenth}, Tape())
		}
		for c, p := range r.Built.At {
			if math.IsNaN(p.X) || math.IsNaN(p.Y) {
				t.Fatalf("corner %s is nowhere", c)
			}
		}
		sheet := Suggest(s, Want{Rough: rs, Closing: []room.Wall{{"A", "B"}}, Step: tape.Sixteenth}, Tape())
		if len(sheet.Walk) != len(sheet.Items) {
			t.Fatalf("%d of %d readings walked", len(sheet.Walk), len(sheet.Items))
		}
	})
}

func garbageSketch(t *rapid.T) room.Sketch {
	name := rapid.SampledFrom([]string{"A", "B", "C", "D", "E", "F", "G", "H"})
	wall := rapid.Custom(func(t *rapid.T) room.Wall { return room.Wall{name.Draw(t, "from"), name.Draw(t, "to")} })
	length := rapid.Map(rapid.IntRange(0, 20000), func(mm int) tape.Length { return tape.Length(mm) * tape.Millimetre })
	var s room.Sketch
	for range rapid.IntRange(0, 3).Draw(t, "rooms") {
		r := room.Room{Name: "r", Corners: rapid.SliceOfN(name, 0, 7).Draw(t, "corners"), Clockwise: rapid.Bool().Draw(t, "cw"), Into: rapid.SliceOfN(name, 0, 2).Draw(t, "into")}
		if rapid.Bool().Draw(t, "angled") {
			r.Angles = map[string]float64{name.Draw(t, "c"): rapid.Float64Range(1, 359).Draw(t, "angle")}
		}
		if rapid.Bool().Draw(t, "bowed") {
			w := wall.Draw(t, "wall")
			r.Bows = []room.Bow{{Wall: w, From: w[0], At: length.Draw(t, "at"), Out: length.Draw(t, "out") - 10*tape.Metre}}
		}
		s.Rooms = append(s.Rooms, r)
	}
	for range rapid.IntRange(0, 2).Draw(t, "points") {
		w := wall.Draw(t, "wall")
		s.Points = append(s.Points, room.Point{Name: rapid.SampledFrom([]string{"P", "Q"}).Draw(t, "p"), Wall: w, From: w[0], At: length.Draw(t, "at")})
	}
	for range rapid.IntRange(0, 2).Draw(t, "doors") {
		w, v := wall.Draw(t, "wall"), wall.Draw(t, "other")
		s.Doorways = append(s.Doorways, room.Doorway{Name: "d", Wall: w, From: w[0], At: length.Draw(t, "at"), Width: length.Draw(t, "width"),
			Thickness: length.Draw(t, "thick"), Beyond: room.BeyondRoom, OtherWall: v, OtherFrom: v[1], OtherAt: length.Draw(t, "otherAt")})
	}
	if rapid.Bool().Draw(t, "stay") {
		s.Stays = []room.Stay{{Name: "hearth", Corners: []string{"S", "T", "U", "V"}[:rapid.IntRange(0, 4).Draw(t, "n")], Past: room.PastRound}}
	}
	if rapid.Bool().Draw(t, "post") {
		w := wall.Draw(t, "wall")
		s.Stays = append(s.Stays, room.Stay{Name: "post", Kind: room.Column, Wall: w, From: w[0], At: length.Draw(t, "at"),
			Off: length.Draw(t, "off"), Width: length.Draw(t, "width"), Depth: length.Draw(t, "deep")})
	}
	return s
}

func garbageReadings(t *rapid.T) []Reading {
	name := rapid.SampledFrom([]string{"A", "B", "C", "D", "E", "F", "G", "H", "P", "Q", "S", "T", "U", "?", ""})
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Reading {
		return Reading{
			From: name.Draw(t, "from"), To: name.Draw(t, "to"),
			Kind:  rapid.SampledFrom([]Kind{Between, Between, Between, Off, Along, Width, "nonsense"}).Draw(t, "kind"),
			Wall:  room.Wall{name.Draw(t, "w0"), name.Draw(t, "w1")},
			Value: rapid.SampledFrom([]tape.Length{0, 1, tape.Inch, tape.Foot, 12 * tape.Foot, 150*tape.Inch + 3*tape.Eighth, 4 * tape.Metre, tape.Longest, -tape.Metre}).Draw(t, "value"),
			Step:  rapid.SampledFrom([]tape.Length{0, tape.Sixteenth, tape.Millimetre}).Draw(t, "step"),
			SD:    rapid.SampledFrom([]float64{0, 0, 3, 1000}).Draw(t, "sd"),
		}
	}), 0, 16).Draw(t, "readings")
}

// hundred is a ring of 100 corners (a stair of square turns) with 400 readings.
func hundred() (room.Sketch, []Reading) {
	r := room.Room{Name: "stair"}
	at := map[string][2]float64{}
	add := func(x, y float64, into bool) {
		name := "c" + string(rune('A'+len(r.Corners)/26)) + string(rune('a'+len(r.Corners)%26))
		r.Corners = append(r.Corners, name)
		at[name] = [2]float64{x, y}
		if into {
			r.Into = append(r.Into, name)
		}
	}
	add(0, 0, false)
	for i := range 49 {
		x, y := 1000+float64(i)*400, float64(i)*300
		add(x, y, false)
		add(x, y+300, i < 48)
	}
	add(0, 49*300, false)
	var rs []Reading
	n := len(r.Corners)
	for k := 1; len(rs) < 400; k++ {
		for i := range n {
			if len(rs) == 400 {
				break
			}
			a, b := r.Corners[i], r.Corners[(i+k)%n]
			p, q := at[a], at[b]
			d := math.Hypot(p[0]-q[0], p[1]-q[1])
			rs = append(rs, Reading{From: a, To: b, Value: tape.Nearest(ticks(d), tape.Sixteenth), Step: tape.Sixteenth})
		}
	}
	return room.Sketch{Rooms: []room.Room{r}}, rs
}

func TestHundredCorners(t *testing.T) {
	s, rs := hundred()
	r := Adjust(s, rs, Tape())
	rep := r.Report(rs)
	if !r.Converged || len(s.Rooms[0].Corners) != 100 || len(rs) != 400 || rep.Spare != 400-197 {
		t.Errorf("%d corners, %d readings, converged %v, spare %d", len(s.Rooms[0].Corners), len(rs), r.Converged, rep.Spare)
	}
	if i := slices.IndexFunc(r.Residuals, func(v float64) bool { return math.Abs(v) > 2 }); i >= 0 {
		t.Errorf("%s misses by %.2f mm", rs[i].Name(), r.Residuals[i])
	}
}

// Adjustment and tests of 100 corners and 400 readings: under 200 ms wanted.
func BenchmarkHundredCorners(b *testing.B) {
	s, rs := hundred()
	for b.Loop() {
		Adjust(s, rs, Tape()).Report(rs)
	}
}
