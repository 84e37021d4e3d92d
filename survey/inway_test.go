package survey

import (
	"testing"

	"pgregory.net/rapid"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// columned is a room of 180 x 144 in with something 24 in square in its middle,
// set out from wall A-B.
func columned(kind room.StayKind, past room.Past) room.Sketch {
	s := quad(false)
	s.Stays = []room.Stay{{Name: "column", Kind: kind, Past: past, Wall: room.Wall{"A", "B"}, From: "A",
		At: 78 * tape.Inch, Off: 60 * tape.Inch, Width: 24 * tape.Inch, Depth: 24 * tape.Inch}}
	return s
}

var rough180 = []Reading{in("A", "B", 180), in("B", "C", 144)}

// clipped tells whether the straight line from p to q passes through a box, by
// halving the line until its pieces are short: no code of the package.
func clipped(p, q, lo, hi plane.XY) bool {
	for k := range 2001 {
		c := p.Add(q.Sub(p).Times(float64(k) / 2000))
		if c.X > lo.X && c.X < hi.X && c.Y > lo.Y && c.Y < hi.Y {
			return true
		}
	}
	return false
}

// No reading asked for crosses a column in the middle of the room, neither a
// diagonal nor a width; what is left still fixes the shape, with every reading
// checked and told from the others.
func TestColumnInTheWay(t *testing.T) {
	s := columned(room.Column, "")
	sheet := Suggest(s, Want{Rough: rough180, Closing: []room.Wall{{"A", "B"}, {"B", "C"}}, Step: tape.Sixteenth}, Tape())
	lo, hi := plane.XY{X: 78 * 25.4, Y: 60 * 25.4}, plane.XY{X: 102 * 25.4, Y: 84 * 25.4}
	drawn := s
	for _, it := range sheet.Items {
		drawn.Points = append(drawn.Points, it.Ask.Marks...)
	}
	r := Adjust(drawn, rough180, Tape())
	widths := 0
	for _, it := range sheet.Items {
		a := it.Ask.Reading
		p := r.Built.At[a.From]
		q := r.Built.At[a.To]
		if a.Kind == Width {
			widths++
			mark := it.Ask.Marks[0]
			_, u := r.square(mark.Wall, mark.At)
			q = p.Add(u.Times(5000))
		}
		if clipped(p, q, lo, hi) {
			t.Errorf("%s crosses the column", it.Ask.Name(inches16))
		}
	}
	if widths != 6 {
		t.Errorf("%d widths, want 6: the middle ones moved beside the column", widths)
	}
	if last := sheet.Items[len(sheet.Items)-1]; sheet.Unmet != "" || last.Unchecked != 0 || last.Alike != 0 {
		t.Errorf("unmet %q, %d unchecked, %d alike", sheet.Unmet, last.Unchecked, last.Alike)
	}
	plain := Suggest(s, Want{Rough: rough180, Step: tape.Sixteenth}, Tape())
	holdSheet(t, "column", s, rough180, plain)
}

// What lies low is measured over, unless the job says otherwise, and so is a
// column that it says is low.
func TestLowThingsAreMeasuredOver(t *testing.T) {
	for _, c := range []struct {
		kind   room.StayKind
		past   room.Past
		across bool
	}{
		{room.Hearth, "", true}, {room.Tile, "", true}, {room.Register, "", true},
		{room.Column, "", false}, {room.Cabinet, "", false}, {room.Pipe, "", false},
		{room.Hearth, room.PastRound, false}, {room.Cabinet, room.PastOver, true},
	} {
		across := false
		for _, it := range Suggest(columned(c.kind, c.past), Want{Rough: rough180, Step: tape.Sixteenth}, Tape()).Items {
			name := it.Ask.Reading.Name()
			across = across || name == "A-C" || name == "B-D"
		}
		if across != c.across {
			t.Errorf("%s %s: diagonals asked for: %v", c.kind, c.past, across)
		}
	}
}

// What a plan and a check ask for keeps off the column too: with four walls read
// the next reading is to a mark, not a diagonal.
func TestNextReadingKeepsOffColumn(t *testing.T) {
	s := columned(room.Column, "")
	rs := []Reading{in("A", "B", 180), in("B", "C", 144), in("C", "D", 180), in("D", "A", 144)}
	r := Adjust(s, rs, Tape())
	if next, _ := r.NextReading(rs); next != "" {
		t.Errorf("next %s: both diagonals cross the column", next)
	}
	rep := r.Report(rs)
	if len(rep.Remedies) == 0 {
		t.Fatal("no remedy")
	}
	for _, m := range rep.Remedies {
		if name := m.Ask.Reading.Name(); name == "A-C" || name == "B-D" {
			t.Errorf("%s crosses the column", name)
		}
	}
}

// A cabinet in a corner hides that corner: its two walls are fixed by marks past
// the cabinet, set out from their other ends, and no tape goes to the corner.
func TestCabinetInACorner(t *testing.T) {
	sheet := Suggest(cabinet(40), Want{Rough: rough180, Step: tape.Sixteenth}, Tape())
	for _, it := range sheet.Items {
		a := it.Ask.Reading
		if a.From == "A" || a.To == "A" || it.Ask.Past != "" {
			t.Errorf("%s, past %q", it.Ask.Name(inches16), it.Ask.Past)
		}
		for _, p := range it.Ask.Marks {
			if p.From == "A" {
				t.Errorf("%s is set out from the hidden corner", it.Ask.Name(inches16))
			}
		}
	}
	holdSheet(t, "cabinet", cabinet(40), rough180, sheet)
}

// Cabinets all along a wall hide both its corners. Nothing else fixes the wall,
// so readings past them are asked for, each with what it has to pass.
func TestCabinetsAlongAWall(t *testing.T) {
	sheet := Suggest(cabinet(180), Want{Rough: rough180, Step: tape.Sixteenth}, Tape())
	past := 0
	for _, it := range sheet.Items {
		if it.Ask.Past == "cabinet" {
			past++
		}
	}
	if past == 0 || past > 3 {
		t.Errorf("%d readings past the cabinets, want 1 to 3", past)
	}
	holdRigid(t, cabinet(180), rough180, sheet)
}

// cabinet is a room of 180 x 144 in with a cabinet this long from corner A.
func cabinet(long tape.Length) room.Sketch {
	s := quad(false)
	s.Stays = []room.Stay{{Name: "cabinet", Kind: room.Cabinet, Wall: room.Wall{"A", "B"}, From: "A", Width: long * tape.Inch, Depth: 24 * tape.Inch}}
	return s
}

// The width from wall A-B to C-D at both ends of the room is clear of a column
// in the middle; a cabinet beside wall B-C stands in the way at that end, and a
// width to the cabinet itself is clear of it.
func TestWidthAcrossIsClear(t *testing.T) {
	rows, start, end := AlongWall(room.Wall{"A", "B"}), room.Wall{"A", "B"}, room.Wall{"C", "D"}
	rs := append(rough180, in("C", "D", 180), in("D", "A", 144), in("A", "C", 230.5))
	if past := Adjust(columned(room.Column, ""), rs, Tape()).PastAcross(rows, start, end); past != "" {
		t.Errorf("the %s is in the way", past)
	}
	s := quad(false)
	s.Stays = []room.Stay{{Name: "cabinet", Kind: room.Cabinet, Wall: room.Wall{"B", "C"}, From: "B", At: 60 * tape.Inch, Width: 40 * tape.Inch, Depth: 24 * tape.Inch}}
	r := Adjust(s, rs, Tape())
	if past := r.PastAcross(rows, start, end); past != "cabinet" {
		t.Errorf("in the way: %q", past)
	}
	if past := r.PastAcrossStay(rows, start, s.Stays[0], 3); past != "" {
		t.Errorf("in the way of a width to the cabinet: %q", past)
	}
}

// Wherever a column stands, off the walls by a foot at least, no reading asked
// for crosses it, and the readings fix the shape with no reading past it.
func TestColumnAnywhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := quad(false)
		wide, deep := rapid.IntRange(4, 40).Draw(t, "wide"), rapid.IntRange(4, 40).Draw(t, "deep")
		at, off := rapid.IntRange(12, 168-wide).Draw(t, "at"), rapid.IntRange(12, 132-deep).Draw(t, "off")
		inch := func(n int) tape.Length { return tape.Length(n) * tape.Inch }
		s.Stays = []room.Stay{{Name: "post", Kind: room.Column, Wall: room.Wall{"A", "B"}, From: "A", At: inch(at), Off: inch(off), Width: inch(wide), Depth: inch(deep)}}
		sheet := Suggest(s, Want{Rough: rough180, Step: tape.Sixteenth}, Tape())
		drawn := s
		for _, it := range sheet.Items {
			drawn.Points = append(drawn.Points, it.Ask.Marks...)
		}
		r := Adjust(drawn, rough180, Tape())
		lo := plane.XY{X: float64(at) * 25.4, Y: float64(off) * 25.4}
		hi := lo.Add(plane.XY{X: float64(wide) * 25.4, Y: float64(deep) * 25.4})
		for _, it := range sheet.Items {
			if a := it.Ask.Reading; it.Ask.Past != "" || clipped(r.Built.At[a.From], r.Built.At[a.To], lo, hi) {
				t.Errorf("%s crosses the post", it.Ask.Name(inches16))
			}
		}
		if rep, _ := taken(s, rough180, sheet); rep.Assumed != 0 {
			t.Errorf("%d corners still taken for square", rep.Assumed)
		}
	})
}
