package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/plan"
	"strake/row"
	"strake/setout"
	"strake/words"
)

// Lines is the table of lines to snap and the story stick.
func Lines(w io.Writer, p plan.Plan) error {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "lines to snap", false))
	say := words.In(p.Job.Unit)
	wrap(&b, "Each line is the front edge of a row, without its tongue. Tape both marks along the walls from the corners, stretch the line, and check it by the diagonal: from the first corner to the second mark. Spray the chalk so that it stays. Tape each from the corner, never from the line before.", "", "")
	b.WriteString("\n")
	room := ""
	for _, l := range setout.Lines(p) {
		if l.Room != room {
			room = l.Room
			b.WriteString(room + "\n")
		}
		fmt.Fprintf(&b, "  [ ] row %-3d  %s from %s on wall %s-%s;  %s from %s on wall %s-%s;  check %s to the second mark %s\n", l.Row,
			say.Rip(l.Left.At), l.Left.From, l.Left.Wall[0], l.Left.Wall[1], say.Rip(l.Right.At), l.Right.From, l.Right.Wall[0], l.Right.Wall[1], l.Left.From, say.Of(l.Check))
	}
	doorText(&b, p, say)
	stageText(&b, p)
	for _, f := range p.AllFields() {
		stickText(&b, f, say)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// doorText carries the lines through doorways.
func doorText(b *strings.Builder, p plan.Plan, say words.Lengths) {
	ls := setout.DoorLines(p)
	if len(ls) == 0 {
		return
	}
	b.WriteString("\nThrough the doorways\n")
	for _, l := range ls {
		s := fmt.Sprintf("[ ] %s: the front of row %d lies %s from the jamb nearer to %s on the near face of the wall, %s on the far face", l.Doorway, l.Row, say.Rip(l.Near), l.From, say.Rip(l.Far))
		if l.Along {
			s = fmt.Sprintf("[ ] %s: the front of row %d lies along the opening, %s in from the face of the wall", l.Doorway, l.Row, say.Rip(l.Depth))
		}
		wrap(b, s, "  ", "      ")
	}
}

// stageText is the order of rooms, with where the work can rest.
func stageText(b *strings.Builder, p plan.Plan) {
	stages := setout.Stages(p)
	if len(stages) < 2 {
		return
	}
	b.WriteString("\nOrder of rooms\n")
	for i, s := range stages {
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
		wrap(b, line, fmt.Sprintf("  %d  ", i+1), "     ")
	}
}

// stickText is the story stick of a field.
func stickText(b *strings.Builder, f row.Field, say words.Lengths) {
	ticks := setout.Stick(f)
	if len(ticks) == 0 {
		return
	}
	of := ""
	if f.Name != "" {
		of = " of " + f.Name
	}
	fmt.Fprintf(b, "\nStory stick and drift%s: front of each row from the front of row %d, as planned; write what you read beside it\n", of, f.Layout.StartRow)
	for _, d := range ticks {
		mark, at := "", say.Rip(d.At.Abs())
		if d.Row%5 == 0 {
			mark = "   left ________  middle ________  right ________"
		}
		if d.At < 0 {
			at += " behind"
		}
		fmt.Fprintf(b, "  row %-3d %12s%s\n", d.Row, at, mark)
	}
}
