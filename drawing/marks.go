package drawing

import (
	"strconv"

	"strake/lay"
	"strake/plan"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// drawTop writes which wall is at the top of the sheet.
func (d *draw) drawTop() {
	y := d.area.a.Y + 5
	if d.bannered {
		y += 9.5
	}
	d.put(sheet.Text{Text: Seen(d.p), At: sheet.Pt{X: d.area.a.X + 10, Y: y}, Size: middling})
}

// Seen is how a drawing of the floor is looked at, and what is at the top of it.
func Seen(p plan.Plan) string {
	s := "Seen from above."
	if top := words.Top(p); top != "" {
		s += " " + top
	}
	return s
}

// drawScaleBar draws a bar in feet or metres at the foot.
func (d *draw) drawScaleBar() {
	step, n, _ := d.barStep()
	a := sheet.Pt{X: d.area.a.X + 10, Y: d.area.b.Y - 3}
	d.scaleBarAt(a)
	d.put(sheet.Text{Text: d.scaleText(), Size: small, At: sheet.Pt{X: a.X + d.on(step)*float64(n) + 12, Y: a.Y}})
}

// scaleBarAt draws the bar itself, its lower left corner at a.
func (d *draw) scaleBarAt(a sheet.Pt) {
	step, n, name := d.barStep()
	wide := d.on(step)
	for i := range n {
		fill := sheet.Black
		if i%2 == 1 {
			fill = sheet.White
		}
		x := a.X + float64(wide*float64(i))
		d.lines = append(d.lines, sheet.Polygon{Fill: fill, Pen: sheet.Pen{Width: 0.2, Ink: sheet.Black},
			Rings: [][]sheet.Pt{box{sheet.Pt{X: x, Y: a.Y - 1.5}, sheet.Pt{X: x + wide, Y: a.Y}}.corners()}})
	}
	for i := 0; i <= n; i++ {
		d.put(sheet.Text{Text: name(i), At: sheet.Pt{X: a.X + float64(wide*float64(i)), Y: a.Y - 2.4}, Size: small, Anchor: sheet.Middle})
	}
}

// barStep is what one part of the scale bar stands for, how many there are,
// and how the end of part i is written.
func (d *draw) barStep() (step tape.Length, n int, name func(int) string) {
	one, unit, parts := tape.Metre, " m", []tape.Length{tape.Metre / 10, tape.Metre / 2, tape.Metre, 5 * tape.Metre, 10 * tape.Metre}
	if d.p.Job.Unit.Imperial() {
		one, unit, parts = tape.Foot, " ft", []tape.Length{tape.Foot, 2 * tape.Foot, 5 * tape.Foot, 10 * tape.Foot}
	}
	for _, step = range parts {
		if d.on(step) >= 10 {
			break
		}
	}
	n = max(1, int(75/d.on(step)))
	return step, n, func(i int) string {
		s := strconv.FormatFloat(float64(step)*float64(i)/float64(one), 'f', -1, 64)
		if i == n {
			s += unit
		}
		return s
	}
}

// zone is the field zone that the drawing speaks of.
func (d *draw) zone() (lay.Zone, bool) {
	for _, z := range d.p.Lay.Zones {
		if z.Kind == lay.Field {
			return z, true
		}
	}
	return lay.Zone{}, false
}

// drawTongues draws the arrow of the order of laying at the left of the sheet.
func (d *draw) drawTongues() {
	z, ok := d.zone()
	if !ok {
		return
	}
	x, y := d.area.a.X+3, (d.floor.a.Y+d.floor.b.Y)/2
	tail, tip := sheet.Pt{X: x, Y: y + 30}, sheet.Pt{X: x, Y: y - 30}
	if z.Ahead < 0 {
		tail, tip = tip, tail
	}
	back := unit(tail.Sub(tip))
	wing := sheet.Pt{X: back.Y, Y: -back.X}.Times(1.8)
	neck := tip.Add(back.Times(5))
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{tail, neck}, Pen: sheet.Pen{Width: 0.8, Ink: sheet.Black}},
		sheet.Polygon{Rings: [][]sheet.Pt{{tip, neck.Add(wing), neck.Sub(wing)}}, Fill: sheet.Black})
	d.labels.reserve(box{sheet.Pt{X: x - 2, Y: y - 30}, sheet.Pt{X: x + 2, Y: y + 30}}.corners())
	d.put(sheet.Text{Text: "laid this way, side tongues ahead", Size: small, Anchor: sheet.Middle, Turn: -90, At: sheet.Pt{X: x + 5, Y: y}})
}

// scaleText is the scale, with the paper that it holds on where there is one.
func (d *draw) scaleText() string {
	if d.page.name == "" {
		return "Scale " + d.scale.String()
	}
	return "Scale " + d.scale.String() + " on " + d.page.name
}
