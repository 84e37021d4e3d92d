package sheet

import "strings"

// Widths of the characters from space to ~ in thousandths of the font size, rounded up:
// those of Liberation Sans, in which PDF and PNG are set. sheet/png holds them against the
// letters it draws with.
var printedRegular = [95]int{
	278, 278, 355, 557, 557, 890, 667, 191, 334, 334, 390, 584, 278, 334, 278, 278,
	557, 557, 557, 557, 557, 557, 557, 557, 557, 557, 278, 278, 584, 584, 584, 557,
	1016, 667, 667, 723, 723, 667, 611, 778, 723, 278, 500, 667, 557, 834, 723, 778,
	667, 778, 723, 667, 611, 723, 667, 944, 667, 667, 611, 278, 278, 278, 470, 557,
	334, 557, 557, 500, 557, 557, 278, 557, 557, 223, 223, 500, 223, 834, 557, 557,
	557, 557, 334, 500, 278, 557, 500, 723, 500, 500, 500, 334, 260, 334, 584,
}

var printedBold = [95]int{
	278, 334, 475, 557, 557, 890, 723, 238, 334, 334, 390, 584, 278, 334, 278, 278,
	557, 557, 557, 557, 557, 557, 557, 557, 557, 557, 334, 334, 584, 584, 584, 611,
	976, 723, 723, 723, 723, 667, 611, 778, 723, 278, 557, 723, 611, 834, 723, 778,
	667, 778, 723, 667, 611, 723, 667, 944, 667, 667, 611, 334, 278, 334, 584, 557,
	334, 557, 611, 557, 611, 557, 334, 611, 611, 278, 278, 557, 278, 890, 611, 611,
	611, 611, 390, 557, 334, 611, 557, 778, 557, 557, 500, 390, 280, 390, 584,
}

// Printed is how long t is where it is set in Liberation Sans, mm: on a page that is only
// ever printed as PDF or PNG. Width is for what may be shown in other letters.
func (t Text) Printed() float64 {
	table, sum := &printedRegular, 0
	if t.Bold {
		table = &printedBold
	}
	for _, r := range t.Text {
		if r < ' ' || r > '~' {
			sum += other
			continue
		}
		sum += table[r-' ']
	}
	return float64(float64(sum) * t.Size / 1000)
}

// PrintedBox is Box in those letters.
func (t Text) PrintedBox() [4]Pt { return t.boxed(t.Printed()) }

// WrapPrinted breaks s between words as Wrap does, by the letters that PDF and PNG are
// set in.
func WrapPrinted(s string, size, width float64, bold bool) []string {
	var lines []string
	line := ""
	for _, word := range Words(s) {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && (Text{Text: longer, Size: size, Bold: bold}).Printed() > width {
			lines, longer = append(lines, line), word
		}
		line = longer
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
