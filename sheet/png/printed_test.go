package png

import (
	"testing"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"strake/sheet"
)

// Widths by which pages are set are those of the letters, rounded up by less than a
// thousandth; letters outside the table are no wider than they are taken for.
func TestPrintedWidths(t *testing.T) {
	for bold, ttf := range map[bool][]byte{false: liberationsansregular.TTF, true: liberationsansbold.TTF} {
		f, err := sfnt.Parse(ttf)
		if err != nil {
			t.Fatal(err)
		}
		var b sfnt.Buffer
		of := func(r rune) float64 {
			i, err := f.GlyphIndex(&b, r)
			if err != nil || i == 0 {
				t.Fatalf("%q: %v, %v", r, i, err)
			}
			a, err := f.GlyphAdvance(&b, i, fixed.I(1000), font.HintingNone)
			if err != nil {
				t.Fatal(err)
			}
			return float64(a) / 64
		}
		for r := ' '; r <= '~'; r++ {
			got := sheet.Text{Text: string(r), Size: 1000, Bold: bold}.Printed()
			if want := of(r); got < want || got >= want+1 {
				t.Errorf("%q, bold %v: %v, is %v", r, bold, got, want)
			}
		}
		for _, r := range "±–°×½¼¾²éä·" {
			if got := (sheet.Text{Text: string(r), Size: 1000, Bold: bold}).Printed(); got < of(r) {
				t.Errorf("%q, bold %v: %v, is %v", r, bold, got, of(r))
			}
		}
	}
}
