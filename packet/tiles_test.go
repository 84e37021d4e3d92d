package packet

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/drawing"
	"strake/internal/rooms"
	"strake/jobfile"
	"strake/plan"
	"strake/sheet"
	"strake/words"
)

// planned is a job's plan alone, laid quickly.
func planned(t *testing.T, name string, data []byte) In {
	t.Helper()
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return In{Plan: plan.MakeWithin(context.Background(), j, 0)}
}

// eachPlanToScale makes the plans to scale of shipped jobs and some random rooms, page by page.
func eachPlanToScale(t *testing.T, do func(name string, d *desk, tiles []sheet.Sheet)) {
	t.Helper()
	jobs := shipped(t)
	for i := range 12 {
		jobs[fmt.Sprintf("random room %d", i)] = []byte(rooms.Job(rand.New(rand.NewPCG(uint64(i), 31))))
	}
	for name, data := range jobs {
		in := planned(t, name, data)
		if len(in.Plan.Lay.Runs) == 0 {
			continue
		}
		for _, p := range []Paper{A4, Letter} {
			d := newDesk(in, p)
			d.floorPlan()
			var tiles []sheet.Sheet
			for _, l := range d.pages[1:] {
				tiles = append(tiles, l.Sheet)
			}
			do(name+" on "+p.Name, d, tiles)
		}
	}
}

// What the pages say is true: every board of the plan stands on some tile with its number
// and the length it is cut to, in its place or in the list over a tile.
func TestTilesTellEveryBoard(t *testing.T) {
	eachPlanToScale(t, func(name string, d *desk, tiles []sheet.Sheet) {
		have := map[string]bool{}
		all := ""
		for _, s := range tiles {
			ts := texts(s)
			for i, x := range ts {
				all += x.Text + " "
				have[x.Text] = true
				if n := strings.SplitN(x.Text, ", ", 2); len(n) == 2 {
					have[n[0]] = true
				}
				for _, y := range ts[i+1:] { // in two lines
					if x.Anchor == sheet.Middle && x.Size == y.Size && x.Size <= 2.5 && length(y.At.Sub(x.At)) < 3 {
						have[x.Text+":  "+y.Text] = true
					}
				}
			}
		}
		for _, q := range d.in.Plan.Lay.Pieces {
			lo, hi := q.Outline.Box()
			no, long := words.Board(q.Board), d.say.Of(hi.X-lo.X)
			if !have[no+":  "+long] && !strings.Contains(all, "board "+no+", "+long) {
				t.Errorf("%s: board %s, %s, is not told", name, no, long)
			}
		}
	})
}

// crossesOf are the middles of the match marks of a page.
func crossesOf(s sheet.Sheet) []sheet.Pt {
	var level, upright []sheet.Pt
	for _, it := range s.Items {
		l, ok := it.(sheet.Polyline)
		if !ok || len(l.Points) != 2 || l.Pen.Width != thin.Width {
			continue
		}
		d, mid := l.Points[1].Sub(l.Points[0]), l.Points[0].Add(l.Points[1]).Times(0.5)
		switch {
		case near(d.X, 2*cross) && d.Y == 0:
			level = append(level, mid)
		case near(d.Y, 2*cross) && d.X == 0:
			upright = append(upright, mid)
		}
	}
	var out []sheet.Pt
	for _, a := range level {
		for _, b := range upright {
			if length(a.Sub(b)) < 1e-6 {
				out = append(out, a)
			}
		}
	}
	return out
}

func near(a, b float64) bool { return math.Abs(a-b) < 1e-6 }

// stepBetween is how far the same writing lies apart on two pages: what most of what
// stands on both says; false where too little does.
func stepBetween(a, b sheet.Sheet) (sheet.Pt, bool) {
	at := map[string]sheet.Pt{}
	for _, x := range texts(a) {
		if strings.Contains(x.Text, ":  ") {
			at[x.Text] = x.At
		}
	}
	votes := map[[2]int]int{}
	var best sheet.Pt
	most := 0
	for _, y := range texts(b) {
		p, ok := at[y.Text]
		if !ok {
			continue
		}
		d := y.At.Sub(p)
		k := [2]int{int(math.Round(d.X * 100)), int(math.Round(d.Y * 100))}
		if votes[k]++; votes[k] > most {
			most, best = votes[k], d
		}
	}
	return best, most >= 2
}

var besideSays = regexp.MustCompile(`^lay tile ([A-Z]\d+) over the crosses$`)

// Two neighbouring tiles bear the same two match marks at the same places of the floor,
// and no mark lies on writing.
func TestMatchMarksMatch(t *testing.T) {
	pairs := 0
	eachPlanToScale(t, func(name string, _ *desk, tiles []sheet.Sheet) {
		byName := map[string]sheet.Sheet{}
		for _, s := range tiles {
			for _, x := range texts(s) {
				if n, ok := strings.CutPrefix(x.Text, "Tile "); ok {
					byName[n] = s
				}
			}
		}
		for n, s := range byName {
			for _, c := range crossesOf(s) {
				o := square(c, cross)
				for _, x := range texts(s) {
					if b := inked(x); sheet.Overlap(o[:], b[:]) {
						t.Errorf("%s, tile %s: a match mark lies on %q", name, n, x.Text)
					}
				}
			}
			for _, x := range texts(s) {
				m := besideSays.FindStringSubmatch(x.Text)
				if m == nil {
					continue
				}
				o, ok := byName[m[1]]
				if !ok {
					t.Errorf("%s: tile %s names tile %s, which is not there", name, n, m[1])
					continue
				}
				step, ok := stepBetween(s, o)
				if !ok {
					continue // they share no two boards' names
				}
				pairs++
				both := 0
				for _, a := range crossesOf(s) {
					for _, b := range crossesOf(o) {
						if length(a.Add(step).Sub(b)) < 0.02 {
							both++
						}
					}
				}
				if both < 2 {
					t.Errorf("%s: tiles %s and %s have %d match marks in common", name, n, m[1], both)
				}
			}
		}
	})
	if pairs < 40 {
		t.Errorf("only %d pairs of tiles were looked at", pairs)
	}
}

// barOf is the length of the bar at the head of a page and what its last figure says, mm.
func barOf(s sheet.Sheet) (drawn, stands float64) {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, it := range s.Items {
		g, ok := it.(sheet.Polygon)
		if !ok || len(g.Rings) != 1 || len(g.Rings[0]) != 4 || g.Pen.Width != 0.2 {
			continue
		}
		for _, p := range g.Rings[0] {
			lo, hi = math.Min(lo, p.X), math.Max(hi, p.X)
		}
	}
	for _, x := range texts(s) {
		for end, one := range map[string]float64{" m": 1000, " ft": 304.8} {
			if n, err := strconv.ParseFloat(strings.TrimSuffix(x.Text, end), 64); err == nil && strings.HasSuffix(x.Text, end) {
				stands = n * one
			}
		}
	}
	return hi - lo, stands
}

// Tiles hold their scale: the bar on each is as long as its figure says, and each piece that
// lies on a tile whole is drawn as long as it is.
func TestTilesHoldTheirScale(t *testing.T) {
	pieces := 0
	eachPlanToScale(t, func(name string, d *desk, tiles []sheet.Sheet) {
		one := 0.0
		if m := regexp.MustCompile(`1:([\d.]+)`).FindStringSubmatch(drawing.Scale(d.in.Plan)); m != nil {
			one, _ = strconv.ParseFloat(m[1], 64)
		}
		for i, s := range tiles {
			if drawn, stands := barOf(s); stands == 0 || math.Abs(drawn*one-stands) > 0.001*stands {
				t.Errorf("%s, tile %d: a bar of %.1f mm stands for %.0f mm at 1:%v", name, i+1, drawn, stands, one)
			}
			for _, it := range s.Items {
				g, ok := it.(sheet.Polygon)
				var id int
				if n, _ := fmt.Sscanf(g.Name, "piece-%d", &id); !ok || n != 1 || g.Pen.Width == 0 { // cut by the tile's edge it has no line round it
					continue
				}
				pieces++
				round := func(ps []sheet.Pt) float64 {
					sum := 0.0
					for k, p := range ps {
						sum += length(ps[(k+1)%len(ps)].Sub(p))
					}
					return sum
				}
				want := 0.0
				out := d.in.Plan.Lay.Pieces[id].Outline
				for k, p := range out {
					q := out[(k+1)%len(out)].Sub(p)
					want += math.Hypot(q.X.Millimetres(), q.Y.Millimetres())
				}
				if got := round(g.Rings[0]) * one; math.Abs(got-want) > 0.001*want {
					t.Errorf("%s, tile %d: %s is drawn %.1f mm round, it is %.1f", name, i+1, g.Name, got, want)
				}
			}
		}
	})
	if pieces < 500 {
		t.Errorf("only %d pieces were measured", pieces)
	}
}

// An example says so on every tile.
func TestExampleOnEveryTile(t *testing.T) {
	d := newDesk(made(t, "sail-loft", shipped(t)["sail-loft"]), A4)
	d.floorPlan()
	for i, l := range d.pages[1:] {
		n := 0
		for _, x := range texts(l.Sheet) {
			if strings.Contains(x.Text, "EXAMPLE LAYOUT, BOARDS NOT YET KNOWN") {
				n++
			}
		}
		if n != 1 {
			t.Errorf("tile %d says %d times that it is an example", i+1, n)
		}
	}
}
