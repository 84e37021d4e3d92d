package packet

import (
	"fmt"
	"strings"

	"strake/paper"
	"strake/sheet"
)

// headLines are the lines over the pieces: how the row is ripped and fastened, and what
// else holds for all of it.
func (c *carder) headLines(r paper.Row) []string {
	var parts []string
	if s := c.d.rips(r); s != "" {
		parts = append(parts, s)
	}
	if s := c.d.alike(r).said(); s != "" {
		parts = append(parts, s)
	}
	parts = append(parts, r.Fasten)
	if r.Turned {
		parts = append(parts, "laid backwards, boards turned end for end, tongues down the drawing")
		if c.d.ontoSpline(r) {
			parts = append(parts, "its groove goes onto the spline glued into the row before")
		}
	}
	if s := c.d.in.Plan.Field(r.Field).Name; s != "" && len(c.d.in.Plan.Fields) > 1 {
		parts = append(parts, s)
	}
	if r.Closes != "" {
		parts = append(parts, r.Closes)
	}
	if r.Unfilled || len(r.Pieces) == 0 {
		parts = append(parts, "no boards left for it")
	}
	if c.d.starter(r) {
		parts = append(parts, "starter: rip it ONLY ONCE THE START LINE HAS BEEN CHECKED")
	}
	w := c.w - 4
	if c.oneRip(r) {
		w -= boxWide + 2
	}
	return sheet.WrapPrinted(capital(strings.Join(parts, "; "))+".", cardNote, w, false)
}

// ontoSpline tells whether a row is the first of those that are laid backwards: it takes
// the spline.
func (d *desk) ontoSpline(r paper.Row) bool {
	zone, first := -1, 0
	for _, x := range d.in.Plan.Lay.Runs {
		if x.Order == r.Order {
			zone = x.Zone
		}
	}
	for _, x := range d.in.Plan.Lay.Runs {
		if x.Zone == zone && (first == 0 || x.Order < first) {
			first = x.Order
		}
	}
	return first == r.Order
}

// endTexts are what stands at the arrows of a row's ends; a long name is made smaller.
func (c *carder) endTexts(r paper.Row, y float64) [2]sheet.Text {
	x := c.f.body.x + nameWide
	return [2]sheet.Text{
		fitted(c.d.toward(r, false), sheet.Pt{X: x + 8, Y: y}, cardNote, c.w/2-10, sheet.Start),
		fitted(c.d.toward(r, true), sheet.Pt{X: x + c.w - 8, Y: y}, cardNote, c.w/2-10, sheet.End),
	}
}

// midst is the part between the two that is free, from and to.
func (c *carder) midst(r paper.Row) (from, to float64) {
	e := c.endTexts(r, 0)
	return e[0].At.X + e[0].Printed() + 3, e[1].At.X - e[1].Printed() - 3
}

// headTall is how high the head of a row is: one line where what has to be said goes
// in between its two ends.
func (c *carder) headTall(r paper.Row) float64 {
	if c.short(r) {
		return headHigh
	}
	h := float64(len(c.headLines(r))) * cardNote * noteLead
	if c.oneRip(r) {
		h = max(h, boxHigh+1)
	}
	return headHigh + h
}

func (c *carder) short(r paper.Row) bool {
	l := c.headLines(r)
	from, to := c.midst(r)
	return len(l) == 1 && !c.oneRip(r) && sheet.Text{Text: l[0], Size: cardNote}.Printed() < to-from
}

// ends draws the arrows to what the row's ends meet, and the lines under them.
func (c *carder) ends(r paper.Row) {
	f := c.f
	x, w := f.body.x+nameWide, c.w
	base := f.y + 3.5
	f.arrow(x+2, base-1.1, -1)
	f.arrow(x+w-2, base-1.1, 1)
	for _, t := range c.endTexts(r, base) {
		f.Put(t)
	}
	f.y += headHigh
	if c.short(r) {
		from, to := c.midst(r)
		f.Put(sheet.Text{Text: c.headLines(r)[0], At: sheet.Pt{X: (from + to) / 2, Y: base}, Size: cardNote, Anchor: sheet.Middle, Ink: sheet.Black})
		return
	}
	if c.oneRip(r) {
		c.boxNamed("rip", x+w-boxWide-1, f.y-0.4)
	}
	for i, l := range c.headLines(r) {
		f.write(l, x+2, f.y+cardNote*(0.8+float64(i)*noteLead), cardNote, false)
	}
	f.y += c.headTall(r) - headHigh
}

// boxNamed draws a box to write a measured figure in.
func (c *carder) boxNamed(name string, x, y float64) {
	c.f.frame(box{x, y, boxWide - 1, boxHigh}, sheet.White, rule)
	if name != "" {
		c.f.write(name, x+0.8, y+note*0.9, note, false)
	}
}

// toward is what an end of a row comes to.
func (d *desk) toward(r paper.Row, right bool) string {
	e := r.Left
	if right {
		e = r.Right
	}
	switch {
	case e.Edge == "":
		return "this end to the end of the row"
	case strings.HasPrefix(e.Edge, "runs out"), strings.HasPrefix(e.Edge, "meets"):
		return "this end " + e.Edge
	}
	if c := d.jambAt(r, right); c != "" {
		return "this end to " + e.Edge + ", the one toward " + c
	}
	return "this end to " + e.Edge
}

// arrow draws an arrow that points left (-1) or right (1) with its tip at x.
func (l *leaf) arrow(x, y, way float64) {
	l.Put(sheet.Polygon{Fill: sheet.Black, Rings: [][]sheet.Pt{{{X: x, Y: y}, {X: x - way*2.4, Y: y - 1.3}, {X: x - way*2.4, Y: y + 1.3}}}})
	l.line(x-way*2.4, y, x-way*5, y, rule)
}

// rips are how wide a row is that is not of full width.
func (d *desk) rips(r paper.Row) string {
	if r.Kind == "full width" {
		return ""
	}
	a, b := d.say.Rip(r.WidthLeft), d.say.Rip(r.WidthRight)
	if a == b {
		return fmt.Sprintf("%s %s on the floor", r.Kind, a)
	}
	return fmt.Sprintf("%s %s at the left, %s at the right, on the floor", r.Kind, a, b)
}

// starter tells whether a row is the one that the start line sets; that is one of the
// main field.
func (d *desk) starter(r paper.Row) bool {
	return d.begun && r.Field == 0 && len(r.Pieces) > 0 && rowOf(r) == d.begin && r.Kind != "full width"
}

// rowOf is a row's number without the letter of its part.
func rowOf(r paper.Row) int {
	n := 0
	for _, c := range r.Name {
		if c < '0' || c > '9' {
			break
		}
		n = n*10 + int(c-'0')
	}
	return n
}

// ordinal is 1st, 2nd, 3rd, 4th, 11th, 21st.
func ordinal(n int) string {
	end := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			end = "st"
		case 2:
			end = "nd"
		case 3:
			end = "rd"
		}
	}
	return fmt.Sprint(n) + end
}
