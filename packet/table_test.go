package packet

import (
	"math"
	"strings"
	"testing"

	"strake/internal/sample"
	"strake/sheet"
)

// many are words, enough for a cell that is broken often.
func many(n int) string { return strings.TrimSpace(strings.Repeat("plank ", n)) }

func flowFor(t *testing.T) *flow {
	t.Helper()
	return newDesk(of(sample.Hearth()), A4).open("Tables", false)
}

// What stands in a column makes it wide: no other division of the page by columns of
// whole centimetres makes the table lower.
func TestColumnsByContent(t *testing.T) {
	f := flowFor(t)
	x := table{size: working, cols: []column{{name: ""}, {name: "what", bold: true}, {name: "where"}, {name: "what to do"}},
		rows: [][]string{{toTick, "subfloor", "kitchen", many(60)}, {toTick, many(6), "hall", many(40)}, {toTick, "air", many(9), "wait"}}}
	ws := x.widths(f.body.w)
	if math.Abs(sum(ws)-f.body.w) > 1e-6 {
		t.Errorf("columns are %.2f mm together, the page %.2f", sum(ws), f.body.w)
	}
	if ws[0] != boxColumn {
		t.Errorf("boxes to tick stand in %.1f mm", ws[0])
	}
	got, _ := x.balance().high(ws)
	best := math.MaxInt
	for a := 20.0; a < 160; a += 10 {
		for b := 20.0; a+b < 160; b += 10 {
			n, _ := x.balance().high([]float64{boxColumn, a, b, f.body.w - boxColumn - a - b})
			best = min(best, n)
		}
	}
	if got > best {
		t.Errorf("%d lines, %d would do", got, best)
	}
	even, _ := x.balance().high([]float64{boxColumn, 60, 60, f.body.w - boxColumn - 120})
	if even <= got {
		t.Errorf("even columns take %d lines too: the test cannot fail", even)
	}
}

// Cells are counted in lines as they are then broken.
func TestLinesAreCountedAsBroken(t *testing.T) {
	s := "Answer under site in the job: level, subfloor, 2' 9\" of heating, wet room (crawl space), age of concrete, flat."
	for _, bold := range []bool{false, true} {
		for w := 12.0; w < 150; w += 0.7 {
			if got, want := wordsOf(s, bold).lines(w/3.2), len(sheet.WrapPrinted(s, 3.2, w, bold)); got != want {
				t.Errorf("%.1f mm, bold %v: counted %d, broken into %d", w, bold, got, want)
			}
		}
	}
}

// A column that nothing stands in is left out, one with a share of the page is not.
func TestEmptyColumns(t *testing.T) {
	x := table{cols: []column{{name: "a"}, {name: "b"}}, rows: [][]string{{"one", ""}, {"name of a part"}, {"two", ""}}}
	if got := x.filled(); len(got.cols) != 1 || len(got.rows[0]) != 1 || got.rows[1][0] != "name of a part" {
		t.Errorf("left: %v", got)
	}
	x.cols[0].w, x.cols[1].w = 1, 1
	if got := x.filled(); len(got.cols) != 2 {
		t.Errorf("left: %v", got.cols)
	}
}

// The name of a part does not stay alone at the foot of a page.
func TestPartsStayWithTheirRows(t *testing.T) {
	for n := 30; n < 50; n++ {
		f := flowFor(t)
		x := table{cols: []column{{name: "a"}, {name: "b"}}}
		for range n {
			x.rows = append(x.rows, []string{"row", "of it"})
		}
		x.rows = append(x.rows, []string{"Part"}, []string{"its", "first row"})
		f.table(x)
		for i, l := range f.d.pages {
			ts := texts(l.Sheet)
			if ts[len(ts)-1].Text == "Part" {
				t.Errorf("%d rows: the part's name stands last on page %d", n, i+1)
			}
		}
	}
}

// A long table of short rows stands twice beside itself: each row once, and in half the
// height; one of long rows does not.
func TestFolded(t *testing.T) {
	for _, n := range []int{7, 40, 150} {
		f := flowFor(t)
		x := table{folds: true, cols: []column{{name: "bar"}, {name: "long", right: true}}}
		for i := range n {
			x.rows = append(x.rows, []string{strings.Repeat("i", i+1), "12"})
			if i > 30 {
				x.rows[i][0] = strings.Repeat("i", i%30+1)
			}
		}
		f.table(x)
		rows, right := 0, false
		for _, l := range f.d.pages {
			low := l.body.y
			for _, y := range texts(l.Sheet) {
				if y.Text == "12" {
					rows, low = rows+1, max(low, y.At.Y)
				}
				right = right || y.Text == "bar" && y.At.X > l.body.x+50
			}
			if low > l.body.y+l.body.h {
				t.Errorf("%d rows: below the foot of the page", n)
			}
		}
		if rows != n || !right {
			t.Errorf("%d of %d rows, beside each other: %v", rows, n, right)
		}
	}
	f := flowFor(t)
	x := table{folds: true, cols: []column{{name: "bar"}, {name: "pieces"}}}
	for range 20 {
		x.rows = append(x.rows, []string{"one", many(60)})
	}
	if f.folded(x, f.setOf(x, f.body.w).high()) {
		t.Error("long rows are folded, and take as much room as before")
	}
}
