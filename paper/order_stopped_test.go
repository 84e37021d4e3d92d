package paper

import (
	"context"
	"strings"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/plan"
)

// Where the work was stopped before the first lay it says so, and shows no chances;
// nothing is said to run short that was never tried.
func TestNothingCountedSaysSo(t *testing.T) {
	data, err := examples.Read("sail-loft.yaml")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("sail-loft.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	p := plan.Rows(j)
	stopped, stop := context.WithCancel(context.Background())
	stop()
	for name, c := range map[string]struct {
		ctx  context.Context
		says string
		rows bool
	}{
		"stopped": {stopped, "No cartons were counted", false},
		"let be":  {context.Background(), "Buy ", true},
	} {
		b := BoughtOf(p, p.Purchases(c.ctx, plan.Effort{Lays: 300, Workers: 1})[0])
		if all := strings.Join(b.Advice, " "); !strings.HasPrefix(all, c.says) || strings.Contains(all, "Stopped: ") == c.rows {
			t.Errorf("%s: %s", name, all)
		}
		if (len(b.Chances) > 0) != c.rows {
			t.Errorf("%s: %d lines of chances", name, len(b.Chances))
		}
	}
}
