package survey

import "strake/tape"

// Reading is the distance between two named points as the tape said it.
type Reading struct {
	From, To string
	Value    tape.Length
	Step     tape.Length // it was read to this step: 1/16 in, 1 mm; 0 unknown
	SD       float64     // standard deviation in mm, 0: from the tape model
	Line     int         // line of the job file, 0 none
}
