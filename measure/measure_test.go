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
	for name, a := range map[string]Ask{"rectangle": rectangle(), "ell": ell()} {
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

func TestFewerChecksOnRequest(t *testing.T) {
	a := ell()
	a.Checks = 2
	if got := strings.Count(text(t, a), "check "); got != 2 {
		t.Errorf("%d checks, asked for 2 at most", got)
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
	for _, a := range []Ask{rectangle(), ell()} {
		for _, p := range Make(a).Pages() {
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
