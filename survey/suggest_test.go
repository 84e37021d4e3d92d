package survey

import (
	"math"
	"slices"
	"testing"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// A room of four corners and an L get the fewest readings that fix them, 2n-3 (5
// and 9, theory), walls first, then checks until nothing is unchecked and no two
// tests are alike; with widths at three stations where rows close.
func TestSuggest(t *testing.T) {
	l, lrs := lroom()
	cases := []struct {
		name  string
		s     room.Sketch
		rough []Reading
		fixes int
	}{
		{"four walls", quad(true), []Reading{in("A", "B", 180), in("B", "C", 144)}, 5},
		{"L", l, lrs[:6], 9},
	}
	for _, c := range cases {
		sheet := Suggest(c.s, Want{Rough: c.rough, Step: tape.Sixteenth}, Tape())
		fixes := 0
		for i, it := range sheet.Items {
			if it.Purpose == Fixes {
				fixes++
			}
			if n := len(c.s.Rooms[0].Corners); i < n && len(it.Ask.Marks) > 0 {
				t.Errorf("%s: item %d is not a wall", c.name, i)
			}
		}
		last := sheet.Items[len(sheet.Items)-1]
		if fixes != c.fixes || sheet.Unmet != "" || last.Unchecked != 0 || last.Alike != 0 {
			t.Errorf("%s: %d fix the shape, want %d; unmet %q, unchecked %d, alike %d", c.name, fixes, c.fixes, sheet.Unmet, last.Unchecked, last.Alike)
		}
		t.Logf("%s: %d readings, %.0f m walked", c.name, len(sheet.Items), sheet.Steps/1000)
		holdSheet(t, c.name, c.s, c.rough, sheet)
	}
}

// holdSheet takes every reading of a sheet exactly and asks the report, which
// shares no arithmetic with the planner's updates, for the same promise.
func holdSheet(t *testing.T, name string, s room.Sketch, rough []Reading, sheet Sheet) {
	t.Helper()
	for _, it := range sheet.Items {
		for _, p := range it.Ask.Marks {
			if !slices.ContainsFunc(s.Points, func(q room.Point) bool { return q.Name == p.Name }) {
				s.Points = append(s.Points, p)
			}
		}
	}
	b := Adjust(s, rough, Tape()).Built
	var rs []Reading
	for _, it := range sheet.Items {
		a := it.Ask.Reading
		a.Value = ticks(b.At[a.From].Sub(b.At[a.To]).Len())
		rs = append(rs, a)
	}
	rep := Adjust(s, rs, Tape()).Report(rs)
	if rep.Assumed != 0 || len(rep.unchecked()) != 0 || len(rep.Alike) != 0 {
		t.Errorf("%s, taken: assumed %d, unchecked %s, alike %v", name, rep.Assumed, rep.names(rep.unchecked(), rs), rep.Alike)
	}
}

// Readings taken already are not asked for again, and fewer checks may be asked
// for.
func TestSuggestRest(t *testing.T) {
	have := []Reading{in("A", "B", 180), in("B", "C", 144), in("A", "C", 230.5)}
	sheet := Suggest(quad(false), Want{Have: have, Step: tape.Sixteenth, Checks: 1}, Tape())
	var names []string
	for _, it := range sheet.Items {
		names = append(names, it.Ask.Reading.Name())
	}
	if want := []string{"D-A", "C-D", "B-D"}; !slices.Equal(names, want) || sheet.Unmet == "" {
		t.Errorf("asked for %v, want %v; %q", names, want, sheet.Unmet)
	}
}

// Closing walls get widths at three stations, across the room.
func TestSuggestStations(t *testing.T) {
	l, lrs := lroom()
	sheet := Suggest(l, Want{Rough: lrs[:6], Closing: []room.Wall{{"B", "A"}}, Step: tape.Sixteenth}, Tape())
	var walls []string
	marks := map[room.Point]bool{}
	for _, it := range sheet.Items {
		if it.Purpose == Closes {
			walls = append(walls, it.Ask.Reading.Wall.String())
		}
		for _, p := range it.Ask.Marks {
			marks[p] = true
		}
	}
	if want := []string{"E-F", "E-F", "C-D"}; !slices.Equal(walls, want) {
		t.Errorf("widths to %v, want %v", walls, want)
	}
	places := map[room.Point]bool{}
	for p := range marks {
		p.Name = ""
		places[p] = true
	}
	if len(places) != len(marks) {
		t.Errorf("%d names for %d marks", len(marks), len(places))
	}
}

// The walk is within 5 % of the shortest there is, found by trying every order
// of six readings of a room, hooked at either end.
func TestWalk(t *testing.T) {
	a, b, c, d := plane.XY{}, plane.XY{X: 5}, plane.XY{X: 5, Y: 4}, plane.XY{Y: 4}
	ends := [][2]plane.XY{{a, b}, {d, c}, {b, c}, {a, c}, {d, a}, {b, d}}
	got := paces(improve(nearest(ends), ends), ends)
	best := math.Inf(1)
	var try func(order []pulled, left []int)
	try = func(order []pulled, left []int) {
		if len(left) == 0 {
			best = math.Min(best, paces(order, ends))
		}
		for k, i := range left {
			rest := slices.Delete(slices.Clone(left), k, k+1)
			try(append(slices.Clone(order), pulled{i, false}), rest)
			try(append(slices.Clone(order), pulled{i, true}), rest)
		}
	}
	try(nil, []int{0, 1, 2, 3, 4, 5})
	if got > best*1.05+1e-9 || got < best-1e-9 {
		t.Errorf("walks %.2f, the shortest is %.2f", got, best)
	}
}
