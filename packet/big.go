package packet

import "strake/sheet"

// Numeral is the size of writing whose figures are 8 mm high: in the font used a
// figure is 0.69 of the size (measured on the rendered page, see the tests).
const Numeral = 11.8

// narrower is what figures, their marks and letters a and b take up in the font used, at
// the most, of what widths are reckoned by (Liberation Sans: figures 0.874, a hyphen 0.92, a and b 0.91).
const narrower = 0.89

// bigWide is how wide a figure comes out, mm.
func bigWide(text string) float64 { return sheet.Text{Text: text, Size: Numeral}.Width() * narrower }

// big is a figure to be read standing; it shrinks only where it is longer than w mm.
func big(text string, at sheet.Pt, w float64) sheet.Text {
	return fitted(text, at, Numeral, w/narrower, sheet.Start)
}

func bold(t sheet.Text) sheet.Text {
	t.Bold = true
	return t
}
