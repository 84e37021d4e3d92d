package check

import (
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
)

// coverRule is the name that exemptions from the cover carry.
const coverRule = "cover"

// lessCover is the floor with a wider greatest gap along the walls whose row is
// stepped by a pin of the job, as wide as the lay says that its pieces stay
// off; false where there is none.
func lessCover(f floor.Floor, l lay.Lay, pins []lay.Pin) (floor.Floor, bool) {
	any := false
	f.Edges = slices.Clone(f.Edges)
	for i := range f.Edges {
		e := &f.Edges[i]
		for _, x := range l.Exempt {
			if x.Rule == coverRule && x.Edge == e.Name && steppedBy(pins, x) && x.To > e.Sides.Greatest {
				e.Sides.Greatest, any = x.To, true
			}
		}
	}
	return f, any
}

// steppedBy tells whether a pin of the job asks for what an exemption from the
// cover is taken for.
func steppedBy(pins []lay.Pin, x lay.Exemption) bool {
	return slices.ContainsFunc(pins, func(p lay.Pin) bool {
		return p.Kind == lay.PinStepped && p.Where == x.Edge && p.String() == x.Pin
	})
}

// wideSteps tell where a stepped row stays off its wall farther than what
// covers the gap reaches, and by how much its steps show.
func (s *site) wideSteps(r Rule) []finding.Finding {
	var out []finding.Finding
	for _, x := range s.lay.Exempt {
		if x.Rule != coverRule {
			continue
		}
		f := r.note(x.Edge)
		f.Level, f.Measured = finding.Warn, "stepped pieces stay up to "+s.say(x.To)+" off it"
		if e, ok := s.besideNamed(x.Edge); ok {
			f.Limit = "at most " + s.say(e.Range.Greatest) + ", as far as what covers the gap reaches"
			f.Do = "A step shows by up to " + s.say(x.To-e.Range.Greatest) + ". Cover it with a wider shoe, choose shorter boards for this row, or take the pin out: pieces whose step would show are then ripped on a taper."
		}
		if !steppedBy(s.pins, x) {
			f.Level, f.Do = finding.Stop, "The exemption does not hold: the job has no pin \""+x.Pin+"\"."
		}
		out = append(out, f)
	}
	return out
}

// besideNamed is an edge beside the rows of some zone by its name.
func (s *site) besideNamed(name string) (floor.AlignedEdge, bool) {
	for _, z := range s.zones {
		for _, e := range z.at.Edges {
			if e.Beside && e.Name == name {
				return e, true
			}
		}
	}
	return floor.AlignedEdge{}, false
}

// tapers is a piece along an edge, not reaching past it, whose long edge there
// is not level, and so not of one width; nil where each is. One that runs out to
// a point has no other width.
func (s *site) tapers(z *zone, name string) *piece {
	for _, up := range []side{lowEdge, highEdge} {
		var wall plane.Span
		for _, e := range z.at.Edges {
			if line := (edge{e.From, e.To}); e.Beside && e.Name == name && line.faces() == up {
				if x := line.x(); wall.Empty() {
					wall = x
				} else {
					wall = plane.Span{From: min(wall.From, x.From), To: max(wall.To, x.To)}
				}
			}
		}
		for _, p := range z.pieces {
			if x := p.box.x(); x.From < wall.From || x.To > wall.To || !p.squareEnds() || !s.against(z, p, name) {
				continue
			}
			for _, n := range sides(p.Outline) {
				if n.long() && !n.flat() && n.faces() == up {
					return p
				}
			}
		}
	}
	return nil
}

// squareEnds tells whether a piece ends square at both ends.
func (p *piece) squareEnds() bool {
	left, right := false, false
	for _, n := range sides(p.Outline) {
		left = left || n.upright() && n.a.X == p.box.lo.X
		right = right || n.upright() && n.a.X == p.box.hi.X
	}
	return left && right
}

// against tells whether a piece lies at an edge of the floor.
func (s *site) against(z *zone, p *piece, name string) bool {
	return slices.ContainsFunc(z.at.Edges, func(e floor.AlignedEdge) bool {
		return e.Beside && e.Name == name && p.box.near(boxOf(plane.Ring{e.From, e.To}), e.Range.Greatest+slack)
	})
}
