package rack

import (
	"math"
	"slices"

	"strake/tape"
)

// item is a board, or what is left of one: the stretch from..to of it, counted
// from its groove end. A head starts a run with its cut end to the wall; a
// tail ends one.
type item struct {
	board    int
	from, to tape.Length
	groove   bool // from is the factory groove end
	tongue   bool // to is the factory tongue end
	lot      int  // tells boards of one carton and shade from others
	rough    bool // its damaged end is still to be cut off
	sawn     bool // taken up again while the other side of its cut stays laid: that cut is counted here
	// An offcut starts a later run than the one it was cut for, and not the
	// other way round: it is for runs from after on, and before before (0: all).
	after, before int
}

func (t item) length() tape.Length { return t.to - t.from }

// placed is the part of an item that is laid, in its place in a run.
type placed struct {
	item
	start, end          tape.Length // along the run as racked
	nearCut, farCut     bool        // crosscut for this place at that end
	nearMitre, farMitre bool
	tongueOff           bool // its far tongue is taken off
}

// shop is what cutting and joining depend on.
type shop struct {
	blade, shortest     tape.Length
	jointMin, preferred tape.Length
	// What counts as an H-joint, and as a stair-step.
	hReach, stairReach, stairFarthest tape.Length
	tongue                            tape.Length // of an end
	woodFirst                         bool
	chain                             *chain
	ahead                             int  // runs still to be laid after the one at hand
	order                             int  // of the run at hand
	lying                             int  // offcuts lying about already
	scarce                            bool // boards ran out once: nothing but their use counts
}

// loss is what a crosscut takes from the board beyond the piece. A mitre (no
// end is mitred beyond half a square) leaves a slanted end that is squared
// again before it is used.
func (s shop) loss(mitred bool) tape.Length {
	if !mitred {
		return s.blade
	}
	return s.blade + tape.Length(math.Ceil(float64(s.blade)*math.Sqrt2)) + 1
}

// keep is the cost of an offcut that is kept: the more lie about already, the
// less likely it is to be used; less what it is worth to the runs ahead.
func (s shop) keep(length tape.Length) int64 {
	return keepCost*int64(1+s.lying) - s.waste(s.chain.worth(length, s.ahead))
}

// begun is the cost of beginning a run with an offcut: it is gone then.
func (s shop) begun(length tape.Length) int64 {
	return s.waste(s.chain.worth(length, s.ahead+1)) - useBonus
}

// pile is what is left to lay, in a fixed order.
type pile struct{ boards, heads, tails []item }

func (p pile) clone() pile {
	return pile{slices.Clone(p.boards), slices.Clone(p.heads), slices.Clone(p.tails)}
}

// use takes the items of a filled run off the pile and puts back what is left
// of the cut ones: a head behind a far cut, a tail before a near one. What has
// neither end of the mill's left lies with the tails and can only be a run of
// its own.
func (p *pile) use(ps []placed, s shop) {
	for _, t := range ps {
		src := p.take(t.item)
		if t.farCut {
			p.keep(item{board: t.board, from: t.to + s.loss(t.farMitre), to: src.to, tongue: src.tongue, rough: src.rough && !src.tongue}, s)
		}
		if t.nearCut {
			p.keep(item{board: t.board, from: src.from, to: t.from - s.loss(t.nearMitre), groove: src.groove, rough: src.rough && !src.groove}, s)
		}
	}
}

// forget drops what is left of boards that some pieces were cut from.
func (p *pile) forget(ps []placed) {
	for _, t := range ps {
		mine := func(x item) bool { return x.board == t.board }
		p.heads, p.tails = slices.DeleteFunc(p.heads, mine), slices.DeleteFunc(p.tails, mine)
	}
}

func (p *pile) keep(t item, s shop) {
	t.after = s.order + 1
	switch {
	case t.length() < s.shortest:
	case t.tongue:
		p.heads = append(p.heads, t)
	default:
		p.tails = append(p.tails, t)
	}
}

// take removes the item that a stretch of board lies in and returns it.
func (p *pile) take(t item) item {
	for _, list := range []*[]item{&p.boards, &p.heads, &p.tails} {
		for i, x := range *list {
			if x.board == t.board && x.from <= t.from && t.to <= x.to {
				*list = slices.Delete(*list, i, i+1)
				return x
			}
		}
	}
	return t
}
