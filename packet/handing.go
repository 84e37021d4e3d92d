package packet

import "strake/paper"

// handover is the sheet for whoever lives with the floor.
func (d *desk) handover() {
	d.form(paper.Handover(d.in.Plan, d.in.Purchases), "For whoever lives with this floor")
}

// form sets a form of lines on pages.
func (d *desk) form(x paper.Form, title string) {
	f := d.open(title, false)
	var from cited
	for _, s := range x.Lead {
		f.para(s)
	}
	for _, p := range x.Parts {
		f.heading(p.Head)
		if len(p.Columns) > 0 {
			f.amounts(p, &from)
		} else {
			for _, l := range p.Lines {
				f.formLine(l, &from)
			}
		}
		for _, s := range p.Notes {
			f.small(s)
		}
	}
	f.sources(from)
}

// formLine is a line of a form: what is said, or what is to be written.
func (f *flow) formLine(l paper.FormLine, from *cited) {
	s := l.What
	switch {
	case s == "":
		s = l.Says
	case l.Says != "":
		s += ": " + l.Says
	}
	s += from.marks(l.Sources...)
	blanks := l.Blanks
	if l.Says == "" && blanks > 0 {
		f.need(8)
		f.y += 3
		t := f.write(s, f.body.x, f.y+f.size, f.size, false)
		f.line(f.body.x+t.Printed()+3, f.y+f.size+0.8, f.body.x+f.body.w, f.y+f.size+0.8, faint)
		f.y += f.size * leading
		blanks--
	} else {
		f.item(s)
	}
	f.blanks(blanks)
}

// amounts is a part of a form with figures in columns.
func (f *flow) amounts(p paper.FormPart, from *cited) {
	t := table{cols: []column{{name: "", w: 8}}}
	for _, c := range p.Columns {
		t.cols = append(t.cols, column{name: c, w: 2.5, right: true})
	}
	for _, l := range p.Lines {
		what := l.What
		if l.Says != "" {
			what += ": " + l.Says
		}
		t.rows = append(t.rows, append([]string{what + from.marks(l.Sources...)}, l.Cells...))
	}
	f.table(t)
}
