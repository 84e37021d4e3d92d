package jobfile

import (
	"fmt"
	"sort"
	"strings"
)

// Error is one thing wrong with a job file, and where.
type Error struct {
	File   string // as named by the caller, for print only
	Line   int    // 1 first
	Column int    // in characters, 1 first
	What   string // what is wrong
	Read   string // what was read there, "" when something is missing
	Accept string // what would be accepted
	Source string // the line as it stands in the file
}

// Error is the error with its source line and a caret under the place.
func (e *Error) Error() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s:%d:%d: %s", e.File, e.Line, e.Column, e.What)
	if e.Source != "" {
		number := fmt.Sprintf("%5d", e.Line)
		fmt.Fprintf(&b, "\n%s | %s\n%s | %s^", number, e.Source, strings.Repeat(" ", len(number)), e.indent())
	}
	if e.Read != "" {
		b.WriteString("\n      read: " + e.Read)
	}
	if e.Accept != "" {
		b.WriteString("\n      accepted: " + e.Accept)
	}
	return b.String()
}

// indent is the space before the caret, with the tabs of the source line.
func (e *Error) indent() string {
	var b strings.Builder
	for i, r := range []rune(e.Source) {
		if i >= e.Column-1 {
			break
		}
		if r != '\t' {
			r = ' '
		}
		b.WriteRune(r)
	}
	return b.String()
}

// Errors is everything wrong with a job file, in the order of its lines.
type Errors []*Error

// Error prints all of them, with their number at the end.
func (es Errors) Error() string {
	var b strings.Builder
	for _, e := range es {
		b.WriteString(e.Error() + "\n")
	}
	if len(es) == 1 {
		b.WriteString("1 error")
	} else {
		fmt.Fprintf(&b, "%d errors", len(es))
	}
	return b.String()
}

// sorted is es in the order of lines and columns, without repeats.
func (es Errors) sorted() Errors {
	sort.SliceStable(es, func(i, j int) bool {
		if es[i].Line != es[j].Line {
			return es[i].Line < es[j].Line
		}
		return es[i].Column < es[j].Column
	})
	var out Errors
	for _, e := range es {
		if n := len(out); n > 0 && *out[n-1] == *e {
			continue
		}
		out = append(out, e)
	}
	return out
}
