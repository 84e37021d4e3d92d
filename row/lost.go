package row

import (
	"fmt"
	"math"
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// lostFindings tell each wish and pin that another one outranks, with which: rows
// along d and these fields are what came of them.
func (p Place) lostFindings(d plane.Dir, fs []Field) []finding.Finding {
	var out []finding.Finding
	w := p.Wishes
	if w.Continuous.Pinned && w.TaperAt != (room.Wall{}) {
		out = append(out, lost("taper at a wall", "wall "+w.TaperAt.String(), "the pin continuous_from "+w.Continuous.From+" gives the direction"))
	}
	out = append(out, p.lostDirection(d)...)
	if w.RunThrough != "" && w.RunThrough != w.Continuous.Doorway {
		if why, ok := goesOn(p.Built, fs, w.RunThrough); !ok {
			out = append(out, lost("run through", room.DoorwaySaid(w.RunThrough), why))
		}
	}
	for _, pin := range w.Pins {
		if why := p.idle(pin, d, fs); why != "" {
			out = append(out, lost("pin", pin.String(), why))
		}
	}
	return append(out, p.lostStart()...)
}

// idle is why no rows along d can keep a pin, whatever start they have; empty
// where they can, or where the choice of the start tells it.
func (p Place) idle(pin lay.Pin, d plane.Dir, fs []Field) string {
	switch pin.Kind {
	case lay.PinTongues:
		if v, ok := wallDir(p.Built, pin.Wall); ok && math.Abs(plane.XY(v).Dot(plane.XY(d))) < math.Sqrt2/2 {
			return "rows end at this wall, so no side tongue faces it"
		}
	case lay.PinStepped:
		if !slices.ContainsFunc(fs, func(f Field) bool { return f.beside(pin.Where) }) {
			return "rows end at this wall, so none lies along it"
		}
	case lay.PinSpline:
		if !slices.ContainsFunc(fs, func(f Field) bool { return f.splined(f.Layout.Dir.ToRow(pin.At).Y) }) {
			return "no row lies behind a line there, so no spline can"
		}
	case lay.PinRip, lay.PinFull:
		return p.otherRip(pin, fs[0])
	}
	return ""
}

// beside tells whether an edge of that name lies beside the rows of a field.
func (f Field) beside(name string) bool {
	return slices.ContainsFunc(f.Part.Edges, func(e floor.AlignedEdge) bool { return e.Beside && e.Name == name })
}

// splined tells whether a spline lies on a row line, to a tick.
func (f Field) splined(y tape.Length) bool {
	return slices.ContainsFunc(f.Layout.Splines, func(s SplineLine) bool { return (s.Y - y).Abs() <= tape.Tick })
}

// otherRip is why the row along an edge has another width than the one pinned
// though nothing else binds the start: the gap takes up a strip so narrow, and a
// full board closes there.
func (p Place) otherRip(pin lay.Pin, f Field) string {
	if f.Layout.Pin != pin.String() || pin.Kind != lay.PinRip {
		return ""
	}
	for _, r := range f.Layout.Rips {
		if r.Edge == pin.Where && r.Full() && pin.Width < r.Width-tape.Inch/64 {
			return "the play of the gap takes up a strip so narrow, and a full board closes there"
		}
	}
	return ""
}

// leaveOut takes the pins that no rows can keep out of those that the lay is held
// to: each is told of.
func (p Place) leaveOut(d plane.Dir, fs []Field) {
	fs[0].Layout.Pins = slices.DeleteFunc(slices.Clone(fs[0].Layout.Pins), func(pin lay.Pin) bool { return p.idle(pin, d, fs) != "" })
}

// lostDirection tells the direction that was wished for, where a pin or the wall
// that takes the taper gives another.
func (p Place) lostDirection(d plane.Dir) []finding.Finding {
	w := p.Wishes
	where := "wall " + w.Direction.String()
	switch {
	case w.Between != [2]room.Wall{}:
		where = fmt.Sprintf("walls %s and %s", w.Between[0], w.Between[1])
	case w.Direction == (room.Wall{}):
		return nil
	}
	by := "the pin continuous_from " + w.Continuous.From
	if !w.Continuous.Pinned {
		by = "taper_at " + w.TaperAt.String()
	}
	w.Continuous, w.TaperAt = Continuous{}, room.Wall{}
	want, _, _ := direction(p.Built, w)
	turn := math.Asin(math.Min(1, math.Abs(plane.XY(want).Cross(plane.XY(d))))) * 180 / math.Pi
	if turn < sameWay {
		return nil
	}
	return []finding.Finding{lost("direction", where, fmt.Sprintf("%s gives rows that make %.2g degrees with those wished for", by, turn))}
}

// sameWay is how many degrees two directions may differ that are told as one.
const sameWay = 0.05

// lostStart tells a start wall that the first rows do not lie along.
func (p Place) lostStart() []finding.Finding {
	w := p.Wishes
	if w.StartWall == (room.Wall{}) {
		return nil
	}
	for _, pin := range w.Pins {
		if pin.Kind == lay.PinSpline {
			return []finding.Finding{lost("start wall", "wall "+w.StartWall.String(), "the pin "+pin.String()+" has the first rows lie there")}
		}
	}
	if w.Middle {
		return []finding.Finding{lost("start wall", "wall "+w.StartWall.String(), "start_middle has the first rows lie in the middle")}
	}
	return nil
}

func lost(rule, where, why string) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: rule, Where: where, Measured: why, Do: "Not kept. Take it out of the job, or what stands against it."}
}
