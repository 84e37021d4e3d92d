package paper

import (
	"fmt"
	"io"
	"strings"
)

// Form is a sheet that is read, filled in and signed, as data: whoever prints it
// decides how it looks.
type Form struct {
	Name  string // of the job
	Title string // quote
	Lead  []string
	Parts []FormPart
}

// FormPart is a part of a form under a head. With columns its lines have cells. Notes
// stand below the lines.
type FormPart struct {
	Head    string
	Columns []string
	Lines   []FormLine
	Notes   []string
}

// FormLine is one thing: what it is, what is said of it, amounts under the columns of
// the part, or blanks to write in.
type FormLine struct {
	What    string
	Says    string
	Cells   []string
	Blanks  int // lines to write on
	Sum     bool
	Sources []string // where its figures come from
}

// add adds a part that has lines.
func (f *Form) add(p FormPart) {
	if len(p.Lines) > 0 {
		f.Parts = append(f.Parts, p)
	}
}

// filled is a line of what is known, else a blank to write it in.
func filled(what, says string) FormLine {
	if says == "" {
		return FormLine{What: what, Blanks: 1}
	}
	return FormLine{What: what, Says: says}
}

// said are lines of text alone.
func said(ss ...string) []FormLine {
	var out []FormLine
	for _, s := range ss {
		if s != "" {
			out = append(out, FormLine{Says: s})
		}
	}
	return out
}

// FormText writes a form as text, sources numbered at its end.
func FormText(w io.Writer, f Form) error {
	var b strings.Builder
	b.WriteString(head(f.Name, f.Title, false))
	for _, s := range f.Lead {
		wrap(&b, s, "", "")
	}
	var from sources
	for _, p := range f.Parts {
		b.WriteString("\n" + p.Head + "\n")
		if len(p.Columns) > 0 {
			b.WriteString(strings.TrimRight("  "+pad("", formWhat)+columnsText(p.Columns), " ") + "\n")
		}
		for _, l := range p.Lines {
			formLine(&b, p, l, &from)
		}
		for _, s := range p.Notes {
			wrap(&b, s, "  ", "  ")
		}
	}
	if len(from) > 0 {
		b.WriteString("\nWhere figures come from\n")
		for i, s := range from {
			wrap(&b, s, fmt.Sprintf("  [%d] ", i+1), "      ")
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// How wide a line with amounts is: what it is, and each amount.
const formWhat, formCell = 48, 12

func pad(s string, n int) string { return s + strings.Repeat(" ", max(0, n-len([]rune(s)))) }

func columnsText(cells []string) string {
	var b strings.Builder
	for _, c := range cells {
		fmt.Fprintf(&b, "%*s", formCell, c)
	}
	return b.String()
}

// blank is a line to write on, as far as the right margin.
func blank(b *strings.Builder, before string) {
	b.WriteString(before + strings.Repeat("_", max(12, columns-2-len([]rune(before)))) + "\n")
}

func formLine(b *strings.Builder, p FormPart, l FormLine, from *sources) {
	mark := ""
	for _, s := range l.Sources {
		mark += from.mark(s)
	}
	if len(p.Columns) > 0 {
		amounts(b, l, mark)
		return
	}
	s := l.What
	if l.Says != "" {
		s = strings.TrimPrefix(s+": "+l.Says, ": ")
	}
	n := l.Blanks
	if n > 0 && l.Says == "" {
		blank(b, "  "+pad(s, 28)+" ")
		n--
	} else {
		wrap(b, s+mark, "  - ", "    ")
	}
	for range n {
		blank(b, "    ")
	}
}

// amounts is a line with cells: a long name goes on over its own lines first.
func amounts(b *strings.Builder, l FormLine, mark string) {
	if l.Sum {
		b.WriteString("  " + strings.Repeat("-", formWhat+formCell*len(l.Cells)) + "\n")
	}
	name := l.What + mark
	if l.Says != "" {
		name = l.What + ": " + l.Says + mark
	}
	words := strings.Fields(name)
	line := ""
	for _, w := range words {
		if line != "" && len([]rune(line))+1+len([]rune(w)) > formWhat-2 {
			b.WriteString("  " + line + "\n")
			line = "  "
		}
		line = strings.TrimPrefix(line+" "+w, " ")
	}
	b.WriteString(strings.TrimRight("  "+pad(line, formWhat)+columnsText(l.Cells), " ") + "\n")
}

// FormCSV writes a form as a table: a line for each of its lines, blanks left empty.
// Sums stand in it, marked as such, since a form is not added up again.
func FormCSV(w io.Writer, f Form) error {
	most := 0
	for _, p := range f.Parts {
		most = max(most, len(p.Columns))
	}
	heads := []string{"part", "what", "says"}
	for _, p := range f.Parts {
		if len(p.Columns) == most && most > 0 {
			heads = append(heads, p.Columns...)
			break
		}
	}
	lines := [][]string{append(heads, "sum", "source")}
	for _, s := range f.Lead {
		lines = append(lines, csvLine("", FormLine{Says: s}, most))
	}
	for _, p := range f.Parts {
		for _, l := range p.Lines {
			lines = append(lines, csvLine(p.Head, l, most))
		}
		for _, s := range p.Notes {
			lines = append(lines, csvLine(p.Head, FormLine{Says: s}, most))
		}
	}
	return table(w, lines)
}

func csvLine(part string, l FormLine, cells int) []string {
	out := append([]string{part, l.What, l.Says}, l.Cells...)
	for len(out) < 3+cells {
		out = append(out, "")
	}
	sum := ""
	if l.Sum {
		sum = "sum"
	}
	return append(out, sum, strings.Join(l.Sources, "; "))
}
