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
	boards := p.Job.Boards
	if w, ok := boards.OfPitch(r.High - r.Low); ok {
		boards = w
	}
	if boards.LengthError() == 0 && !boards.Doubted || len(r.Pieces) == 0 {
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
	c := boards.CloseChance(sum, short, long, carried(p.Lay, r))
	return fmt.Sprintf("closes uncut with a chance of %d %%", int(math.Floor(100*c)))
}

// carried is of how many boards a row carries the length error: one for each of
// its pieces, but for one that is the rest of a board cut to end an earlier row
// the boards of that row too. That cut was made where the others had come to.
func carried(l lay.Lay, r lay.Run) int {
	n := 0
	for _, id := range r.Pieces {
		n++
		for _, q := range l.Runs {
			if q.ID == r.ID || q.Order >= r.Order || len(q.Pieces) == 0 {
				continue
			}
			last := q.Pieces[len(q.Pieces)-1]
			if !l.Zones[q.Zone].TongueRight() {
				last = q.Pieces[0]
			}
			if l.Pieces[last].Board == l.Pieces[id].Board {
				n += carried(l, q)
			}
		}
	}
	return n
}
