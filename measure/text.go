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
	fmt.Fprintf(&b, "%s\n%s\n\n", title, strings.Repeat("=", len([]rune(title))))
	if s.Guessed {
		b.WriteString("No size is known yet, so every wall was taken for 3 m. Give guesses under “rough”\nfor a better order.\n\n")
	}
	for i, l := range s.Lines {
		fmt.Fprintf(&b, "[ ] %2d  %-44s ______________\n", i+1, l.What)
		fmt.Fprintf(&b, "        %s%s\n", l.Why, hookText(l))
	}
	if len(s.Openings) > 0 {
		b.WriteString("\nDoorways and what stays\n")
		for _, l := range s.Openings {
			fmt.Fprintf(&b, "[ ]     %-68s ______________\n", l.What)
		}
	}
	if s.Unmet != "" {
		fmt.Fprintf(&b, "\nNot all can be checked: %s.\n", s.Unmet)
	}
	b.WriteString("\nHow\n")
	for _, h := range How {
		fold(&b, h, "  - ", "    ", 88)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func hookText(l Line) string {
	if l.Hook == "" {
		return ""
	}
	return "; hook at " + l.Hook
}

// fold writes text in lines of at most width runes.
func fold(b *strings.Builder, text, first, rest string, width int) {
	line := first
	for _, w := range strings.Fields(text) {
		if len([]rune(line))+len([]rune(w)) > width && line != rest && line != first {
			b.WriteString(strings.TrimRight(line, " ") + "\n")
			line = rest
		}
		line += w + " "
	}
	b.WriteString(strings.TrimRight(line, " ") + "\n")
}
