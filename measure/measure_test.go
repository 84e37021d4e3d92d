package measure

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"strake/room"
	"strake/sheet"
	"strake/sheet/svg"
	"strake/survey"
	"strake/tape"
)

var update = flag.Bool("update", false, "write the golden files")

func guess(a, b string, inches tape.Length) survey.Reading {
	return survey.Reading{From: a, To: b, Value: inches * tape.Inch, Step: tape.Inch}
}

func rectangle() Ask {
	return Ask{Name: "Net store", Unit: tape.UnitInch, Model: survey.Tape(),
		Sketch: room.Sketch{Rooms: []room.Room{{Name: "store", Corners: []string{"A", "B", "C", "D"}}}},
		Rough:  []survey.Reading{guess("A", "B", 180), guess("B", "C", 130)}}
}

func ell() Ask {
	return Ask{Name: "Attic over the boat store", Unit: tape.UnitFoot, Model: survey.Tape(),
		Sketch: room.Sketch{
			Rooms:    []room.Room{{Name: "attic", Corners: []string{"A", "B", "C", "D", "E", "F"}, Into: []string{"D"}}},
			Doorways: []room.Doorway{{Name: "stair door", Wall: room.Wall{"A", "B"}, From: "A", Beyond: room.BeyondTransition}},
			Stays:    []room.Stay{{Name: "hearth", Kind: room.Hearth, Wall: room.Wall{"F", "A"}, From: "F"}},
		},
		Rough: []survey.Reading{guess("A", "B", 216), guess("B", "C", 120), guess("D", "E", 72), guess("F", "A", 192)}}
}

// twoRooms are an office and a closet, nothing of their doorway measured yet.
func twoRooms() Ask {
	return Ask{Name: "Harbour office", Unit: tape.UnitMillimetre, Model: survey.Tape(), Unplaced: []string{"closet door"},
		Sketch: room.Sketch{
			Rooms:    []room.Room{{Name: "office", Corners: []string{"P", "Q", "R", "S"}}, {Name: "closet", Corners: []string{"K", "L", "M", "N"}}},
			Doorways: []room.Doorway{{Name: "closet door", Wall: room.Wall{"R", "S"}, From: "S", Beyond: room.BeyondRoom, OtherWall: room.Wall{"K", "L"}, OtherFrom: "K"}},
			Stays:    []room.Stay{{Name: "slate", Kind: room.Tile, Corners: []string{"H1", "H2", "H3"}}},
		},
		Rough: []survey.Reading{guess("P", "Q", 168), guess("Q", "R", 132), guess("K", "L", 66), guess("L", "M", 25)}}
}

// column is a room with a post in its middle, by guesses.
func column() Ask {
	a := rectangle()
	a.Name = "Sail store"
	a.Sketch.Stays = []room.Stay{{Name: "post", Kind: room.Column, Wall: room.Wall{"A", "B"}, From: "A",
		At: 78 * tape.Inch, Off: 53 * tape.Inch, Width: 24 * tape.Inch, Depth: 24 * tape.Inch}}
	return a
}

func all() map[string]Ask {
	return map[string]Ask{"column": column(), "rectangle": rectangle(), "ell": ell(), "rooms": twoRooms()}
}

func golden(t *testing.T, name string, data []byte) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(data, want) {
		t.Errorf("%s differs: look at both, then run with -update", path)
	}
}

func TestGolden(t *testing.T) {
	for name, a := range all() {
		s := Make(a)
		var b bytes.Buffer
		if err := s.Text(&b); err != nil {
			t.Fatal(err)
		}
		golden(t, name+".txt", b.Bytes())
		b.Reset()
		if err := svg.Write(&b, s.Pages()[0]); err != nil {
			t.Fatal(err)
		}
		golden(t, name+".svg", b.Bytes())
		b.Reset()
		if err := s.Keys(&b); err != nil {
			t.Fatal(err)
		}
		golden(t, name+".yaml", b.Bytes())
	}
}

// The readings asked for fix the shape and leave nothing unchecked: taken in a
// room of that shape, the survey has nothing to complain of.
func TestReadingsAskedForAreEnough(t *testing.T) {
	a := ell()
	plan := survey.Suggest(a.Sketch, survey.Want{Rough: a.Rough, Step: tape.Sixteenth}, a.Model)
	fixes, checks := 0, 0
	for _, it := range plan.Items {
		if it.Purpose == survey.Fixes {
			fixes++
		} else {
			checks++
		}
	}
	if fixes != 2*6-3 {
		t.Errorf("%d readings fix the shape, want 9: six corners, less the place and turn of the whole", fixes)
	}
	if last := plan.Items[len(plan.Items)-1]; checks == 0 || last.Unchecked != 0 {
		t.Errorf("%d checks, %d readings still unchecked", checks, last.Unchecked)
	}
}

// Fewer checks on request, none too, and the sheet says what is left open.
func TestFewerChecksOnRequest(t *testing.T) {
	for _, want := range []int{2, -1} {
		a := ell()
		a.Checks = want
		got := text(t, a)
		if n := strings.Count(got, ", check ") + strings.Count(got, "  check "); n != max(0, want) {
			t.Errorf("%d checks, asked for %d at most", n, max(0, want))
		}
		if !strings.Contains(got, "fewer checks were asked for") {
			t.Errorf("nothing says that checks were left out:\n%s", got)
		}
	}
}

// What fixes the shape is all taken before the first mark is made, marks before
// what is read to them, the widths again last; every line is there once more on
// paper, with a box.
func TestOrder(t *testing.T) {
	for name, a := range all() {
		s := Make(a)
		marked, lines := map[string]bool{}, 0
		for i, sec := range s.Sections {
			lines += len(sec.Lines)
			for _, l := range sec.Lines {
				switch {
				case sec.Title == "Mark these places on the walls":
					marked[strings.Fields(l.What)[0]] = true
				case sec.Title == "What fixes the shape" && i != 0:
					t.Errorf("%s: %s comes late", name, l.What)
				}
				for _, p := range s.Marks {
					if strings.Contains(" "+strings.ReplaceAll(l.What, "-", " ")+" ", " "+p.Name+" ") && !marked[p.Name] {
						t.Errorf("%s: %s before its mark", name, l.What)
					}
				}
			}
		}
		if last := s.Sections[len(s.Sections)-1].Title; !strings.Contains(last, "once the base is off") {
			t.Errorf("%s: ends with %q", name, last)
		}
		boxes := 0
		for _, p := range s.Pages() {
			for _, it := range p.Items {
				if box, ok := it.(sheet.Polygon); ok && box.Name == "" {
					boxes++
				}
			}
		}
		if boxes != lines {
			t.Errorf("%s: %d boxes for %d lines", name, boxes, lines)
		}
	}
}

// A doorway that was not measured is guessed, and the sheet says so and asks for
// it; so is what stays by corners that no reading reaches.
func TestUnplaced(t *testing.T) {
	got := text(t, twoRooms())
	for _, want := range []string{"guessed here, each in the middle of its wall: closet door", "from S to the near jamb", "from K to the near jamb", "between the jambs", "H3 from one room corner"} {
		if !strings.Contains(strings.Join(strings.Fields(got), " "), want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
}

// A post that no one knows the place of keeps no reading off, and the sheet says
// so; with guesses it does.
func TestPostWithoutAPlace(t *testing.T) {
	a := column()
	a.Floating = []string{"post"}
	if got := text(t, a); !strings.Contains(got, "readings may run across them: post") || !strings.Contains(got, "  A-C  ") {
		t.Errorf("no place known:\n%s", got)
	}
	if got := text(t, column()); strings.Contains(got, "may run across") || strings.Contains(got, "  A-C  ") {
		t.Errorf("place known:\n%s", got)
	}
}

// Once measured, doorways are not asked for again.
func TestMeasuredDoorwayIsLeftOut(t *testing.T) {
	a := ell()
	d := &a.Sketch.Doorways[0]
	d.At, d.Width, d.Thickness = 24*tape.Inch, 30*tape.Inch, 4*tape.Inch
	if got := text(t, a); !strings.Contains(got, "between the jambs") {
		t.Errorf("before the first reading every doorway is asked for:\n%s", got)
	}
	a.Have = []survey.Reading{guess("A", "B", 216)}
	if got := text(t, a); strings.Contains(got, "between the jambs") {
		t.Errorf("asks again:\n%s", got)
	}
}

// The closing widths start at the walls that the first rows lie along.
func TestClosing(t *testing.T) {
	built := survey.Adjust(ell().Sketch, ell().Rough, survey.Tape()).Built
	for _, c := range []struct {
		name string
		rows Rows
		want string
	}{
		{"the longest wall", Rows{}, "A-B"},
		{"along", Rows{Along: room.Wall{"B", "A"}}, "A-B"},
		{"across", Rows{Along: room.Wall{"A", "B"}, Across: true}, "B-C D-E"},
		{"start wall", Rows{Start: room.Wall{"E", "F"}}, "C-D E-F"},
		{"across from the far side", Rows{Across: true, Start: room.Wall{"F", "A"}}, "F-A"},
		{"between", Rows{Between: [2]room.Wall{{"F", "A"}, {"B", "C"}}}, "F-A"},
		{"through a doorway", Rows{Through: "stair door"}, "B-C D-E"},
	} {
		var got []string
		for _, w := range closing(built, c.rows) {
			got = append(got, w.String())
		}
		if s := strings.Join(got, " "); s != c.want {
			t.Errorf("%s: %s, want %s", c.name, s, c.want)
		}
	}
}

func text(t *testing.T, a Ask) string {
	t.Helper()
	var b bytes.Buffer
	if err := Make(a).Text(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// With no size at all there still is a sheet, and it says what it rests on.
func TestNoSizeKnown(t *testing.T) {
	a := rectangle()
	a.Rough = nil
	if s := text(t, a); !strings.Contains(s, "taken for 3 m") || !strings.Contains(s, "A-B") {
		t.Errorf("sheet:\n%s", s)
	}
}

// A box to fill in is at least 10 mm high, and no text lies on another.
func TestPages(t *testing.T) {
	asks := all()
	for _, a := range []Ask{rectangle(), ell()} { // on the other paper too
		a.Unit = tape.UnitMetre
		asks[a.Name] = a
	}
	for _, a := range asks {
		for _, p := range Make(a).Pages() {
			if letter := p.W == 215.9 && p.H == 279.4; letter != a.Unit.Imperial() || !letter && (p.W != 210 || p.H != 297) {
				t.Errorf("%s: paper of %g x %g", p.Title, p.W, p.H)
			}
			for _, out := range offThePage(p) {
				t.Errorf("%s: %q is not wholly on the page", p.Title, out)
			}
			for _, pair := range onEachOther(p) {
				t.Errorf("%s: %q lies on %q", p.Title, pair[0], pair[1])
			}
			for _, it := range p.Items {
				if box, ok := it.(sheet.Polygon); ok && box.Name == "" {
					if h := box.Rings[0][2].Y - box.Rings[0][0].Y; h < 10 {
						t.Errorf("%s: a box is %.1f mm high", p.Title, h)
					}
				}
			}
		}
	}
	if rowHigh < 10 {
		t.Error("rows are too low for a carpenter's pencil")
	}
}

// onEachOther are the texts of a page that overlap.
func onEachOther(p sheet.Sheet) (out [][2]string) {
	var ts []sheet.Text
	for _, it := range p.Items {
		if t, ok := it.(sheet.Text); ok && t.Text != "" {
			ts = append(ts, t)
		}
	}
	for i, a := range ts {
		for _, b := range ts[:i] {
			x, y := a.Box(), b.Box()
			if sheet.Overlap(x[:], y[:]) {
				out = append(out, [2]string{a.Text, b.Text})
			}
		}
	}
	return
}

// offThePage are the texts that reach into the outer 8 mm of a page.
func offThePage(p sheet.Sheet) (out []string) {
	for _, it := range p.Items {
		t, ok := it.(sheet.Text)
		if !ok {
			continue
		}
		for _, q := range t.Box() {
			if q.X < 8 || q.X > p.W-8 || q.Y < 8 || q.Y > p.H-8 {
				out = append(out, t.Text)
				break
			}
		}
	}
	return
}

// Every corner and every mark is lettered once on the sketch.
func TestLetters(t *testing.T) {
	for name, a := range all() {
		s := Make(a)
		count := map[string]int{}
		for _, it := range s.Pages()[0].Items {
			if t, ok := it.(sheet.Text); ok && t.Anchor == sheet.Middle {
				count[t.Text]++
			}
		}
		for _, r := range a.Sketch.Rooms {
			for _, c := range r.Corners {
				if count[c] != 1 {
					t.Errorf("%s: corner %s is lettered %d times", name, c, count[c])
				}
			}
		}
		for _, p := range s.Marks {
			if count[p.Name] != 1 {
				t.Errorf("%s: mark %s is lettered %d times", name, p.Name, count[p.Name])
			}
		}
	}
}
