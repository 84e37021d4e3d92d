package setout

import (
	"math"

	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// DoorLine is the front of a row where it goes through a doorway or past it: how
// far from one jamb, on both faces of the wall, or how deep in the opening it lies
// at its two jambs.
type DoorLine struct {
	Doorway   string
	Through   bool // another room of the floor lies beyond
	Row       int
	Along     bool           // the row lies along the opening
	Near, Far tape.Length    // not Along: from the jamb nearer to Doorway.From, on this wall's face and, Through, on the other
	Wide      tape.Length    // of the opening: what is left of it is measured from the other jamb
	Depth     [2]tape.Length // Along: from the face of the wall into the opening, at the jamb From and at the other; below 0 before it
	From      string         // the corner that names the jamb
	Other     string         // the corner at the other end of the wall
	places    [2]plane.XY
}

// Places are the two ends of the line, mm on the floor plan: on both faces of
// the wall, or at both jambs.
func (l DoorLine) Places() [2]plane.XY { return l.places }

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
	l := DoorLine{Doorway: d.Name, From: d.From, Other: d.Wall[0], Through: d.Beyond == room.BeyondRoom, Wide: mm(e.Sub(s).Len())}
	if l.Other == l.From {
		l.Other = d.Wall[1]
	}
	across := plane.XY(dir).Dot(e.Sub(s).Unit())
	if across*across > 0.75 { // within 30 degrees of the wall
		return l.along(dir, [2]plane.XY{s, e}, [2]plane.XY{farS, farE}, fronts)
	}
	for _, n := range rowsOf(fronts) {
		at := fronts[n]
		near, okN := between(y(s), y(e), at, e.Sub(s).Len())
		far, okF := between(y(farS), y(farE), at, farE.Sub(farS).Len())
		if okN && okF {
			l.Row, l.Near, l.Far = n, near, far
			l.places = [2]plane.XY{toward(s, e, near), toward(farS, farE, far)}
			return l, true
		}
	}
	return l, false
}

// along finds a front inside the depth of the opening at both jambs, or the
// nearest to the face of the wall in the room before it.
func (l DoorLine) along(dir plane.Dir, face, far [2]plane.XY, fronts map[int]tape.Length) (DoorLine, bool) {
	best := math.Inf(1)
	for _, n := range rowsOf(fronts) {
		d, at := l, fronts[n]
		d.Row, d.Along = n, true
		off := 0.0
		for k := range face {
			// How far along the jamb the front is met, as a part of its depth.
			a, b := dir.ToRow(face[k]).Y, dir.ToRow(far[k]).Y
			if a == b {
				return l, false
			}
			t := float64(at-a) / float64(b-a)
			off = max(off, t-1, -t)
			d.places[k] = face[k].Add(far[k].Sub(face[k]).Times(t))
			d.Depth[k] = mm(t * far[k].Sub(face[k]).Len())
		}
		if off < best {
			best, l = off, d
		}
	}
	return l, l.Along
}

// toward is the place so far from a toward b.
func toward(a, b plane.XY, d tape.Length) plane.XY {
	return a.Add(b.Sub(a).Unit().Times(d.Millimetres()))
}

// between is how far along a stretch from a to b, so many mm long, the height
// y lies.
func between(a, b, y tape.Length, long float64) (tape.Length, bool) {
	if a == b || y < min(a, b) || y > max(a, b) {
		return 0, false
	}
	return mm(float64(y-a) / float64(b-a) * long), true
}
