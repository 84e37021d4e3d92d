package packet

import (
	"cmp"

	"strake/drawing"
	"strake/paper"
	"strake/tape"
)

// measured is the rooms as they came out of the readings, and the readings.
func (d *desk) measured() {
	p := d.in.Plan
	f := d.open("The room as measured", false)
	f.para("Every wall with its length, and under it how far it may be off (two standard deviations). Gaps for the boards are not in it.")
	f.gap(1)
	h := f.left() * 0.66
	f.figure(f.body.w, h, drawing.Measured(p, drawing.Page{W: f.body.w, H: h}).Items)
	if !p.Survey.Converged || len(p.Job.Readings) == 0 {
		return
	}
	rows, rep := paper.ReadingTable(p)
	style := tape.Paper(p.Job.Unit)
	f.heading("Readings")
	f.para(paper.ReadingsVerdict(rep))
	f.para(paper.NextReading(p, rep, style))
	f.gap(1)
	t := table{cols: []column{{name: "reading", w: 7}, {name: "as written", w: 4, right: true}, {name: "as fitted", w: 4, right: true},
		{name: "off", w: 2.6, right: true}, {name: "an error shows from", w: 4.6, right: true}, {name: "read again", w: 4}}}
	for _, r := range rows {
		t.rows = append(t.rows, []string{r.Name, style.Of(r.Value), style.Of(millimetres(r.Adjusted)), d.signed(millimetres(r.Residual)),
			paper.Shows(r.Smallest, style), cmp.Or(r.Mark, toWrite)})
	}
	f.table(t)
}

// millimetres is a length of so many mm.
func millimetres(mm float64) tape.Length { return tape.Length(mm * float64(tape.Millimetre)) }

// signed is a small length with its sign, 0 without one.
func (d *desk) signed(l tape.Length) string {
	switch {
	case d.say.Nil(l):
		return "0"
	case l < 0:
		return "-" + d.say.Rip(-l)
	}
	return "+" + d.say.Rip(l)
}
