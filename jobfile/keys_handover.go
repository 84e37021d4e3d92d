package jobfile

import (
	"strake/job"
	"strake/schedule"
)

func handoverField() field[draft] {
	tb := table[job.Handover]{fields: []field[job.Handover]{
		date("laid", "The day that the last board went down.", func(h *job.Handover) *schedule.Day { return &h.Laid }).or("a blank"),
		text("finish", "What the boards are finished with, maker and name of it.", func(h *job.Handover) *string { return &h.Finish }).or("a blank"),
		text("spares_at", "Where boards left over are kept.", func(h *job.Handover) *string { return &h.Spares }).or("a blank"),
		texts("remarks", "What else whoever lives with the floor should know.", "[the plank by the stove hides a valve]", func(h *job.Handover) *[]string { return &h.Remarks }).or("none"),
	}}
	return told(sub("handover", "What is told to whoever lives with the floor: strake handover writes the sheet.", tb, func(j *draft) *job.Handover { return &j.Handover }), func(j *draft) { j.Handover.Told = true })
}
