// Package plan makes the whole plan of a floor from one job, in one pure call.
package plan

import (
	"strake/finding"
	"strake/floor"
	"strake/job"
	"strake/lay"
	"strake/rack"
	"strake/room"
	"strake/row"
	"strake/survey"
)

// Plan is what a job leads to. Stages that could not be made are zero, and
// Findings say why.
type Plan struct {
	Job      job.Job
	Survey   survey.Result
	Built    room.Built
	Floor    floor.Floor
	Aligned  floor.Aligned
	Pins     []lay.Pin   // of the job, on this floor
	Fields   []row.Field // the first gives the floor its direction
	Layout   row.Layout  // of the first field
	Lay      lay.Lay
	Worth    rack.Worth
	Findings []finding.Finding
}
