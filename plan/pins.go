package plan

import (
	"slices"
	"strings"

	"strake/finding"
	"strake/floor"
	"strake/job"
	"strake/lay"
	"strake/room"
	"strake/row"
)

// pinsOf are the pins of a job, on the floor as built.
func pinsOf(j job.Job, b room.Built, f floor.Floor) []lay.Pin {
	var out []lay.Pin
	p := j.Pins
	place := func(k lay.PinKind, name string) {
		if at, ok := b.Mark(name); ok {
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
	if d, ok := doorwayOf(b, p.From); ok {
		out = append(out, throughPin(b, d))
	}
	if p.Stepped != (room.Wall{}) {
		out = append(out, lay.Pin{Kind: lay.PinStepped, Where: edgeName(p.Stepped.String(), b, f), Wall: p.Stepped})
	}
	return out
}

// doorwayOf is the doorway inside the floor that a name means, of the doorway or
// of a room that has one only.
func doorwayOf(b room.Built, name string) (room.Doorway, bool) {
	if inner := b.Inner(name); name != "" && len(inner) == 1 {
		return inner[0], true
	}
	return room.Doorway{}, false
}

// throughPin is the pin on rows that go on through a doorway, at the middle of
// its opening.
func throughPin(b room.Built, d room.Doorway) lay.Pin {
	p := lay.Pin{Kind: lay.PinThrough, Where: d.Name, Wall: d.Wall, Width: d.Thickness}
	s, e, ok := floor.Jambs(b, d.Wall, d.From, d.At, d.Width)
	farE, farS, ok2 := floor.Jambs(b, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width)
	if ok && ok2 {
		p.At = s.Add(e).Add(farS).Add(farE).Times(0.25)
	}
	return p
}

// continuous is the wish, or the pin, for rows that go on through a doorway.
func continuous(j job.Job) row.Continuous {
	name := j.Pins.From
	if name == "" {
		name = j.Wishes.From
	}
	if inner := j.Sketch.Inner(name); name != "" && len(inner) == 1 {
		return row.Continuous{Doorway: inner[0].Name, From: name, Pinned: j.Pins.From != ""}
	}
	return row.Continuous{}
}

// untold are findings of the checker without those that the rows told of already,
// with why: pins that are left out, and edges too slanted for one rip.
func (p Plan) untold(fs []finding.Finding) []finding.Finding {
	return slices.DeleteFunc(fs, func(f finding.Finding) bool {
		if f.Level == finding.Note && f.Do == "the edge is too slanted for one rip" {
			return slices.ContainsFunc(p.Findings, func(g finding.Finding) bool {
				return g.Rule == "edge too slanted for one rip" && (f.Where == g.Where || strings.HasSuffix(f.Where, " at "+g.Where))
			})
		}
		return f.Rule == "pin" && f.Level == finding.Warn && slices.ContainsFunc(p.Findings, func(g finding.Finding) bool { return g.Rule == f.Rule && g.Where == f.Where })
	})
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
			return d.Said()
		}
	}
	return s
}
