package packet

import (
	"fmt"
	"strings"

	"strake/drawing"
	"strake/goods"
	"strake/paper"
)

// buying is how many cartons at what risk, and everything else to have on site.
func (d *desk) buying() {
	f := d.open("What to buy", false)
	for _, x := range d.in.Purchases {
		if len(d.in.Purchases) > 1 {
			f.heading("Boards of " + d.say.Rip(x.Boards.Face))
		}
		b := paper.BoughtOf(d.in.Plan, x)
		if b.Unknown {
			f.para("Nothing is known of the lengths of the boards, so no cartons can be told.")
			continue
		}
		for _, s := range b.Advice {
			f.para(s)
		}
		f.gap(1.5)
		t := table{cols: []column{{name: "cartons", right: true, bold: true}}, size: note * 1.05, folds: true}
		for _, l := range b.Layers {
			t.cols = append(t.cols, column{name: string(l) + ": runs short, left over", right: true})
		}
		t.cols = append(t.cols, column{name: ""})
		t.rows = b.Chances
		if len(t.rows) > 0 {
			f.table(t)
		}
		f.para(b.Reorder)
		for _, s := range nonEmpty(b.Stands) {
			f.small("– " + s)
		}
	}
	f.chart()
	f.goods()
}

// chart is the chance of running short as a step curve.
func (f *flow) chart() {
	for _, x := range f.d.in.Purchases {
		if !x.Counted() || x.Carton == 0 {
			return
		}
	}
	if len(f.d.in.Purchases) == 0 {
		return
	}
	high := f.body.w * 0.62
	f.need(high)
	f.figure(f.body.w, high, drawing.RiskIn(f.d.in.Plan, f.d.in.Purchases, f.body.w, high).Items)
}

// goods is everything but the boards, to tick off.
func (f *flow) goods() {
	f.heading("Everything else to have on site")
	var from cited
	for _, g := range goods.Groups {
		t := table{cols: []column{{name: ""}, {name: string(g), bold: true}, {name: "counted from"}, {name: "what to mind"}}, size: working}
		for _, l := range f.d.in.Goods.Lines {
			if l.Group == g {
				t.rows = append(t.rows, []string{toTick, counted(l), l.From + from.marks(l.Source), strings.Join(nonEmpty(append([]string{l.Do}, l.Notes...)), "; ")})
			}
		}
		f.table(t)
	}
	f.cutBars()
	f.sources(from)
}

func counted(l goods.Line) string {
	if l.Count > 0 {
		return paper.HowMany(l.Count, l.Unit) + ": " + l.What
	}
	return l.What
}

func nonEmpty(ss []string) []string {
	var out []string
	for _, s := range ss {
		if s != "" {
			out = append(out, s)
		}
	}
	return out
}

// cutBars says how each bar of base, shoe and strips is cut.
func (f *flow) cutBars() {
	if len(f.d.in.Goods.Cuts) == 0 {
		return
	}
	t := table{cols: []column{{name: ""}, {name: "bar"}, {name: "long", right: true, bold: true}, {name: "pieces"}}, size: working, folds: true}
	for _, c := range f.d.in.Goods.Cuts {
		for i, bar := range c.Cut.Bars {
			var parts []string
			for _, k := range bar.Pieces {
				parts = append(parts, c.Names[k]+" "+f.d.say.Of(c.Long[k]))
			}
			t.rows = append(t.rows, []string{toTick, fmt.Sprintf("%s %d", c.What, i+1), f.d.say.Of(bar.Length), strings.Join(parts, ", ")})
		}
	}
	f.heading("How the bars are cut")
	f.para("Lengths are planned: each piece is measured where it goes before it is cut.")
	f.table(t)
}
