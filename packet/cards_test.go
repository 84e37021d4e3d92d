package packet

import (
	"slices"
	"testing"

	"strake/paper"
	"strake/sheet"
)

// Cards hold 6 to 10 rows; fewer only where their rows have much to be said of, and then
// the sheet is used up.
func TestCardsAreFull(t *testing.T) {
	var all []int
	for name, data := range shipped(t) {
		d := newDesk(made(t, name, data), Letter)
		d.cards()
		c := &carder{d: d, f: &flow{leaf: d.pages[0]}, w: d.pages[0].body.w - nameWide, made: map[int][][]cell{}}
		for i, w := range d.walks[:len(d.walks)-1] {
			all = append(all, len(w.rows))
			used := 0.0
			for _, r := range w.rows {
				used += c.high(r)
			}
			if next := c.high(d.walks[i+1].rows[0]); len(w.rows) < rowsOnCard && used+next < d.pages[i].body.h-20 {
				t.Errorf("%s: card %d has %d rows on %.0f of %.0f mm, the next row takes %.0f", name, w.no, len(w.rows), used, d.pages[i].body.h, next)
			}
		}
	}
	slices.Sort(all)
	if least := all[len(all)/4]; least < 5 || all[len(all)/2] < 6 {
		t.Errorf("a quarter of the cards have %d rows or fewer, half %d or fewer", least, all[len(all)/2])
	}
}

// What several pieces of a row get alike is said once, over them.
func TestRipIsSaidOnce(t *testing.T) {
	said := 0
	for name, data := range shipped(t) {
		d := newDesk(made(t, name, data), A4)
		for _, r := range paper.Rows(d.in.Plan) {
			a := d.alike(r)
			if a.rip == "" {
				continue
			}
			said++
			n := 0
			for _, p := range r.Pieces {
				if slices.Contains(d.work(r, p), a.rip) {
					n++
				}
				if has := slices.Contains(d.work(r, p), a.rip); has != slices.Contains(a.of, p.No) {
					t.Errorf("%s: row %s piece %d is ripped so: %v; the head of the row tells %v", name, r.Name, p.No, has, a.of)
				}
			}
			if n < 2 || a.all != (n == len(r.Pieces)) {
				t.Errorf("%s: row %s: %d pieces of %d, all: %v", name, r.Name, n, len(r.Pieces), a.all)
			}
		}
	}
	if said == 0 {
		t.Error("no row has a rip of several pieces")
	}
}

func TestNumbers(t *testing.T) {
	for _, c := range []struct {
		in   []int
		want string
	}{{[]int{1, 2, 3, 5}, "1 to 3, 5"}, {[]int{1, 2}, "1, 2"}, {[]int{4}, "4"}, {[]int{2, 4, 5, 6}, "2, 4 to 6"}} {
		if got := numbers(c.in); got != c.want {
			t.Errorf("%v: %q, want %q", c.in, got, c.want)
		}
	}
	for n, want := range map[int]string{1: "1st", 2: "2nd", 3: "3rd", 4: "4th", 11: "11th", 12: "12th", 13: "13th", 21: "21st", 102: "102nd", 111: "111th"} {
		if got := ordinal(n); got != want {
			t.Errorf("%d: %q, want %q", n, got, want)
		}
	}
}

// A row of more pieces than go on a sheet goes on on the next, and keeps them all.
func TestLongRowsGoOn(t *testing.T) {
	const hall = `strake: 1
name: Rope walk
unit: ft
rooms: {walk: {corners: [A, B, C, D]}}
readings: {A-B: 260', B-C: 4', C-D: 260', D-A: 4', A-C: 260' 3/8", B-D: 260' 3/8"}
wishes: {rows_along: A-B}
boards:
  face: 5"
  thickness: 3/4"
  side_tongue: 1/4"
  end_tongue: 1/4"
  species: red oak
  lengths: {mix: {least: 12", most: 60", mean: 30"}}
`
	in := made(t, "rope-walk", []byte(hall))
	hold(t, "rope walk", Sheets(in, Letter), Letter)
	d := newDesk(in, Letter)
	d.cards()
	if len(d.pages) <= len(d.walks) {
		t.Errorf("%d sheets for %d cards: no row goes on", len(d.pages), len(d.walks))
	}
	if last := d.walks[len(d.walks)-1]; !slices.ContainsFunc(texts(d.pages[last.no-1].Sheet), func(x sheet.Text) bool { return x.Text == last.rows[0].Name }) {
		t.Errorf("row %s does not stand on sheet %d", last.rows[0].Name, last.no)
	}
	figures := 0
	for _, l := range d.pages {
		for _, x := range texts(l.Sheet) {
			if x.Size == Numeral {
				figures++
			}
			if x.At.Y > l.body.y+l.body.h {
				t.Errorf("%q lies at %.1f mm, the sheet's foot is at %.1f", x.Text, x.At.Y, l.body.y+l.body.h)
			}
		}
	}
	if n := len(in.Plan.Lay.Pieces); figures < n || n < 500 {
		t.Errorf("%d figures for %d pieces", figures, n)
	}
}
