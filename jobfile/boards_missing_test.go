package jobfile_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"strake/jobfile"
)

// A job without boards, or with boards that have no lengths, is told once and
// with keys to copy: in the units of the job, and such that they are accepted.
func TestBoardsMissing(t *testing.T) {
	const head = "strake: 1\nunit: %s\nrooms: {den: {corners: [A, B, C, D]}}\nreadings: {A-B: 3.6 m, B-C: 3 m}\n"
	for _, unit := range []string{"in", "mm"} {
		for name, c := range map[string]struct{ boards, what, accept string }{
			"no boards":     {"", "“boards” is missing", "boards: {face: "},
			"empty boards":  {"boards:\n", "“boards” is missing", "boards: {face: "},
			"no lengths":    {"boards: {face: 100 mm, thickness: 20 mm}\n", "“lengths” is missing", "lengths: {tally: ["},
			"no way":        {"boards: {face: 100 mm, thickness: 20 mm, lengths: {}}\n", "nothing says how long", "lengths: {tally: ["},
			"empty tally":   {"boards: {face: 100 mm, thickness: 20 mm, lengths: {tally: }}\n", "nothing says how long", "lengths: {tally: ["},
			"a length":      {"boards: {face: 100 mm, thickness: 20 mm, lengths: 900 mm}\n", "something else belongs here", "lengths: {tally: ["},
			"a list":        {"boards: {face: 100 mm, thickness: 20 mm, lengths: [900 mm]}\n", "something else belongs here", "lengths: {tally: ["},
			"a count alone": {"boards: {face: 100 mm, thickness: 20 mm, lengths: {count: 36}}\n", "a count goes with one length", "lengths: {one: "},
		} {
			text := fmt.Sprintf(head, unit) + c.boards
			_, _, err := jobfile.ReadJob("job.yaml", []byte(text))
			var errs jobfile.Errors
			if !errors.As(err, &errs) || len(errs) != 1 {
				t.Errorf("%s: %v; want one error", name, err)
				continue
			}
			e := errs[0]
			if !strings.Contains(e.What, c.what) || !strings.HasPrefix(e.Accept, c.accept) || strings.Contains(e.Accept, " mm") != (unit == "mm") {
				t.Errorf("%s, %s: %v", name, unit, e)
			}
			holdExamples(t, fmt.Sprintf(head, unit), e.Accept)
		}
	}
}

// holdExamples writes each example of an error into a job: all are accepted.
func holdExamples(t *testing.T, head, accept string) {
	t.Helper()
	for rest := accept; ; {
		i := strings.Index(rest, "lengths: {")
		if i < 0 {
			return
		}
		example := braces(rest[i:])
		text := head + "boards: {face: 5 in, thickness: 20 mm, " + example + "}\n"
		if strings.HasPrefix(rest, "boards: {") {
			text = head + braces(rest) + "\n"
		}
		if _, _, err := jobfile.ReadJob("job.yaml", []byte(text)); err != nil {
			t.Errorf("%s\nis an example, and: %v", text, err)
		}
		rest = rest[i+len(example):]
	}
}

// braces is s up to the brace that closes its first.
func braces(s string) string {
	depth := 0
	for i, r := range s {
		switch r {
		case '{':
			depth++
		case '}':
			if depth--; depth == 0 {
				return s[:i+1]
			}
		}
	}
	return s
}
