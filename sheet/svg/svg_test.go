package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"strake/sheet"
)

func page() sheet.Sheet {
	s := sheet.Sheet{Title: `A & B <1:20>`, W: 420, H: 297}
	s.Put(
		sheet.Polygon{Name: "piece-7", Rings: [][]sheet.Pt{{{X: 20, Y: 55.3}, {X: 81.4, Y: 55.3}, {X: 81.4, Y: 50}, {X: 20, Y: 50}}}, Fill: sheet.Light, Pen: sheet.Pen{Width: 0.15, Ink: sheet.Dark}},
		sheet.Polyline{Points: []sheet.Pt{{X: 1, Y: 2}, {X: 3.25, Y: -0.0004}}, Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black, Dash: []float64{4, 1}}},
		sheet.Text{Text: `7-3/8" & more`, At: sheet.Pt{X: 5, Y: 6}, Size: 2.5, Anchor: sheet.Middle, Turn: -90, Bold: true, Ink: sheet.Mid},
	)
	return s
}

const want = `<svg xmlns="http://www.w3.org/2000/svg" width="420mm" height="297mm" viewBox="0 0 420 297" font-family="Liberation Sans, Arial, Helvetica, DejaVu Sans, sans-serif">
<title>A &amp; B &lt;1:20&gt;</title>
<rect width="420" height="297" fill="#ffffff"/>
<path id="piece-7" d="M20 55.3H81.4V50H20Z" fill="#e4e4e4" fill-rule="evenodd" stroke="#4d4d4d" stroke-width="0.15"/>
<path d="M1 2L3.25 0" fill="none" stroke="#000000" stroke-width="0.5" stroke-dasharray="4 1"/>
<text x="5" y="6" font-size="2.5" text-anchor="middle" font-weight="bold" transform="rotate(-90 5 6)" fill="#8c8c8c">7-3/8&#34; &amp; more</text>
</svg>
`

func TestWrite(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, page()); err != nil {
		t.Fatal(err)
	}
	if b.String() != want {
		t.Errorf("got\n%s\nwant\n%s", b.String(), want)
	}
}

// What is written is well-formed, whatever is in the texts, and its first
// element inside is the white ground.
func TestWellFormed(t *testing.T) {
	s := page()
	s.Put(sheet.Text{Text: "]]> \x00\x1b \"' <script>", Size: 2})
	var b bytes.Buffer
	if err := Write(&b, s); err != nil {
		t.Fatal(err)
	}
	var order []string
	d := xml.NewDecoder(&b)
	for {
		tok, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		if e, ok := tok.(xml.StartElement); ok {
			order = append(order, e.Name.Local)
		}
	}
	if got := strings.Join(order, " "); got != "svg title rect path path text text" {
		t.Errorf("elements %s", got)
	}
}

// Names that come again are counted: no two places of a file have one id.
func TestIDs(t *testing.T) {
	s := sheet.Sheet{W: 10, H: 10}
	for range 3 {
		s.Put(sheet.Polyline{Name: "leader", Points: []sheet.Pt{{X: 1, Y: 1}, {X: 2, Y: 2}}, Pen: sheet.Pen{Width: 0.2, Ink: sheet.Black}})
	}
	var b bytes.Buffer
	if err := Write(&b, s); err != nil {
		t.Fatal(err)
	}
	for _, id := range []string{`id="leader"`, `id="leader 2"`, `id="leader 3"`} {
		if n := strings.Count(b.String(), id); n != 1 {
			t.Errorf("%s comes %d times", id, n)
		}
	}
}

type full struct{ room int }

func (f *full) Write(p []byte) (int, error) {
	if f.room -= len(p); f.room < 0 {
		return 0, errors.New("no space left")
	}
	return len(p), nil
}

func TestWriteError(t *testing.T) {
	if err := Write(&full{room: 10}, page()); err == nil {
		t.Error("a full disk went unnoticed")
	}
}

func TestNum(t *testing.T) {
	for v, want := range map[float64]string{0: "0", -0.0001: "0", 1: "1", -1.5: "-1.5", 0.0005: "0.001", -0.25: "-0.25", 12.3456: "12.346", 100: "100", -0.05: "-0.05"} {
		if got := num(v); got != want {
			t.Errorf("num(%v) = %q, want %q", v, got, want)
		}
	}
}
