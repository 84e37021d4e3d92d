package row

import (
	"fmt"
	"math"
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/plane"
	"strake/room"
)

// split is a floor being parted into fields.
type split struct {
	Place
	changes map[string]Change
	around  []floor.Frame
	groups  groups
	dirs    []plane.Dir
	lines   []*plane.XY // a place that a row line of the group must run through
	why     []string
	seams   [][]floor.Seam // of each group
	order   []int          // the groups as they are reached
	headers []header
}

type header struct {
	door room.Doorway
	floor.Header
	dir plane.Dir
}

// spread goes from group to group through the doorways where rows change, and
// settles how each begins. It stops at a doorway where that cannot be.
func (s *split) spread(first int) (bad string, f finding.Finding) {
	s.seams = make([][]floor.Seam, len(s.groups.rooms))
	s.order = []int{first}
	for k := 0; k < len(s.order); k++ {
		for _, d := range s.Built.Doorways {
			i, j, ok := sides(s.Built, d)
			if !ok || s.changes[d.Name] == Through || s.seamed(d) {
				continue
			}
			a, b, wall := s.groupOf(i), s.groupOf(j), d.OtherWall
			if b == s.order[k] {
				a, b, wall = b, a, d.Wall
			}
			if a != s.order[k] || a == b {
				continue
			}
			if f := s.join(d, a, b, wall); f.Rule != "" {
				return d.Name, f
			}
		}
	}
	return "", f
}

func (s *split) groupOf(roomIndex int) int {
	return slices.IndexFunc(s.groups.rooms, func(rs []int) bool { return slices.Contains(rs, roomIndex) })
}

func (s *split) seamed(d room.Doorway) bool {
	return slices.ContainsFunc(s.seams, func(ss []floor.Seam) bool {
		return slices.ContainsFunc(ss, func(m floor.Seam) bool { return m.Doorway == d.Name })
	})
}

// join parts group a from b at a doorway; b, whose wall this is, may have
// been begun already.
func (s *split) join(d room.Doorway, a, b int, wall room.Wall) finding.Finding {
	dir, _ := wallDir(s.Built, wall)
	in := s.depth(d, dir)
	begun := slices.Contains(s.order, b)
	along := math.Abs(plane.XY(s.dirs[a]).Dot(plane.XY(in.dir))) > math.Sqrt2/2 // rows of a lie along the doorway
	change := s.changes[d.Name]
	if begun { // a second way between two fields
		alongB := math.Abs(plane.XY(s.dirs[b]).Dot(plane.XY(in.dir))) > math.Sqrt2/2
		if along == alongB && (along || change != AHeader) || along != alongB && !s.lineThere(in, a, b, along) {
			return in.cannot("the fields on both sides are set by another doorway, and no row edge lies here", s.Style)
		}
	}
	switch {
	case in.high-in.low < 2*clearOf:
		return in.cannot("the wall there is only "+s.Style.Of(in.high-in.low)+" thick from side to side", s.Style)
	case change == AHeader && along:
		return in.cannot("rows lie along the doorway: a header would be one of them", s.Style)
	case change == AHeader && in.high-in.low < s.Face+2*clearOf: // both its sides lie in the doorway's depth
		return in.cannot("a header is "+s.Style.Of(s.Face)+" wide, and the wall only "+s.Style.Of(in.high-in.low)+" thick, where "+s.Style.Of(s.Face+2*clearOf)+" are needed", s.Style)
	case begun && change == AHeader:
		s.header(in, a, b)
		return finding.Finding{}
	case begun:
		return finding.Finding{}
	}
	s.order = append(s.order, b)
	switch {
	case change == AHeader:
		s.dirs[b], s.why[b] = s.dirs[a], fmt.Sprintf("rows as before, beyond a header in %s", d.Said())
		s.header(in, a, b)
	case along:
		s.why[b] = fmt.Sprintf("rows turn in %s and run out of it", d.Said())
		return s.runOut(in, a, b)
	default:
		s.dirs[b], s.why[b] = in.dir, fmt.Sprintf("rows turn in %s, along wall %s", d.Said(), wall)
		s.turn(in, a, b)
	}
	return finding.Finding{}
}

// lineThere puts the seam of a second doorway on a row line that one of the
// fields has in its depth.
func (s *split) lineThere(in depth, a, b int, along bool) bool {
	lined := b
	if along {
		lined = a
	}
	if s.lines[lined] == nil {
		return false
	}
	in = s.depth(in.door, same(s.dirs[lined], in.dir))
	y, ok := in.lineNear(in.dir.ToRow(*s.lines[lined]).Y, s.Pitch)
	if ok && s.changes[in.door.Name] == Turn {
		s.meet(in.seam(y), a, b)
	}
	return ok
}

func (s *split) meet(m floor.Seam, a, b int) {
	s.seams[a], s.seams[b] = append(s.seams[a], m), append(s.seams[b], m)
}
