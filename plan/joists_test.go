package plan_test

import (
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/job"
	"strake/plan"
	"strake/room"
	"strake/site"
)

// A plan whose rows run along the joists says so with ways out, none of which
// cuts a joist, though the job tells nothing else of the subfloor; rows across
// them, or boards on a slab, are no matter.
func TestRowsAlongTheJoistsAreTold(t *testing.T) {
	along := func(w room.Wall, base site.Base) []finding.Finding {
		j := roomJob(180, 143, 5, 0.75, 0.5, 0.5)
		j.Joists = job.Joists{Along: w}
		j.Site.Base = base
		fs := plan.MakeWithin(t.Context(), j, 0).Findings
		return slices.DeleteFunc(fs, func(f finding.Finding) bool { return f.Rule != "rows along the joists" })
	}
	fs := along(room.Wall{"A", "B"}, "")
	if len(fs) != 1 || fs[0].Level != finding.Warn || !strings.Contains(fs[0].Do, "blocks of 2x6") || !strings.Contains(fs[0].Do, "No joist is cut") {
		t.Errorf("along: %v", fs)
	}
	if fs := slices.Concat(along(room.Wall{"B", "C"}, ""), along(room.Wall{}, ""), along(room.Wall{"A", "B"}, site.Concrete)); len(fs) > 0 {
		t.Errorf("across, not known or on a slab: %v", fs)
	}
}
