package rack

import (
	"context"
	"math/rand/v2"
	"slices"

	"strake/stock"
	"strake/tape"
)

// engine fills runs from a pile.
type engine struct {
	shop
	ctx       context.Context
	unit      tape.Length
	rng       *rand.Rand
	work      int
	budget    int
	polishing int
	plain     bool
	share     shares
	kinds     kinds
	t         paths
	hand      stock.Hand
	asked     map[string][]tape.Length // boards that rows are pinned to, by name
	pinned    map[int][]item           // the same once reserved, by run
	atHand    int                      // boards known at a time; 0: all
	// What the length of a board may be off, as a standard deviation in ticks.
	lengthError float64
	marks       []stock.Marks // by board; nil: none has any
	full        []tape.Length // of each board, damaged ends and all
	fresh       []item        // what of each board can be laid, by board
	lots        map[[2]string]int
	alongside   []beside // pieces in the rows beside the run at hand
	mixes       bool     // boards are told apart by carton or shade, and are to be mixed
	shadesApart bool
	shadeAt     []string // whose part of the floor each run lies in
	shadeHere   string
	untrusted   bool                         // every run ends in a cut
	doubts      map[tape.Length]stock.Boards // of several widths, what is known of each by its row width
	meanBoard   tape.Length                  // of the stock
	progress    func(Progress)
	laid        map[int][]tape.Length // joints of the runs that lie already
	stock       pile                  // all boards, before the first run
	left        pile                  // what the last racking left
	pattern     *pattern              // of a fixed shift; nil: joints fall as they may
}

// effort is how hard one attempt at a run tries.
type effort struct {
	pool     int  // boards tried
	shuffles int  // orders of them
	precut   bool // boards may be cut to start a run
	nodes    int  // steps of a dive
}

// ladder is what is tried in turn until a run is filled.
var ladder = []effort{{64, 2, false, 300}, {128, 8, false, 300}, {128, 4, true, 100}, {1 << 20, 8, true, 100}}

// light is tried first in one lay of very many.
var light = effort{32, 1, false, 100}

// relaxed are the parts of the joint distance held to, in turn, when the stock
// makes the whole impossible.
var relaxed = []tape.Length{4, 3, 2, 1, 0} // sixths and so on of what is asked, of relaxedOf
const relaxedOf = 5

// fill fills one run: the pieces from near to far, and the joint distance held
// to. ok is false when the pile cannot.
func (e *engine) fill(r run, p pile, b behind) (out []placed, least tape.Length, ok bool) {
	steps := ladder
	if e.plain {
		steps = append([]effort{light}, ladder...)
	}
	for _, f := range steps {
		f.shuffles *= e.insistence()
		if out, ok = e.attempt(r, p, b, e.jointMin, f); ok {
			return out, e.jointMin, true
		}
	}
	if len(b.one) == 0 {
		return nil, 0, false
	}
	for _, k := range relaxed {
		least = e.jointMin * k / relaxedOf
		if out, ok = e.attempt(r, p, b, least, ladder[len(ladder)-1]); ok {
			out, least = e.leastRelaxed(r, p, b, out, least)
			return out, e.kept(out, least, b), true
		}
	}
	return nil, 0, false
}

// kept is the joint distance that a filling keeps, which may be more than the
// one it was held to.
func (e *engine) kept(ps []placed, held tape.Length, b behind) tape.Length {
	d := e.jointMin
	for _, q := range ps[1:] {
		d = min(d, nearest(b.one, q.start))
	}
	return max(held, d)
}

// leastRelaxed looks for a filling that keeps a joint distance between the one
// found to do and the next step up, which did not.
func (e *engine) leastRelaxed(r run, p pile, b behind, out []placed, does tape.Length) ([]placed, tape.Length) {
	not := does + e.jointMin/relaxedOf
	for not-does > e.jointMin/(8*relaxedOf) && !e.spent() {
		mid := (does + not) / 2
		if found, ok := e.attempt(r, p, b, mid, ladder[0]); ok {
			out, does = found, mid
		} else {
			not = mid
		}
	}
	return out, does
}

// insistence is how many times as many orders are tried where a run has to be
// filled from the few boards at hand and is not opened again.
func (e *engine) insistence() int {
	switch {
	case e.atHand == 0:
		return 1
	case e.polishing == 0:
		return 4
	}
	return 8
}

// attempt is the cheapest filling that one effort finds: by diving, and by a
// path over all places where the dive found a flaw or nothing.
func (e *engine) attempt(r run, p pile, b behind, least tape.Length, f effort) ([]placed, bool) {
	var best []placed
	cost := impossible
	take := func(out []placed, c int64) {
		if c < cost {
			best, cost = out, c
		}
	}
	seen := map[tape.Length][]int64{}
	e.lying = len(p.heads) + len(p.tails)
	for range f.shuffles {
		lowest := impossible
		items := e.pool(p.boards, max(f.pool, e.wanted(r)))
		for _, ps := range e.passes(r, p, items, b, least, f.precut) {
			if e.spent() {
				return best, best != nil
			}
			ps.seen = seen
			list := slices.DeleteFunc(slices.Concat(items, p.tails), ps.uses)
			out, c, bound := ps.dived(slices.Clone(list), &e.t, f.nodes, cost, e.rng)
			take(out, c)
			lowest = min(lowest, bound)
			if cost < bound+costStair || out != nil && c < impossible {
				continue // no filling that counts as better
			}
			if out, c, ok := ps.search(list, &e.t); ok {
				take(out, c)
			}
		}
		if out, c, ok := e.single(r, p, items); ok {
			take(out, c)
		}
		if e.plain && best != nil {
			break
		}
		if cost < costStair || len(items) == len(p.boards) && cost < lowest+costStair {
			break // flawless, or no order of these boards is better
		}
	}
	if best == nil {
		return nil, false
	}
	return e.slid(best, r, b, least), true
}

// spent tells whether the budget of work units is used up or the caller has
// given up.
func (e *engine) spent() bool { return e.work > e.budget || e.ctx.Err() != nil }

// pool is up to n of the boards, shuffled.
func (e *engine) pool(boards []item, n int) []item {
	out := slices.Clone(boards)
	e.rng.Shuffle(len(out), func(i, j int) { out[i], out[j] = out[j], out[i] })
	return out[:min(n, len(out))]
}

// wanted is how many boards a run wants to be chosen from: four times as many
// as it takes (measured: with fewer there is not always a flawless filling).
func (e *engine) wanted(r run) int {
	if e.share.mean == 0 {
		return 0
	}
	return 4 * int(r.length()/e.share.mean)
}

// uses tells whether a first piece of the pass is cut from this item.
func (p *pass) uses(t item) bool {
	return slices.ContainsFunc(p.firsts, func(f first) bool {
		return f.piece != nil && f.piece.board == t.board && t.from <= f.piece.from && f.piece.to <= t.to
	})
}

// passes are the searches of one run: from whole boards and offcuts on the
// unit, from each offcut off it, and from boards cut to start the run.
func (e *engine) passes(r run, p pile, items []item, b behind, least tape.Length, precut bool) []pass {
	on := e.pass(r, r.nearReach, b, least)
	var out []pass
	slack := r.startMost - r.nearReach
	if !r.nearCut {
		for k := (r.startLeast - r.nearReach + e.unit - 1) / e.unit; k*e.unit <= slack; k++ {
			on.firsts = append(on.firsts, first{at: int(k), cost: int64(k)})
		}
	}
	for _, h := range p.heads {
		if f, ok := e.onUnit(r, h, slack); ok {
			on.firsts = append(on.firsts, e.shifted(r, f, slack)...)
		} else if f, base, ok := e.offUnit(r, h); ok {
			off := e.pass(r, base, b, least)
			off.firsts = []first{f}
			out = append(out, off)
		}
	}
	out = append(out, on)
	if r.nearCut || precut {
		out = append(out, e.precuts(r, p, items, b, least)...)
	}
	return out
}

func (e *engine) pass(r run, base tape.Length, b behind, least tape.Length) pass {
	var mixed func(item, tape.Length, int) int64
	if e.mixes {
		mixed = func(t item, at tape.Length, before int) int64 { return e.mixPrice(t, r, at, before) }
	}
	return pass{mixed: mixed, shop: e.shop, r: r, base: base, unit: e.unit, least: least, behind: b,
		even: func(t item) int64 { return e.share.price(t, r.start) + e.markPrice(t, r) }, work: &e.work}
}

// onUnit starts the run with an offcut whose far end falls on the unit: by its
// length and the play at the near end, or, where that end is cut anyway, by a
// cut.
func (e *engine) onUnit(r run, h item, slack tape.Length) (first, bool) {
	if r.nearCut {
		k := (h.length() - e.loss(r.nearMitre)) / e.unit
		return e.cutFirst(r, h, k*e.unit, e.begun(h.length()))
	}
	over := (e.unit - h.length()%e.unit) % e.unit
	for over < r.startLeast-r.nearReach {
		over += e.unit
	}
	if over > slack || h.length() < e.shortest {
		return first{}, false
	}
	start := r.nearReach + over
	return first{at: int((h.length() + over) / e.unit), cost: e.begun(h.length()),
		piece: &placed{item: h, start: start, end: start + h.length()}}, true
}

// shifted are the ways to begin with the same piece as far from the wall as the
// play allows, each a unit farther.
func (e *engine) shifted(r run, f first, slack tape.Length) []first {
	out := []first{f}
	if r.nearCut {
		return out
	}
	for k := tape.Length(1); f.piece.start-r.nearReach+k*e.unit <= slack; k++ {
		piece := *f.piece
		piece.start += k * e.unit
		piece.end += k * e.unit
		out = append(out, first{at: f.at + int(k), cost: f.cost + int64(k), piece: &piece})
	}
	return out
}

// offUnit starts the run with an offcut as it is; the whole pass then counts
// its units from there.
func (e *engine) offUnit(r run, h item) (first, tape.Length, bool) {
	if r.nearCut || h.length() < e.shortest {
		return first{}, 0, false
	}
	base := r.startLeast + h.length()%e.unit
	return first{at: int(h.length() / e.unit), cost: e.begun(h.length()),
		piece: &placed{item: h, start: r.startLeast, end: r.startLeast + h.length()}}, base, true
}

// cutFirst starts the run with the far part of an item, cut to this length.
func (e *engine) cutFirst(r run, h item, length tape.Length, bonus int64) (first, bool) {
	if length < e.shortest || length > h.length()-e.blade {
		return first{}, false
	}
	lost := h.length() - length
	keep := int64(0)
	if loss := e.loss(r.nearMitre); h.groove && lost-loss >= e.shortest {
		keep = e.keep(lost - loss)
		lost = loss
	}
	part := h
	part.from, part.groove, part.rough = h.to-length, false, false
	return first{at: int(length / e.unit), cost: bonus + keep + e.waste(crosscut+lost),
		piece: &placed{item: part, start: r.startLeast, end: r.startLeast + length, nearCut: true, nearMitre: r.nearMitre}}, true
}

// precutSources is how many items are tried as the source of a cut first piece.
const precutSources = 6

// precuts are passes that start with a piece cut from a board or an offcut, of
// any length on a grid of an inch.
func (e *engine) precuts(r run, p pile, items []item, b behind, least tape.Length) []pass {
	var sources []item
	for _, t := range slices.Concat(p.heads, items) {
		if len(sources) < precutSources && !slices.ContainsFunc(sources, func(s item) bool { return s.length() == t.length() && s.groove == t.groove }) {
			sources = append(sources, t)
		}
	}
	step := max(e.unit, tape.Inch/e.unit*e.unit)
	var out []pass
	for _, t := range sources {
		ps := e.pass(r, r.startLeast, b, least)
		longest := min((t.length()-e.loss(r.nearMitre))/e.unit*e.unit, (r.length()+e.unit)/e.unit*e.unit)
		for l := longest; l >= e.shortest; l -= step {
			if f, ok := e.cutFirst(r, t, l, 0); ok {
				ps.firsts = append(ps.firsts, f)
			}
		}
		if len(ps.firsts) > 0 {
			out = append(out, ps)
		}
	}
	return out
}

// single fills a run with one piece cut from any item that is long enough: the
// shortest that will do.
func (e *engine) single(r run, p pile, items []item) (out []placed, cost int64, ok bool) {
	if len(r.must) > 0 {
		return nil, 0, false
	}
	cost = impossible
	length := r.length()
	for _, t := range slices.Concat(p.tails, p.heads, items) {
		near := tape.Length(0) // what a near cut takes
		if r.nearCut {
			near = e.loss(r.nearMitre)
		}
		exact := t.length() == length+near && !t.tongue && !r.farCut && r.spare == 0
		if t.length() < length+near || !exact && t.length() < length+near+r.over() || length < e.shortest && !e.exempt(r) {
			continue
		}
		piece := placed{item: item{board: t.board, from: t.from + near, to: t.from + near + length, groove: t.groove && near == 0, sawn: t.sawn, rough: t.rough && !t.groove && near == 0},
			start: r.nearReach, end: r.farReach, nearCut: near > 0, nearMitre: r.nearMitre, farCut: true, farMitre: r.farMitre}
		piece.farCut = !exact
		lost, extra := t.length()-length, int64(0)
		if t.tongue && t.length()-near-length-e.loss(r.farMitre) >= e.shortest {
			left := t.length() - near - length - e.loss(r.farMitre)
			lost = near + e.loss(r.farMitre)
			extra = e.keep(left)
		}
		if c := e.waste(crosscut+lost) + extra; c < cost {
			out, cost, ok = []placed{piece}, c, true
		}
	}
	return
}

// exempt tells whether a run is too short for the shortest piece.
func (e *engine) exempt(r run) bool { return r.length() < e.shortest }
