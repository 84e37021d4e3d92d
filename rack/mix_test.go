package rack

import (
	"slices"
	"strconv"
	"testing"

	"strake/stock"
	"strake/tape"
)

// lotted is the bench room with boards from cartons of two dozen, three in ten
// of them dark.
func lotted(seed uint64, apart bool) (*engine, []run) {
	e := benchEngine(seed, 1.06, 1.6, 2.2, 12, 84)
	e.shadesApart = apart
	ls := make([]tape.Length, 0, len(e.stock.boards))
	for i, b := range e.stock.boards {
		ls = append(ls, b.length())
		m := stock.Marks{Carton: strconv.Itoa(i / 24)}
		if i*7%10 < 3 {
			m.Shade = "dark"
		}
		e.marks = append(e.marks, m)
	}
	e.stock.boards = nil
	e.delivered(ls)
	e.mixes = e.mixable()
	return e, benchRuns(inch/4, inch/4)
}

// neighbours counts those that share a carton or a dark shade, told from places
// alone.
func neighbours(e *engine, fs []filled) (same, all int) {
	count := func(a, b placed) {
		p, q := e.marks[a.board], e.marks[b.board]
		all++
		if p.Carton == q.Carton {
			same++
		}
		if p.Shade != "" && p.Shade == q.Shade {
			same++
		}
	}
	for i, f := range fs {
		for k, q := range f.pieces {
			if k > 0 {
				count(f.pieces[k-1], q)
			}
			if i == 0 {
				continue
			}
			for _, p := range fs[i-1].pieces {
				if p.start < q.end && q.start < p.end {
					count(p, q)
				}
			}
		}
	}
	return same, all
}

// Cartons and shades are mixed: neighbours that share one are much fewer than
// among boards laid without a look at them, and nothing else is worse.
func TestCartonsAreMixed(t *testing.T) {
	mixed, blind, all := 0, 0, 0
	for seed := range uint64(3) {
		for _, look := range []bool{true, false} {
			e, runs := lotted(seed, false)
			e.mixes = look
			fs := e.fillAll(runs)
			if cuts, _ := e.wood(fs); unfilled(fs) > 0 || cuts > 0 {
				t.Errorf("seed %d, mixed %v: %d runs not filled, %d crosscuts", seed, look, unfilled(fs), cuts)
			}
			same, n := neighbours(e, fs)
			if look {
				mixed, all = mixed+same, all+n
			} else {
				blind += same
			}
		}
	}
	t.Logf("%d of %d neighbours alike, %d without a look at them", mixed, all, blind)
	if mixed*10 > blind*7 {
		t.Errorf("%d neighbours alike, %d without a look at them", mixed, blind)
	}
}

// Shades kept apart lie in parts of the floor: the rows of one shade lie
// together, but for a few about the line between.
func TestShadesLieApart(t *testing.T) {
	e, runs := lotted(1, true)
	fs := e.fillAll(runs)
	var dark []float64
	for _, f := range fs {
		n := 0
		for _, q := range f.pieces {
			if e.marks[q.board].Shade == "dark" {
				n++
			}
		}
		dark = append(dark, float64(n)/float64(len(f.pieces)))
	}
	pure := 0
	for _, d := range dark {
		if d < 0.2 || d > 0.8 {
			pure++
		}
	}
	if pure*10 < len(fs)*8 || slices.Max(dark) < 0.8 {
		t.Errorf("%d of %d rows of one shade: %.1f", pure, len(fs), dark)
	}
}
