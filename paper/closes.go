package paper

import (
	"fmt"
	"math"

	"strake/lay"
	"strake/plan"
	"strake/tape"
)

// closes says how a row closes whose boards may be off their tallied lengths: the
// chance that whole boards do, or that its last piece is cut to measure; empty
// where lengths are taken for exact.
func closes(p plan.Plan, r lay.Run) string {
	if p.Job.Boards.LengthError() == 0 && !p.Job.Boards.Doubted || len(r.Pieces) == 0 {
		return ""
	}
	near, far := r.LeftEnd, r.RightEnd
	last := p.Lay.Pieces[r.Pieces[len(r.Pieces)-1]].Right
	if !p.Lay.Zones[r.Zone].TongueRight() {
		near, far = far, near
		last = p.Lay.Pieces[r.Pieces[0]].Left
	}
	if last != lay.Tongue && last != lay.TongueOff && last != lay.Plain {
		return "its last piece is cut to measure"
	}
	nearPlay := (near.Need - near.Reach).Abs()
	if near.Mitred || near.InPlace {
		nearPlay = 0 // its first piece was cut to begin where it lies
	}
	var sum tape.Length
	for _, id := range r.Pieces {
		lo, hi := p.Lay.Pieces[id].Outline.Box()
		sum += hi.X - lo.X
	}
	long := (far.Reach - near.Reach).Abs()
	short := long - (far.Reach - far.Need).Abs() - nearPlay
	c := p.Job.Boards.CloseChance(sum, short, long, len(r.Pieces))
	return fmt.Sprintf("closes uncut with a chance of %d %%", int(math.Floor(100*c)))
}
