package packet

import (
	"slices"
	"strings"

	"strake/lay"
	"strake/paper"
	"strake/plane"
	"strake/room"
)

// jambAt is the corner of the wall that the jamb at an end of a row lies toward, so that
// the two jambs of a doorway are told apart; "" where the row ends at none.
func (d *desk) jambAt(r paper.Row, right bool) string {
	edge := r.Left.Edge
	if right {
		edge = r.Right.Edge
	}
	door, ok := strings.CutPrefix(edge, "jamb of ")
	if !ok {
		return ""
	}
	p := d.in.Plan
	i := slices.IndexFunc(p.Built.Doorways, func(x room.Doorway) bool { return x.Said() == door })
	k := slices.IndexFunc(p.Lay.Runs, func(x lay.Run) bool { return x.Order == r.Order })
	if i < 0 || k < 0 {
		return ""
	}
	lo, hi := p.Lay.Runs[k].Outline.Box()
	at := plane.P(lo.X, (lo.Y+hi.Y)/2)
	if right {
		at.X = hi.X
	}
	xy := p.Field(r.Field).Aligned.Dir.FromRow(at)
	x := p.Built.Doorways[i]
	from, to := x.From, x.Wall[0]
	if to == from {
		to = x.Wall[1]
	}
	a, b := p.Built.At[from], p.Built.At[to]
	along := xy.Sub(a).Dot(b.Sub(a)) / b.Sub(a).Len() // mm from the corner the doorway is measured from
	if along < (x.At + x.Width/2).Millimetres() {
		return from
	}
	return to
}
