package check

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// turnsRoom has rows of 5 and of 3 in by turns, 96 in long:
//
//	13.25  row 3, 5 in  | 48      | 48     |
//	  8    row 2, 3 in  | 60        | 36   |
//	  5    row 1, 5 in  | 36   | 60        |
//	  0    =================================
func turnsRoom() *bench {
	b := newBench()
	b.lim.Widest = in(5)
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Pattern: []tape.Length{in(5), in(3)}, Ahead: 1}, around(plane.Dir{X: 1}, rc(0, 0, 96, 13.25)))
	wide, narrow := stock.Boards{Face: in(5), Known: stock.Tallied}, stock.Boards{Face: in(3), Known: stock.Tallied}
	for i, row := range []struct {
		low, width, first, second float64
		of                        *stock.Boards
	}{{0, 5, 36, 60, &wide}, {5, 3, 60, 36, &narrow}, {8, 5, 48, 48, &wide}} {
		r := b.run(z, i+1, 0, row.low)
		b.lay.Runs[r].High = in(row.low + row.width)
		x := 0.0
		for _, l := range []float64{row.first, row.second} {
			id := len(b.lay.Boards)
			b.lay.Boards = append(b.lay.Boards, lay.Board{ID: id, Length: in(l), Width: in(row.width)})
			b.piece(r, id, rc(0, 0, l, row.width), x)
			row.of.Tally = append(row.of.Tally, stock.Class{Length: in(l), Count: 1})
			x += l
		}
		b.tongueOff(b.lay.Runs[r].Pieces[1], rightEnd)
	}
	b.stock.Widths = []stock.Boards{wide, narrow}
	b.stock = stock.Several(b.stock)
	b.describe()
	return b
}

func TestRowsOfSeveralWidths(t *testing.T) {
	for name, c := range map[string]struct {
		hurt func(b *bench)
		rule string
		says string
	}{
		"as it is":    {func(b *bench) {}, "", ""},
		"as job says": {func(b *bench) { b.stock.Pattern = []tape.Length{in(5), in(3)} }, "", ""},
		"another order": {func(b *bench) { b.stock.Pattern = []tape.Length{in(5), in(3), in(3)} },
			"board", "in turn"},
		"a width that is not there": {func(b *bench) { b.stock.Widths[1].TenBoards = in(31) }, "board", "wide in turn"},
		"rows out of turn": {func(b *bench) { b.lay.Zones[0].Pattern = []tape.Length{in(5), in(3), in(3)} },
			"shape", "not as wide as the pattern"},
		"a row line between":     {func(b *bench) { b.lay.Zones[0].Offset = in(1) }, "shape", "not on a row line"},
		"the widest is not told": {func(b *bench) { b.lay.Zones[0].Pattern = []tape.Length{in(3), in(3)} }, "shape", "widest row of its pattern"},
		"a row without width":    {func(b *bench) { b.lay.Zones[0].Pattern = []tape.Length{in(5), 0} }, "shape", "has no width"},
		"boards of the other width": {func(b *bench) { // as long, and there are enough of all lengths together
			b.stock.Widths[0].Tally, b.stock.Widths[1].Tally = b.stock.Widths[1].Tally, b.stock.Widths[0].Tally
		}, "stock", "used"},
		"one width alone": {func(b *bench) { b.stock.Widths = nil }, "board", "wide"},
		"a narrow board in a wide row": {func(b *bench) {
			b.lay.Boards[0].Width = in(3)
			b.lay.Boards[0].Parts[0].Outline = rc(0, 0, 36, 3)
			b.lay.Pieces[0].InBoard, b.lay.Pieces[0].Outline = rc(0, 0, 36, 3), rc(0, 0, 36, 3)
		}, "board", `3" wide`},
	} {
		b := turnsRoom()
		b.told = true
		c.hurt(b)
		fs := b.held()
		found := c.rule == ""
		for _, f := range fs {
			if f.Level == finding.Stop && c.rule == "" {
				t.Errorf("%s: %v", name, f)
			}
			found = found || f.Level == finding.Stop && f.Rule == c.rule && strings.Contains(f.Measured, c.says)
		}
		if !found {
			t.Errorf("%s: no finding of %q that says %q: %v", name, c.rule, c.says, fs)
		}
	}
}

// A rip is held to the limit of its own board: 1 in of 3 in is too little, 1-1/2
// is half a board and will do, 1-7/8 of 5 in is under 2.
func TestRipOfItsOwnBoard(t *testing.T) {
	for _, c := range []struct {
		width, left float64
		held        bool
	}{{3, 1.4375, false}, {3, 1.5, true}, {5, 1.875, false}, {5, 2, true}, {2, 1, true}} {
		s, z := ripSite(rc(0, 1, 40, 1+c.left), beside("wall", pt(0, 1), pt(40, 1)))
		z.Pattern = []tape.Length{in(5), in(3), in(2)}
		s.lim.Widest = in(5)
		s.tape = tape.Style{Unit: tape.UnitInch, Step: tape.SixtyFourth}
		z.pieces[0].run.Low, z.pieces[0].run.High = in(1+c.left-c.width), in(1+c.left)
		fs := holdRip(Rule{Name: ripRule}, s)
		if (len(fs) == 0) != c.held {
			t.Errorf("%v of %v: %v", c.left, c.width, fs)
		}
	}
}

// Some start line keeps every rip exactly when one tried tick by tick does: two
// walls, rows of several widths.
func TestStartExistsAgainstEveryTick(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := func(lo, hi int) tape.Length { return tape.Length(rapid.IntRange(lo, hi).Draw(t, "l")) }
		var widths []tape.Length
		for range rapid.IntRange(1, 4).Draw(t, "rows") {
			widths = append(widths, length(20, 90))
		}
		z := &zone{Zone: lay.Zone{Width: slicesMax(widths), Pattern: widths}}
		s := &site{zones: []*zone{z}}
		s.lim.NarrowestRip.Value, s.lim.Widest = z.Width*9/20, z.Width
		lowReach, across, play := length(-100, 100), length(200, 500), length(0, 6)
		highReach := lowReach + across
		all := []arcs{
			s.rowArcs(z, true, span{lowReach, lowReach}, span{lowReach + play, lowReach + play}),
			s.rowArcs(z, false, span{highReach, highReach}, span{highReach - play, highReach - play}),
		}
		round := roundOf(widths)
		for o := range round {
			told := all[0].holds(o, round) && all[1].holds(o, round)
			low, high := bareRip(s, z, o, lowReach, lowReach+play, true), bareRip(s, z, o, highReach, highReach-play, false)
			if told != (low && high) {
				t.Fatalf("offset %d: told %v, walked %v and %v", o, told, low, high)
			}
		}
	})
}

func slicesMax(ls []tape.Length) tape.Length {
	var most tape.Length
	for _, l := range ls {
		most = max(most, l)
	}
	return most
}

// bareRip tells whether the row against a wall is at its limit, found by
// walking up from far below.
func bareRip(s *site, z *zone, offset, reach, need tape.Length, above bool) bool {
	low := offset
	for low > -2000 {
		low -= roundOf(z.Pattern)
	}
	for k := 0; ; k++ {
		w := z.Pattern[k%len(z.Pattern)]
		high := low + w
		left := min(w, high-reach)
		closes := low <= need && need < high
		if !above {
			left, closes = min(w, reach-low), low < need && need <= high
		}
		if closes {
			return left >= s.lim.RipFrom(w)
		}
		low = high
	}
}
