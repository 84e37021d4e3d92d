package plan

import (
	"fmt"
	"math"
	"slices"

	"strake/finding"
	"strake/job"
	"strake/lay"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// taperFindings tell each row that tapers along an edge, and whether that will
// be seen: always at tile or stone, at a wall the job names, and where a rip
// loses more than a quarter of its width.
func (p Plan) taperFindings(style tape.Style) []finding.Finding {
	var out []finding.Finding
	fine := style
	fine.Step = style.Step / 2
	noticed, over := row.Per(row.Noticed, p.Job.Unit.Imperial())
	for _, f := range p.Fields {
		if f.Kind != lay.Field {
			continue
		}
		for _, t := range f.Tapers(seenWalls(p.Job, p.Built)) {
			slant, _ := row.Per(t.Per6, p.Job.Unit.Imperial())
			x := finding.Finding{Level: finding.Note, Rule: "taper", Where: fmt.Sprintf("row %d at %s", t.Row, t.Edge),
				Measured: fmt.Sprintf("%s from end to end, %s in %s", fine.Of(t.By), fine.Of(slant), over),
				Limit:    fine.Of(noticed) + " in " + over, Source: "common craft figure: less goes unnoticed along a plain wall",
				Do: "Usually not noticed along a plain wall. If light falls along it, name it under seen_walls."}
			if t.Shown {
				x.Do = "It will be seen. Share it between two walls (rows_between), give it to the wall that is seen least (taper_at), or hide it under a wider shoe."
			}
			out = append(out, x)
		}
	}
	return out
}

// A hall is a room so many times as long as it is wide, and no wider than this
// (from memory): one looks along its walls.
const (
	hallShape = 2.5
	hallWide  = 6 * tape.Foot
)

// seenWalls are the walls where a taper is seen whatever it measures: those the
// job names, and the long walls of halls.
func seenWalls(j job.Job, b room.Built) []room.Wall {
	out := slices.Clone(j.Wishes.Seen)
	for _, r := range b.Rooms {
		long, walls := longWallsOf(b, r)
		if wide := areaOf(b, r) / long; long >= hallShape*wide && wide <= hallWide.Millimetres() {
			out = append(out, walls...)
		}
	}
	return out
}

// longWallsOf are the walls of a room at least half as long as the longest, and
// how long that is, mm.
func longWallsOf(b room.Built, r room.Room) (long float64, walls []room.Wall) {
	ring := r.Ring()
	length := func(i int) float64 { return b.At[ring[(i+1)%len(ring)]].Sub(b.At[ring[i]]).Len() }
	for i := range ring {
		long = math.Max(long, length(i))
	}
	for i, c := range ring {
		if 2*length(i) >= long {
			walls = append(walls, room.Wall{c, ring[(i+1)%len(ring)]})
		}
	}
	return long, walls
}

// areaOf is the area of a room, mm².
func areaOf(b room.Built, r room.Room) float64 {
	sum, ring := 0.0, r.Ring()
	for i, c := range ring {
		sum += b.At[c].Cross(b.At[ring[(i+1)%len(ring)]]) / 2
	}
	return math.Abs(sum)
}
