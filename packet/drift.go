package packet

import (
	"slices"
	"strings"

	"strake/setout"
	"strake/words"
)

// drift are the distances of rows from a line of their room, to tape to the wall and to write the
// readings beside.
func (d *desk) drift() {
	f := d.open("Drift: are the rows where they should be?", false)
	f.para("Tape this to the wall. After each row of the table measure from the line that stands over the table to the shoulder of the row's tongue edge (not to the tip of the tongue) near the left end, in the middle and near the right end, and write it down. A row that runs ahead at one end is drawn back a little with each of the next rows; what has drifted farther than a joint takes up is set right at the next line snapped. The last rows are ripped to what is measured.")
	for _, x := range setout.Drifts(d.in.Plan) {
		d.driftOf(f, x)
	}
}

func (d *desk) driftOf(f *flow, x setout.Drift) {
	title := capital(x.Room) + ": from the line of row " + words.RowPart(x.From.Row, x.From.Part)
	t := table{high: 9, cols: []column{{name: "after row", w: 2.4, bold: true, right: true}, {name: "should be", w: 3, right: true, bold: true},
		{name: "left", w: 3}, {name: "middle", w: 3}, {name: "right", w: 3}, {name: "what was done about it", w: 6}}}
	for _, r := range x.Rows {
		at := d.say.Of(r.At.Abs()) // as a tape reads
		if r.At < 0 {
			at += " behind"
		}
		t.rows = append(t.rows, []string{partsOf(r.Row, r.Parts), at, toWrite, toWrite, toWrite, toWrite})
	}
	if len(t.rows) == 0 {
		f.heading(title)
		f.para("So few rows that each is held to its line.")
		return
	}
	f.titled(title, t)
}

// partsOf is a row as it is called elsewhere: "12"; "27a, 27b" where it lies in parts.
func partsOf(row int, parts []int) string {
	var names []string
	for _, p := range slices.Compact(slices.Clone(parts)) {
		names = append(names, words.RowPart(row, p))
	}
	return strings.Join(names, ", ")
}
