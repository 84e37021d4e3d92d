package packet

import (
	"sync"

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
	Workers   int // how many make its parts; the pages are the same for any number, 0 is one
}

// Sheets are the pages of the packet, in the order they are used.
func Sheets(in In, paper Paper) []sheet.Sheet {
	d := newDesk(in, paper)
	d.fill(in.Workers)
	d.cover()
	return d.sheets()
}

// Names are the parts that can be had alone.
func Names() []string {
	var out []string
	for _, p := range parts {
		if p.name != "" {
			out = append(out, p.name)
		}
	}
	return out
}

// OfBoards tells whether one of Names is there only where boards are laid out.
func OfBoards(name string) bool {
	for _, p := range parts {
		if p.name == name {
			return !p.when(In{})
		}
	}
	return false
}

// Part are the pages of one of Names; none where the plan has no such part.
func Part(in In, paper Paper, name string) []sheet.Sheet {
	d := newDesk(in, paper)
	d.only = name
	d.fill(in.Workers)
	return d.sheets()
}

// sheets are the pages with their feet.
func (d *desk) sheets() []sheet.Sheet {
	out := make([]sheet.Sheet, len(d.pages))
	for i, l := range d.pages {
		l.foots(i+1, len(d.pages), d.in.Plan.Lay.Example)
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
	only  string // the one part that is made, "" all
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

// part is a part of the packet. Several that need one another are filled in turn.
type part struct {
	name string // that it can be had by alone; "" it has no use without the others
	when func(In) bool
	fill fills
}

// parts are all of them in the order they are used; the cover is made last, since it
// names the pages of the others.
var parts = []part{
	{"", always, fills{(*desk).measured}},
	{"", func(in In) bool { return len(in.Choices.Candidates) > 1 }, fills{(*desk).choices}},
	{"", heightsRead, fills{(*desk).under}},
	{"row-plan", laidOut, fills{(*desk).floorPlan}},
	{"", laidOut, fills{(*desk).lines}},
	{"", laidOut, fills{(*desk).details}},
	{"", laidOut, fills{(*desk).tongues}},
	{"", laidOut, fills{(*desk).fasteners}},
	{"row-cards", laidOut, fills{(*desk).cards, (*desk).batches}}, // a batch goes with each sheet of cards
	{"drift", laidOut, fills{(*desk).drift}},
	{"story-stick", laidOut, fills{(*desk).storyStick}},
	{"methods", laidOut, fills{(*desk).methods}},
	{"", always, fills{(*desk).verdicts}},
	{"", logged, fills{(*desk).log}},
	{"", func(in In) bool { return len(in.Purchases) > 0 || len(in.Goods.Lines) > 0 }, fills{(*desk).buying}},
	{"", func(in In) bool { return len(in.Calendar.Steps) > 0 }, fills{(*desk).days}},
	{"", always, fills{(*desk).receiving}},
	{"forms", always, fills{(*desk).record}},
	{"", always, fills{(*desk).cautions}},
	{"", laidOut, fills{(*desk).handover}},
}

type fills = []func(*desk)

// fill makes all parts, so many at a time, each on a desk of its own.
func (d *desk) fill(workers int) {
	desks := make([]desk, len(parts))
	next := make(chan int)
	var all sync.WaitGroup
	for range max(1, workers) {
		all.Go(func() {
			for i := range next {
				own := *d
				for _, fill := range parts[i].fill {
					fill(&own)
				}
				desks[i] = own
			}
		})
	}
	for i, part := range parts {
		if part.when(d.in) && (d.only == "" || d.only == part.name) {
			next <- i
		}
	}
	close(next)
	all.Wait()
	for _, own := range desks {
		d.pages = append(d.pages, own.pages...)
	}
}

func always(In) bool { return true }

// laidOut tells whether boards were laid out.
func laidOut(in In) bool { return len(in.Plan.Lay.Runs) > 0 }
