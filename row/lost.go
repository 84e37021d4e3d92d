package row

import (
	"fmt"
	"math"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/room"
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
			out = append(out, lost("run through", "doorway "+w.RunThrough, why))
		}
	}
	for _, pin := range w.Pins {
		if v, ok := wallDir(p.Built, pin.Wall); ok && pin.Kind == lay.PinTongues && math.Abs(plane.XY(v).Dot(plane.XY(d))) < math.Sqrt2/2 {
			out = append(out, lost("pin", pin.String(), "rows end at this wall, so no side tongue faces it"))
		}
	}
	return append(out, p.lostStart()...)
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
	return finding.Finding{Level: finding.Warn, Rule: rule, Where: where, Measured: why, Do: "Not kept. Take one of the two out of the job."}
}
