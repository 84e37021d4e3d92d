package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/lay"
	"strake/plan"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// RowsText writes rows.txt: every row in the order of laying, to read beside
// the work.
func RowsText(w io.Writer, p plan.Plan) error {
	say := words.In(p.Job.Unit)
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "rows in the order of laying", p.Lay.Example))
	if l, ok := words.Line(p); ok {
		wrap(&b, words.LineText(l, say), "", "")
	}
	wrap(&b, "Left and right are those of the drawing; a place along a row is measured from the left-most end of the boards. "+
		"Boards are counted from 1. A rip has two figures: its width on the floor, and what the saw is set to.", "", "")
	if s := words.SplineText(p, say); s != "" {
		wrap(&b, s+". Glue it into the groove of the row laid first, and let it stand proud by half.", "", "")
	}
	if s := words.PatternText(p, say); s != "" {
		wrap(&b, s+".", "", "")
	}
	rulesText(&b, p, say)
	ripsText(&b, p, say)
	field := ""
	for _, r := range Rows(p) {
		b.WriteString("\n")
		if s := words.FieldText(p, r.Field); s != field {
			wrap(&b, strings.ToUpper(s[:1])+s[1:], "", "")
			b.WriteString("\n")
			field = s
		}
		rowText(&b, r, p, say)
	}
	yardstickText(&b, p)
	_, err := io.WriteString(w, b.String())
	return err
}

// ripsText lists how wide the rows along the closing edges are.
func ripsText(b *strings.Builder, p plan.Plan, say words.Lengths) {
	rips := words.Rips(p, say)
	if len(rips) == 0 {
		return
	}
	title := "\nRips on the floor"
	for _, r := range p.Layout.Rips {
		if r.SD > 0 {
			title = "\nRips on the floor; ± is what readings and row width leave in doubt (two standard deviations)"
		}
	}
	b.WriteString(title + "\n")
	for _, r := range rips {
		wrap(b, fmt.Sprintf("%s: row %d, %s", r.Edge, r.Row, r.Widths), "  - ", "    ")
	}
}

func rowText(b *strings.Builder, r Row, p plan.Plan, say words.Lengths) {
	turned := ""
	if r.Turned {
		turned = "; laid backwards: boards turned end for end, tongues down the drawing"
	}
	wrap(b, fmt.Sprintf("no. %d to lay; %s long, from %s to %s; %s; %s%s", r.Order, say.Of(r.Length),
		say.Of(r.Left.At), say.Of(r.Right.At), widths(r, say), r.Fasten, turned), fmt.Sprintf("Row %-5s ", r.Name), "          ")
	var meets []string
	for _, e := range []struct{ side, text string }{{"left: ", EndText(r.Left)}, {"right: ", EndText(r.Right)}} {
		if e.text != "" {
			meets = append(meets, e.side+e.text)
		}
	}
	if r.Closes != "" {
		meets = append(meets, r.Closes)
	}
	wrap(b, strings.Join(meets, "; "), "    ", "    ")
	if r.Unfilled || len(r.Pieces) == 0 {
		b.WriteString("    " + unfilledText(p) + "\n")
	}
	for _, pc := range r.Pieces {
		pieceText(b, pc, say)
	}
}

func widths(r Row, say words.Lengths) string {
	out := r.Kind
	switch {
	case r.Kind == "full width":
	case say.Rip(r.WidthLeft) == say.Rip(r.WidthRight):
		out += ": " + say.Rip(r.WidthLeft)
	default:
		out += fmt.Sprintf(": %s at the left, %s at the right", say.Rip(r.WidthLeft), say.Rip(r.WidthRight))
	}
	if r.Face > 0 {
		out += ", " + say.Rip(r.Face) + " boards"
	}
	return out
}

// ofFace names a board by its face; nothing where all are alike.
func ofFace(face tape.Length, say words.Lengths) string {
	if face == 0 {
		return ""
	}
	return ", " + say.Rip(face) + " board"
}

// Splined are the stretches of a piece's groove that a spline is glued into.
func Splined(p Piece, say words.Lengths) []string {
	var out []string
	lo, hi := p.Lay.Outline.Box()
	for _, s := range p.Lay.Slip {
		if say.Of(s.From-lo.X) == say.Of(0) && say.Of(s.To-lo.X) == say.Of(hi.X-lo.X) {
			out = append(out, "glue a spline into its groove, all along")
			continue
		}
		out = append(out, fmt.Sprintf("glue a spline into its groove from %s to %s from the left", say.Of(s.From-lo.X), say.Of(s.To-lo.X)))
	}
	return out
}

func pieceText(b *strings.Builder, p Piece, say words.Lengths) {
	first := fmt.Sprintf("    [ ] %-2d board %-4s %-11s ", p.No, p.Board, say.Of(p.Cuts.Long()))
	parts := Work(p, say)
	if say.Of(p.Cuts.Short()) != say.Of(p.Cuts.Long()) {
		parts = append([]string{"short side " + say.Of(p.Cuts.Short())}, parts...)
	}
	parts = append(parts, Splined(p, say)...)
	if p.From != "board "+p.Board {
		parts = append(parts, p.From)
	}
	switch p.Lay.How {
	case lay.Dropped:
		parts = append(parts, "dropped in: take the lower groove lip off, glue, face-nail")
	case lay.Angled:
		parts = append(parts, "angled in")
	}
	parts = append(parts, p.Marks...)
	if len(p.Rest) > 0 {
		parts = append(parts, "left over: "+strings.Join(p.Rest, ", "))
	}
	wrap(b, strings.Join(parts, "; "), first, strings.Repeat(" ", len([]rune(first))))
}

// columns of a text list.
const columns = 100

// wrap writes s in lines of at most so many columns; nothing for nothing.
func wrap(b *strings.Builder, s, first, next string) {
	line := first
	empty := true
	if s == "" {
		return
	}
	for _, word := range sheet.Words(s) {
		if !empty && len([]rune(line))+1+len([]rune(word)) > columns {
			b.WriteString(strings.TrimRight(line, " ") + "\n")
			line, empty = next, true
		}
		if !empty {
			line += " "
		}
		line, empty = line+word, false
	}
	b.WriteString(strings.TrimRight(line, " ") + "\n")
}
