package pdf

import (
	"bytes"
	"regexp"
	"testing"

	"strake/sheet"
)

func page(w, h float64) sheet.Sheet {
	s := sheet.Sheet{Title: "page", W: w, H: h}
	s.Put(sheet.Polyline{Points: []sheet.Pt{{X: 10, Y: 10}, {X: 110, Y: 10}}, Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black, Dash: []float64{2, 1}}},
		sheet.Polygon{Rings: [][]sheet.Pt{{{X: 10, Y: 20}, {X: 30, Y: 20}, {X: 30, Y: 40}}}, Fill: sheet.Light, Pen: sheet.Pen{Width: 0.2, Ink: sheet.Dark}},
		sheet.Text{Text: "7⅜″ × ½", At: sheet.Pt{X: 40, Y: 40}, Size: 4, Anchor: sheet.Middle, Bold: true},
		sheet.Text{Text: "turned", At: sheet.Pt{X: 60, Y: 60}, Size: 3, Turn: 90, Anchor: sheet.End})
	return s
}

// Each page is as large as its sheet, in points of 1/72 in, and the same sheets give
// the same bytes.
func TestPages(t *testing.T) {
	var a, b bytes.Buffer
	for _, w := range []*bytes.Buffer{&a, &b} {
		if err := Write(w, "two pages", page(210, 297), page(420, 297)); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Error("the same sheets give other bytes")
	}
	var boxes []string
	for _, m := range regexp.MustCompile(`/MediaBox \[[^\]]*\]`).FindAll(a.Bytes(), -1) {
		boxes = append(boxes, string(m))
	}
	for _, want := range []string{"/MediaBox [0 0 595.28 841.89]", "/MediaBox [0 0 1190.55 841.89]"} {
		found := false
		for _, b := range boxes {
			found = found || b == want
		}
		if !found {
			t.Errorf("no page with %s among %q", want, boxes)
		}
	}
	if n := bytes.Count(a.Bytes(), []byte("/FontFile2")); n != 2 {
		t.Errorf("%d fonts are in the file, want 2", n)
	}
}
