package plan

import (
	"strake/finding"
	"strake/floor"
	"strake/job"
	"strake/lay"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// Choices are the ways the rows of a job could lie, the one that would be
// planned first.
type Choices struct {
	Job        job.Job
	Candidates []row.Candidate
	Shifts     []row.Shift // of the first one, field by field: each is set to a start line of its own
	Findings   []finding.Finding
}

// Choose compares the directions that a job's floor offers.
func Choose(j job.Job) Choices {
	style := tape.Paper(j.Unit)
	s := fitted(j)
	c := Choices{Job: j, Findings: s.Findings(j.Readings, style)}
	if finding.Worst(c.Findings) == finding.Stop {
		return c
	}
	f, fs := floor.New(s.Built, floor.Trim{Base: j.Base, Shoe: j.Shoe}, j.Limits, style)
	c.Findings = append(c.Findings, fs...)
	if finding.Worst(fs) == finding.Stop {
		return c
	}
	c.Candidates = row.Candidates(placeOf(j, s.Built, f, rowWishes(j, pinsOf(j, s.Built, f)), style), j.Joists.Along)
	if len(c.Candidates) > 0 {
		for _, f := range c.Candidates[0].Fields {
			if f.Kind == lay.Field {
				c.Shifts = append(c.Shifts, row.Sensitivity(f.Layout, f.Part, j.Limits)...)
			}
		}
	}
	return c
}

// placeOf is where the rows of a job are laid out.
func placeOf(j job.Job, b room.Built, f floor.Floor, w row.Wishes, style tape.Style) row.Place {
	if j.Wishes.FullBoard != "" {
		w.FullAt = edgeName(j.Wishes.FullBoard, b, f)
	}
	var pattern []tape.Length
	if len(j.Boards.Widths) > 0 {
		pattern = j.Boards.Pitches()
	}
	w.Seen = seenWalls(j, b)
	return row.Place{Floor: f, Built: b, Trim: floor.Trim{Base: j.Base, Shoe: j.Shoe}, Pitch: j.Boards.Pitch(), Pattern: pattern, Face: j.Boards.Face, Longest: j.Boards.Longest(),
		Limits: j.Limits, Wishes: w, Style: style}
}

// changes are what the rows do at the doorways of a job, where they do not go on.
func changes(j job.Job) map[string]row.Change {
	out := map[string]row.Change{}
	for _, d := range j.Sketch.Doorways {
		switch d.Rows {
		case room.RowsTurn:
			out[d.Name] = row.Turn
		case room.RowsHeader:
			out[d.Name] = row.AHeader
		}
	}
	return out
}

func turning(s string) row.Turning {
	switch s {
	case "all":
		return row.TurnAll
	case "none":
		return row.TurnNone
	}
	return row.TurnShort
}

func rowWishes(j job.Job, pins []lay.Pin) row.Wishes {
	taper, soft := j.Pins.Taper, false
	if taper == (room.Wall{}) {
		taper, soft = j.Wishes.Taper, true
	}
	return row.Wishes{Continuous: continuous(j), TaperAt: taper, TaperSoft: soft, Pins: pins, Direction: j.Wishes.Direction, Across: j.Wishes.Across, Angle: j.Wishes.Angle, Between: j.Wishes.Between, StartWall: j.Wishes.StartWall,
		RunThrough: j.Wishes.RunThrough, EdgeOn: j.Wishes.EdgeOn, Seen: j.Wishes.Seen, Middle: j.Wishes.Middle, Turning: turning(j.Wishes.Backwards), Doorways: changes(j)}
}
