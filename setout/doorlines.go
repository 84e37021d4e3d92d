package setout

import (
	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// DoorLine is the front of a row where it goes through a doorway: how far from
// one jamb, on both faces of the wall, or how deep in the opening it lies.
type DoorLine struct {
	Doorway   string
	Through   bool // another room of the floor lies beyond
	Row       int
	Along     bool        // the row lies along the opening
	Near, Far tape.Length // not Along: from the jamb nearer to Doorway.From, on this wall's face and, Through, on the other
	Depth     tape.Length // Along: from the face of the wall into the opening
	From      string      // the corner that names the jamb
}

// DoorLines carry the rows through each doorway, or into the opening where the
// floor ends there: the first row front inside it.
func DoorLines(p plan.Plan) []DoorLine {
	var out []DoorLine
	for _, d := range p.Built.Doorways {
		for _, f := range p.AllFields() {
			if f.Kind != lay.Field {
				continue
			}
			if l, ok := doorLine(p, d, f.Layout.Dir, fronts(f)); ok {
				out = append(out, l)
				break
			}
		}
	}
	return out
}

func doorLine(p plan.Plan, d room.Doorway, dir plane.Dir, fronts map[int]tape.Length) (DoorLine, bool) {
	s, e, ok := floor.Jambs(p.Built, d.Wall, d.From, d.At, d.Width)
	if !ok || s == e {
		return DoorLine{}, false
	}
	in := e.Sub(s).Unit().Left().Times(-d.Ends.Millimetres()) // the room lies on the left
	farS, farE := s.Add(in), e.Add(in)
	if d.Beyond == room.BeyondRoom {
		if farE, farS, ok = floor.Jambs(p.Built, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width); !ok {
			return DoorLine{}, false
		}
	}
	if _, ccw, _ := p.Built.FindWall(d.Wall); d.From != ccw[0] { // the jamb nearer to From first
		s, e, farS, farE = e, s, farE, farS
	}
	y := func(q plane.XY) tape.Length { return dir.ToRow(q).Y }
	l := DoorLine{Doorway: d.Name, From: d.From, Through: d.Beyond == room.BeyondRoom}
	across := plane.XY(dir).Dot(e.Sub(s).Unit())
	if across*across > 0.5 {
		return l.along(y(s), y(farS), fronts)
	}
	for _, n := range rowsOf(fronts) {
		at := fronts[n]
		near, okN := between(y(s), y(e), at, e.Sub(s).Len())
		far, okF := between(y(farS), y(farE), at, farE.Sub(farS).Len())
		if okN && okF {
			l.Row, l.Near, l.Far = n, near, far
			return l, true
		}
	}
	return l, false
}

// along finds a front inside the depth of the opening.
func (l DoorLine) along(face, far tape.Length, fronts map[int]tape.Length) (DoorLine, bool) {
	for _, n := range rowsOf(fronts) {
		if at := fronts[n]; min(face, far) <= at && at <= max(face, far) {
			l.Row, l.Along, l.Depth = n, true, (at - face).Abs()
			return l, true
		}
	}
	return l, false
}

// between is how far along a stretch from a to b, so many mm long, the height
// y lies.
func between(a, b, y tape.Length, long float64) (tape.Length, bool) {
	if a == b || y < min(a, b) || y > max(a, b) {
		return 0, false
	}
	return mm(float64(y-a) / float64(b-a) * long), true
}
