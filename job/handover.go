package job

import "strake/schedule"

// Handover is what is told to whoever lives with the floor; zero where nothing was
// told.
type Handover struct {
	Told    bool
	Laid    schedule.Day // the last board went down, 0 not told
	Finish  string       // what the boards are finished with
	Spares  string       // where the boards left over are kept
	Remarks []string
}
