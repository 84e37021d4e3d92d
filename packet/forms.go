package packet

import (
	"fmt"
	"strings"

	"strake/receive"
)

// receiving is what to look at when the boards come, and where it is written.
func (d *desk) receiving() {
	p := d.in.Plan
	f := d.open("When the boards come", false)
	f.para("Look before you sign, and before you open more than a part of it: what is opened counts as accepted with many makers. Boards that are laid are accepted everywhere. Their leaflet comes before this page.")
	f.gap(1)
	for _, s := range []string{
		"Count the cartons against the delivery note; look for wet, crushed or open ones before the driver leaves, and write them on the note.",
		"All of one lot, one grade, one shade, one width: read the labels, write the lots below.",
		"Do not carry them into a house that is wet, cold or still being plastered; not on bare concrete, not in a garage.",
		"Spread the stacks along the walls: what they weigh stands under May it be laid?",
		fmt.Sprintf("Open no more than %s or %s of it before you have made up your mind; count the boards and the culls of each carton.", d.guide(receive.OpenedPart), d.guide(receive.OpenedArea)),
		"Measure ten boards pushed tight from each of five cartons, and boards' moisture at the meter's setting for the wood: see the forms.",
		"Keep the labels of every lot, and one carton for repairs.",
	} {
		f.tick(s)
	}
	t := table{high: 8.5, cols: []column{{name: "carton", w: 1.6}, {name: "lot", w: 4}, {name: "shade", w: 3}, {name: "boards", w: 2}, {name: "culls", w: 2}, {name: "what was wrong with them", w: 8}}}
	for i := range 7 {
		t.rows = append(t.rows, []string{fmt.Sprint(i + 1), toWrite, toWrite, toWrite, toWrite, toWrite})
	}
	f.titled("Cartons opened", t)
	plan := "not known"
	if b := p.Job.Boards; len(b.Widths) == 0 {
		plan = d.say.Rip(10 * b.Pitch())
	}
	f.heading("Ten boards pushed tight: how wide")
	f.para("The plan takes " + plan + " for ten rows. Measure over the faces without tongues, at both ends. Where the five differ by more than " + d.guide(receive.TensApart) + ", sort the boards by width.")
	t = table{high: 8.5, cols: []column{{name: "from carton", w: 3}, {name: "at one end", w: 3}, {name: "at the other", w: 3}, {name: "note", w: 6}}}
	for range 5 {
		t.rows = append(t.rows, []string{toWrite, toWrite, toWrite, toWrite})
	}
	f.table(t)
	f.small("Limits on this page: " + d.guided() + ".")
}

// guide is the limit of a delivery that stands, with its unit: the trade's, or that of
// whoever outranks it in the job.
func (d *desk) guide(key string) string {
	is, unit := receive.Guides.Rule(d.in.Plan.Job.Received.Limits, key)
	return fmt.Sprintf("%.4g %s", is.Is, unit)
}

// guided are where the limits of a delivery come from, with their rank.
func (d *desk) guided() string {
	var out []string
	for _, x := range []struct{ key, what string }{{receive.OpenedPart, "how much may be opened"}, {receive.OpenedArea, "how many square feet"}, {receive.TensApart, "ten boards apart"}} {
		is, _ := receive.Guides.Rule(d.in.Plan.Job.Received.Limits, x.key)
		out = append(out, fmt.Sprintf("%s: %s, %s", x.what, is.By, is.Source))
	}
	return strings.Join(out, "; ")
}

// record are the forms for what is read on site.
func (d *desk) record() {
	subfloor, boards := d.in.Plan.ReadingsWanted()
	f := d.open("Readings on site: moisture", false)
	f.para(fmt.Sprintf("This floor asks for %d readings of the subfloor, spread over all rooms, and %d of the boards, from several cartons. Set the meter to the material. Who keeps the plan types them in in the evening, and is told what they mean.", subfloor, boards))
	f.heading("The air, morning and evening")
	f.form(7, 8, "date", "time", "temperature", "humidity", "where", "by")
	f.heading("Subfloor")
	f.para("Meter ________________   setting ________________   depth of the pins ________________")
	f.form((max(subfloor, 10)+3)/4, 8, "place", "reading", "place", "reading", "place", "reading", "place", "reading")
	f.heading("Boards")
	f.para("Meter ________________   setting ________________   day of opening ________________")
	f.form((max(boards, 12)+3)/4, 8, "carton", "reading", "carton", "reading", "carton", "reading", "carton", "reading")

	f = d.open("Readings on site: flatness", false)
	f.para("Lay the straightedge in two directions at each place, over the joints of the sheets and beside the walls, and write the largest gap under it, or how it rocks. Mark high spots with a cross and low ones with a ring on the subfloor, with the figure.")
	f.para("Straightedge, length ________________   limit ________________ over ________________")
	f.gap(1)
	f.form(20, 8.5, "place", "direction", "high or low", "how much", "what was done", "after")

	f = d.open("As it was laid", false)
	f.para("For whoever repairs this floor, and for the maker if there is a claim.")
	f.heading("Lots and rows")
	f.form(7, 8.5, "rows", "lot", "cartons", "date", "by")
	f.heading("Days")
	f.form(7, 8.5, "date", "rows laid", "hours", "temperature", "humidity", "nailer pressure")
	f.heading("What went otherwise than planned")
	f.blanks(6)
}

// form is a table to write in.
func (f *flow) form(rows int, high float64, names ...string) {
	t := table{high: high}
	for _, n := range names {
		t.cols = append(t.cols, column{name: n, w: 1})
	}
	for range rows {
		line := make([]string, len(names))
		for i := range line {
			line[i] = toWrite
		}
		t.rows = append(t.rows, line)
	}
	f.table(t)
}
