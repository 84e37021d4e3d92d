package words

import (
	"strings"
	"testing"

	"strake/internal/sample"
	"strake/tape"
)

// On rows turned from every wall no distance from a wall at its two ends is told:
// the marks of list of lines are pointed to.
func TestLineOfTurnedRows(t *testing.T) {
	p := sample.Rectangle()
	for i, e := range p.Aligned.Edges {
		if e.Beside {
			p.Aligned.Edges[i].To.Y += (e.To.X - e.From.X) / 10 // 5.7 degrees
		}
	}
	l, ok := Line(p)
	if !ok || l.Wall != "" || l.From >= l.To {
		t.Fatalf("%v, %+v", ok, l)
	}
	if got := LineText(l, In(tape.UnitInch)); !strings.Contains(got, "two marks in the list of lines") || strings.Contains(got, "corner") {
		t.Error(got)
	}
	q := sample.Rectangle()
	for i, e := range q.Aligned.Edges {
		if e.Beside {
			q.Aligned.Edges[i].To.Y += (e.To.X - e.From.X) / 100 // 0.6 degrees
		}
	}
	if l, ok := Line(q); !ok || l.Wall == "" {
		t.Errorf("a wall nearly along the rows is not measured from: %+v", l)
	}
}
