package method

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"strake/plan"
	"strake/row"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// always are the cards of every job.
var always = []string{"check-flatness", "read-moisture", "rack-ahead", "try-the-nailer", "block-the-start-row", "nail-by-hand", "pull-a-row-tight", "drop-in-board", "last-rows", "scribe"}

func names(ks []Card) (out []string) {
	for _, k := range ks {
		out = append(out, k.Name)
	}
	return out
}

// card is the card of a name; one without figures where the job has none.
func card(p plan.Plan, name string) Card {
	for _, k := range Cards(p) {
		if k.Name == name {
			return k
		}
	}
	return Card{}
}

// A card is left out exactly where the job lacks the thing.
func TestLeftOut(t *testing.T) {
	job := kitchen(t)
	all := plans(t)["kitchen"]
	for _, n := range append([]string{"spline-turn", "hole-and-plug", "undercut-a-jamb"}, always...) {
		if !slices.Contains(names(Cards(all)), n) {
			t.Errorf("a job with everything has no card %s", n)
		}
	}
	for name, with := range map[string][]string{
		"spline-turn":     {"start_middle: yes", "start_middle: no"},
		"hole-and-plug":   {"{kind: pipe, cover: 1-1/4", "{kind: register, cover: 1-1/4", "{kind: pipe, wall", "{kind: register, wall"},
		"undercut-a-jamb": {"undercut: yes", "undercut: no", "undercut: yes", "undercut: no"},
	} {
		got := names(Cards(made(t, name, swapped(t, job, with...))))
		if slices.Contains(got, name) || len(got) != len(Cards(all))-1 {
			t.Errorf("without the thing of %s: %v", name, got)
		}
	}
	rated := made(t, "rated", swapped(t, job, "jambs: {of: wood}\n    porch", "jambs: {of: steel}\n    porch"))
	if k := card(rated, "undercut-a-jamb"); strings.Contains(k.Why, "dining door") || !strings.Contains(k.Why, "cellar door") {
		t.Errorf("a steel frame is not sawn: %q", k.Why)
	}
	if Cards(plan.Plan{}) != nil {
		t.Error("cards without boards")
	}
	for name, p := range plans(t) {
		got := names(Cards(p))
		for _, n := range always {
			if !slices.Contains(got, n) {
				t.Errorf("%s: no card %s", name, n)
			}
		}
		if has := slices.Contains(got, "spline-turn"); words.SplineLength(p) > 0 && !has {
			t.Errorf("%s: a spline and no card", name)
		}
	}
}

// said is everything that a card says, its figures included.
func said(k Card) string {
	out := []string{k.Why}
	out = append(out, k.Steps...)
	for _, f := range k.Figures {
		out = append(out, f.Title)
		for _, it := range f.Items {
			if x, ok := it.(sheet.Text); ok {
				out = append(out, x.Text)
			}
		}
	}
	return strings.Join(out, "\n")
}

// Figures on the cards are the job's: another figure in the job is another on the
// card, and the one before is gone.
func TestFiguresAreTheJobs(t *testing.T) {
	job := kitchen(t)
	for _, tt := range []struct {
		card     string
		swap     []string
		was, now []string
	}{
		{"try-the-nailer", []string{"length: 2, spacing: 6", "length: 1-3/4, spacing: 7"}, []string{`2" cleats`, `every 6"`, `27/32"`}, []string{`1-3/4" cleats`, `every 7"`, `21/32"`}},
		{"try-the-nailer", []string{"{kind: cleat, length: 2", "{kind: staple, length: 2"}, []string{"cleats", "16 to 18 gauge"}, []string{"staples", "15.5 gauge"}},
		{"check-flatness", []string{"  on: wood\n", "  on: wood\n  flat: us strict\n"}, []string{`3/16" under 72" and 1/4" under 120"`}, []string{`1/8" under 72" and 3/16" under 120"`}},
		{"read-moisture", []string{"species: red oak", "species: hard maple"}, []string{"Set it to red oak"}, []string{"Set it to hard maple"}},
		{"read-moisture", []string{"face: 4\n  ten_boards: 40-1/16", "face: 2\n  ten_boards: 20-1/16"}, []string{"at most 2 points apart"}, []string{"at most 4 points apart"}},
		{"rack-ahead", []string{"wishes:", "limits: {joint_min: 7, joint_preferred: 9, shortest_piece: 10}\nwishes:"}, []string{`at least 6" apart, better 8". No end piece under 8"`, `6" or more`}, []string{`at least 7" apart, better 9". No end piece under 10"`, `7" or more`}},
		{"nail-by-hand", []string{"spacing: 16, first", "spacing: 24, first"}, []string{`16" apart`}, []string{`24" apart`}},
		{"last-rows", []string{"shoe: 3/4", "shoe: 1-1/4"}, []string{`3/4" to 1-1/16"`}, []string{`3/4" to 1-9/16"`}},
		{"hole-and-plug", []string{"off: 3, width: 1, depth: 1", "off: 3, width: 2, depth: 1"}, []string{`1" wide: hole 2-1/2", its collar 3-1/2"`}, []string{`2" wide: hole 3-1/2", its collar 4-1/2"`, `hole 3-1/2"`}},
		{"undercut-a-jamb", []string{"sheet: 1/32", "sheet: 3/32"}, []string{`13/16" over the subfloor`, `sheet (1/32")`}, []string{`7/8" over the subfloor`, `sheet (3/32")`}},
		{"drop-in-board", []string{"thickness: 3/4\n  side", "thickness: 5/8\n  side"}, []string{`thickness, 3/4"`}, []string{`thickness, 5/8"`}},
		{"spline-turn", []string{"side_tongue: 1/4", "side_tongue: 5/16"}, []string{`1/4"`}, []string{`5/16"`}},
	} {
		before, after := said(card(plans(t)["kitchen"], tt.card)), said(card(made(t, "job", swapped(t, job, tt.swap...)), tt.card))
		for _, s := range tt.was {
			if !strings.Contains(before, s) || strings.Contains(after, s) {
				t.Errorf("%s, %v: %q must be on the card before, and not after:\n%s", tt.card, tt.swap, s, after)
			}
		}
		for _, s := range tt.now {
			if strings.Contains(before, s) || !strings.Contains(after, s) {
				t.Errorf("%s, %v: %q must be on the card after, and not before:\n%s", tt.card, tt.swap, s, after)
			}
		}
	}
}

// What no schedule tells is the maker's: no figure stands for it.
func TestUnknownIsTheMakers(t *testing.T) {
	p := plans(t)["metric"]
	if _, _, ok := p.Nailing().Use(); ok {
		t.Fatal("28 mm boards are in the schedule now: take others here")
	}
	for _, name := range []string{"try-the-nailer", "nail-by-hand", "pull-a-row-tight"} {
		k := card(p, name)
		if s := strings.Join(k.Steps, " "); !strings.Contains(s, "boards' maker says") || strings.Contains(s, "51 mm") {
			t.Errorf("%s: %s", name, s)
		}
		for _, s := range k.Sources {
			if strings.HasPrefix(s, "fasteners") {
				t.Errorf("%s: a source for what is not known: %s", name, s)
			}
		}
	}
}

// Fasteners by hand and widths in brackets are those of the plan's lists.
func TestCountsAreThePlans(t *testing.T) {
	for name, p := range plans(t) {
		g := p.GoodsFloor().Fixed
		if k := card(p, "nail-by-hand"); g.Known && g.Total.Hand+g.Total.Face > 0 && !strings.Contains(k.Why, fmt.Sprintf("%d through the tongue and %d through the face", g.Total.Hand, g.Total.Face)) {
			t.Errorf("%s: %+v, the card says %q", name, g.Total, k.Why)
		}
	}
	for name, p := range plans(t) {
		sub, boards := p.ReadingsWanted()
		if s := said(card(p, "read-moisture")); !strings.Contains(s, fmt.Sprintf("Boards: at least %d,", boards)) || !strings.Contains(s, fmt.Sprintf("at least %d readings", sub)) {
			t.Errorf("%s: %d and %d readings: %s", name, sub, boards, s)
		}
	}
	p := plans(t)["sail-loft.yaml"]
	i := slices.IndexFunc(p.Layout.Rips, func(r row.Rip) bool { return r.Edge == "wall C-D" })
	if i < 0 {
		t.Fatal("no row at wall C-D")
	}
	r := p.Layout.Rips[i]
	if k := card(p, "last-rows"); !strings.Contains(k.Why, fmt.Sprintf("row %d at %s (%s)", r.Row, r.Edge, words.RipWidths(r, words.In(p.Job.Unit)))) {
		t.Errorf("%q does not tell of row %d", k.Why, r.Row)
	}
}

// ringOf is a named outline of a figure.
func ringOf(t *testing.T, k Card, name string) (lo, hi sheet.Pt) {
	t.Helper()
	for _, f := range k.Figures {
		for _, it := range f.Items {
			if g, ok := it.(sheet.Polygon); ok && g.Name == name {
				lo, hi = g.Rings[0][0], g.Rings[0][0]
				for _, p := range g.Rings[0] {
					lo = sheet.Pt{X: math.Min(lo.X, p.X), Y: math.Min(lo.Y, p.Y)}
					hi = sheet.Pt{X: math.Max(hi.X, p.X), Y: math.Max(hi.Y, p.Y)}
				}
				return
			}
		}
	}
	t.Fatalf("%s: nothing is called %q", k.Name, name)
	return
}

// Drawings that give a scale keep it: board, hole and pipe measured on paper.
func TestTrueToScale(t *testing.T) {
	p := plans(t)["kitchen"]
	near := func(what string, got float64, want tape.Length, scale float64) {
		if w := want.Millimetres() * scale; math.Abs(got-w) > 0.01 {
			t.Errorf("%s: %.2f mm on paper, want %.2f", what, got, w)
		}
	}
	in := tape.Inch
	lo, hi := ringOf(t, card(p, "nail-by-hand"), "first row")
	near("board", hi.X-lo.X, 4*in+in/4, half)
	near("thickness", hi.Y-lo.Y, 3*in/4, half)
	pipe := card(p, "hole-and-plug")
	_, left := ringOf(t, pipe, "board left of the pipe")
	right, _ := ringOf(t, pipe, "board right of the pipe")
	near("hole", right.X-left.X, 2*in+in/2, half)
	lo, hi = ringOf(t, pipe, "pipe")
	near("pipe", hi.X-lo.X, in, half)
	if got := pipe.Figures[2].Scale; got != "half size" {
		t.Errorf("said to be %s", got)
	}
}

// Each pick of cautions finds one in a job that does the work, so that no card
// loses its caution by another wording.
func TestPicksFind(t *testing.T) {
	job := swapped(t, kitchen(t), "hazards: {", "hazards: {fireplaces: {stove: {width: 30, height: 28, front: 20, side: 12}}, ")
	f := factsOf(made(t, "job", job))
	for _, k := range []pick{shooting, keepOut, ripping, holding, inJambs, byFire, lifting, flattening} {
		if got := f.cautions("gloves", nil, k); len(got) < 3 {
			t.Errorf("%v finds nothing", k)
		}
	}
}

// Every drawing is black and white.
func TestBlackAndWhite(t *testing.T) {
	each(t, func(t *testing.T, name string, k Card) {
		for _, f := range k.Figures {
			for _, it := range f.Items {
				var inks []sheet.Ink
				switch it := it.(type) {
				case sheet.Polyline:
					inks = append(inks, it.Pen.Ink)
				case sheet.Polygon:
					inks = append(inks, it.Fill, it.Pen.Ink)
				case sheet.Text:
					inks = append(inks, it.Ink)
				}
				for _, ink := range inks {
					if ink != sheet.Black && ink != sheet.White && ink != sheet.None {
						t.Fatalf("%s, %s: ink %s", name, f.Title, ink)
					}
				}
			}
		}
	})
}
