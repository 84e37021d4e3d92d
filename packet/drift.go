package packet

import (
	"slices"
	"strings"

	"strake/lay"
	"strake/row"
	"strake/setout"
	"strake/words"
)

// every is after how many rows drift is read.
const every = 5

// drift are the distances of rows from the first, to tape to the wall and to write the
// readings beside.
func (d *desk) drift() {
	f := d.open("Drift: are the rows where they should be?", false)
	f.para("Tape this to the wall. After each row of the table measure from the start line to the shoulder of the row's tongue edge (not to the tip of the tongue) near the left end, in the middle and near the right end, and write it down. A row that runs ahead at one end is drawn back a little with each of the next rows; what has drifted farther than a joint takes up is set right at the next line snapped. The last rows are ripped to what is measured.")
	for _, fl := range d.in.Plan.AllFields() {
		d.driftOf(f, fl)
	}
}

func (d *desk) driftOf(f *flow, fl row.Field) {
	ticks := setout.Stick(fl)
	from, ok := setout.StickFrom(fl)
	if !ok || len(ticks) == 0 || fl.Kind != lay.Field {
		return
	}
	title := "From the front of row " + namesOf(fl, from)
	if fl.Name != "" {
		title = capital(fl.Name) + ": from the front of row " + namesOf(fl, from)
	}
	t := table{high: 9, cols: []column{{name: "after row", w: 2.4, bold: true, right: true}, {name: "should be", w: 3, right: true, bold: true},
		{name: "left", w: 3}, {name: "middle", w: 3}, {name: "right", w: 3}, {name: "what was done about it", w: 6}}}
	for i, k := range ticks {
		if k.Ripped || k.Row%every != 0 && i != len(ticks)-1 || k.Row == from {
			continue
		}
		at := d.say.Of(k.At.Abs()) // as a tape reads
		if k.At < 0 {
			at += " behind"
		}
		t.rows = append(t.rows, []string{namesOf(fl, k.Row), at, toWrite, toWrite, toWrite, toWrite})
	}
	if len(t.rows) == 0 {
		f.heading(title)
		f.para("So few rows that each is held to its line.")
		return
	}
	f.titled(title, t)
}

// namesOf is a row as it is called elsewhere: "12"; "27a, 27b" where it lies in parts.
func namesOf(fl row.Field, no int) string {
	var parts []int
	for _, q := range fl.Layout.Runs {
		if q.Row == no {
			parts = append(parts, q.Part)
		}
	}
	if len(parts) == 0 {
		return words.RowPart(no, 0)
	}
	var names []string
	for _, p := range slices.Compact(slices.Sorted(slices.Values(parts))) {
		names = append(names, words.RowPart(no, p))
	}
	return strings.Join(names, ", ")
}
