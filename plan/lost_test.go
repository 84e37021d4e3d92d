package plan_test

import (
	"strings"
	"testing"

	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/plan"
	"strake/room"
)

// Each wish or pin that another one outranks is told once, with which.
func TestLostWishesAreTold(t *testing.T) {
	for name, c := range map[string]struct {
		ask  func(*job.Job)
		rule string
		why  string
	}{
		"start wall and middle": {func(j *job.Job) { j.Wishes.StartWall, j.Wishes.Middle = room.Wall{"A", "B"}, true }, "start wall", "start_middle"},
		"start wall and spline": {func(j *job.Job) { j.Wishes.StartWall, j.Pins.Spline = room.Wall{"A", "B"}, "M" }, "start wall", "spline on M"},
		"tongues at an end":     {func(j *job.Job) { j.Pins.Tongues = room.Wall{"B", "C"} }, "pin", "rows end at this wall"},
		"direction and taper":   {func(j *job.Job) { j.Wishes.Direction, j.Pins.Taper = room.Wall{"B", "C"}, room.Wall{"C", "D"} }, "direction", "taper_at C-D"},
		"nothing lost":          {func(j *job.Job) { j.Wishes.StartWall, j.Wishes.Direction = room.Wall{"A", "B"}, room.Wall{"A", "B"} }, "", ""},
	} {
		j := roomJob(180, 143, 5, 0.75, 0.5, 0.5)
		j.Sketch.Points = []room.Point{{Name: "M", Wall: room.Wall{"B", "C"}, From: "B", At: in(61.3)}}
		j.Sketch.Doorways = []room.Doorway{{Name: "hall", Wall: room.Wall{"A", "B"}, From: "A", At: in(40), Width: in(32), Thickness: in(4), Ends: in(2), Beyond: room.BeyondTransition}}
		c.ask(&j)
		var told []finding.Finding
		for _, f := range plan.Rows(j).Findings {
			if strings.HasPrefix(f.Do, "Not kept. Take") {
				told = append(told, f)
			}
		}
		if c.rule == "" && len(told) > 0 || c.rule != "" && (len(told) != 1 || told[0].Rule != c.rule || !strings.Contains(told[0].Measured, c.why)) {
			t.Errorf("%s: %v", name, told)
		}
	}
}

// A direction, a taper or a doorway to run through gives way to the pin
// continuous_from, or to a direction, and that is told.
func TestLostBesideDoorways(t *testing.T) {
	for more, rule := range map[string]string{
		"wishes: {rows_along: A-B, run_through: closet door}":          "run through",
		"wishes: {rows_along: A-B}\npins: {continuous_from: closet}":   "direction",
		"pins: {continuous_from: closet, taper_at: A-B}":               "taper at a wall",
		"wishes: {rows_between: [A-B, C-D], run_through: closet door}": "run through",
		"wishes: {taper_at: A-B, run_through: closet door}":            "run through",
		"wishes: {rows_along: B-C}\npins: {continuous_from: closet}":   "",
	} {
		j, _, err := jobfile.ReadJob("job", []byte(closetJob(59.5, 44, more)))
		if err != nil {
			t.Fatal(err)
		}
		var told []string
		for _, f := range plan.Rows(j).Findings {
			if strings.HasPrefix(f.Do, "Not kept. Take") {
				told = append(told, f.Rule)
			}
		}
		if strings.Join(told, ", ") != rule {
			t.Errorf("%s: told %q, want %q", more, told, rule)
		}
	}
}
