package row

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"strake/floor"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

var style = tape.Style{Unit: tape.UnitInch}

func in(v float64) tape.Length { return tape.Length(math.Round(v * float64(tape.Inch))) }

// rectangle is a room of length by width inches.
func rectangle(length, width float64) room.Built {
	mm := func(x, y float64) plane.XY { return plane.XY{X: x * 25.4, Y: y * 25.4} }
	return room.Built{
		Sketch: room.Sketch{Rooms: []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D"}}}},
		At:     map[string]plane.XY{"A": mm(0, 0), "B": mm(length, 0), "C": mm(length, width), "D": mm(0, width)},
	}
}

// exact closes every gap range at the gap given.
func exact(gap tape.Length, face tape.Length) limits.Limits {
	lim := limits.Default(face, gap)
	lim.GapLeast.Value = gap
	return lim
}

func layout(t *testing.T, b room.Built, pitch tape.Length, lim limits.Limits, trim floor.Trim) Layout {
	t.Helper()
	f, _ := floor.New(b, trim, lim, style)
	l, _ := Make(f, b, pitch, lim, Wishes{}, style)
	return l
}

// Balanced rips. The first three are worked from W less two gaps over w, with
// half of what is left plus a board at each side (layout practice as taught;
// arithmetic redone outside the project); the fourth and fifth are trade
// arithmetic, common practice, no source.
func TestBalancedRips(t *testing.T) {
	for _, c := range []struct {
		w, gap, board float64
		full          int
		rip           float64
	}{
		{144, 0.75, 5, 27, 3.75},
		{143, 0.75, 5, 27, 3.25},
		{147, 0.75, 2.25, 63, 1.875},
		{250, 0.75, 4.25, 57, 3.125},
		{113.5, 0.5, 2.375, 46, 1.625},
	} {
		l := layout(t, rectangle(300, c.w), in(c.board), exact(in(c.gap), in(c.board)), floor.Trim{Base: in(c.gap)})
		if l.Rows != c.full+2 {
			t.Errorf("W %g, w %g: %d rows, want %d", c.w, c.board, l.Rows, c.full+2)
		}
		for _, r := range l.Rips {
			if r.Narrowest != in(c.rip) {
				t.Errorf("W %g, w %g: rip %s, want %g in", c.w, c.board, style.Of(r.Narrowest), c.rip)
			}
		}
		if first := l.Runs[0]; first.WidthLeft != in(c.rip) || first.WidthRight != in(c.rip) {
			t.Errorf("W %g: first row is %s wide", c.w, style.Of(first.WidthLeft))
		}
	}
}

// A whole number of boards stays one: no rip is better than two.
func TestWholeBoards(t *testing.T) {
	l := layout(t, rectangle(300, 141.5), in(5), exact(in(0.75), in(5)), floor.Trim{Base: in(0.75)})
	if l.Rows != 28 || l.Runs[0].Narrowest != in(5) {
		t.Errorf("%d rows, first %s", l.Rows, style.Of(l.Runs[0].Narrowest))
	}
}

// One sliver fewer: with the play of base and shoe a row line may lie in it.
func TestPlayTakesTheSliver(t *testing.T) {
	lim := limits.Default(in(5), in(0.75))
	l := layout(t, rectangle(300, 141.9), in(5), lim, floor.Trim{Base: in(0.5), Shoe: in(0.75)})
	if l.Rows != 28 {
		t.Errorf("%d rows, want 28 full ones", l.Rows)
	}
	for _, r := range l.Rips {
		if r.Narrowest != in(5) {
			t.Errorf("rip of %s", style.Of(r.Narrowest))
		}
	}
}

// The chosen offset is never worse than any offset tried one by one: every
// step that matters is 1/64 in or 0.5 mm, and every tick round each corner.
func TestOffsetAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := func(lo, hi int) *rapid.Generator[tape.Length] {
			return rapid.Custom(func(t *rapid.T) tape.Length { return tape.Length(rapid.IntRange(lo, hi).Draw(t, "l")) })
		}
		pitch := length(40, 220).Draw(t, "pitch")
		p := problem{widths: []tape.Length{pitch}, limits: []tape.Length{20}}
		for range rapid.IntRange(1, 7).Draw(t, "edges") {
			reach := length(-900, 900).Draw(t, "reach")
			spare := length(-30, 40).Draw(t, "spare")
			e := edge{above: rapid.Bool().Draw(t, "above"), reach: reach, low: reach, high: reach}
			e.need = reach + spare
			if !e.above {
				e.need = reach - spare
			}
			p.closing = append(p.closing, e)
			p.corners = append(p.corners, e.reach, e.need)
		}
		_, s := p.best()
		for o := range pitch { // every tick: these lengths are small
			if brute(p, o) > s.narrowest(pitch) {
				t.Fatalf("offset %d leaves %d, chosen leaves %d", o, brute(p, o), s.narrowest(pitch))
			}
		}
	})
}

// brute is the narrowest rip at an offset found by looking at the row lines
// one by one, without the closed form.
func brute(p problem, offset tape.Length) tape.Length {
	pitch := p.widths[0]
	worst := pitch
	for _, e := range p.closing {
		sign := tape.Length(1)
		if !e.above {
			sign = -1
		}
		best := tape.Length(-1)
		for k := tape.Length(-60); k <= 60; k++ {
			// The first row that Need asks for: between line and line+pitch,
			// seen from the wall inwards.
			line := sign*(offset+k*pitch) - 0
			need, reach := sign*e.need, sign*e.reach
			if line <= need && need < line+pitch {
				best = max(0, line+pitch-max(line, reach))
			}
		}
		worst = min(worst, best)
	}
	return worst
}

// Retold trade arithmetic (common practice, no source): 113-1/2 in across,
// strip of 2-3/8 in, first board whole at its wall: 48 rows, and the gap
// decides the last rip.
func TestGapDecidesTheLastRip(t *testing.T) {
	for gap, want := range map[float64]float64{0: 1.875, 0.25: 1.375, 0.375: 1.125, 0.5: 0.875, 0.75: 0.375} {
		low, high := in(gap), in(113.5)-in(gap)
		p := problem{widths: []tape.Length{in(2.375)}, limits: []tape.Length{in(1)}, low: low, high: high, closing: []edge{
			{above: true, reach: low, need: low, low: low, high: low},
			{reach: high, need: high, low: high, high: high},
		}}
		s := p.at(low)
		if s.rows != 48 || s.rips[0].left != in(want) || s.rips[1].left != in(2.375) {
			t.Errorf("gap %g: %d rows, rips %v, want 48 and %g in", gap, s.rows, s.rips, want)
		}
	}
}

// Row edge on a corner of an L-shaped room: kept where it makes no sliver.
func TestRowEdgeOnACorner(t *testing.T) {
	b := rectangle(300, 141.5)
	b.Rooms[0].Corners = []string{"A", "B", "C", "D", "E", "F"}
	b.Rooms[0].Into = []string{"D"}
	mm := func(x, y float64) plane.XY { return plane.XY{X: x * 25.4, Y: y * 25.4} }
	for c, p := range map[string]plane.XY{"C": mm(300, 83), "D": mm(140, 83), "E": mm(140, 141.5), "F": mm(0, 141.5)} {
		b.At[c] = p
	}
	lim := exact(in(0.75), in(5))
	f, _ := floor.New(b, floor.Trim{Base: in(0.75)}, lim, style)
	l, a := Make(f, b, in(5), lim, Wishes{EdgeOn: "D"}, style)
	y := a.Dir.ToRow(b.At["D"]).Y
	if mod(y-l.Offset, in(5)) != 0 {
		t.Errorf("no row edge on corner D: offset %v", l.Offset)
	}
}

// A balanced pair of rips needs no row more than whole boards and one rip
// would, whatever the width (W less the gaps, r = W mod w > 0: ceil(W / w)
// rows); where boards come out whole, they stay whole. The theorem is checked
// by arithmetic alone.
func TestBalancedPairNeedsNoExtraRow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := tape.Length(rapid.IntRange(36, 120).Draw(t, "sixteenths of a board")) * tape.Sixteenth
		u := tape.Length(rapid.IntRange(600, 3000).Draw(t, "sixteenths across")) * tape.Sixteenth
		lim := exact(in(0.75), w)
		b := rectangle(180, (u + 2*in(0.75)).Inches())
		f, _ := floor.New(b, floor.Trim{Base: in(1)}, lim, style)
		l, _ := Make(f, b, w, lim, Wishes{Direction: room.Wall{"A", "B"}}, style)
		if want := int((u + w - 1) / w); l.Rows != want {
			t.Fatalf("%v across in boards of %v: %d rows, want %d", u, w, l.Rows, want)
		}
		narrow := w
		for _, r := range l.Rips {
			narrow = min(narrow, r.Narrowest)
		}
		if r := u % w; r > 0 && narrow < (r+w)/2-tape.Tick && narrow < w {
			t.Fatalf("%v over: the narrowest rip is %v, a balanced pair has %v", r, narrow, (r+w)/2)
		} else if r == 0 && narrow != w {
			t.Fatalf("whole boards come out, and a rip of %v is made", narrow)
		}
	})
}

// Leftover shared (retold, common practice, no source): boards of 4 in, 1 in
// over after whole rows, so the first and the last are (1 + 4) / 2 = 2-1/2 in.
func TestLeftoverShared(t *testing.T) {
	lim := exact(in(0.75), in(4))
	b := rectangle(180, 121+1.5)
	l := layout(t, b, in(4), lim, floor.Trim{Base: in(1)})
	for _, r := range l.Rips {
		if r.Narrowest != in(2.5) {
			t.Errorf("%s: rip of %v, want 2-1/2 in", r.Edge, r.Narrowest)
		}
	}
}
