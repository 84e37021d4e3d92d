package paper

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/plan"
)

// The table has a figure for every candidate in each of its lines, and each
// candidate says in words, item by item, what tells it apart, also what it does without.
func TestChoicesSideBySide(t *testing.T) {
	for _, name := range []string{"../examples/ferry-parlour.yaml", "../examples/cases/hearth-askew.yaml", "../examples/cases/three-rooms.yaml"} {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		j, _, err := jobfile.ReadJob(name, data)
		if err != nil {
			t.Fatal(err)
		}
		c := plan.Choose(j)
		var b bytes.Buffer
		if err := Choices(&b, c); err != nil {
			t.Fatal(err)
		}
		text := b.String()
		for _, row := range []string{"narrowest rip", "rips in all", "tapers that will be seen", "spline", "rows with a notch or a jog", "rows fastened by hand", "doorways run through", "joists"} {
			line := ""
			for _, l := range strings.Split(text, "\n") {
				if strings.HasPrefix(l, row+"  ") {
					line = l
				}
			}
			if want := 30 + 14*len(c.Candidates); len([]rune(line)) != want {
				t.Errorf("%s: %q is %d wide, want %d", name, line, len([]rune(line)), want)
			}
		}
		for _, each := range []string{"spline", "with a notch or a jog", "fastened by hand", " joists"} {
			if n := strings.Count(strings.Join(strings.Fields(text), " "), each); n < len(c.Candidates) {
				t.Errorf("%s: %q is said %d times for %d candidates", name, each, n, len(c.Candidates))
			}
		}
		if n := strings.Count(text, "no spline") + strings.Count(text, " of spline"); n != len(c.Candidates)+strings.Count(text, ", no spline,") {
			t.Errorf("%s: splines are told %d times for %d candidates", name, n, len(c.Candidates))
		}
		if len(c.Shifts) == 0 && !strings.Contains(text, "no rip to change") {
			t.Errorf("%s: an empty table of slips", name)
		}
	}
}

func TestNamed(t *testing.T) {
	for want, names := range map[string][]string{`doorway "a"`: {"a"}, `doorways "a" and "b"`: {"a", "b"}, `doorways "a", "b" and "c"`: {"a", "b", "c"}} {
		if got := named("doorway", names); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
