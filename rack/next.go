package rack

import (
	"context"
	"slices"

	"strake/tape"
)

// Laid is a run as it lies on the floor, with its joints from left to right.
type Laid struct {
	Run    int // in the order of racking; see Order
	Joints []tape.Length
}

// Proposal is a run to lay next, its pieces from left to right.
type Proposal struct {
	Run    int
	Pieces []Part
	Filled bool
	// Least is the joint distance that was held to, below the limit where the
	// boards allowed no more; Nearest the smallest to the rows beside it, 0
	// where nothing lies beside any of its joints.
	Least, Nearest tape.Length
	Measured       bool        // its last piece is cut to measure, as lengths may be off by more than the play
	Off            tape.Length // how far its joints lie off the pattern of a fixed shift
}

// Part is a piece of a proposal: a board of those given, whole or cut.
type Part struct {
	Board             int // in the order of the tally
	Length, Start     tape.Length
	CutLeft, CutRight bool // crosscut for this place, or begun with what is left of one
}

// Next proposes up to so many of the runs that are not laid yet, in the order
// of laying, from the boards of the ask: those at hand, or all that are left
// after a board split and the rest is planned anew. Runs as laid are held to,
// with their joints where they are.
func Next(ctx context.Context, a Ask, laid []Laid, count int) []Proposal {
	ls, widths, _ := supply(a)
	e := newEngine(ctx, a, ls, widths)
	e.laid = map[int][]tape.Length{}
	for _, l := range laid {
		e.laid[l.Run] = l.Joints
	}
	runs := e.oriented(a.Fields)
	e.setOut(runs) // by all runs, not by those asked for alone
	for k, left := 0, count; k < len(runs); k++ {
		if _, ok := e.laid[k]; ok {
			continue
		}
		if left--; left < 0 {
			runs = runs[:k]
		}
	}
	all := e.fillAll(runs)
	joints := jointsOf(all, nil)
	var out []Proposal
	for _, f := range all {
		if _, ok := e.laid[f.index]; !ok {
			p := f.proposal()
			p.Measured = f.ok && f.unsure
			p.Nearest = f.nearest(e.around(f.run, joints).one)
			if e.pattern != nil && f.ok && !f.alone {
				p.Off = e.offGrid(f)
			}
			out = append(out, p)
		}
	}
	return out
}

// nearest is the smallest distance of the joints of a run from those beside
// it, 0 for none.
func (f filled) nearest(one []tape.Length) tape.Length {
	if len(f.pieces) < 2 || len(one) == 0 {
		return 0
	}
	least := tape.Longest
	for _, q := range f.pieces[1:] {
		least = min(least, nearest(one, q.start))
	}
	return least
}

// fixed is a run as laid: what its pieces are is not known, only where they
// meet.
func (e *engine) fixed(r run) (filled, bool) {
	at, ok := e.laid[r.index]
	if !ok {
		return filled{}, false
	}
	f := filled{run: r, ok: true, pieces: []placed{{item: item{board: -1}}}}
	for _, x := range at {
		f.pieces = append(f.pieces, placed{item: item{board: -1}, start: r.sign * x})
	}
	if r.sign < 0 {
		slices.Reverse(f.pieces[1:])
	}
	return f, true
}

// proposal is a filled run in words of the boards given.
func (f filled) proposal() Proposal {
	p := Proposal{Run: f.index, Filled: f.ok, Least: f.least}
	for _, q := range f.pieces {
		part := Part{Board: q.board, Length: q.length(), Start: q.start, CutLeft: !q.groove, CutRight: !q.tongue}
		if f.sign < 0 {
			part.Start, part.CutLeft, part.CutRight = -q.end, part.CutRight, part.CutLeft
		}
		p.Pieces = append(p.Pieces, part)
	}
	if f.sign < 0 {
		slices.Reverse(p.Pieces)
	}
	return p
}
