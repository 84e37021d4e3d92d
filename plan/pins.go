package plan

import (
	"strings"

	"strake/floor"
	"strake/job"
	"strake/lay"
	"strake/room"
)

// pinsOf are the pins of a job, on the floor as built.
func pinsOf(j job.Job, b room.Built, f floor.Floor) []lay.Pin {
	var out []lay.Pin
	p := j.Pins
	place := func(k lay.PinKind, name string) {
		if at, ok := b.At[name]; ok && name != "" {
			out = append(out, lay.Pin{Kind: k, Where: name, At: at})
		}
	}
	if p.Rip.At != "" {
		out = append(out, lay.Pin{Kind: lay.PinRip, Where: edgeName(p.Rip.At, b, f), Width: p.Rip.Width})
	}
	if p.FullBoard != "" {
		out = append(out, lay.Pin{Kind: lay.PinFull, Where: edgeName(p.FullBoard, b, f), Width: j.Boards.Pitch()})
	}
	place(lay.PinEdge, p.RowEdge)
	place(lay.PinSpline, p.Spline)
	if p.Tongues != (room.Wall{}) {
		out = append(out, lay.Pin{Kind: lay.PinTongues, Where: "wall " + p.Tongues.String(), Wall: p.Tongues})
	}
	if p.Stepped != (room.Wall{}) {
		out = append(out, lay.Pin{Kind: lay.PinStepped, Where: edgeName(p.Stepped.String(), b, f), Wall: p.Stepped})
	}
	return out
}

// edgeName is what the floor calls the edge that a job names: a wall by its
// corners either way round, a doorway, something that stays.
func edgeName(s string, b room.Built, f floor.Floor) string {
	if from, to, ok := strings.Cut(s, "-"); ok {
		if _, ccw, ok := b.FindWall(room.Wall{strings.TrimSpace(from), strings.TrimSpace(to)}); ok {
			for _, e := range f.Edges {
				if _, w, ok := b.FindWall(e.Wall); ok && w == ccw {
					return e.Name
				}
			}
		}
	}
	for _, d := range b.Doorways {
		if d.Name == s {
			return "doorway " + s
		}
	}
	return s
}
