package main

import (
	"context"
	"fmt"
	"io"
	"regexp"
	"time"

	"strake/lay"
	"strake/rack"
	"strake/tape"
)

// result is what a case came to.
type result struct {
	bout
	mean   quality
	layer  quality
	seeds  int
	far    int
	heap   float64
	boards int
}

// rackTable measures every case and writes the table.
func rackTable(out io.Writer, seeds int, only *regexp.Regexp) error {
	var rs []result
	for _, b := range bouts() {
		if only.MatchString(b.name) {
			rs = append(rs, b.run(seeds))
		}
	}
	stress := anew(seeds, only) + stressed(only)
	_, err := io.WriteString(out, page(rs, stress))
	return err
}

func (b bout) run(seeds int) result {
	if b.seeds > 0 {
		seeds = min(seeds, b.seeds)
	}
	r := result{bout: b, seeds: seeds}
	var qs, ls []quality
	for s := range seeds {
		boards := b.place.stock(b.mix, uint64(s))
		r.boards = len(boards)
		qs = append(qs, b.once(boards, uint64(s)))
		if b.layer {
			ls = append(ls, careful(b.place, boards))
		}
	}
	r.mean, r.layer, r.far = mean(qs), mean(ls), far(qs)
	boards := b.place.stock(b.mix, 0)
	r.heap = peakHeap(func() { b.once(boards, 0) })
	return r
}

// once racks one floor: the first answer for its time, then the bettered one.
func (b bout) once(boards []tape.Length, seed uint64) quality {
	a := b.place.ask(boards, seed)
	l, first := timed(a)
	all := first
	if a.Polishing = b.polishing(); a.Polishing > 0 {
		l, all = timed(a)
	}
	q := judge(l, b.place.need())
	q.firstTime, q.time = first, all
	return q
}

// timed racks and tells the seconds.
func timed(a rack.Ask) (lay.Lay, float64) {
	t := time.Now()
	l := rack.Lay(context.Background(), a)
	return l, time.Since(t).Seconds()
}

// measured is the figure that a target is about.
func (r result) measured(what string) float64 {
	share := func(a, b float64) float64 {
		if b == 0 {
			return 0
		}
		return 100 * a / b
	}
	switch what {
	case "waste %":
		return r.mean.waste
	case "crosscuts":
		return r.mean.cuts
	case "H-joints":
		return r.mean.h
	case "stairs":
		return r.mean.stairs
	case "under 10 in %":
		return r.mean.near
	case "seeds under 10 in":
		return float64(r.seeds - r.far)
	case "first ms":
		return r.mean.firstTime * 1000
	case "ms":
		return r.mean.time * 1000
	case "MB":
		return r.heap
	case "waste of the layer's %":
		return share(r.mean.waste, r.layer.waste)
	case "H of the layer's %":
		return share(r.mean.h, r.layer.h)
	case "under 10 in of the layer's %":
		return share(r.mean.near, r.layer.near)
	}
	panic(fmt.Sprintf("no figure %q", what))
}
