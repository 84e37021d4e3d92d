package check

import (
	"slices"

	"strake/finding"
	"strake/lay"
	"strake/tape"
)

var _ = declare("pin",
	"Every pin of the job is kept, or the lay leaves it out and that is said: a row edge on its corner, a rip or a full board at its edge, tongues toward its wall, a spline on its line, each piece along a wall of one width, a row through a doorway.",
	holdPin)

func holdPin(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, p := range s.pins {
		measured, kept := s.keeps(p)
		if kept {
			continue
		}
		f := r.stop(p.String())
		f.Level = finding.Warn
		if slices.Contains(s.lay.Pins, p) && !s.another(p) {
			f.Level = finding.Stop
		}
		f.Measured, f.Do = measured, "Plan again, or take the pin out of the job."
		out = append(out, f)
	}
	for _, p := range s.lay.Pins {
		if !slices.Contains(s.pins, p) {
			f := r.stop(p.String())
			f.Measured, f.Do = "the job has no such pin", "Plan again from the job as it is."
			out = append(out, f)
		}
	}
	return out
}

func (s *site) isPinned(name string) bool {
	return slices.ContainsFunc(s.pins, func(p lay.Pin) bool { return p.String() == name && p.Kind.BindsOffset() })
}

// another tells whether a pin before p binds the row lines too: two may not be
// kept together, and the first one is.
func (s *site) another(p lay.Pin) bool {
	for _, q := range s.pins {
		if q == p {
			return false
		}
		if q.Kind.BindsOffset() && p.Kind.BindsOffset() {
			return true
		}
	}
	return false
}

// keeps tells whether some field of the lay keeps a pin, else what it has
// instead.
func (s *site) keeps(p lay.Pin) (string, bool) {
	measured := "no field of the lay has it"
	for _, z := range s.zones {
		if z.Kind != lay.Field {
			continue
		}
		switch p.Kind {
		case lay.PinEdge:
			d := z.offRow(p)
			if d <= 1 {
				return "", true
			}
			measured = "the nearest row edge lies " + s.say(d) + " off"
		case lay.PinSpline:
			if z.offRow(p) <= 1 && s.splineOn(z, z.Dir.ToRow(p.At).Y) {
				return "", true
			}
			measured = "no spline lies on its line"
		case lay.PinTongues:
			if z.faces(p) {
				return "", true
			}
			measured = "tongues face away from it"
		case lay.PinThrough:
			why, ok := s.through(z, p)
			if ok {
				return "", true
			}
			measured = why
		case lay.PinStepped:
			if q := s.tapers(z, p.Where); q != nil {
				return q.label() + " tapers", false
			}
			if _, ok := s.besideNamed(p.Where); ok {
				measured = ""
			} else {
				measured = "no row closes against it"
			}
		default:
			n := s.narrowestAt(z, p.Where)
			if n.p != nil && (floorOf(n.width)-min(pinnedWidth(p, n.p.run), n.p.run.wide()-z.stray(p.Where))).Abs() <= pinSlack {
				return "", true
			}
			if n.p != nil {
				measured = s.say(floorOf(n.width)) + " wide"
			}
		}
	}
	return measured, measured == ""
}

// stray is how much an edge of the floor strays across the rows beyond the play
// of its gap: the row along it tapers by that, and no board is wider for it.
func (z *zone) stray(name string) tape.Length {
	out := tape.Length(0)
	for _, e := range z.at.Edges {
		if e.Name != name || !e.Beside {
			continue
		}
		lo, hi := min(e.From.Y, e.To.Y), max(e.From.Y, e.To.Y)
		for _, g := range z.at.Edges {
			if g.Group == e.Group {
				lo, hi = min(lo, g.From.Y, g.To.Y), max(hi, g.From.Y, g.To.Y)
			}
		}
		out = max(out, hi-lo-e.Range.Play())
	}
	return out
}

// pinSlack is how far the row along an edge may be from the width that is pinned:
// a bow or a taper within the play of the gap leaves some µm of it, and no saw is
// set finer than 1/64 in.
const pinSlack = tape.Inch / 64

// offRow is how far the place of a pin lies from the nearest row line.
func (z *zone) offRow(p lay.Pin) tape.Length {
	return offLine(z.Zone, z.Dir.ToRow(p.At).Y)
}

// pinnedWidth is how wide a pin wants a row to be: a full board of that row, or
// the width that it names and no more than the widest board has.
func pinnedWidth(p lay.Pin, r *run) tape.Length {
	if p.Kind == lay.PinFull {
		return r.wide()
	}
	return min(p.Width, r.zone.Width)
}

// splineOn tells whether a spline lies on a row line, to a tick.
func (s *site) splineOn(z *zone, y tape.Length) bool {
	for _, p := range z.pieces {
		line := p.run.Low
		if p.Turned {
			line = p.run.High
		}
		if len(p.Slip) > 0 && (line-y).Abs() <= 1 {
			return true
		}
	}
	return false
}

// through tells whether a row lies through the opening that a pin names, from
// face to face of the wall and past both, else what lies there.
func (s *site) through(z *zone, p lay.Pin) (string, bool) {
	for _, e := range z.at.Edges {
		if e.Beside && (e.Name == "wall "+p.Wall[0]+"-"+p.Wall[1] || e.Name == "wall "+p.Wall[1]+"-"+p.Wall[0]) {
			return "rows lie along the opening", false
		}
	}
	at := z.Dir.ToRow(p.At)
	past := p.Width/2 + tape.Inch
	for _, r := range z.runs {
		lo, hi := r.Outline.Box()
		if r.Low <= at.Y && at.Y <= r.High && lo.X <= at.X-past && hi.X >= at.X+past {
			return "", true
		}
	}
	return "no row lies through the opening whole", false
}

// faces tells whether the side tongues of a zone face the wall that a pin
// names.
func (z *zone) faces(p lay.Pin) bool {
	for _, e := range z.at.Edges {
		if e.Name == p.Where || e.Name == "wall "+p.Wall[1]+"-"+p.Wall[0] {
			return (e.To.X < e.From.X) == (z.Ahead > 0)
		}
	}
	return false
}

// narrowestAt is the narrowest that a row is along the closing stretches of an
// edge.
func (s *site) narrowestAt(z *zone, name string) rip {
	n := rip{}
	for _, e := range z.at.Edges {
		if e.Beside && e.Name == name && !s.notches(e) && isClosing(e, z.Width, s.lim.RipFrom(z.Width)) {
			n = narrower(n, s.ripAt(z, e))
		}
	}
	return n
}
