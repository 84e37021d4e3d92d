package row

import (
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// pinned is the offset that the pins of a job leave, if any of them binds it:
// a row line on a place, or a rip of a width at an edge. Where the pattern of
// the rows leaves several it is the best of them. A second pin that wants
// another offset is reported and not kept.
func (p problem) pinned(pins []lay.Pin, a floor.Aligned, style tape.Style) (offset tape.Length, by lay.Pin, fs []finding.Finding) {
	var left []tape.Length
	for _, pin := range pins {
		at := p.offsetsOf(pin, a)
		if len(at) > 0 && pin.Kind == lay.PinRip && pin.Width > p.widest()+tape.Inch/64 {
			fs = append(fs, finding.Finding{Level: finding.Warn, Rule: "pin", Where: pin.String(), Measured: style.Of(pin.Width) + " wide",
				Limit: "at most " + style.Of(p.widest()), Do: "No row is that wide: a full board is used there instead. Name a width that the rows have."})
		}
		switch {
		case len(at) == 0 && pin.Kind.BindsOffset():
			fs = append(fs, finding.Finding{Level: finding.Warn, Rule: "pin", Where: pin.String(), Measured: "no row closes against it in this direction",
				Do: "Pin an edge that lies beside the rows, or the direction too."})
		case len(at) == 0:
		case by.Kind == "":
			left, by = at, pin
		default:
			if both := p.near(left, at); len(both) > 0 {
				left = both
				continue
			}
			fs = append(fs, finding.Finding{Level: finding.Warn, Rule: "pin", Where: pin.String(),
				Measured: "its row lines lie " + style.Of(p.between(left, at)) + " from those of: " + by.String(),
				Do:       "Both cannot hold: the first is kept. Take one of them out."})
		}
	}
	offset, _ = p.bestOf(left)
	return offset, by, fs
}

// keepable are the pins that the rows of this direction can keep: what is left
// out is told.
func (p problem) keepable(pins []lay.Pin, a floor.Aligned) []lay.Pin {
	return slices.DeleteFunc(slices.Clone(pins), func(pin lay.Pin) bool {
		return pin.Kind.BindsOffset() && len(p.offsetsOf(pin, a)) == 0
	})
}

// near are those of some offsets that lie within a tick of one of others.
func (p problem) near(some, others []tape.Length) []tape.Length {
	var out []tape.Length
	for _, o := range some {
		if p.between([]tape.Length{o}, others) <= tape.Tick {
			out = append(out, o)
		}
	}
	return out
}

// between is how far two lots of offsets lie apart, round the period of the
// pattern.
func (p problem) between(some, others []tape.Length) tape.Length {
	least := tape.Longest
	for _, a := range some {
		for _, b := range others {
			least = min(least, p.of(a-b), p.of(b-a))
		}
	}
	return least
}

// offsetsOf are the offsets that a pin leaves; none when it binds none.
func (p problem) offsetsOf(pin lay.Pin, a floor.Aligned) []tape.Length {
	switch pin.Kind {
	case lay.PinEdge, lay.PinSpline:
		return p.through(a.Dir.ToRow(pin.At).Y)
	case lay.PinRip, lay.PinFull:
		best := -1
		for i, e := range p.closing {
			if a.Edges[e.index].Name == pin.Where && (best < 0 || e.whole > p.closing[best].whole) {
				best = i
			}
		}
		if best < 0 {
			return nil
		}
		return p.ripping(p.closing[best], pin)
	}
	return nil
}

// ripping are the offsets that leave a rip of the pinned width at an edge, or a
// full board: of any row that is wide enough, or of the widest. Where the wall
// strays by more than its play the row tapers, and its wide end is no wider than
// a board: else a wedge would be left between it and the wall.
func (p problem) ripping(e edge, pin lay.Pin) []tape.Length {
	c := p.lines(0)
	var out []tape.Length
	for k, w := range p.widths {
		width := w
		if least := min(pin.Width, p.widest()); pin.Kind == lay.PinRip && w < least {
			continue
		} else if pin.Kind == lay.PinRip {
			width = least
		}
		width = min(width, w-e.taper())
		if e.above {
			out = append(out, p.of(e.reach+width-c.Line(k+1)))
		} else {
			out = append(out, p.of(e.reach-width-c.Line(k)))
		}
	}
	return out
}

// taper is how much wider the row along an edge is at its wide end than at its
// narrowest: what play does not take up.
func (e edge) taper() tape.Length {
	if e.above {
		return max(0, e.reach-e.need)
	}
	return max(0, e.need-e.reach)
}

// pinnedStart is the row ahead of a line that a spline is pinned on; 0 when
// none is.
func (l *Layout) pinnedStart(pins []lay.Pin) int {
	for _, pin := range pins {
		if pin.Kind != lay.PinSpline {
			continue
		}
		if r := l.rowOn(l.Dir.ToRow(pin.At).Y); r > 0 {
			return r
		}
	}
	return 0
}

// toward turns a direction so that the tongues face the wall a pin names.
func toward(d plane.Dir, b room.Built, pins []lay.Pin) plane.Dir {
	for _, pin := range pins {
		if pin.Kind != lay.PinTongues {
			continue
		}
		if w, ok := wallDir(b, pin.Wall); ok && plane.XY(d).Dot(plane.XY(w)) > 0 {
			return d.Flip() // a wall has its room on the left: ahead of the rows it runs the other way
		}
	}
	return d
}

// steppedPins are those pins that hold in every field.
func steppedPins(pins []lay.Pin) []lay.Pin {
	return slices.DeleteFunc(slices.Clone(pins), func(p lay.Pin) bool { return p.Kind != lay.PinStepped })
}
