package drawing

import "strake/sheet"

// labels keeps writing apart: a text takes its place once, and no other one
// gets it.
type labels struct {
	bounds box // of the part of the sheet the floor is drawn on
	taken  places
	drawn  places // walls, joints and other heavy lines: writing keeps off them, dimension lines may cross them
	ruled  places // dimension lines: writing keeps off them, other lines may cross them
}

// around a text nothing else stands nearer than this, mm.
const clear = 0.4

// outline is the room that t needs.
func outline(t sheet.Text) []sheet.Pt { return grown(t, clear) }

// grown is t's box with d more on every side, in t's own turn.
func grown(t sheet.Text, d float64) []sheet.Pt {
	b := t.Box()
	along, up := b[1].Sub(b[0]), b[3].Sub(b[0])
	along, up = unit(along).Times(d), unit(up).Times(d)
	return []sheet.Pt{
		b[0].Sub(along).Sub(up), b[1].Add(along).Sub(up), b[2].Add(along).Add(up), b[3].Sub(along).Add(up),
	}
}

func (l *labels) take(t sheet.Text) { l.reserve(outline(t)) }

// reserve keeps writing out of a convex outline.
func (l *labels) reserve(o []sheet.Pt) { l.taken.add(o) }

// line keeps writing off a line: a wall, a joint, a line to snap.
func (l *labels) line(a, b sheet.Pt, width float64) {
	if length(b.Sub(a)) > 0 {
		l.drawn.add(strip(a, b, max(width/2, 0.1)))
	}
}

// free tells whether a convex outline lies on the drawing and over nothing
// that is taken.
func (l *labels) free(o []sheet.Pt) bool {
	if !l.bounds.holds(o) {
		return false
	}
	return !l.taken.over(o) && !l.ruled.over(o) && !l.drawn.over(o)
}

// freeLine tells whether a dimension line may run in the narrow outline o:
// over no writing and along no other line.
func (l *labels) freeLine(o []sheet.Pt) bool {
	if !l.bounds.holds(o) || l.taken.over(o) {
		return false
	}
	for _, t := range l.ruled.all {
		if !crosswise(t.outline, o) && sheet.Overlap(t.outline, o) {
			return false
		}
	}
	return true
}

// crosswise tells whether two strips run more across than along each other.
func crosswise(a, b []sheet.Pt) bool {
	u, v := unit(a[1].Sub(a[0])), unit(b[1].Sub(b[0]))
	c := float64(u.X*v.Y) - float64(u.Y*v.X)
	return c > 0.7 || c < -0.7
}

// first gives the first of the texts whose place is free and passes ok (nil:
// all do), and takes it.
func (l *labels) first(texts []sheet.Text, ok func(sheet.Text) bool) (sheet.Text, bool) {
	for _, t := range texts {
		if t.Text != "" && l.free(outline(t)) && (ok == nil || ok(t)) {
			l.take(t)
			return t, true
		}
	}
	return sheet.Text{}, false
}
