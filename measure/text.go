package measure

import (
	"fmt"
	"io"
	"strings"
)

// Text writes the sheet for a terminal or a plain printer.
func (s Sheet) Text(w io.Writer) error {
	var b strings.Builder
	title := s.Ask.Name + ": what to measure"
	fmt.Fprintf(&b, "%s\n%s\n", title, strings.Repeat("=", len([]rune(title))))
	number := 0
	for _, sec := range s.Sections {
		fmt.Fprintf(&b, "\n%s\n", sec.Title)
		fold(&b, sec.Note, "  ", "  ", 88)
		for _, l := range sec.Lines {
			number++
			fmt.Fprintf(&b, "[ ] %3d  %-42s ______________  %s\n", number, l.What, l.beside())
		}
	}
	list(&b, "What each check buys", s.Buys)
	list(&b, "Mind", s.Notes)
	list(&b, "How", How)
	_, err := io.WriteString(w, b.String())
	return err
}

// beside is what stands beside a line: why, and where to hook the tape.
func (l Line) beside() string {
	if l.Hook == "" {
		return l.Why
	}
	return l.Why + "; hook at " + l.Hook
}

func list(b *strings.Builder, title string, lines []string) {
	if len(lines) == 0 {
		return
	}
	b.WriteString("\n" + title + "\n")
	for _, h := range lines {
		fold(b, h, "  - ", "    ", 88)
	}
}

// fold writes text in lines of at most width runes; nothing for no text.
func fold(b *strings.Builder, text, first, rest string, width int) {
	line := first
	for _, w := range strings.Fields(text) {
		if len([]rune(line))+len([]rune(w)) > width && line != rest && line != first {
			b.WriteString(strings.TrimRight(line, " ") + "\n")
			line = rest
		}
		line += w + " "
	}
	if line = strings.TrimRight(line, " "); line != "" && text != "" {
		b.WriteString(line + "\n")
	}
}
