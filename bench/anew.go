package main

import (
	"context"
	"fmt"
	"regexp"
	"time"

	"strake/lay"
	"strake/rack"
	"strake/stock"
)

const anewHead = `
## Planned anew

The bench room, mixed, all tallied: a board of row 21 splits, the 20 rows behind
it lie as planned, and the rest is planned anew. Target: under 100 ms.

| range | runs | crosscuts | joints under 10 in from the last row laid | mean time | |
|---|---|---|---|---|---|
`

// anew is how long it takes to plan the rest of a floor after a board split.
func anew(seeds int, only *regexp.Regexp) string {
	if !only.MatchString("planned anew") {
		return ""
	}
	s := anewHead
	for _, c := range []struct {
		name  string
		place place
	}{{"3/4 to 1 in", withPlay(benchRoom)}, {"3/8 in", noPlay(benchRoom)}} {
		var ms, cuts, near, runs float64
		for seed := range uint64(seeds) {
			a := c.place.ask(c.place.stock(mixed, seed), seed)
			l := rack.Lay(context.Background(), a)
			laid, rest := split(l, a)
			t := time.Now()
			next := rack.Next(context.Background(), rest, laid, len(l.Runs))
			ms += time.Since(t).Seconds() * 1000 / float64(seeds)
			for i, p := range next {
				runs++
				for k, q := range p.Pieces {
					if q.CutRight {
						cuts++
					}
					if i == 0 && k > 0 && nearest(laid[len(laid)-1].Joints, q.Start) < nearReach {
						near++
					}
				}
			}
		}
		n := float64(seeds)
		s += fmt.Sprintf("| %s | %.0f | %.2f | %.2f | %.0f ms | %s |\n", c.name, runs/n, cuts/n, near/n, ms, verdict(ms, 100))
	}
	return s
}

// split is half of a lay as laid, and what is asked for the rest: the boards
// of the tally that are not laid, less the first of the next row.
func split(l lay.Lay, a rack.Ask) ([]rack.Laid, rack.Ask) {
	var laid []rack.Laid
	gone := map[int]bool{}
	for i, r := range l.Runs[:len(l.Runs)/2] {
		laid = append(laid, rack.Laid{Run: i, Joints: jointsOf(l, r)})
		for _, p := range r.Pieces {
			gone[l.Pieces[p].Board] = true
		}
	}
	gone[l.Pieces[l.Runs[len(l.Runs)/2].Pieces[0]].Board] = true
	a.Boards.Tally = append([]stock.Class(nil), l.Spare...)
	for _, b := range l.Boards {
		if !gone[b.ID] {
			a.Boards.Tally = append(a.Boards.Tally, stock.Class{Length: b.Length, Count: 1})
		}
	}
	return laid, a
}
