package detail

import (
	"fmt"
	"slices"

	"strake/plan"
	"strake/section"
	"strake/sheet"
	"strake/tape"
	"strake/trim"
	"strake/words"
)

// Detail is one drawing for paper: at most MostW by MostH, in mm of paper, x to
// the right and y down from its upper left corner.
type Detail struct {
	Name  string // a slug, unique in a job
	Title string
	Scale string // 1:1, 1:2 ...; "not to scale"
	W, H  float64
	Items []sheet.Item
	Notes []string // what belongs beside it: where it holds, how it is made, cautions
}

// The largest that a detail is: A4 and Letter upright, with their margins. Notes and
// a title have room on the page with it.
const (
	MostW = 186.0
	MostH = 240.0
	pageH = 232.0 // of a drawing with its title and notes
)

// NoteSize is what notes are set in below a detail, mm.
const NoteSize = section.Small

// Of are the details of a plan, in the order of the work. Nothing where no floor
// could be made.
func Of(p plan.Plan) []Detail {
	if len(p.Aligned.Edges) == 0 {
		return nil
	}
	w := newWork(p)
	var out []Detail
	for _, of := range []func() []Detail{w.buildUp, w.startLine, w.gaps, w.stayGaps, w.jambs, w.openings, w.oldFloors, w.stones, w.frames, w.turns, w.headers, w.splines} {
		out = append(out, of()...)
	}
	out = unique(out)
	for i := range out {
		out[i].Items = named(out[i].Name, out[i].Items)
	}
	return out
}

// named are items with their names made unlike those of other details and of each
// other: "gap-at-walls: board", "gap-at-walls: board 2".
func named(detail string, items []sheet.Item) []sheet.Item {
	out := slices.Clone(items)
	seen := map[string]int{}
	for i, it := range out {
		p, ok := it.(sheet.Polygon)
		if !ok || p.Name == "" {
			continue
		}
		seen[p.Name]++
		name := detail + ": " + p.Name
		if n := seen[p.Name]; n > 1 {
			name = fmt.Sprintf("%s %d", name, n)
		}
		p.Name = name
		out[i] = p
	}
	return out
}

// work is a plan to draw details of.
type work struct {
	p    plan.Plan
	say  words.Lengths
	thin tape.Style // heights and thicknesses: felt is 1/32 in
	prof section.Profile
	h    trim.Sheet
	told bool // heights are told
}

func newWork(p plan.Plan) work {
	w := work{p: p, say: words.In(p.Job.Unit), prof: section.ProfileOf(p.Job.Boards)}
	w.thin = tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 10}
	if p.Job.Unit.Imperial() {
		w.thin = tape.Style{Unit: tape.UnitInch, Step: tape.Inch / 32}
	}
	w.h, w.told = p.HeightSheet()
	return w
}

// wide tells whether boards are so wide that little can be drawn beside them.
func (w work) wide() bool { return w.prof.Face > 140 }

// arm is how much is drawn beside a board, real mm; less beside wide ones.
func (w work) arm(usual float64) float64 {
	if w.wide() {
		return usual * 0.45
	}
	return usual
}

// column is how wide the notes stand, mm: narrower beside wide boards.
func (w work) column() float64 {
	if w.wide() {
		return 46
	}
	return 0
}

// height prints a height or a thickness.
func (w work) height(l tape.Length) string { return w.thin.Of(l) }

// imperial tells whether the job is read in inches.
func (w work) imperial() bool { return w.p.Job.Unit.Imperial() }

// scales are those that details are drawn at, the largest first.
var scales = []struct {
	is   float64
	name string
}{{1, "1:1"}, {0.5, "1:2"}, {0.2, "1:5"}}

// fitted is a detail at the largest scale from so many of scales on at which it
// fits, with its check bar below.
func (w work) fitted(name, title string, from int, draw func(scale float64) section.Figure, notes ...string) Detail {
	var f section.Figure
	var scale string
	for _, s := range scales[from:] {
		scale = s.name
		f = section.Below(4, draw(s.is), section.Bar(w.imperial(), s.name))
		if f.W <= MostW && f.H+notesHigh(notes) <= pageH {
			break
		}
	}
	d := Detail{Name: name, Title: title, Scale: scale, W: f.W, H: f.H, Items: f.Items}
	for _, n := range notes {
		if n != "" {
			d.Notes = append(d.Notes, n)
		}
	}
	return d
}

// notesHigh is about how high notes stand below a drawing, with a title over it.
func notesHigh(notes []string) float64 {
	const size, line, title = NoteSize, 4.5, 15.0
	high := title
	for _, n := range notes {
		high += float64(len(sheet.Wrap(n, size, MostW-4))) * line
	}
	return high
}

// free is a detail without a scale.
func free(name, title string, f section.Figure, notes ...string) Detail {
	return Detail{Name: name, Title: title, Scale: "not to scale", W: f.W, H: f.H, Items: f.Items, Notes: notes}
}
