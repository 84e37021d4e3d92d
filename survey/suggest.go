package survey

import (
	"math"

	"strake/room"
	"strake/tape"
)

// Purpose says why a reading is on the measuring sheet.
type Purpose string

// The purposes of readings.
const (
	Fixes  Purpose = "fixes the shape"
	Ties   Purpose = "ties the rooms together"
	Closes Purpose = "width where rows close"
	Proves Purpose = "check"
)

// Item is one line of a measuring sheet: a reading to take and what it buys.
type Item struct {
	Ask     Ask
	Room    string
	Purpose Purpose
	Doubt   float64 // Fixes: how far in doubt (1 deviation, mm) it was before
	// What the readings up to and with this one leave: readings in which an
	// error would not show, and readings that cannot be told from another.
	Unchecked, Alike int
	Hook             string // the end where the tape is hooked; the other is read
}

// Sheet is what to measure, in the order chosen (what each buys builds on those
// before it); Walk is the order that saves steps: first what fixes the shape
// and ties the rooms, then the rest.
type Sheet struct {
	Items []Item
	Walk  []int   // index into Items
	Steps float64 // how far one walks, alone, in that order, mm
	Unmet string  // why not everything is checked or told apart, "" when it is
}

// Want is what a measuring sheet is for.
type Want struct {
	Rough   []Reading   // guesses of walls, for the rough shape; not readings
	Have    []Reading   // readings taken already
	Closing []room.Wall // walls that rows close at: widths at three stations
	Step    tape.Length // what the tape is read to
	Checks  int         // at most this many checks; 0: as many as it takes; less: none
}

// Suggest is what to measure in a place known roughly: the fewest readings that
// fix the shape, the closing widths, and checks until no reading is unchecked
// and no two tests correlate above Model.Alike, where the shape allows it.
func Suggest(s room.Sketch, w Want, m Model) Sheet {
	rough := append(append([]Reading(nil), w.Rough...), w.Have...)
	r := Adjust(s, rough, m)
	net := r.net.with()
	c := net.check(net.observations(w.Have, m), r.x, m)
	if c.cov == nil {
		return Sheet{Unmet: "the rough shape cannot be drawn"}
	}
	b := &builder{r: r, want: w, model: m}
	cands, past := r.candidates(net, r.x, w.Have, w.Step)
	first := len(cands)
	cands = append(cands, past...)
	all := len(cands)
	cands = append(cands, r.stations(net, w)...)
	b.planner = c.plannerOf(m, cands)
	b.fix(0, first)
	b.fix(first, all)
	b.tie(first)
	b.close(all)
	b.prove(first)
	b.sheet.Walk, b.sheet.Steps = r.walk(net, b.sheet.Items)
	renumber(b.sheet, r.net)
	return b.sheet
}

// builder fills a sheet from a planner.
type builder struct {
	*planner
	r     Result
	want  Want
	model Model
	sheet Sheet
}

// put takes candidate k onto the sheet.
func (b *builder) put(k int, why Purpose, doubt float64) {
	b.take(k)
	a := b.cands[k]
	it := Item{Ask: a.ask, Room: b.r.Built.Rooms[a.room].Name, Purpose: why, Doubt: doubt}
	it.Unchecked, it.Alike = b.state()
	b.sheet.Items = append(b.sheet.Items, it)
}

// state counts the unchecked readings and those that cannot be told from
// another.
func (b *builder) state() (unchecked, same int) {
	for i := range b.rows {
		if smallest(b.sd[i], 1-b.share[i][i]) > b.model.ShowMM {
			unchecked++
		}
		for j := range b.rows {
			if i != j && math.Abs(alike(b.share[i][i], b.share[j][j], b.share[i][j])) > b.model.Alike {
				same++
				break
			}
		}
	}
	return unchecked, same
}

// fix takes walls first, then whatever is most in doubt, until the shape is
// fixed: each one is a reading that those before it do not give. It looks at
// candidates from lo to before hi.
func (b *builder) fix(lo, hi int) {
	for k := lo; k < hi; k++ {
		if b.wall(k) && !b.used[k] {
			if q := b.effect(k).own; q >= vague {
				b.put(k, Fixes, b.cands[k].sd*math.Sqrt(q))
			}
		}
	}
	for {
		k, sd := b.mostInDoubt(lo, hi)
		if k < 0 {
			return
		}
		b.put(k, Fixes, sd)
	}
}

// wall tells whether candidate k is a wall from corner to corner.
func (b *builder) wall(k int) bool {
	a := b.cands[k].ask.Reading
	if a.Kind != Between || !b.plain(k) {
		return false
	}
	_, _, ok := b.r.Built.FindWall(room.Wall{a.From, a.To})
	return ok
}

// tie takes up to two readings through each doorway between rooms, where what
// the doorway's own jambs say of how the rooms lie is much vaguer than a tape.
func (b *builder) tie(first int) {
	for _, d := range b.r.Built.Doorways {
		for range 2 {
			best, worst := -1, float64(worthATie)
			for k := range b.cands[:first] {
				if b.used[k] || b.cands[k].ask.Through != d.Name || d.Name == "" {
					continue
				}
				if q := b.effect(k).own * b.cands[k].ask.ease(); q > worst*(1+1e-9) {
					best, worst = k, q
				}
			}
			if best < 0 {
				break
			}
			b.put(best, Ties, b.cands[best].sd*math.Sqrt(b.effect(best).own))
		}
	}
}

// worthATie is the doubt, in a tape's deviations squared, from which a reading
// through a doorway is asked for.
const worthATie = 2 * 2

// close takes the closing widths.
func (b *builder) close(from int) {
	for k := from; k < len(b.cands); k++ {
		b.put(k, Closes, 0)
	}
}

// prove takes checks while they help; what was tried after the last that did is
// left out again.
func (b *builder) prove(first int) {
	stalled, worth := 0, len(b.sheet.Items)
	for n := 0; ; n++ {
		unchecked, same := b.state()
		switch {
		case unchecked == 0 && same == 0:
			return
		case b.want.Checks != 0 && n >= b.want.Checks:
			b.sheet.Unmet = "fewer checks were asked for"
			return
		}
		k := b.bestCheck(first)
		if k < 0 || stalled > 3 || n > 3*len(b.r.net.index)+6 {
			b.sheet.Unmet = "no reading left in this shape checks or tells apart more"
			b.sheet.Items = b.sheet.Items[:worth]
			return
		}
		b.put(k, Proves, 0)
		if u, a := b.state(); u+a < unchecked+same {
			stalled, worth = 0, len(b.sheet.Items)
		} else {
			stalled++
		}
	}
}

// bestCheck is the candidate that leaves the least to be said against the
// readings; -1 when none is left.
func (b *builder) bestCheck(first int) int {
	best, low := -1, math.Inf(1)
	for k := range b.cands[:first] {
		if b.used[k] {
			continue
		}
		v := b.against(b.effect(k))
		if !b.plain(k) {
			v += 0.3 // a mark or a way through a doorway is more work
		}
		if v < low-1e-9 {
			best, low = k, v
		}
	}
	return best
}

// against weighs what would still be said against the readings once a candidate
// is taken: one for each that is unchecked or cannot be told from another, and
// a part for how far it is from being so.
func (b *builder) against(e effect) float64 {
	n := len(b.rows)
	sum := 0.0
	diag := make([]float64, n+1)
	for i := range diag {
		diag[i] = b.shareAfter(e, i, i)
	}
	sds := append(append([]float64(nil), b.sd...), b.sd[0])
	for i := range diag {
		size := math.Min(10, smallest(sds[i], 1-diag[i])/b.model.ShowMM)
		sum += 0.1 * size
		if size > 1 {
			sum += 1
		}
		high := 0.0
		for j := range diag {
			if i == j {
				continue
			}
			high = math.Max(high, math.Abs(alike(diag[i], diag[j], b.shareAfter(e, i, j))))
		}
		if 1-diag[i] < least {
			high = 1
		}
		sum += 0.5 * high
		if high > b.model.Alike {
			sum += 1
		}
	}
	return sum
}
