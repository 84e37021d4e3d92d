package packet

import (
	"strake/floor"
	"strake/goods"
	"strake/plan"
	"strake/schedule"
	"strake/setout"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// In is what goes into a packet. Without purchases or a calendar their pages are
// left out.
type In struct {
	Plan      plan.Plan
	Choices   plan.Choices
	Purchases []plan.Purchase
	Goods     goods.List
	Calendar  schedule.Calendar
}

// Sheets are the pages of the packet, in the order they are used.
func Sheets(in In, paper Paper) []sheet.Sheet {
	d := newDesk(in, paper)
	for _, part := range parts {
		if part.when(in) {
			part.fill(d)
		}
	}
	d.cover()
	out := make([]sheet.Sheet, len(d.pages))
	for i, l := range d.pages {
		l.foots(i+1, len(d.pages), in.Plan.Lay.Example)
		out[i] = l.Sheet
	}
	return out
}

// desk is where a packet is put together.
type desk struct {
	in    In
	say   words.Lengths
	saw   words.Lengths // on row cards and in batches: inches where the job is in feet and inches
	paper Paper
	pages []*leaf
	walks []card // row cards: the rows of one walk to the saw each

	begin int             // the row that the start line sets
	begun bool            // there is one
	kept  map[string]bool // edges that are sides of what stays
}

func newDesk(in In, size Paper) *desk {
	d := &desk{in: in, paper: size, say: words.In(in.Plan.Job.Unit), saw: words.In(in.Plan.Job.Unit), kept: map[string]bool{}}
	if in.Plan.Job.Unit.Imperial() {
		d.saw = words.In(tape.UnitInch)
	}
	d.begin, d.begun = setout.Begin(in.Plan)
	for _, f := range in.Plan.AllFields() {
		for _, e := range f.Aligned.Edges {
			if e.Kind == floor.Stays && e.Name != "" {
				d.kept[e.Name] = true
			}
		}
	}
	return d
}

// part is a part of the packet.
type part struct {
	when func(In) bool
	fill func(*desk)
}

// parts are all of them in the order they are used; the cover is made last, since it
// names the pages of the others.
var parts = []part{
	{always, (*desk).measured},
	{func(in In) bool { return len(in.Choices.Candidates) > 1 }, (*desk).choices},
	{heightsRead, (*desk).under},
	{laidOut, (*desk).floorPlan},
	{laidOut, (*desk).lines},
	{laidOut, (*desk).details},
	{laidOut, (*desk).tongues},
	{laidOut, (*desk).cards},
	{laidOut, (*desk).batches},
	{laidOut, (*desk).drift},
	{laidOut, (*desk).storyStick},
	{laidOut, (*desk).methods},
	{always, (*desk).verdicts},
	{logged, (*desk).log},
	{func(in In) bool { return len(in.Purchases) > 0 || len(in.Goods.Lines) > 0 }, (*desk).buying},
	{func(in In) bool { return len(in.Calendar.Steps) > 0 }, (*desk).days},
	{always, (*desk).receiving},
	{always, (*desk).record},
	{always, (*desk).cautions},
	{laidOut, (*desk).handover},
}

func always(In) bool { return true }

// laidOut tells whether boards were laid out.
func laidOut(in In) bool { return len(in.Plan.Lay.Runs) > 0 }
