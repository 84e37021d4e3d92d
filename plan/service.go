package plan

import (
	"strake/moisture"
	"strake/tape"
)

// Yearly is what the boards do through the year; not ok where the air of a season or
// the species is not known.
func (p Plan) Yearly() (moisture.Yearly, bool) { return p.Job.Moisture.Yearly(p.moistureFloor()) }

// APoint is what a board of a face moves by for each point of moisture content.
func (p Plan) APoint(face tape.Length) (tape.Length, bool) { return p.moistureFloor().APoint(face) }
