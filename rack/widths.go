package rack

import (
	"slices"

	"strake/finding"
	"strake/row"
	"strake/stock"
	"strake/tape"
)

// Boards of several face widths: each run takes boards of its own width alone,
// whole or cut. Joints keep their distance whatever the widths of the rows; how
// even lengths are, and what an offcut will be worth, is counted among the
// boards and the runs of one width.

// kinds is what is kept apart by width; nothing where all boards are alike.
type kinds struct {
	of     []tape.Length // row width of each board
	chains map[tape.Length]*chain
	shares map[tape.Length]shares
	after  []int // of each run, how many after it are as wide
}

// supply is the boards to rack with, and their row widths where there are
// several.
func supply(a Ask) (ls, widths []tape.Length, fs []finding.Finding) {
	if len(a.Boards.Widths) == 0 {
		ls, fs = lengths(a)
		return ls, nil, fs
	}
	for i, b := range a.Boards.Each() {
		one := a
		one.Boards, one.Fields, one.Seed = b, ofWidth(a.Fields, b.Pitch()), a.Seed+uint64(i)
		if need(one) == 0 && b.Known != stock.Tallied {
			continue // of boards to be had as wanted, none are wanted
		}
		more, _ := lengths(one)
		ls = append(ls, more...)
		for range more {
			widths = append(widths, b.Pitch())
		}
	}
	ls, fs = coarse(ls)
	return ls, widths, fs
}

// ofWidth are fields with their runs of one width alone.
func ofWidth(fields []row.Field, width tape.Length) []row.Field {
	out := slices.Clone(fields)
	for i := range out {
		out[i].Layout.Runs = slices.DeleteFunc(slices.Clone(out[i].Layout.Runs), func(r row.Run) bool { return r.High-r.Low != width })
	}
	return out
}

// wide is how wide the boards of a run are.
func (r run) wide() tape.Length { return r.High - r.Low }

// fits tells whether an item may lie in a run.
func (k *kinds) fits(t item, r run) bool { return k.of == nil || k.of[t.board] == r.wide() }

// only is the part of a pile that may lie in a run.
func (k *kinds) only(p pile, r run) pile {
	if k.of == nil {
		return p
	}
	other := func(t item) bool { return !k.fits(t, r) }
	p = p.clone()
	return pile{slices.DeleteFunc(p.boards, other), slices.DeleteFunc(p.heads, other), slices.DeleteFunc(p.tails, other)}
}

// begin sets up what is counted apart, for the runs and the boards of a racking.
func (e *engine) begin(runs []run, p pile) {
	if e.kinds.of == nil {
		e.share = newShares(p.boards)
		if !e.plain {
			e.chain = newChain(runs, p.boards, e.shop, e.unit)
		}
		return
	}
	k := &e.kinds
	k.chains, k.shares, k.after = map[tape.Length]*chain{}, map[tape.Length]shares{}, make([]int, len(runs))
	byWidth := map[tape.Length][]run{}
	for i := len(runs) - 1; i >= 0; i-- {
		w := runs[i].wide()
		k.after[i] = len(byWidth[w])
		byWidth[w] = append(byWidth[w], runs[i])
	}
	for w, same := range byWidth {
		slices.Reverse(same)
		mine := k.only(p, same[0])
		k.shares[w] = newShares(mine.boards)
		k.chains[w] = newChain(same, mine.boards, e.shop, e.unit)
	}
}

// turnTo makes ready for a run with so many to be laid after it.
func (e *engine) turnTo(r run, ahead int) {
	e.ahead = ahead
	if e.kinds.of == nil {
		return
	}
	w := r.wide()
	e.share, e.chain = e.kinds.shares[w], e.kinds.chains[w]
	if r.index < len(e.kinds.after) {
		e.ahead = min(ahead, e.kinds.after[r.index])
	}
}

// widths are those of some runs, each once, the narrowest first; where all
// boards are alike it is one.
func (k *kinds) widths(fs []filled) []tape.Length {
	if k.of == nil {
		return []tape.Length{0}
	}
	var out []tape.Length
	for _, f := range fs {
		out = append(out, f.wide())
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// ofRuns are the runs of a width, and the pile for them; all where all boards
// are alike.
func (k *kinds) ofRuns(fs []filled, p pile, width tape.Length) ([]filled, pile) {
	if k.of == nil {
		return fs, p
	}
	var out []filled
	for _, f := range fs {
		if f.wide() == width {
			out = append(out, f)
		}
	}
	return out, k.only(p, out[0].run)
}

// byWidth are runs parted by width, the narrowest first; together where all
// boards are alike.
func (k *kinds) byWidth(runs []run) [][]run {
	if len(runs) == 0 {
		return nil
	}
	if k.of == nil {
		return [][]run{runs}
	}
	var widths []tape.Length
	of := map[tape.Length][]run{}
	for _, r := range runs {
		if of[r.wide()] == nil {
			widths = append(widths, r.wide())
		}
		of[r.wide()] = append(of[r.wide()], r)
	}
	slices.Sort(widths)
	var out [][]run
	for _, w := range widths {
		out = append(out, of[w])
	}
	return out
}
