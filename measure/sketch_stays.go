package measure

import (
	"math"

	"strake/plane"
	"strake/sheet"
)

// stays draws something that stays, with its name where there is room for it.
func (d *drawn) stays(o Outline) {
	var pts []sheet.Pt
	var mid plane.XY
	for i, c := range o.Corners {
		a, b := d.place(c), d.place(o.Corners[(i+1)%len(o.Corners)])
		pts = append(pts, a)
		d.taken = append(d.taken, bar(a, b, 0.3))
		mid = mid.Add(c.Times(1 / float64(len(o.Corners))))
	}
	d.page.Put(sheet.Polygon{Name: o.Name, Rings: [][]sheet.Pt{pts}, Pen: sheet.Pen{Width: 0.3, Ink: sheet.Dark}})
	name := sheet.Text{Text: o.Name, Size: 2.8, Anchor: sheet.Middle, Ink: sheet.Dark}
	at := d.place(mid)
	name.At = sheet.Pt{X: at.X, Y: at.Y + 0.36*name.Size}
	box := name.Box()
	if math.Abs(box[2].X-box[0].X) < widest(pts)-1 && d.clear(name) {
		d.page.Put(name)
		d.taken = append(d.taken, box[:])
	}
}

// widest is how far places reach from left to right on the page.
func widest(pts []sheet.Pt) float64 {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, p := range pts {
		lo, hi = math.Min(lo, p.X), math.Max(hi, p.X)
	}
	return hi - lo
}
