package paper

import (
	"cmp"
	"slices"

	"strake/lay"
	"strake/plan"
	"strake/saw"
	"strake/tape"
)

// Kind is a kind of cut, as a saw is set up for it.
type Kind string

// The Kinds of cut, in the order they are listed.
const (
	Crosscut  Kind = "crosscut"
	Rip       Kind = "rip"
	Mitre     Kind = "mitre"
	NotchCut  Kind = "notch"
	TongueOff Kind = "tongue off"
)

var Kinds = []Kind{Crosscut, Rip, Mitre, NotchCut, TongueOff}

// Cut is a line of the cut list.
type Cut struct {
	Kind  Kind
	Piece Piece
	Left  bool   // Crosscut, Mitre, TongueOff at an end: the left one
	Same  bool   // Crosscut, Mitre: the other side of a cut that is already listed
	Other *Piece // Crosscut, Mitre: the piece that its other side makes, to be laid later
	What  int    // NotchCut: which; TongueOff: which of tongues(piece)
}

// CutList is all cuts of p: each kind in the order of laying, the rips by what
// the saw is set to, widest first.
func CutList(p plan.Plan) []Cut {
	l := newLister(p)
	shared := l.sharedCuts()
	var out []Cut
	for _, r := range Rows(p) {
		for _, pc := range r.Pieces {
			out = append(out, l.cutsOf(pc, shared)...)
		}
	}
	slices.SortStableFunc(out, func(a, b Cut) int {
		if c := cmp.Compare(slices.Index(Kinds, a.Kind), slices.Index(Kinds, b.Kind)); c != 0 || a.Kind != Rip {
			return c
		}
		return cmp.Or(cmp.Compare(b.Piece.SawRip[0], a.Piece.SawRip[0]), cmp.Compare(b.Piece.SawRip[1], a.Piece.SawRip[1]))
	})
	return out
}

// end is one end of a piece.
type end struct {
	piece int
	left  bool
}

func (l *lister) cutsOf(p Piece, shared sharing) []Cut {
	var out []Cut
	for _, e := range []struct {
		sawn  bool
		slant tape.Length
		left  bool
	}{{p.Sawn[0], p.Cuts.Left, true}, {p.Sawn[1], p.Cuts.Right, false}} {
		if !e.sawn {
			continue
		}
		kind := Crosscut
		if !l.say.Nil(e.slant) {
			kind = Mitre
		}
		at := end{p.Lay.ID, e.left}
		c := Cut{Kind: kind, Piece: p, Left: e.left, Same: shared.late[at]}
		if late, ok := shared.other[at]; ok {
			other := l.piece(l.run(late), l.place(late))
			c.Other = &other
		}
		out = append(out, c)
	}
	if p.Cuts.Rip.Done {
		out = append(out, Cut{Kind: Rip, Piece: p})
	}
	for i := range notches(p, l.say) {
		out = append(out, Cut{Kind: NotchCut, Piece: p, What: i})
	}
	for i := range tongues(p, l.say) {
		out = append(out, Cut{Kind: TongueOff, Piece: p, What: i})
	}
	return out
}

// sharing tells which sawn ends come about with an earlier piece's, one pass
// of the blade making both, and which later piece an end's other side is.
type sharing struct {
	late  map[end]bool
	other map[end]int
}

func (l *lister) sharedCuts() sharing {
	out := sharing{map[end]bool{}, map[end]int{}}
	for _, b := range l.p.Lay.Boards {
		on := l.onBoard(b.ID)
		for i, early := range on {
			for _, late := range on[i+1:] {
				l.shareCut(early, late, out)
			}
		}
	}
	return out
}

// shareCut notes the end of late that faces a sawn end of early over no more
// than a slanted kerf, when both have the same slant.
func (l *lister) shareCut(early, late int, out sharing) {
	a, b := l.p.Lay.Pieces[early], l.p.Lay.Pieces[late]
	aLo, aHi := a.InBoard.Box()
	bLo, bHi := b.InBoard.Box()
	near := 2 * l.p.Lay.Kerf
	high := aLo.X <= bLo.X && aHi.X <= bHi.X // late lies at early's high end
	gap := bLo.X - aHi.X
	if !high {
		gap = aLo.X - bHi.X
	}
	slantA, okA := l.slant(a, !high)
	slantB, okB := l.slant(b, high)
	if gap > near || !okA || !okB || slantA != slantB {
		return
	}
	out.late[end{late, high != b.Turned}] = true
	out.other[end{early, high == a.Turned}] = late
}

// slant is that of p's end at its board's low or high end, false when that end
// is not sawn. Half a turn leaves a slant as it is.
func (l *lister) slant(p lay.Piece, low bool) (tape.Length, bool) {
	c, left := saw.Of(p), low != p.Turned
	if left {
		return c.Left, l.sawn(p, left)
	}
	return c.Right, l.sawn(p, left)
}
