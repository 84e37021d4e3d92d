package rack

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"strake/finding"
	"strake/tape"
)

// name is a run as the row list names it: 12a.
func (r run) name() string {
	n := strconv.Itoa(r.Row)
	if r.Part > 0 {
		n += string(rune('a' + (r.Part-1)%26))
	}
	return n
}

// reserve takes the boards that rows are pinned to off a pile; those of a row
// whose boards are not there stay on it, and the row is filled like any other.
func (e *engine) reserve(runs []run, p *pile) {
	e.pinned = map[int][]item{}
	for _, r := range runs {
		want, ok := e.asked[r.name()]
		if !ok || r.alone {
			continue
		}
		was := p.clone()
		var got []item
		for _, l := range want {
			k := slices.IndexFunc(p.boards, func(b item) bool { return b.length() == l && e.kinds.fits(b, r) })
			if k < 0 {
				break
			}
			got = append(got, p.boards[k])
			p.boards = slices.Delete(slices.Clone(p.boards), k, k+1)
		}
		if len(got) < len(want) || !e.reaches(r, got) {
			*p = was
			continue
		}
		if r.sign < 0 {
			slices.Reverse(got)
		}
		e.pinned[r.index] = got
	}
}

// reaches tells whether boards fill a run, the last one cut where it is too
// long and no shorter than may be.
func (e *engine) reaches(r run, got []item) bool {
	var sum tape.Length
	for _, t := range got {
		sum += t.length()
	}
	last := r.length() - (sum - got[len(got)-1].length())
	if r.sign < 0 {
		last = r.length() - (sum - got[0].length())
	}
	fits := sum >= r.farNeed-r.nearNeed && sum <= r.length() && !r.nearCut && (!r.farCut || r.unsure)
	return fits || sum > r.length() && last >= e.shortest && !r.nearCut
}

// fillPinned fills a run with the boards it is pinned to. Joints fall where
// they fall: the distance they keep is noted.
func (e *engine) fillPinned(r run, b behind) ([]placed, tape.Length) {
	var out []placed
	var sum tape.Length
	for _, t := range e.pinned[r.index] {
		sum += t.length()
	}
	at := r.nearReach
	if sum < r.farReach-r.nearReach {
		at = min(r.nearNeed, max(r.nearReach, r.farNeed-sum))
	}
	least := e.jointMin
	for i, t := range e.pinned[r.index] {
		q := placed{item: t, start: at, end: at + t.length()}
		if i > 0 {
			least = min(least, nearest(b.one, at))
		}
		if q.end > r.farReach || r.farCut && !r.unsure && i == len(e.pinned[r.index])-1 {
			q.end, q.farCut, q.farMitre = r.farReach, true, r.farMitre
			q.to, q.tongue = q.from+q.end-q.start, false
		}
		at = q.end
		out = append(out, q)
	}
	last := &out[len(out)-1]
	last.tongueOff = last.tongue && last.end > r.farReach-e.tongue
	return out, least
}

// pinFindings tell which rows have the boards they are pinned to.
func (e *engine) pinFindings(plan []filled, style tape.Style) []finding.Finding {
	var out []finding.Finding
	var names []string
	for n := range e.asked {
		names = append(names, n)
	}
	slices.Sort(names)
	for _, n := range names {
		var says []string
		for _, l := range e.asked[n] {
			says = append(says, style.Of(l))
		}
		f := finding.Finding{Level: finding.Warn, Rule: "pin", Where: "boards of row " + n, Measured: strings.Join(says, ", "),
			Do: "Not kept: no such boards on the pallet, or they do not fill it. Look in the row list for its length."}
		if !slices.ContainsFunc(plan, func(p filled) bool { return p.name() == n }) {
			f.Level, f.Measured, f.Do = finding.Stop, "there is no row "+n, "Name a row as the row list does, or take the pin out."
		}
		for _, p := range plan {
			if _, ok := e.pinned[p.index]; !ok || p.name() != n {
				continue
			}
			f.Level, f.Do = finding.Note, "Kept."
			if p.least < e.jointMin {
				f.Level, f.Limit = finding.Warn, "joints at least "+style.Of(e.jointMin)+" apart"
				f.Do = fmt.Sprintf("Kept as the job asks, with a joint %s from one beside it.", style.Of(p.least))
			}
		}
		out = append(out, f)
	}
	return out
}
