package drawing

import (
	"bytes"
	"encoding/xml"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/internal/sample"
	"strake/plan"
	"strake/plane"
	"strake/sheet"
)

// readPieces reads the drawing as any reader of SVG would: the paths named
// piece-N, by their number.
func readPieces(t *testing.T, svg []byte) map[int][]sheet.Pt {
	t.Helper()
	out := map[int][]sheet.Pt{}
	d := xml.NewDecoder(bytes.NewReader(svg))
	for {
		tok, err := d.Token()
		if err == io.EOF {
			return out
		}
		if err != nil {
			t.Fatal(err)
		}
		e, ok := tok.(xml.StartElement)
		if !ok || e.Name.Local != "path" {
			continue
		}
		at := map[string]string{}
		for _, a := range e.Attr {
			at[a.Name.Local] = a.Value
		}
		if n, ok := strings.CutPrefix(at["id"], "piece-"); ok {
			id, err := strconv.Atoi(n)
			if err != nil {
				t.Fatal(err)
			}
			out[id] = readPath(t, at["d"])
		}
	}
}

var step = regexp.MustCompile(`([MLHVZ])([-0-9. ]*)`)

func readPath(t *testing.T, d string) []sheet.Pt {
	t.Helper()
	var out []sheet.Pt
	at := sheet.Pt{}
	for _, m := range step.FindAllStringSubmatch(d, -1) {
		var v []float64
		for _, f := range strings.Fields(m[2]) {
			x, err := strconv.ParseFloat(f, 64)
			if err != nil {
				t.Fatal(err)
			}
			v = append(v, x)
		}
		switch m[1] {
		case "M", "L":
			at = sheet.Pt{X: v[0], Y: v[1]}
		case "H":
			at.X = v[0]
		case "V":
			at.Y = v[0]
		case "Z":
			continue
		}
		out = append(out, at)
	}
	return out
}

// What is read back from the drawing are the pieces of the plan: as many
// corners in the same places, turned over about a level line, and the areas.
func TestPiecesReadBack(t *testing.T) {
	for name, p := range map[string]plan.Plan{"rectangle": sample.Rectangle(), "hearth": sample.Hearth()} {
		v := newView(p, usual)
		got := readPieces(t, drawn(t, p))
		if len(got) != len(p.Lay.Pieces) || len(got) == 0 {
			t.Fatalf("%s: %d pieces drawn, %d laid", name, len(got), len(p.Lay.Pieces))
		}
		origin := got[0][0]
		first := p.Lay.Pieces[0].Outline[0]
		for _, pc := range p.Lay.Pieces {
			ring := got[pc.ID]
			if len(ring) != len(pc.Outline) {
				t.Fatalf("%s: piece %d has %d corners of %d", name, pc.ID, len(ring), len(pc.Outline))
			}
			round := 0.0
			for i, c := range pc.Outline {
				x := origin.X + (c.X-first.X).Millimetres()/v.scale.one
				y := origin.Y - (c.Y-first.Y).Millimetres()/v.scale.one
				if math.Abs(ring[i].X-x) > 0.0011 || math.Abs(ring[i].Y-y) > 0.0011 {
					t.Errorf("%s: piece %d corner %d at %v, want %v %v", name, pc.ID, i, ring[i], x, y)
				}
				round += 0.0005 * math.Hypot(ring[i].X-ring[(i+1)%len(ring)].X, ring[i].Y-ring[(i+1)%len(ring)].Y) * 2
			}
			onFloor := float64(pc.Outline.Area2()) / 2 / 8000 / 8000
			if a := -area(ring) * v.scale.one * v.scale.one; math.Abs(a-onFloor) > round*v.scale.one*v.scale.one {
				t.Errorf("%s: piece %d is %v mm2 on the drawing, %v on the floor", name, pc.ID, a, onFloor)
			}
		}
	}
}

// area of a ring on the page: negative when it runs counter-clockwise to the
// eye, as y runs down.
func area(r []sheet.Pt) float64 {
	sum := 0.0
	for i, a := range r {
		b := r[(i+1)%len(r)]
		sum += a.X*b.Y - a.Y*b.X
	}
	return sum / 2
}

// The heavy lines are where two pieces of a row meet.
func TestShared(t *testing.T) {
	a := plane.Rect(plane.P(0, 0), plane.P(10, 5))
	b := plane.Ring{{X: 10, Y: 0}, {X: 20, Y: 0}, {X: 20, Y: 5}, {X: 12, Y: 5}, {X: 12, Y: 3}, {X: 10, Y: 3}}
	got := shared(a, b)
	if len(got) != 1 || got[0] != [2]plane.Pt{{X: 10, Y: 0}, {X: 10, Y: 3}} {
		t.Errorf("got %v", got)
	}
	if got := shared(a, plane.Rect(plane.P(11, 0), plane.P(20, 5))); got != nil {
		t.Errorf("pieces apart meet at %v", got)
	}
}
