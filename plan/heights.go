package plan

import (
	"strake/job"
	"strake/ready"
	"strake/subfloor"
	"strake/tape"
	"strake/trim"
	"strake/wood"
)

// HeightsFloor is what the heights of a job want to know of its floor.
func (p Plan) HeightsFloor() trim.Floor {
	j := p.Job
	old, _ := subfloor.ComesOut(subfloor.Fates(j.Subfloor.Layers, j.Subfloor.Built))
	return trim.Floor{
		Board: j.Boards.Thickness, Felt: felted(j), Old: old, Unit: j.Unit,
		Doorways: j.Sketch.Doorways, Stays: j.Sketch.Stays, Limits: j.Limits,
		Walls: p.wallGaps(), Laid: len(p.Lay.Pieces) > 0, Winter: p.winter(),
	}
}

// felted tells whether felt or paper is rolled out under the boards.
func felted(j job.Job) bool { return j.Site.Sheet.Kind == "felt" || j.Site.Sheet.Kind == "paper" }

// HeightSheet is all that is worked out of heights; not ok where the job tells
// nothing of them.
func (p Plan) HeightSheet() (trim.Sheet, bool) {
	return trim.Of(p.Job.Trim, p.HeightsFloor()), p.Job.Trim.Told
}

// winter is how much narrower the widest board becomes from the content it is laid
// at, halfway, to that of winter; 0 where air or species is not known.
func (p Plan) winter() tape.Length {
	s, ok := p.Job.Moisture.Climate.Season()
	sp, known := wood.Find(p.Job.Boards.Species + " " + p.Job.Boards.Name)
	if !ok || !known {
		return 0
	}
	by, _ := sp.Moved(faces(p.Job)[0], s.Aim, s.Low)
	return by.Abs()
}

// trimVerdicts are those of heights, of a job that tells of any.
func (p Plan) trimVerdicts() []ready.Verdict { return trim.Verdicts(p.Job.Trim, p.HeightsFloor()) }
