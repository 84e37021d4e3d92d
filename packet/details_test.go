package packet

import (
	"slices"
	"strings"
	"testing"

	"strake/detail"
)

// Things go on as few pages as the highest first take, none twice, none over the foot;
// in their own order where that takes no more.
func TestPacked(t *testing.T) {
	for _, x := range []struct {
		high  []float64
		pages int
	}{
		{[]float64{100, 100, 100}, 2},
		{[]float64{60, 40, 150, 170}, 2}, // in order: 60 and 40 beside each other, and three pages
		{[]float64{300, 10}, 2},          // one higher than a page has a page of its own
		{[]float64{10}, 1},
	} {
		got := packed(x.high, 220, 5)
		if len(got) != x.pages {
			t.Errorf("%v: %v", x.high, got)
		}
		var all []int
		for _, p := range got {
			sum := -5.0
			for _, k := range p {
				sum += x.high[k] + 5
			}
			if sum > 220 && len(p) > 1 {
				t.Errorf("%v: page %v is %.0f high", x.high, p, sum)
			}
			if !slices.IsSorted(p) {
				t.Errorf("%v: page %v is out of order", x.high, p)
			}
			all = append(all, p...)
		}
		slices.Sort(all)
		for i, k := range all {
			if i != k || len(all) != len(x.high) {
				t.Errorf("%v: on pages %v", x.high, got)
			}
		}
	}
}

// Every detail of every job stands on a page once, its title, its drawing and all of its
// notes, at its own size, above the foot; several share pages.
func TestDetailsStayTogether(t *testing.T) {
	pages, all := 0, 0
	for name, data := range shipped(t) {
		in := made(t, name, data)
		for _, p := range []Paper{A4, Letter} {
			d := newDesk(in, p)
			d.details()
			pages += len(d.pages)
			for _, x := range detail.Of(in.Plan) {
				all++
				s := d.openless().setDetail(x)
				at := -1
				for i, l := range d.pages {
					said := map[string]float64{}
					for _, k := range texts(l.Sheet) {
						said[k.Text] = k.At.Y
					}
					if _, ok := said[s.title[0]]; !ok {
						continue
					}
					at = i
					for _, n := range s.notes {
						y, ok := said[n]
						if !ok {
							t.Errorf("%s, %s: the note %q is not on the page of its title", name, x.Title, n)
						}
						if y > l.body.y+l.body.h {
							t.Errorf("%s, %s: a note at %.0f mm, below the foot", name, x.Title, y)
						}
					}
					break
				}
				if at < 0 {
					t.Errorf("%s: no detail %q", name, strings.Join(s.title, " "))
				}
			}
		}
	}
	if pages*5 > all*4 {
		t.Errorf("%d details on %d pages", all, pages)
	}
}

// openless is a flow that adds no page.
func (d *desk) openless() *flow {
	return &flow{d: d, size: body, leaf: newLeaf(d.paper, false, "", "", 1)}
}

// A detail with more notes than a page holds is set with smaller ones, and stays on it.
func TestHighDetailKeepsToItsPage(t *testing.T) {
	d := newDesk(made(t, "sail-loft", shipped(t)["sail-loft"]), Letter)
	f := d.open("Details", false)
	x := detail.Detail{Title: "High", Scale: "1:1", W: 100, H: f.body.h - 50}
	for range 12 {
		x.Notes = append(x.Notes, "Set the straightest board here, sight along it, and measure again before the next nail.")
	}
	s := f.setDetail(x)
	if s.high > f.body.h || s.size >= detail.NoteSize || s.size < leastNote-0.01 {
		t.Errorf("%.1f mm high on %.1f, notes of %.1f mm", s.high, f.body.h, s.size)
	}
}
