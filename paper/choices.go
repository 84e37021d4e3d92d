package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/plan"
	"strake/row"
	"strake/tape"
	"strake/words"
)

// Choices compares the ways the rows could lie, in words.
func Choices(w io.Writer, c plan.Choices) error {
	var b strings.Builder
	b.WriteString(head(c.Job.Name, "ways to lay the rows", false))
	say := words.In(c.Job.Unit)
	sideBySide(&b, c, say)
	for i, k := range c.Candidates {
		title := fmt.Sprintf("%d  Rows %s", i+1, k.Name)
		if i == 0 {
			title += " (this is what strake plan lays)"
		}
		b.WriteString(title + "\n")
		for _, l := range ChoiceLines(k, say, c.Job.Unit) {
			wrap(&b, l, "    - ", "      ")
		}
		b.WriteString("\n")
	}
	if len(c.Candidates) > 0 {
		shiftTable(&b, c, say)
		wrap(&b, "To have another one, write it under wishes in the job: rows_along, rows_across or rows_between, start_wall, continuous_from, edge_on; start_middle and backwards say which way rows are laid, and turned_by lays them diagonally. Under pins, taper_at says which wall takes the taper, and stepped_at that its row is stepped. The start of each is the best there is for its direction; directions between these were not tried.", "", "")
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// rowsSaid counts rows, and their parts where there are more.
func rowsSaid(s row.Score) string {
	if s.Runs == s.Rows {
		return fmt.Sprintf("%d rows", s.Rows)
	}
	return fmt.Sprintf("%d rows, %d where 12a and 12b count as two", s.Rows, s.Runs)
}

// ChoiceLines say what a candidate means.
func ChoiceLines(k row.Candidate, say words.Lengths, u tape.Unit) []string {
	s := k.Score
	style := tape.Paper(u)
	out := []string{fmt.Sprintf("%s; %s across the boards", rowsSaid(s), style.Of(s.AcrossWidth))}
	if s.Spline > 0 {
		out = append(out, fmt.Sprintf("%s of spline: beyond it boards are turned and laid backwards", style.Of(s.Spline)))
	} else {
		out = append(out, "no spline")
	}
	if s.Starts > 1 {
		out = append(out, fmt.Sprintf("%d first rows, each set to a line carried from the start line", s.Starts))
	}
	switch {
	case s.Closing == 0:
		out = append(out, "no row closes along a wall: each ends at two")
	case s.At == "":
		out = append(out, "every closing row is a full board")
	default:
		out = append(out, fmt.Sprintf("narrowest rip %s, at %s; %s of rips in all", say.Rip(s.Narrowest), s.At, style.Of(s.Ripped)))
	}
	for _, t := range s.Tapers {
		out = append(out, taperLine(t, say, u))
	}
	if s.Under > 0 {
		out = append(out, fmt.Sprintf("rows run out to points along %s of slanted edges", style.Of(s.Under)))
	}
	if s.Notched > 0 {
		out = append(out, counted(s.Notched, "row")+" with a notch or a jog")
	} else {
		out = append(out, "no notched boards")
	}
	if len(s.Through) > 0 {
		out = append(out, "rows run on through "+named("doorway", s.Through))
	}
	switch {
	case s.Breaks != "":
		out = append(out, "not continuous from "+s.From+", as wished: "+s.Breaks)
	case s.From != "":
		out = append(out, "continuous from "+s.From+", as wished")
	}
	if len(s.Changes) > 0 {
		out = append(out, "rows turn, or a header lies, in "+named("doorway", s.Changes))
	}
	if s.Transitions > 0 {
		out = append(out, fmt.Sprintf("ends at another floor or a stair in %s: a transition, a flush joint or a nosing each", counted(s.Transitions, "doorway")))
	} else {
		out = append(out, "no transition to another floor")
	}
	if len(s.Beside) > 0 {
		out = append(out, "rows pass "+named("doorway", s.Beside)+" side by side: short boards across the opening")
	}
	switch s.Joists {
	case row.AlongJoists:
		out = append(out, "along the joists: an extra layer or blocking under it (maker and local code decide)")
	case row.JoistsUnknown:
		out = append(out, "which way the joists run is not known: look before you choose")
	default:
		out = append(out, string(s.Joists))
	}
	return append(out, counted(s.ByHand, "row")+" fastened by hand, in whole or in part")
}

// named is a noun with the names it stands for: doorway "hall door"; doorways
// "closet doorway" and "hall door".
func named(noun string, names []string) string {
	out := ""
	for i, n := range names {
		switch {
		case i > 0 && i == len(names)-1:
			out += " and "
		case i > 0:
			out += ", "
		}
		out += `"` + n + `"`
	}
	if len(names) != 1 {
		noun += "s"
	}
	return noun + " " + out
}

// sideBySide is the table of what tells the candidates apart.
func sideBySide(b *strings.Builder, c plan.Choices, say words.Lengths) {
	if len(c.Candidates) < 2 {
		return
	}
	style := tape.Paper(c.Job.Unit)
	line := func(name string, of func(i int, k row.Candidate) string) {
		fmt.Fprintf(b, "%-30s", name)
		for i, k := range c.Candidates {
			fmt.Fprintf(b, " %13s", of(i, k))
		}
		b.WriteString("\n")
	}
	number := func(n int) string {
		if n == 0 {
			return "-"
		}
		return fmt.Sprint(n)
	}
	long := func(l tape.Length) string {
		if l == 0 {
			return "-"
		}
		return style.Of(l)
	}
	line("", func(i int, _ row.Candidate) string { return fmt.Sprint(i + 1) })
	line("narrowest rip", func(_ int, k row.Candidate) string {
		if k.Score.Closing == 0 {
			return "none closes"
		}
		return say.Rip(k.Score.Narrowest)
	})
	line("rips in all", func(_ int, k row.Candidate) string { return long(k.Score.Ripped) })
	line("tapers that will be seen", func(_ int, k row.Candidate) string {
		n := 0
		for _, t := range k.Score.Tapers {
			if t.Shown {
				n++
			}
		}
		return number(n)
	})
	line("spline", func(_ int, k row.Candidate) string { return long(k.Score.Spline) })
	line("first rows set to a line", func(_ int, k row.Candidate) string { return fmt.Sprint(max(1, k.Score.Starts)) })
	line("rows with a notch or a jog", func(_ int, k row.Candidate) string { return number(k.Score.Notched) })
	line("rows fastened by hand", func(_ int, k row.Candidate) string { return number(k.Score.ByHand) })
	line("doorways run through", func(_ int, k row.Candidate) string { return number(len(k.Score.Through)) })
	line("joists", func(_ int, k row.Candidate) string {
		return map[row.Joists]string{row.AlongJoists: "along", row.AcrossJoists: "across", row.JoistsUnknown: "not known"}[k.Score.Joists]
	})
	b.WriteString("\n")
}

// taperLine is a taper, whether it will be seen, and how its row is sawn.
func taperLine(t row.Taper, say words.Lengths, u tape.Unit) string {
	how := "usually not noticed along a plain wall"
	if t.Shown {
		how = "it will be seen"
	}
	slant, over := row.Per(t.Per6, u.Imperial())
	s := fmt.Sprintf("tapers by %s at %s, %s in %s: %s", say.Rip(t.By), t.Edge, say.Rip(slant), over, how)
	switch {
	case t.Stepped && t.Over > 0:
		s += fmt.Sprintf("; stepped, each piece ripped to one width: the longest board makes a step of %s, and %s of it shows beside what covers the gap", say.Rip(t.Step), say.Rip(t.Over))
	case t.Stepped:
		s += fmt.Sprintf("; stepped, each piece ripped to one width: the longest board makes a step of %s, and what covers the gap hides it", say.Rip(t.Step))
	case t.Hidden:
		s += "; each piece is ripped to one width, as what covers the gap hides the step"
	case t.Fits >= tape.Foot:
		s += fmt.Sprintf("; pieces of up to %s are ripped to one width, as what covers the gap hides the step, longer ones on a taper", say.Of(t.Fits))
	default:
		s += "; each piece is ripped on a taper"
	}
	return s
}

// counted is a number with its noun.
func counted(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}

// shiftTable is what small slips would do to the closing rips of the first.
func shiftTable(b *strings.Builder, c plan.Choices, say words.Lengths) {
	line, wider := say.Rip(tape.Eighth), "0.5 mm"
	fmt.Fprintf(b, "What a slip would do to the rips of 1\n")
	if len(c.Shifts) == 0 {
		b.WriteString("    No row closes along a wall: there is no rip to change.\n\n")
		return
	}
	fmt.Fprintf(b, "    %-34s %10s  %22s  %24s\n", "", "planned", "start line ± "+line, "every row ± "+wider)
	jumps := false
	done := map[string]bool{}
	for _, s := range c.Shifts {
		l := fmt.Sprintf("    %-34s %10s  %10s %11s  %11s %12s\n", fmt.Sprintf("row %d at %s", s.Row, s.Edge), say.Rip(s.Rip),
			say.Rip(s.LineIn), say.Rip(s.LineOut), say.Rip(s.WiderRows), say.Rip(s.NarrowerRows))
		if done[l] { // another stretch of the same wall, alike
			continue
		}
		done[l] = true
		b.WriteString(l)
		for _, v := range []tape.Length{s.LineIn, s.LineOut, s.WiderRows, s.NarrowerRows} {
			jumps = jumps || (v-s.Rip).Abs() > s.Rip/2 && v < tape.Inch
		}
	}
	if jumps {
		wrap(b, "Where a figure drops to a sliver the row planned there would come out as a whole board, and one more row, so narrow, would be needed beyond it. A wall that stands twice has two stretches with rips of their own, as beside a doorway.", "    ", "    ")
	}
	b.WriteString("\n")
}
