package rack

import (
	"slices"

	"strake/tape"
)

// Worth is what a floor costs in wood beside what it must.
type Worth struct {
	Crosscuts int         // measured, at both ends of pieces
	Lost      tape.Length // scrap and kerf along the boards
	// FewestCuts is how many crosscuts these runs need at the least, were there
	// boards of each length in any number, and joints anywhere.
	FewestCuts int
	// Chain is less than which scrap, kerf and an inch for each crosscut cannot
	// add up to where all runs are alike and boards are cut at far ends only; 0
	// where runs differ, or lengths are dense.
	Chain tape.Length
	Work  int // units of work spent
}

// Cost is what the bounds bound: scrap, kerf, and an inch for each crosscut.
func (w Worth) Cost() tape.Length { return w.Lost + crosscut*tape.Length(w.Crosscuts) }

// worthOf weighs a racked floor.
func (e *engine) worthOf(plan []filled) Worth {
	var w Worth
	w.Crosscuts, w.Lost = e.wood(plan)
	w.Lost += e.damaged(plan)
	runs := make([]run, 0, len(plan))
	for _, f := range plan {
		if f.ok && !f.alone {
			runs = append(runs, f.run)
		}
	}
	each := e.kinds.byWidth(runs)
	for _, same := range each { // boards of one width are no help in rows of another
		of := *e
		of.stock = e.kinds.only(e.stock, same[0])
		w.FewestCuts += of.fewestCuts(same)
		if alike(same) {
			w.Chain += of.chainBound(same)
		}
	}
	if slices.ContainsFunc(each, func(same []run) bool { return !alike(same) }) {
		w.Chain = 0
	}
	return w
}

// damaged is what of the boards laid was cut off with a damaged end.
func (e *engine) damaged(plan []filled) tape.Length {
	var sum tape.Length
	seen := map[int]bool{}
	for _, f := range plan {
		for _, q := range f.pieces {
			if q.board >= 0 && q.board < len(e.fresh) && !seen[q.board] {
				seen[q.board] = true
				sum += e.full[q.board] - e.fresh[q.board].length()
			}
		}
	}
	return sum
}

// fewestCuts counts the ends that are cut whatever the boards, and the runs that
// no whole boards add up to. Each of those has a cut end in it, and one cut
// makes two: so the runs need half of the cut ends, and no fewer than the cuts
// asked for. An offcut may wait for any later run, so this holds for runs of
// different lengths too.
func (e *engine) fewestCuts(runs []run) int {
	var most tape.Length
	for _, r := range runs {
		most = max(most, r.length())
	}
	can := e.comeTo(most)
	asked, needy := 0, 0
	for _, r := range runs {
		n := 0
		if r.nearCut {
			n++
		}
		if r.farCut {
			n++
		}
		if asked += n; n == 0 && !e.closable(r, can) {
			needy++
		}
	}
	return max(asked, (asked+needy+1)/2)
}

// comeTo tells of every number of units what whole boards can add up to. With
// boards that were damaged at an end, anything.
func (e *engine) comeTo(most tape.Length) []bool {
	can := make([]bool, int(most/e.unit)+1)
	can[0] = true
	var hops []int
	for _, b := range e.stock.boards {
		hops = append(hops, int(b.length()/e.unit))
	}
	slices.Sort(hops)
	hops = slices.Compact(hops)
	for k := range can {
		for _, h := range hops {
			if h > k {
				break
			}
			if can[k-h] {
				can[k] = true
				break
			}
		}
	}
	return can
}

// closable tells whether whole boards, or a damaged one among them, can close a
// run.
func (e *engine) closable(r run, can []bool) bool {
	if len(e.stock.heads)+len(e.stock.tails) > 0 {
		return true
	}
	for k := ceilDiv(r.wholeLeast-r.startMost, e.unit); k < len(can) && tape.Length(k)*e.unit <= r.wholeMost-r.startLeast; k++ {
		if k >= 0 && can[k] {
			return true
		}
	}
	return false
}

// alike tells whether all runs have the same length and play.
func alike(runs []run) bool {
	return !slices.ContainsFunc(runs, func(r run) bool {
		a := runs[0]
		return r.length() != a.length() || r.wholeMost-r.startLeast != a.wholeMost-a.startLeast || r.wholeLeast-r.startMost != a.wholeLeast-a.startMost || r.farCut != a.farCut || r.nearCut || r.farMitre
	})
}

// allPlaces is the part of the places near the end of a run that whole boards
// must come to for nothing to be worked out: then next to every run closes.
const allPlaces = 0.95

// chainBound is the shortest path over the lengths of offcuts that one run
// leaves to the next, from the last run back. It holds for any number of boards
// of each length, and so for those there are; where runs are alike an offcut
// that waits is worth no more than one that goes into the next.
func (e *engine) chainBound(runs []run) tape.Length {
	c := &chain{unit: chainUnit(runs, e.stock.boards, e.shop, e.unit)}
	var lengths []int
	for _, b := range e.stock.boards {
		lengths = append(lengths, int(b.length()/c.unit))
	}
	slices.Sort(lengths)
	lengths = slices.Compact(lengths)
	if len(lengths) == 0 || len(e.stock.heads)+len(e.stock.tails) > 0 {
		return 0 // a damaged board may be cut to any length
	}
	longest := lengths[len(lengths)-1]
	next := make([]tape.Length, longest+1)
	for k := len(runs) - 1; k >= 0; k-- {
		if next = (link{chain: c, shop: e.shop, r: runs[k], lengths: lengths, dense: allPlaces, next: next}).costs(longest); next == nil {
			return 0 // dense: whole boards can come to anything
		}
	}
	if next[0] >= tape.Longest/2 {
		return 0 // no way to cut at far ends alone
	}
	return next[0]
}
