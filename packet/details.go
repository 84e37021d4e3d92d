package packet

import (
	"cmp"
	"slices"

	"strake/detail"
	"strake/sheet"
)

// details are drawings of edges, openings and turns at full or half size, each kept
// together, on as few pages as they go on.
func (d *desk) details() {
	all := detail.Of(d.in.Plan)
	if len(all) == 0 {
		return
	}
	f := d.open("Details", false)
	var set []setDetail
	var high []float64
	for _, x := range all {
		s := f.setDetail(x)
		set, high = append(set, s), append(high, s.high)
	}
	for i, page := range packed(high, f.body.h, detailGap) {
		if i > 0 {
			f.turn()
		}
		for _, k := range page {
			f.y = set[k].on(f.leaf, f.y)
		}
	}
}

// packed puts things so high on pages of a height: each on the first that has room for
// it, in their order, or the highest first where that takes fewer pages. Pages, and
// things on a page, are in order again then.
func packed(high []float64, page, gap float64) [][]int {
	order := make([]int, len(high))
	for i := range order {
		order[i] = i
	}
	best := firstFit(order, high, page, gap)
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(high[b], high[a]) })
	if out := firstFit(order, high, page, gap); len(out) < len(best) {
		best = out
	}
	for _, p := range best {
		slices.Sort(p)
	}
	slices.SortFunc(best, func(a, b []int) int { return a[0] - b[0] })
	return best
}

func firstFit(order []int, high []float64, page, gap float64) (out [][]int) {
	var low []float64
	for _, k := range order {
		i := slices.IndexFunc(low, func(y float64) bool { return y+gap+high[k] <= page })
		if i < 0 {
			out, low = append(out, nil), append(low, -gap)
			i = len(out) - 1
		}
		out[i], low[i] = append(out[i], k), low[i]+gap+high[k]
	}
	return out
}

// setDetail is a detail as it is set: its title above it, its notes below.
type setDetail struct {
	detail.Detail
	title, notes []string
	size         float64 // of the notes
	high         float64
}

// noteLeading is the distance of lines of notes over the size of their writing.
const noteLeading = 1.3

// detailGap is what is left free between details, mm.
const detailGap = 5.0

// leastNote is how small notes are set at the least where a detail would be higher than a
// page, mm.
const leastNote = 2.2

// setDetail sets a detail; where it would be higher than a page, with smaller notes.
func (f *flow) setDetail(x detail.Detail) setDetail {
	s := setDetail{Detail: x, title: sheet.WrapPrinted(x.Title, subtitle, f.body.w-40, true), size: detail.NoteSize}
	for f.setNotes(&s); s.high > f.body.h && s.size > leastNote; f.setNotes(&s) {
		s.size -= 0.1
	}
	return s
}

func (f *flow) setNotes(s *setDetail) {
	s.notes = nil
	for _, n := range s.Notes {
		s.notes = append(s.notes, sheet.WrapPrinted(n, s.size, f.body.w-3, false)...)
	}
	s.high = float64(len(s.title))*subtitle*leading + 1 + s.H + 1 + float64(len(s.notes))*s.size*noteLeading
}

// on draws it on a page from y down, and returns where the next may begin.
func (s setDetail) on(l *leaf, y float64) float64 {
	b := l.body
	l.Put(sheet.Text{Text: s.Scale, At: sheet.Pt{X: b.x + b.w, Y: y + subtitle}, Size: body, Anchor: sheet.End, Ink: sheet.Black})
	for _, t := range s.title {
		l.write(t, b.x, y+subtitle, subtitle, true)
		y += subtitle * leading
	}
	y++
	l.Put(sheet.Moved(s.Items, sheet.Pt{X: b.x + max(0, b.w-s.W)/2, Y: y}, 1)...)
	y += s.H + 1
	for _, t := range s.notes {
		l.write(t, b.x+1.5, y+s.size, s.size, false)
		y += s.size * noteLeading
	}
	return y + detailGap
}
