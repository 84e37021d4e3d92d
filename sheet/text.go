package sheet

import (
	"math"
	"strings"
)

// Widths of the characters from space to ~ in thousandths of the font size:
// those of DejaVu Sans, which is wider than Liberation Sans, Arial and
// Helvetica letter for letter (@ excepted, raised here to theirs). What fits by
// this table fits in any of them.
var regular = [95]int{
	318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337,
	636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531,
	1015, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787,
	603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500,
	500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612,
	635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
}

var bold = [95]int{
	348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365,
	696, 696, 696, 696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 580,
	1015, 774, 762, 734, 830, 683, 683, 821, 837, 372, 372, 775, 637, 995, 837, 850,
	733, 850, 770, 720, 682, 812, 774, 1103, 771, 724, 725, 457, 365, 457, 838, 500,
	500, 675, 716, 593, 716, 678, 435, 716, 712, 343, 343, 665, 343, 1042, 712, 687,
	716, 716, 493, 595, 478, 712, 652, 924, 645, 652, 582, 712, 365, 712, 838,
}

// other stands in for a character outside the tables, in thousandths.
const other = 900

// Width is about how long t will be in mm, rather too much than too little.
func (t Text) Width() float64 {
	table, sum := &regular, 0
	if t.Bold {
		table = &bold
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

// Above and Below the baseline, in font sizes: capitals and figures, tails.
const (
	ascent  = 0.76
	descent = 0.22
)

// Box is the rectangle that t takes up, turned with it: lower left, lower
// right, upper right, upper left as one reads it.
func (t Text) Box() [4]Pt { return t.boxed(t.Width()) }

// boxed is the rectangle of t where it is w long.
func (t Text) boxed(w float64) [4]Pt {
	x0 := map[Anchor]float64{Start: 0, Middle: -w / 2, End: -w}[t.Anchor]
	up, down := -float64(ascent*t.Size), float64(descent*t.Size)
	box := [4]Pt{{x0, down}, {x0 + w, down}, {x0 + w, up}, {x0, up}}
	for i := range box {
		box[i] = t.At.Add(turned(box[i], t.Turn))
	}
	return box
}

// turned is p turned clockwise on the page about the origin. Quarter turns are
// exact.
func turned(p Pt, degrees float64) Pt {
	switch degrees {
	case 0:
		return p
	case 90:
		return Pt{-p.Y, p.X}
	case -90:
		return Pt{p.Y, -p.X}
	}
	s, c := math.Sincos(float64(degrees * math.Pi / 180))
	return Pt{float64(c*p.X) - float64(s*p.Y), float64(s*p.X) + float64(c*p.Y)}
}

// Words are the words of s; a length in two parts (2' 9", 15 mm) is one, so
// that no line ends inside it.
func Words(s string) []string {
	var out []string
	for _, w := range strings.Fields(s) {
		last := len(out) - 1
		if last >= 0 && (strings.HasSuffix(out[last], "'") || strings.TrimRight(w, ".,;:)") == "mm") {
			out[last] += " " + w
			continue
		}
		out = append(out, w)
	}
	return out
}

// Wrap breaks s between words into lines no wider than width mm; a word that
// is wider by itself keeps a line of its own.
func Wrap(s string, size, width float64) []string {
	var lines []string
	line := ""
	for _, word := range Words(s) {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && (Text{Text: longer, Size: size}).Width() > width {
			lines, longer = append(lines, line), word
		}
		line = longer
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
