package check

import (
	"regexp"
	"strings"

	"strake/finding"
)

// exactly finds a length that say told both ways: about 6" (5.999995").
var exactly = regexp.MustCompile(`about (\S+(?: mm)?) \([^()]*\)`)

// plainly says lengths by the marks of the tape alone, but for a measured one that
// would read as the limit itself: a tick too little must not look like enough.
func plainly(fs []finding.Finding) []finding.Finding {
	for i := range fs {
		f := &fs[i]
		f.Where = exactly.ReplaceAllString(f.Where, "$1")
		measured, limit := f.Measured, f.Limit
		f.Measured, f.Limit = unless(limit, measured), unless(measured, limit)
	}
	return fs
}

// unless is text with lengths by the marks, exact ones kept where the other text
// has the same mark.
func unless(other, text string) string {
	other = exactly.ReplaceAllString(other, "$1")
	return exactly.ReplaceAllStringFunc(text, func(s string) string {
		mark := exactly.FindStringSubmatch(s)[1]
		for _, word := range strings.FieldsFunc(other, func(r rune) bool { return r == ' ' || r == ',' }) {
			if word == strings.TrimSuffix(mark, " mm") {
				return s
			}
		}
		return mark
	})
}
