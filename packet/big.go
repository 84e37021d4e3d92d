package packet

import "strake/sheet"

// Numeral is the size of writing whose figures are 8 mm high: in the font used a
// figure is 0.69 of the size (measured on the rendered page, see the tests).
const Numeral = 11.8

// bigWide is how wide a figure comes out, mm.
func bigWide(text string) float64 { return sheet.Text{Text: text, Size: Numeral}.Printed() }

// big is a figure to be read standing; it shrinks only where it is longer than w mm.
func big(text string, at sheet.Pt, w float64) sheet.Text {
	return fitted(text, at, Numeral, w, sheet.Start)
}

func bold(t sheet.Text) sheet.Text {
	t.Bold = true
	return t
}
