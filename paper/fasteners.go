package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/fasten"
	"strake/plan"
	"strake/ready"
	"strake/tape"
	"strake/words"
)

// Fasteners writes fasteners.txt: with what the boards are nailed, how many each
// row takes and how, where the tips end, and what to keep out of.
func Fasteners(w io.Writer, p plan.Plan) error {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "fasteners", p.Lay.Example))
	wrap(&b, "Local code and licensed practice come first, then the instructions of the boards' maker, then this.", "", "")
	b.WriteString("\n")
	f := p.Nailing()
	style := tape.Paper(p.Job.Unit)
	s, u, ok := f.Use()
	if ok {
		useText(&b, f, s, u, style)
		ps := fasten.Places(p.Lay, u)
		countText(&b, p, ps)
		boughtText(&b, f, u, fasten.Sum(ps))
		b.WriteString("\n")
	}
	howText(&b, u, style)
	keepOffText(&b, p, f.Free)
	b.WriteString("\nWhat to look at\n")
	none := true
	for _, v := range f.Verdicts(style) {
		if v.Say == ready.Go {
			continue
		}
		none = false
		findingText(&b, v.Finding())
	}
	if none {
		b.WriteString("  Nothing stands out.\n")
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// useText says what is used and by which schedule.
func useText(b *strings.Builder, f fasten.Floor, s fasten.Schedule, u fasten.Use, style tape.Style) {
	wrap(b, fmt.Sprintf("%s long, at most %s from one to the next, %s from each end of a board, at least %d a board [%s]",
		style.Of(u.Length), style.Of(u.Spacing), style.Of(u.End), u.PerBoard, u.Source), plural(u.Kind)+": ", "    ")
	if s.Flooring == "" {
		return
	}
	gauge := s.Cleat
	if u.Kind == fasten.Staple {
		gauge = s.Staple
	}
	wrap(b, fmt.Sprintf("%s: %s %s, %s and longer, every %s to %s, %s to %s from ends [%s]", s.Flooring, gauge, plural(u.Kind), style.Of(s.Least),
		style.Of(s.SpacingFrom), style.Of(s.SpacingTo), style.Of(s.EndFrom), style.Of(s.EndTo), s.Source), "Schedule: ", "    ")
}

func plural(k fasten.Kind) string { return string(k) + "s" }

// countText is the table of rows in the order of laying.
func countText(b *strings.Builder, p plan.Plan, ps []fasten.Place) {
	if len(ps) == 0 {
		return
	}
	of := perRow(p, ps)
	b.WriteString("\nrow      boards   nailer  by hand through the tongue  through the face\n")
	line := func(name string, t fasten.Total) {
		fmt.Fprintf(b, "%-8s %6d %8d %27d %17d\n", name, t.Pieces, t.Nailer, t.Hand, t.Face)
	}
	for _, r := range p.Lay.Runs {
		if len(of[r.ID]) > 0 {
			line(words.Row(r), fasten.Sum(of[r.ID]))
		}
	}
	line("all", fasten.Sum(ps))
}

// boughtText says what is bought.
func boughtText(b *strings.Builder, f fasten.Floor, u fasten.Use, t fasten.Total) {
	if t.All() == 0 {
		return
	}
	box, source := fasten.Box(u.Kind), fasten.SrcBox
	if f.Own.Box > 0 {
		box, source = f.Own.Box, f.Own.Source
	}
	b.WriteString("\n")
	wrap(b, fmt.Sprintf("%d %s for the nailer with 5 %% to spare: %s of %d [%s]", t.Nailer, plural(u.Kind), boxes(fasten.Boxes(t.Nailer, box)), box, source), "To buy: ", "    ")
	wrap(b, fmt.Sprintf("%d finish nails, %d of them through the tongue", t.Hand+t.Face, t.Hand), "        ", "    ")
}

func boxes(n int) string {
	if n == 1 {
		return "1 box"
	}
	return fmt.Sprintf("%d boxes", n)
}

// overJoists says how nails through the face stand to the joists.
func overJoists(u fasten.Use, style tape.Style) string {
	if u.Joists.Spacing == 0 {
		return "into joists where you know them (joists: first in the job sets them over joists)"
	}
	return "those that the rows cross stand over joists, " + style.Of(u.Joists.Spacing) + " apart: carry their centre lines up the wall before the sheet hides them"
}

// howText says how nails through the face and near ends go in.
func howText(b *strings.Builder, u fasten.Use, style tape.Style) {
	b.WriteString("How they go in\n")
	wrap(b, fmt.Sprintf("Through the face, in first and last rows and wherever no tongue or no next row is: drill first, about %s from the edge at the wall, set, fill; %s. The tongue of a first row is nailed by hand besides. [%s]", style.Of(u.Edge), overJoists(u, style), fasten.SrcFace), "  - ", "    ")
	wrap(b, fmt.Sprintf("Within %s of a board's end: drill first. The shortest end piece still takes two. [%s]", style.Of(fasten.PilotWithin), fasten.SrcEnds), "  - ", "    ")
	wrap(b, "Nailer: one shot for each pull of the trigger, no hand before it, off the air before it is cleared; eyes and ears covered.", "  - ", "    ")
}

// keepOffText says where no fastener goes, row by row.
func keepOffText(b *strings.Builder, p plan.Plan, free []fasten.Free) {
	if len(free) == 0 {
		return
	}
	say := words.In(p.Job.Unit)
	b.WriteString("\nKeep fasteners off, in lengths from the left end of each row\n")
	for _, x := range free {
		var rows []string
		for _, k := range KeepOff(p, x) {
			rows = append(rows, fmt.Sprintf("row %s %s to %s", k.Row, say.Of(k.From), say.Of(k.To)))
		}
		if len(rows) == 0 {
			rows = []string{"under no row"}
		}
		wrap(b, fmt.Sprintf("%s (%s) and %s round it: %s", x.Name, x.What, say.Of(x.Margin), strings.Join(rows, "; ")), "  - ", "    ")
	}
}
