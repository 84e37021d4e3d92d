package packet

import (
	"fmt"

	"strake/drawing"
	"strake/paper"
)

// choices are the ways the rows could lie, side by side, and what each means.
func (d *desk) choices() {
	c := d.in.Choices
	f := d.open("Ways to lay the rows", true)
	f.para(drawing.ChoicesKey)
	f.gap(2)
	f.figure(f.body.w, f.left(), drawing.ChoicesIn(c, f.body.w, f.left(), 3))
	f = d.reopen(f, false)
	for i, k := range c.Candidates {
		title := fmt.Sprintf("%d  Rows %s", i+1, k.Name)
		if i == 0 {
			title += " (this is what is laid)"
		}
		f.heading(title)
		for _, l := range paper.ChoiceLines(k, d.say, c.Job.Unit) {
			f.item(l)
		}
	}
}

// reopen goes on with a part on a page that lies the other way.
func (d *desk) reopen(f *flow, across bool) *flow {
	f.across = across
	f.turn()
	return f
}
