package row

import (
	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// pinned is the offset that the pins of a job leave, if any of them binds it:
// a row line on a place, or a rip of a width at an edge. A second one that
// wants another offset is reported and not kept.
func (p problem) pinned(pins []lay.Pin, a floor.Aligned, style tape.Style) (offset tape.Length, by lay.Pin, fs []finding.Finding) {
	for _, pin := range pins {
		at, ok := p.offsetOf(pin, a)
		switch {
		case !ok && pin.Kind.BindsOffset():
			fs = append(fs, finding.Finding{Level: finding.Warn, Rule: "pin", Where: pin.String(), Measured: "no row closes against it in this direction",
				Do: "Pin an edge that lies beside the rows, or the direction too."})
		case !ok:
		case by.Kind == "":
			offset, by = at, pin
		case apart(at, offset, p.pitch) > tape.Tick:
			fs = append(fs, finding.Finding{Level: finding.Warn, Rule: "pin", Where: pin.String(),
				Measured: "its row lines lie " + style.Of(apart(at, offset, p.pitch)) + " from those of: " + by.String(),
				Do:       "Both cannot hold: the first is kept. Take one of them out."})
		}
	}
	return offset, by, fs
}

// apart is how far two offsets lie apart, round one pitch.
func apart(a, b, pitch tape.Length) tape.Length {
	d := mod(a-b, pitch)
	return min(d, pitch-d)
}

// offsetOf is the offset that a pin asks for; false when it binds none.
func (p problem) offsetOf(pin lay.Pin, a floor.Aligned) (tape.Length, bool) {
	switch pin.Kind {
	case lay.PinEdge, lay.PinSpline:
		return mod(a.Dir.ToRow(pin.At).Y, p.pitch), true
	case lay.PinRip, lay.PinFull:
		best := -1
		for i, e := range p.closing {
			if a.Edges[e.index].Name == pin.Where && (best < 0 || e.whole > p.closing[best].whole) {
				best = i
			}
		}
		if best < 0 {
			return 0, false
		}
		return mod(p.closing[best].lineFor(pin.Width, p.pitch), p.pitch), true
	}
	return 0, false
}

// lineFor is a row line that leaves a rip of this width at an edge; a full
// board for the pitch.
func (e edge) lineFor(width, pitch tape.Length) tape.Length {
	if width >= pitch {
		width = pitch
	}
	if e.above {
		return e.reach + width
	}
	return e.reach - width
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
