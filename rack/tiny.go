package rack

import (
	"fmt"
	"slices"

	"strake/tape"
)

// A floor of a few runs and boards is tried in every way before it is refused.
const (
	tinyRuns   = 4
	tinyBoards = 8
	tinyWork   = 3_000_000 // steps of the search
)

// tiny looks for any filling of all runs: which boards, and where the first
// and last of a run are cut. Looks do not count here. Where all lengths of the
// floor are whole numbers of a coarse step, every cut length on that step is
// tried, which is complete; else those that can matter: as long or as short as
// may be, or leaving just what a run and some of the boards need.
type tiny struct {
	*engine
	runs   []run
	wants  []tape.Length // lengths of leftovers that could complete a run
	plan   [][]placed
	steps  int
	failed map[string]bool // piles that cannot fill the runs from one on
}

// everyWay fills all runs if that can be done at all.
func (e *engine) everyWay(runs []run) ([]filled, bool) {
	if len(e.laid) > 0 || e.kinds.of != nil || len(runs) > tinyRuns || len(e.stock.boards) > tinyBoards {
		return nil, false
	}
	d := &tiny{engine: e, runs: runs, plan: make([][]placed, len(runs)), failed: map[string]bool{}}
	d.wants = d.leftovers()
	if !d.run(0, e.stock.clone()) {
		return nil, false
	}
	out := make([]filled, len(runs))
	for i, r := range runs {
		out[i] = filled{run: r, pieces: d.plan[i], ok: true}
	}
	return out, true
}

// coarsest is the smallest common step at which every cut length is tried.
const coarsest = tape.Inch / 4

// leftovers are the lengths of leftovers that are aimed for.
func (d *tiny) leftovers() []tape.Length {
	all := []tape.Length{d.blade, d.shortest}
	var longest tape.Length
	for _, b := range d.stock.boards {
		all, longest = append(all, b.length()), max(longest, b.length())
	}
	for _, r := range d.runs {
		all = append(all, r.length().Abs(), (r.nearNeed - r.nearReach).Abs(), (r.farReach - r.farNeed).Abs())
	}
	step := gcd(all)
	if step < coarsest {
		return d.completing()
	}
	var out []tape.Length
	for l := (d.shortest + step - 1) / step * step; l <= longest; l += step {
		out = append(out, l)
	}
	return out
}

// completing are the lengths that complete a run with some of the boards,
// alone or with a piece of the shortest length beside them.
func (d *tiny) completing() []tape.Length {
	sums := []tape.Length{0}
	for _, b := range d.stock.boards {
		for _, s := range slices.Clone(sums) {
			sums = append(sums, s+b.length())
		}
	}
	out := []tape.Length{d.shortest}
	for _, r := range d.runs {
		for _, s := range sums {
			for _, l := range []tape.Length{r.length() - s, r.farNeed - r.nearNeed - s} {
				for _, x := range []tape.Length{l, l - d.shortest} {
					if x >= d.shortest {
						out = append(out, x)
					}
				}
			}
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// enough tells whether a pile is long enough for the runs from i on.
func (d *tiny) enough(i int, p pile) bool {
	var have, need tape.Length
	for _, t := range slices.Concat(p.boards, p.heads, p.tails) {
		have += t.length()
	}
	for _, r := range d.runs[i:] {
		need += max(0, r.farNeed-r.nearNeed)
	}
	return have >= need
}

func (d *tiny) spent() bool {
	d.steps++
	return d.steps > tinyWork
}

// run fills run i and all after it from the pile.
func (d *tiny) run(i int, p pile) bool {
	if i == len(d.runs) {
		return true
	}
	if !d.enough(i, p) || d.failed[p.key(i)] {
		return false
	}
	r := d.runs[i]
	done := func(ps []placed) bool {
		if d.spent() || !d.joinsAtStays(r, ps) {
			return false
		}
		q := p.clone()
		q.use(ps, d.shop)
		d.plan[i] = slices.Clone(ps)
		return d.run(i+1, q)
	}
	if d.alone(r, p, done) || d.begun(r, p, done) {
		return true
	}
	d.failed[p.key(i)] = true
	return false
}

// key names a pile by the lengths and ends in it, whatever their order.
func (p pile) key(run int) string {
	var ks []string
	for _, t := range slices.Concat(p.boards, p.heads, p.tails) {
		ks = append(ks, fmt.Sprint(t.length(), t.groove, t.tongue))
	}
	slices.Sort(ks)
	return fmt.Sprint(run, ks)
}

// joinsAtStays tells whether joints fall where something that stays asks for
// one, and none where it forbids them.
func (d *tiny) joinsAtStays(r run, ps []placed) bool {
	for _, q := range ps {
		for _, s := range r.must {
			if q.start < s.from && q.end > s.to {
				return false
			}
		}
		for _, s := range r.never {
			if q.end < r.farNeed && s.from < q.end && q.end < s.to {
				return false
			}
		}
	}
	return true
}

// alone tries one piece for the whole run, from every item.
func (d *tiny) alone(r run, p pile, done func([]placed) bool) bool {
	for _, t := range slices.Concat(p.tails, p.heads, p.boards) {
		for _, v := range []run{r, d.least(r)} {
			if ps, _, ok := d.single(v, pile{}, []item{t}); ok && done(ps) {
				return true
			}
			if ps, ok := d.fromFarEnd(v, t); ok && done(ps) {
				return true
			}
			for _, w := range d.wants { // out of the middle, leaving this before it
				m := t
				m.to = t.from + w + d.loss(r.nearMitre) + v.length() + d.loss(r.farMitre)
				if m.to >= t.to {
					break
				}
				if ps, ok := d.fromMiddle(v, m); ok && done(ps) {
					return true
				}
			}
		}
		if l := t.length(); t.tongue && !r.nearCut && !r.farCut && l >= r.farNeed-r.nearNeed && l <= r.length() && l >= d.shortest {
			if done(d.settle(r, []placed{{item: t}})) {
				return true
			}
		}
	}
	return false
}

// least is the run with its play used up, as far as the shortest piece lets it.
func (d *tiny) least(r run) run {
	if r.length() < d.shortest {
		return r
	}
	l := max(r.farNeed-r.nearNeed, d.shortest)
	r.nearReach = min(r.nearNeed, r.farReach-l)
	r.farReach = r.nearReach + l
	r.exact()
	return r
}

// fromFarEnd is a run of one piece cut as far along an item as can be, so that
// what is left of it is near its groove end.
func (d *tiny) fromFarEnd(r run, t item) ([]placed, bool) {
	to := t.to
	if r.farCut {
		to -= d.loss(r.farMitre)
	}
	from := to - r.length()
	if from-t.from < d.loss(r.nearMitre) || r.length() < d.shortest && !d.exempt(r) || len(r.must) > 0 {
		return nil, false
	}
	whole := t.tongue && !r.farCut
	return []placed{{item: item{board: t.board, from: from, to: to, tongue: whole}, start: r.nearReach, end: r.farReach,
		nearCut: true, nearMitre: r.nearMitre, farCut: r.farCut, farMitre: r.farMitre, tongueOff: whole}}, true
}

// fromMiddle is a run of one piece cut at both ends, with its far cut at the
// end of the stretch.
func (d *tiny) fromMiddle(r run, t item) ([]placed, bool) {
	v := r
	v.farCut = true
	return d.fromFarEnd(v, t)
}

// begun tries every first piece of more than one.
func (d *tiny) begun(r run, p pile, done func([]placed) bool) bool {
	for _, t := range slices.Concat(p.heads, p.boards) {
		rest := p.clone()
		rest.take(t)
		if !r.nearCut && t.length() >= d.shortest && d.more(r, rest, []placed{{item: t}}, t.length(), 0, done) {
			return true
		}
		for _, l := range d.firstCuts(r, t) {
			part := t
			part.from, part.groove = t.to-l, false
			first := placed{item: part, nearCut: true, nearMitre: r.nearMitre}
			left := rest.clone() // what is cut off may end the same run
			left.keep(item{board: t.board, from: t.from, to: part.from - d.loss(r.nearMitre), groove: t.groove}, d.shop)
			if d.more(r, left, []placed{first}, l, 0, done) {
				return true
			}
		}
	}
	return false
}

// firstCuts are the lengths worth cutting a first piece to.
func (d *tiny) firstCuts(r run, t item) []tape.Length {
	most := t.length() - d.loss(r.nearMitre)
	var out []tape.Length
	add := func(l tape.Length) {
		if d.shortest <= l && l <= most && l < r.length() {
			out = append(out, l)
		}
	}
	add(d.shortest)
	add(most)
	for _, w := range d.wants {
		add(w)
		add(most - w)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// more adds whole boards from index from on, or ends the run.
func (d *tiny) more(r run, p pile, ps []placed, sum tape.Length, from int, done func([]placed) bool) bool {
	if d.spent() || sum >= r.length() {
		return false
	}
	for _, t := range slices.Concat(p.tails, p.boards) {
		if t.groove && d.ended(r, ps, sum, t, done) {
			return true
		}
	}
	for k := from; k < len(p.boards); k++ {
		t := p.boards[k]
		rest := p.clone()
		rest.boards = slices.Delete(rest.boards, k, k+1)
		if d.more(r, rest, append(slices.Clone(ps), placed{item: t}), sum+t.length(), k, done) {
			return true
		}
	}
	return false
}

// ended tries an item as the last piece: whole, or cut to the longest or the
// shortest that closes the run, or to leave a length that is wanted.
func (d *tiny) ended(r run, ps []placed, sum tape.Length, t item, done func([]placed) bool) bool {
	least, most := max(d.shortest, r.farNeed-r.nearNeed-sum), r.length()-sum
	if l := t.length(); !r.farCut && l >= least && l <= most && done(d.settle(r, append(slices.Clone(ps), placed{item: t}))) {
		return true
	}
	tries := []tape.Length{most, least}
	for _, w := range d.wants {
		tries = append(tries, t.length()-d.loss(r.farMitre)-w)
	}
	for i, l := range tries {
		if l < least || l > most || l >= t.length() || i > 0 && l == most {
			continue
		}
		last := placed{item: item{board: t.board, from: t.from, to: t.from + l, groove: t.groove}, farCut: true, farMitre: r.farMitre}
		if done(d.settle(r, append(slices.Clone(ps), last))) {
			return true
		}
	}
	return false
}

// settle puts pieces in a row in their places: from the near reach, or, when
// that is too short at the far end, as much farther on as it takes.
func (d *tiny) settle(r run, ps []placed) []placed {
	var sum tape.Length
	for _, p := range ps {
		sum += p.length()
	}
	at := min(r.nearNeed, max(r.nearReach, r.farNeed-sum))
	for i := range ps {
		ps[i].start, ps[i].end = at, at+ps[i].length()
		at = ps[i].end
	}
	last := &ps[len(ps)-1]
	last.tongueOff = last.tongue && last.end > r.farReach-d.tongue
	return ps
}
