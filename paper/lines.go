package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/plan"
	"strake/setout"
	"strake/tape"
	"strake/words"
)

// Lines is the table of lines to snap and the story stick.
func Lines(w io.Writer, p plan.Plan) error {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "lines to snap", false))
	say := words.In(p.Job.Unit)
	wrap(&b, "Each line is the front edge of a row, without its tongue. Tape both marks along the wall or side from the place named, check each from the place across, and stretch the line between them. Spray the chalk so that it stays. Tape each from its own place, never from the line before. The line that a first row is set to, or set by where its own is short, is marked \"start\": snap it first.", "", "")
	lines, none := setout.Lines(p)
	for _, r := range p.Floor.Rooms {
		b.WriteString("\n" + r.Name + "\n")
		for _, l := range lines {
			if l.Room == r.Name {
				lineText(&b, l, say)
			}
		}
		for _, n := range none {
			if n.Room == r.Name {
				wrap(&b, n.Why, fmt.Sprintf("      row %-4d no line: ", n.Row), "               ")
			}
		}
	}
	doorText(&b, p, say)
	stageText(&b, p)
	for _, s := range setout.Sticks(p) {
		stickText(&b, s, say)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// lineText is a line with its two marks, each with its check.
func lineText(b *strings.Builder, l setout.Line, say words.Lengths) {
	name := "row " + words.RowPart(l.Row, l.Part)
	if l.Start {
		name += " start"
	}
	for i, m := range []setout.Mark{l.Left, l.Right} {
		box := fmt.Sprintf("  [ ] %-14s", name)
		if i > 0 {
			box = strings.Repeat(" ", len(box))
		}
		wrap(b, MarkText(m, say), box, strings.Repeat(" ", len(box)+4))
	}
	indent := strings.Repeat(" ", 20)
	for _, s := range l.Sets {
		wrap(b, SetText(s, say), indent, indent+"    ")
	}
}

// SetText says how a line sets a first row from afar.
func SetText(s setout.Set, say words.Lengths) string {
	side := "behind"
	if s.Behind < 0 {
		side = "ahead of"
	}
	return fmt.Sprintf("row %d, with none to go on from, is set by this line: its front lies %s %s it", s.Row, say.Rip(s.Behind.Abs()), side)
}

// MarkText is where a mark lies and how it is checked.
func MarkText(m setout.Mark, say words.Lengths) string {
	s := fmt.Sprintf("%s from %s, %s", say.Rip(m.At), m.From.Name, m.On)
	if m.Check.Name != "" {
		s += fmt.Sprintf("; check %s from %s", say.Of(m.CheckAt), m.Check.Name)
	}
	return s
}

// doorText carries the lines through doorways.
func doorText(b *strings.Builder, p plan.Plan, say words.Lengths) {
	ls := setout.DoorLines(p)
	if len(ls) == 0 {
		return
	}
	b.WriteString("\nThrough the doorways\n")
	for _, l := range ls {
		wrap(b, "[ ] "+DoorLineText(l, say), "  ", "      ")
	}
}

// DoorLineText is how a row goes through a doorway, or past it.
func DoorLineText(l setout.DoorLine, say words.Lengths) string {
	s := fmt.Sprintf("%s: the front of row %d ", l.Doorway, l.Row)
	if l.Along {
		deep := func(d tape.Length) string {
			if d < 0 {
				return say.Rip(-d) + " before it"
			}
			return say.Rip(d) + " in from it"
		}
		return s + fmt.Sprintf("lies along the opening; measured from the face of the wall: %s at the jamb nearer to %s, %s at the one nearer to %s", deep(l.Depth[0]), l.From, deep(l.Depth[1]), l.Other)
	}
	face, far := "the near face of the wall", "on the far face"
	if !l.Through {
		face, far = "the face of the wall", "where the floor ends"
	}
	return s + fmt.Sprintf("lies %s from the jamb nearer to %s on %s, %s %s; check %s from the other jamb on %s", say.Rip(l.Near), l.From, face, say.Rip(l.Far), far, say.Rip(l.Wide-l.Near), face)
}

// stageText is the order of rooms, with where the work can rest.
func stageText(b *strings.Builder, p plan.Plan) {
	stages := setout.Stages(p)
	if len(stages) < 2 {
		return
	}
	b.WriteString("\nOrder of rooms\n")
	for i, s := range stages {
		wrap(b, StageText(s), fmt.Sprintf("  %d  ", i+1), "     ")
	}
}

// StageText says which rows a room has, where they lead to and where the work can rest.
func StageText(s setout.Stage) string {
	line := fmt.Sprintf("%s: rows %d to %d, places %d to %d", s.Room, s.First, s.Last, s.From, s.To)
	for _, l := range s.Leads {
		line += fmt.Sprintf("; leads to %s at rows %d to %d", l.Room, l.First, l.Last)
	}
	line += "; can rest on a clean edge after row "
	for k, n := range s.Pauses {
		if k > 0 {
			line += " or "
		}
		line += fmt.Sprint(n)
	}
	return line
}

// stickText is the story stick of a field.
func stickText(b *strings.Builder, s setout.Stick, say words.Lengths) {
	of := ""
	if s.Field.Name != "" {
		of = " of " + s.Field.Name
	}
	fmt.Fprintf(b, "\nStory stick and drift%s: front of each row from the front of row %d, as planned; write what you read beside it\n", of, s.From)
	for _, d := range s.Ticks {
		mark, at := "", say.Rip(d.At.Abs())
		if d.Row%5 == 0 {
			mark = "   left ________  middle ________  right ________"
		}
		if d.At < 0 {
			at += " behind"
		}
		if d.Ripped {
			at, mark = "-", "   no front: it is ripped to close, see cuts.txt"
		}
		fmt.Fprintf(b, "  row %-3d %12s%s\n", d.Row, at, mark)
	}
}
