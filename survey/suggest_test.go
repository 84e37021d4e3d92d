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
	rep, rs := taken(s, rough, sheet)
	if rep.Assumed != 0 || len(rep.unchecked()) != 0 || len(rep.Alike) != 0 {
		t.Errorf("%s, taken: assumed %d, unchecked %s, alike %v", name, rep.Assumed, rep.names(rep.unchecked(), rs), rep.Alike)
	}
}

// holdRigid takes every reading of a sheet exactly: they fix the shape.
func holdRigid(t *testing.T, s room.Sketch, rough []Reading, sheet Sheet) {
	t.Helper()
	if rep, _ := taken(s, rough, sheet); rep.Assumed != 0 {
		t.Errorf("%d corners still taken for square: %v", rep.Assumed, rep.Squares)
	}
}

// taken is the report on every reading of a sheet, read exactly.
func taken(s room.Sketch, rough []Reading, sheet Sheet) (Report, []Reading) {
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
	return Adjust(s, rs, Tape()).Report(rs), rs
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

// Long walls that rows close at get widths at three stations, across the room,
// however they lie behind one another.
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
	slices.Sort(walls)
	if want := []string{"C-D", "C-D", "C-D", "E-F", "E-F", "E-F"}; !slices.Equal(walls, want) {
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
	all := make([]int, len(ends))
	got := paces(improve(nearest(ends, all), ends, all), ends)
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

// twoRooms are an office and a closet behind its wall R-S, joined by a doorway,
// with the cellar door in wall P-Q.
func twoRooms() (room.Sketch, []Reading) {
	return room.Sketch{
		Rooms: []room.Room{{Name: "office", Corners: []string{"P", "Q", "R", "S"}}, {Name: "closet", Corners: []string{"K", "L", "M", "N"}}},
		Doorways: []room.Doorway{
			{Name: "closet door", Wall: room.Wall{"R", "S"}, From: "S", At: 52 * tape.Inch, Width: 30 * tape.Inch, Thickness: 9 * tape.Inch / 2,
				Beyond: room.BeyondRoom, OtherWall: room.Wall{"K", "L"}, OtherFrom: "K", OtherAt: 14 * tape.Inch},
			{Name: "cellar door", Wall: room.Wall{"P", "Q"}, From: "Q", At: 6 * tape.Inch, Width: 32 * tape.Inch, Thickness: 5 * tape.Inch, Beyond: room.BeyondStair},
		},
	}, []Reading{in("P", "Q", 168), in("Q", "R", 132), in("K", "L", 60), in("L", "M", 36)}
}

// Two rooms are tied together through their doorway, by readings that pass it;
// what fixes and ties is walked first; nothing is asked for twice, and no mark
// lies in an opening.
func TestSuggestTwoRooms(t *testing.T) {
	s, rough := twoRooms()
	sheet := Suggest(s, Want{Rough: rough, Closing: []room.Wall{{"P", "Q"}}, Step: tape.Sixteenth}, Tape())
	if last := sheet.Items[len(sheet.Items)-1]; sheet.Unmet != "" || last.Unchecked != 0 || last.Alike != 0 {
		t.Errorf("unmet %q, %d unchecked, %d alike", sheet.Unmet, last.Unchecked, last.Alike)
	}
	count := map[Purpose]int{}
	seen := map[string]bool{}
	for i, k := range sheet.Walk {
		it := sheet.Items[k]
		count[it.Purpose]++
		first := it.Purpose == Fixes || it.Purpose == Ties
		if fixing := count[Fixes] + count[Ties]; first && fixing != i+1 {
			t.Errorf("%s comes after what does not fix the shape", it.Ask.Reading.Name())
		}
		name := it.Ask.Name(inches16)
		if seen[name] {
			t.Errorf("%s is asked for twice", name)
		}
		seen[name] = true
		for _, p := range it.Ask.Marks {
			from := 168*tape.Inch - p.At
			if p.Wall == (room.Wall{"P", "Q"}) && from > 6*tape.Inch && from < 38*tape.Inch {
				t.Errorf("mark %v lies in the cellar door", p)
			}
		}
	}
	if count[Fixes] != 10 || count[Ties] < 1 || count[Closes] != 5 {
		t.Errorf("%v; want 10 that fix, a tie at least, 5 widths: two of them through the doorway", count)
	}
}

// A reading through a doorway passes both its openings, 1 in off the jambs.
func TestThroughDoorways(t *testing.T) {
	s, rough := twoRooms()
	r := Adjust(s, rough, Tape())
	net := r.net.with()
	free, _ := r.candidates(net, r.x, nil, tape.Sixteenth)
	through := map[string]bool{}
	for _, c := range free {
		if c.ask.Through != "" {
			through[c.ask.Reading.Name()] = true
		}
	}
	// Jambs at x 52 and 82 in, y 132 and 136.5 in; N is (38, 172.5), M (98, 172.5).
	// From Q (168, 0) to N the tape passes y 132 at x 68.5 and y 136.5 at x 65.1.
	// From P (0, 0) to N it passes y 132 at x 29: behind the wall.
	for name, want := range map[string]bool{"Q-N": true, "P-M": true, "P-N": false, "Q-M": false, "R-N": false, "Q-K": false} {
		if through[name] != want {
			t.Errorf("%s: %v, want %v; %v", name, through[name], want, through)
		}
	}
}

// With the closing widths read they are not asked for again; with no checks
// wanted none is.
func TestSuggestLeavesOut(t *testing.T) {
	s := quad(true)
	want := Want{Rough: []Reading{in("A", "B", 180), in("B", "C", 144)}, Closing: []room.Wall{{"A", "B"}}, Step: tape.Sixteenth, Checks: -1}
	first := Suggest(s, want, Tape())
	if len(first.Items) != 8 || first.Unmet == "" {
		t.Fatalf("%d readings, want 5 that fix and 3 widths; %q", len(first.Items), first.Unmet)
	}
	for _, it := range first.Items {
		if it.Purpose != Closes {
			continue
		}
		s.Points = append(s.Points, it.Ask.Marks...)
		v := it.Ask.Reading
		v.Value = 144 * tape.Inch
		want.Have = append(want.Have, v)
	}
	for _, it := range Suggest(s, want, Tape()).Items {
		if it.Purpose == Closes {
			t.Errorf("asked for %s again", it.Ask.Name(inches16))
		}
	}
}
