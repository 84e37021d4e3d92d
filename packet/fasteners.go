package packet

import (
	"fmt"
	"strings"

	"strake/fasten"
	"strake/paper"
	"strake/plan"
	"strake/tape"
)

// fasteners are what boards are nailed with and how, the rows that are nailed by hand or
// through the face, and where no fastener goes.
func (d *desk) fasteners() {
	n := d.in.Plan.Nailing()
	s, u, ok := n.Use()
	f := d.open("Fasteners", false)
	var from cited
	f.para("Local code and licensed practice come first, then the instructions of the boards' maker, then this. What to look at before the first nail stands under May it be laid?")
	if ok {
		f.gap(1)
		f.table(d.nails(n, s, u, &from))
	} else {
		f.para("No schedule speaks of such boards: take length, spacing and distance from ends from their maker, and write them here: ____________________________________")
	}
	f.keepOff(n.Free)
	f.byHand(paper.FastenedRows(d.in.Plan))
	f.nailed(u, ok, &from)
	f.sources(from)
}

// nails are the figures of what is nailed, with where they come from.
func (d *desk) nails(n fasten.Floor, s fasten.Schedule, u fasten.Use, from *cited) table {
	t := table{cols: []column{{name: "what", bold: true}, {name: "figure", bold: true}, {name: "how"}}, size: body}
	add := func(what, figure, how string) { t.rows = append(t.rows, []string{what, figure, how}) }
	gauge := s.Cleat
	if u.Kind == fasten.Staple {
		gauge = s.Staple
	}
	add("fastener", d.say.Of(u.Length)+" "+string(u.Kind)+"s", gaugeOf(s, gauge)+from.marks(u.Source))
	add("along a board", "every "+d.say.Of(u.Spacing)+" at most", d.asked(s.Flooring != "", "every", s.SpacingFrom, s.SpacingTo)+from.marks(s.Source))
	add("from each end", d.say.Of(u.End), d.asked(s.Flooring != "", "", s.EndFrom, s.EndTo))
	add("in each board", fmt.Sprintf("%d at least", u.PerBoard), "the shortest end piece too")
	add("slant", fmt.Sprintf("%.0f degrees", u.Slant), "through the corner over the tongue, back under the board")
	add("tip", d.fine(u.Tip(n.Paper))+" deep", "below the top of what boards are nailed to"+from.marks(fasten.SrcTip))
	add("through the face", d.say.Rip(u.Edge)+" from the edge", "at the wall: drilled first, straight down, set, filled"+from.marks(fasten.SrcFace))
	add("near an end", "under "+d.say.Of(fasten.PilotWithin), "drilled first"+from.marks(fasten.SrcEnds))
	return d.bought(t, n, u, from)
}

// bought adds what is bought of them.
func (d *desk) bought(t table, n fasten.Floor, u fasten.Use, from *cited) table {
	c := fasten.Sum(fasten.Places(d.in.Plan.Lay, u))
	if c.All() == 0 {
		return t
	}
	box, source := fasten.Box(u.Kind), fasten.SrcBox
	if n.Own.Box > 0 {
		box, source = n.Own.Box, n.Own.Source
	}
	t.rows = append(t.rows,
		[]string{"for the nailer", fmt.Sprintf("%d %ss", c.Nailer, u.Kind), fmt.Sprintf("with 5 %% to spare %s of %d", paper.HowMany(fasten.Boxes(c.Nailer, box), "box"), box) + from.marks(source)},
		[]string{"by hand", fmt.Sprintf("%d finish nails", c.Hand+c.Face), fmt.Sprintf("%d through the tongue, %d through the face", c.Hand, c.Face)})
	return t
}

func gaugeOf(s fasten.Schedule, gauge string) string {
	if s.Flooring == "" || gauge == "" {
		return ""
	}
	return s.Flooring + ": " + gauge
}

// asked is the range that the schedule has.
func (d *desk) asked(known bool, every string, a, b tape.Length) string {
	if !known {
		return ""
	}
	return strings.TrimSpace("the schedule has " + every + " " + d.say.Of(a) + " to " + d.say.Of(b))
}

// fine prints a depth: to 1/32 in, or 0.1 mm.
func (d *desk) fine(l tape.Length) string {
	s := tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 10}
	if d.in.Plan.Job.Unit.Imperial() {
		s = tape.Style{Unit: tape.UnitInch, Step: tape.Inch / 32}
	}
	return s.Of(l)
}

// byHand lists the rows that are not nailed with the nailer all along.
func (f *flow) byHand(rows []paper.Fastened) {
	t := table{folds: true, cols: []column{{name: "row", right: true, bold: true}, {name: "nailed, from its left end"},
		{name: "nailer", right: true}, {name: "tongue, by hand", right: true}, {name: "face", right: true}}}
	plain := 0
	for _, r := range rows {
		if r.Plain {
			plain++
			continue
		}
		t.rows = append(t.rows, []string{r.Row.Name, r.Row.Fasten, some(r.Total.Nailer), some(r.Total.Hand), some(r.Total.Face)})
	}
	if len(t.rows) == 0 {
		return
	}
	f.heading("Rows nailed by hand or through the face")
	switch {
	case plain == 1:
		f.para("The one other row is nailed with the nailer all along. The figures are how many fasteners a row takes of each.")
	case plain > 1:
		f.para(fmt.Sprintf("The other %d rows are nailed with the nailer all along. The figures are how many fasteners a row takes of each.", plain))
	default:
		f.para("These are all rows. The figures are how many fasteners a row takes of each.")
	}
	f.gap(1)
	f.table(t)
}

// some is a number, nothing for none.
func some(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprint(n)
}

// keepOff lists where no fastener goes.
func (f *flow) keepOff(free []fasten.Free) {
	f.heading("Keep fasteners off")
	if len(free) == 0 {
		f.para("No pipe, cable or heating is written in the job. Find what there is before the first nail, mark it on the subfloor and on the sheet over it, and write it here:")
		f.blanks(2)
		return
	}
	f.para("Mark each on the subfloor and again on the sheet over it. Lengths are from the left end of the row, what is kept free round it counted in.")
	f.gap(1)
	t := table{cols: []column{{name: ""}, {name: "what", bold: true}, {name: "how deep"}, {name: "keep free"}, {name: "rows over it"}}}
	for _, x := range free {
		deep := "not told: take it to be reached"
		if x.Known {
			deep = f.d.fine(x.Depth) + " below what boards are nailed to"
		}
		t.rows = append(t.rows, []string{toTick, x.Name + " (" + x.What + ")", deep, f.d.say.Of(x.Margin) + " round it", f.d.over(f.d.in.Plan, x)})
	}
	f.table(t)
}

// over says where a part that is kept free lies along the rows.
func (d *desk) over(p plan.Plan, x fasten.Free) string {
	var out []string
	for _, k := range paper.KeepOff(p, x) {
		out = append(out, fmt.Sprintf("%s: %s to %s", k.Row, d.say.Of(k.From), d.say.Of(k.To)))
	}
	if len(out) == 0 {
		return "under no row"
	}
	return strings.Join(out, "; ")
}

// nailed says how they go in.
func (f *flow) nailed(u fasten.Use, ok bool, from *cited) {
	f.heading("How they go in")
	if ok && u.Joists.Spacing > 0 {
		f.item("Through the face where rows cross joists: over the joists, " + f.d.say.Of(u.Joists.Spacing) + " apart. Carry their centre lines up the wall before the sheet hides them.")
	}
	f.item("Through the face goes what lies in first and last rows and wherever no tongue or no next row is; the tongue of a first row is nailed by hand besides." + from.marks(fasten.SrcFace))
	f.item("Nailer: one shot for each pull of the trigger, no hand before it, off the air before it is cleared; eyes and ears covered.")
}
