package dxf

import (
	"math"
	"testing"

	"strake/sheet"
)

// A sheet at 1:2, 100 mm high: what lies 10 mm from its left and 20 mm from its head is at
// 20 and 160 mm; a line of 30 mm is 60 mm long; dashes are drawn one by one; what clears
// the paper under writing is not there.
func TestSheetInRealUnits(t *testing.T) {
	s := sheet.Sheet{W: 200, H: 100, One: 2}
	black := sheet.Pen{Width: 0.5, Ink: sheet.Black}
	s.Put(
		sheet.Polyline{Points: []sheet.Pt{{X: 10, Y: 20}, {X: 40, Y: 20}}, Pen: black},
		sheet.Polyline{Points: []sheet.Pt{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 4}}, Pen: sheet.Pen{Width: 0.18, Ink: sheet.Black, Dash: []float64{3, 1}}},
		sheet.Polygon{Rings: [][]sheet.Pt{{{X: 1, Y: 1}, {X: 2, Y: 1}, {X: 2, Y: 2}}}, Fill: sheet.White},
		sheet.Polygon{Rings: [][]sheet.Pt{{{X: 1, Y: 1}, {X: 2, Y: 1}, {X: 2, Y: 2}}}, Fill: sheet.Mid},
		sheet.Text{Text: "end", At: sheet.Pt{X: 50, Y: 90}, Size: 5, Anchor: sheet.End, Turn: 90, Ink: sheet.Black},
	)
	for units, mm := range map[Units]float64{Millimetres: 1, Inches: 25.4} {
		d := Of(s, units)
		first := d.Lines[0]
		if first.Layer != Outlines || math.Abs(first.Points[0].X*mm-20) > 1e-9 || math.Abs(first.Points[0].Y*mm-160) > 1e-9 || math.Abs(first.Points[1].X*mm-80) > 1e-9 {
			t.Errorf("%+v", first)
		}
		drawn, n := 0.0, 0
		for _, l := range d.Lines {
			if l.Layer != Fine {
				continue
			}
			n++
			for i := 1; i < len(l.Points); i++ {
				drawn += math.Hypot(l.Points[i].X-l.Points[i-1].X, l.Points[i].Y-l.Points[i-1].Y) * mm
			}
		}
		// 14 mm dashed by 3 on, 1 off: 3, 3, 3 (round the corner) and 2 are drawn.
		if n != 4 || math.Abs(drawn-22) > 1e-9 {
			t.Errorf("%d dashes, %.3f mm drawn", n, drawn)
		}
		areas := 0
		for _, l := range d.Lines {
			if l.Layer == Areas {
				areas++
			}
		}
		if areas != 1 {
			t.Errorf("%d areas", areas)
		}
		x := d.Texts[0]
		if x.Anchor != 2 || x.Turn != 270 || math.Abs(x.At.Y*mm-20) > 1e-9 || math.Abs(x.Height*mm-7.2) > 1e-9 {
			t.Errorf("%+v", x)
		}
	}
}
