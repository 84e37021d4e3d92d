package png

import (
	"bytes"
	"image/png"
	"testing"

	"strake/sheet"
)

// A sheet of 100 by 50 mm at 254 dots an inch is 1000 by 500 dots; what is drawn lies
// where it is drawn, holes are holes, and the rest is white.
func TestPicture(t *testing.T) {
	s := sheet.Sheet{W: 100, H: 50}
	sq := func(x, y, d float64) []sheet.Pt {
		return []sheet.Pt{{X: x, Y: y}, {X: x + d, Y: y}, {X: x + d, Y: y + d}, {X: x, Y: y + d}}
	}
	s.Put(sheet.Polygon{Rings: [][]sheet.Pt{sq(10, 10, 20), sq(15, 15, 10)}, Fill: sheet.Black},
		sheet.Polyline{Points: []sheet.Pt{{X: 40, Y: 5}, {X: 40, Y: 45}}, Pen: sheet.Pen{Width: 1, Ink: sheet.Mid}},
		sheet.Text{Text: "███", At: sheet.Pt{X: 70, Y: 30}, Size: 8, Anchor: sheet.Middle})
	var a, b bytes.Buffer
	for _, w := range []*bytes.Buffer{&a, &b} {
		if err := Write(w, s, 254); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Error("the same sheet gives other bytes")
	}
	m, err := png.Decode(&a)
	if err != nil {
		t.Fatal(err)
	}
	if size := m.Bounds().Size(); size.X != 1000 || size.Y != 500 {
		t.Fatalf("%v dots", size)
	}
	for _, c := range []struct {
		x, y int
		grey uint32
	}{{120, 120, 0}, {200, 200, 255}, {50, 50, 255}, {400, 250, 0x8c}, {415, 250, 255}, {700, 280, 0}} {
		r, _, _, _ := m.At(c.x, c.y).RGBA()
		if r>>8 != c.grey {
			t.Errorf("at %d, %d: %d, want %d", c.x, c.y, r>>8, c.grey)
		}
	}
}
