package rack

import (
	"strake/room"
)

// oldFloors gives the row ends that come to an old floor what mates with it.
// Where it offers a tongue a factory groove takes it, and a cut end is grooved on
// the job; into its groove, or the one cut into its square edge on the job, goes a
// spline. Boards with plain ends butt.
func (b *builder) oldFloors() {
	if b.plain {
		return
	}
	for i := range b.lay.Runs {
		r := &b.lay.Runs[i]
		if len(r.Pieces) == 0 {
			continue
		}
		first, last := &b.lay.Pieces[r.Pieces[0]], &b.lay.Pieces[r.Pieces[len(r.Pieces)-1]]
		if o := b.oldAt(i, r.LeftEnd.Edge); o != "" {
			first.Left = mating(first.Left, o == room.OffersTongue)
		}
		if o := b.oldAt(i, r.RightEnd.Edge); o != "" {
			last.Right = mating(last.Right, o == room.OffersTongue)
		}
	}
}

// oldAt is what an old floor offers at the edge of a run's field by that name;
// empty where none lies there.
func (b *builder) oldAt(run int, edge string) room.Offer {
	for _, e := range b.ask.Fields[b.fields[run]].Part.Edges {
		if e.Name == edge && e.Old != "" {
			return e.Old
		}
	}
	return ""
}
