package drawing

import (
	"fmt"
	"math"

	"strake/order"
	"strake/plan"
	"strake/sheet"
)

// Risk draws the chance of running short against cartons, a step curve for each
// way to lay, with what is advised and the rule of ten per cent.
func Risk(p plan.Plan, ps []plan.Purchase) sheet.Sheet {
	return RiskIn(p, ps, logW, logH)
}

// RiskIn is that drawing, so many mm wide and high.
func RiskIn(p plan.Plan, ps []plan.Purchase, wide, high float64) sheet.Sheet {
	s := sheet.Sheet{Title: p.Job.Name + ": cartons against the chance of running short", W: wide, H: high}
	put := func(text string, y, size float64, bold bool) {
		t := sheet.Text{Text: text, At: sheet.Pt{X: margin + 10, Y: y}, Size: size, Bold: bold, Ink: sheet.Black}
		if most := wide - 2*margin - 10; t.Width() > most {
			t.Size *= most / t.Width()
		}
		s.Put(t)
	}
	put("Cartons against the chance of running short", margin+8, title, true)
	var drawn []plan.Purchase
	for _, x := range ps {
		if len(x.Layers) > 0 && x.Carton > 0 {
			drawn = append(drawn, x)
		}
	}
	if len(drawn) == 0 {
		put("The area of a carton, or the lengths of the boards, are not known.", margin+16, middling, false)
		return s
	}
	y := margin + 14.0
	for _, l := range sheet.Wrap("Full line: careful. Dashed: strict. Dotted: by a plan. A step down is one carton more. Square: advised, without spares; cross: ten per cent over the floor.", small, wide-2*margin-10) {
		put(l, y, small, false)
		y += small * 1.4
	}
	w := (wide - 2*margin - 20) / float64(len(drawn))
	for i, x := range drawn {
		left := margin + 20 + float64(i)*w
		riskOf(&s, x, box{sheet.Pt{X: left, Y: y + 6.5}, sheet.Pt{X: left + w - 14, Y: high - margin - 14}})
	}
	return s
}

// dashes are the lines of the ways to lay.
var dashes = map[order.Layer][]float64{order.Strict: {3, 1.5}, order.Careful: nil, order.Planned: {0.5, 1}}

func riskOf(s *sheet.Sheet, x plan.Purchase, b box) {
	last := max(x.Ten, x.Advised) + 1
	for _, l := range x.Layers {
		last = max(last, l.Advised+1)
	}
	last = min(last, x.Fewest+30)
	g := newChart(s, b, float64(x.Fewest)-0.5, float64(last)+0.5, 0, 100)
	g.across(10, " %")
	g.down(math.Max(1, math.Round(roundStep(float64(last-x.Fewest), 14))), func(c float64) string { return fmt.Sprintf("%.0f", c) })
	g.frame()
	s.Put(sheet.Text{Text: "cartons", At: sheet.Pt{X: b.b.X, Y: b.b.Y + 8.5}, Size: small, Anchor: sheet.End, Ink: sheet.Black})
	for _, l := range x.Layers {
		if len(l.Choices) > 0 {
			g.steps(string(l.Layer), l.Choices, last, sheet.Pen{Width: 0.5, Ink: sheet.Black, Dash: dashes[l.Layer]})
		}
	}
	own := x.Of(x.Wants.Layer)
	if n := own.Advised; n > 0 {
		c := g.at(float64(n), 100*shortWith(own, x.Fewest, n))
		s.Put(sheet.Polygon{Name: "advised", Rings: [][]sheet.Pt{{{X: c.X - 1.5, Y: c.Y - 1.5}, {X: c.X + 1.5, Y: c.Y - 1.5}, {X: c.X + 1.5, Y: c.Y + 1.5}, {X: c.X - 1.5, Y: c.Y + 1.5}}}, Fill: sheet.White, Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black}})
	}
	if n := x.Ten; n >= x.Fewest && n <= last {
		c := g.at(float64(n), 100*shortWith(own, x.Fewest, n))
		for _, d := range []float64{-1, 1} {
			s.Put(sheet.Polyline{Name: "ten per cent", Points: []sheet.Pt{{X: c.X - 1.5, Y: c.Y - 1.5*d}, {X: c.X + 1.5, Y: c.Y + 1.5*d}}, Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black}})
		}
	}
}

// shortWith is the chance that so many cartons run short.
func shortWith(l plan.Laying, fewest, cartons int) float64 {
	i := cartons - fewest
	if i < 0 || len(l.Choices) == 0 {
		return 1
	}
	if i >= len(l.Choices) {
		return 0
	}
	return l.Choices[i].Short
}

// steps draws chances as a step curve.
func (c chart) steps(name string, cs []order.Choice, last int, pen sheet.Pen) {
	var ps []sheet.Pt
	for n := cs[0].Cartons; n <= last; n++ {
		y := 0.0
		if i := n - cs[0].Cartons; i < len(cs) {
			y = 100 * cs[i].Short
		}
		ps = append(ps, c.at(float64(n)-0.5, y), c.at(float64(n)+0.5, y))
	}
	c.s.Put(sheet.Polyline{Name: name, Points: ps, Pen: pen})
}
