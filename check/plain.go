package check

import (
	"strings"

	"strake/finding"
)

// plainly says lengths by the marks of the tape alone, but for a measured one that
// would read as the limit itself: a tick too little must not look like enough.
func plainly(fs []finding.Finding) []finding.Finding {
	for i := range fs {
		f := &fs[i]
		f.Where = byMarks(f.Where, "")
		f.Measured, f.Limit = byMarks(f.Measured, byMarks(f.Limit, "")), byMarks(f.Limit, byMarks(f.Measured, ""))
	}
	return fs
}

// byMarks is a text with each length that say told both ways, as about 6"
// (5.999995"), by its mark alone; those that another text names by the same mark
// stay.
func byMarks(text, other string) string {
	var b strings.Builder
	for {
		at := strings.Index(text, "about ")
		if at < 0 {
			break
		}
		mark, rest, ok := cutExact(text[at+len("about "):])
		b.WriteString(text[:at])
		switch {
		case !ok:
			b.WriteString("about ")
			text = text[at+len("about "):]
		case names(other, mark):
			b.WriteString(text[at : len(text)-len(rest)])
			text = rest
		default:
			b.WriteString(mark)
			text = rest
		}
	}
	return b.String() + text
}

// cutExact parts a text that begins with a length and what it is exactly, in
// brackets, into that length and what follows.
func cutExact(text string) (mark, rest string, ok bool) {
	mark, after, ok := strings.Cut(text, " (")
	if !ok || mark == "" || strings.Contains(strings.TrimSuffix(mark, " mm"), " ") || !strings.ContainsAny(after[:min(2, len(after))], "-0123456789") {
		return "", "", false
	}
	_, rest, ok = strings.Cut(after, ")")
	return mark, rest, ok
}

// names tells whether a text has a length by its mark, as a word of its own.
func names(text, mark string) bool {
	mark = strings.TrimSuffix(mark, " mm")
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == ',' }) {
		if word == mark {
			return true
		}
	}
	return false
}
