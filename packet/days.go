package packet

import (
	"fmt"
	"strings"

	"strake/paper"
)

// days are the steps of the work with their hours and days.
func (d *desk) days() {
	c := d.in.Calendar
	f := d.open("Steps and days", false)
	f.para(c.Work.Hold.Says())
	for _, v := range c.Work.Hold.Why {
		f.item(paper.Reason(v.Rule, v.Where, v.Measured, v.Limit))
	}
	if len(c.Work.Hold.Other) > 0 {
		f.para("Besides, nothing may be laid while this stands:")
	}
	for _, v := range c.Work.Hold.Other {
		f.item(paper.Reason(v.Rule, v.Where, v.Measured, v.Limit))
	}
	f.para(paper.Pace(c))
	f.gap(1)
	t := table{cols: []column{{name: "", w: 0.7}, {name: "", w: 1, right: true}, {name: "step", w: 10}, {name: "hours", w: 1.8, right: true}, {name: "when", w: 4.5}, {name: "took", w: 2}}}
	n := 0
	var from cited
	for i, s := range c.Steps {
		if s.Out != "" {
			continue
		}
		n++
		what := s.What
		if s.Note != "" {
			what += ". " + s.Note
		}
		for _, p := range s.Parts {
			if m := from.marks(p.Used.Source); !strings.Contains(what, m) {
				what += m
			}
		}
		t.rows = append(t.rows, []string{toTick, fmt.Sprint(n), what, fmt.Sprintf("%.2f", s.Hours()), c.WhenOf(i), toWrite})
	}
	f.table(t)
	f.small("Hours are reckoned by rates.")
	defer func() { f.sources(from) }()
	if len(c.Days) == 0 {
		return
	}
	t = table{cols: []column{{name: "day", w: 3, bold: true}, {name: "work", w: 8}, {name: "tonight", w: 7}}}
	for _, w := range c.Days {
		day := w.When()
		if c.Tentative(w) {
			day += " (" + c.Work.Hold.Note() + ")"
		}
		var work, night []string
		for _, s := range w.Slots {
			work = append(work, fmt.Sprintf("%.2f h %s", s.Hours, c.Says(s)))
		}
		for _, x := range w.Night {
			night = append(night, strings.Join(x.Rooms, ", ")+": "+x.Say)
		}
		t.rows = append(t.rows, []string{day, strings.Join(work, "; "), strings.Join(night, "; ")})
	}
	f.titled("Day by day", t)
}
