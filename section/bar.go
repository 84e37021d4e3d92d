package section

import (
	"fmt"

	"strake/sheet"
)

// Bar is the check of a print: 100 mm, or 4 in where inches are read, that must
// measure so on paper. Scale is told beside it.
func Bar(inches bool, scale string) Figure {
	long, parts, name, one := 100.0, 10, "100 mm", 10.0
	if inches {
		long, parts, name, one = 101.6, 4, `4"`, 25.4
	}
	var items []sheet.Item
	for i := range parts {
		fill := sheet.White
		if i%2 == 0 {
			fill = sheet.Black
		}
		x := float64(one * float64(i))
		items = append(items, sheet.Polygon{Rings: [][]sheet.Pt{{{X: x}, {X: x + one}, {X: x + one, Y: 1.6}, {X: x, Y: 1.6}}}, Fill: fill, Pen: Thin})
	}
	items = append(items, sheet.Polyline{Name: "check bar", Points: []sheet.Pt{{X: 0, Y: 2.2}, {X: long, Y: 2.2}}, Pen: Thin})
	text := fmt.Sprintf("Scale %s. This bar is %s long on paper: if it does not measure so, measure nothing on this print.", scale, name)
	for i, l := range sheet.Wrap(text, Small, 165) {
		items = append(items, sheet.Text{Text: l, Size: Small, Ink: sheet.Black, At: sheet.Pt{X: 0, Y: 2.2 + 1 + Small + float64(i)*Small*leading}})
	}
	return figureOf(items)
}
