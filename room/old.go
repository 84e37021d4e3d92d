package room

import "strake/plane"

// Mates tells whether row ends of this floor are joined to the old floor beyond,
// end to end or to its last row: where both lie at one height and nothing covers
// the joint.
func (d Doorway) Mates() bool { return d.Old.RowWidth > 0 && d.Beyond == BeyondFlush }

// Mark is the place that a name means: a corner or a point, else the row edge of
// the old floor beyond a doorway, where it comes to the wall.
func (b Built) Mark(name string) (plane.XY, bool) {
	if at, ok := b.At[name]; ok && name != "" {
		return at, true
	}
	for _, d := range b.Doorways {
		if d.Name == name && d.Old.RowWidth > 0 && !d.Old.Along {
			return b.OldEdge(d)
		}
	}
	return plane.XY{}, false
}

// OldEdge is where the row edge of an old floor that the job gives comes to the
// wall.
func (b Built) OldEdge(d Doorway) (plane.XY, bool) {
	_, ccw, ok := b.FindWall(d.Wall)
	if !ok || b.At[ccw[0]] == b.At[ccw[1]] {
		return plane.XY{}, false
	}
	u := b.At[ccw[1]].Sub(b.At[ccw[0]]).Unit()
	if d.From == ccw[1] {
		u = u.Times(-1)
	}
	return b.At[d.From].Add(u.Times(d.Old.EdgeAt.Millimetres())), true
}
