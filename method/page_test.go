package method

import (
	"reflect"
	"strings"
	"testing"

	"strake/sheet"
)

// The areas of a card, in mm: that which every card is made for, and those that
// margins of 12 mm and a foot of 7 leave on A4 and on Letter, upright. A card that
// did not fit there would be set smaller, and its figures would not keep their scale.
const (
	usableW = 190
	usableH = 250
)

var areas = [][2]float64{{usableW, usableH}, {186, 266}, {191.9, 248.4}}

// Every card fits on one page, its figures within their measures.
func TestFits(t *testing.T) {
	each(t, func(t *testing.T, name string, k Card) {
		for _, a := range areas {
			if _, fits := k.On(a[0], a[1]); !fits {
				t.Errorf("%s is longer than a page of %v by %v", name, a[0], a[1])
			}
		}
		items, _ := k.On(usableW, usableH)
		high, steps := 0.0, 0
		for _, it := range items {
			if x, ok := it.(sheet.Text); ok {
				high = max(high, x.At.Y)
				if x.Size >= 3.5 {
					steps++
				}
			}
		}
		if high < 120 || steps < 12 {
			t.Errorf("%s: only %d lines down to %.0f mm: is it set at all?", name, steps, high)
		}
		for _, f := range k.Figures {
			if f.W > Widest || f.H > 75 {
				t.Errorf("%s, %s: %.1f by %.1f mm", name, f.Title, f.W, f.H)
			}
		}
	})
	long := Card{Title: "Too much", Steps: []string{strings.Repeat("word ", 3000)}}
	if _, fits := long.On(usableW, usableH); fits {
		t.Error("three thousand words on a page")
	}
}

// No two texts of a figure overlap, none leaves it; nor of a whole card.
func TestTextsApart(t *testing.T) {
	each(t, func(t *testing.T, name string, k Card) {
		for _, f := range k.Figures {
			apartOn(t, name+", "+f.Title, f.Items, f.W, f.H)
		}
		for _, a := range areas {
			items, _ := k.On(a[0], a[1])
			apartOn(t, name, items, a[0], a[1])
		}
	})
}

func apartOn(t *testing.T, name string, items []sheet.Item, w, h float64) {
	t.Helper()
	var ts []sheet.Text
	for _, it := range items {
		if x, ok := it.(sheet.Text); ok && x.Text != "" {
			ts = append(ts, x)
		}
	}
	for i, a := range ts {
		x := a.PrintedBox()
		for _, p := range x {
			if p.X < -1e-6 || p.Y < -1e-6 || p.X > w+1e-6 || p.Y > h+1e-6 {
				t.Errorf("%s: %q leaves it at %v of %.1f by %.1f", name, a.Text, p, w, h)
				break
			}
		}
		for _, b := range ts[i+1:] {
			if y := b.PrintedBox(); sheet.Overlap(x[:], y[:]) {
				t.Errorf("%s: %q and %q overlap", name, a.Text, b.Text)
			}
		}
	}
}

// Nothing drawn leaves its figure either.
func TestItemsInside(t *testing.T) {
	each(t, func(t *testing.T, name string, k Card) {
		for _, f := range k.Figures {
			for _, p := range places(f.Items) {
				if p.X < -1e-6 || p.Y < -1e-6 || p.X > f.W+1e-6 || p.Y > f.H+1e-6 {
					t.Errorf("%s, %s: %v of %.1f by %.1f", name, f.Title, p, f.W, f.H)
					break
				}
			}
		}
	})
}

func places(items []sheet.Item) (out []sheet.Pt) {
	for _, it := range items {
		switch it := it.(type) {
		case sheet.Polyline:
			out = append(out, it.Points...)
		case sheet.Polygon:
			for _, r := range it.Rings {
				out = append(out, r...)
			}
		}
	}
	return out
}

// A card has all its parts, ends in who decides, begins its cautions with what is
// worn, and uses the words of the site.
func TestWords(t *testing.T) {
	each(t, func(t *testing.T, name string, k Card) {
		if k.Title == "" || k.Why == "" || len(k.Steps) < 5 || len(k.Figures) < 2 || len(k.Sources) == 0 {
			t.Errorf("%s lacks a part", name)
		}
		if n := len(k.Caution); n < 2 || !strings.HasPrefix(k.Caution[0], "Wear ") || k.Caution[n-1] != lastWord {
			t.Errorf("%s: cautions %q", name, k.Caution)
		}
		seen := map[string]bool{}
		for _, s := range append(append([]string{k.Title, k.Why}, k.Steps...), k.Caution...) {
			if seen[s] || strings.TrimSpace(s) != s || strings.Contains(s, "  ") || !strings.ContainsAny(s[len(s)-1:], ".:_") && s != k.Title {
				t.Errorf("%s: %q", name, s)
			}
			seen[s] = true
			for _, no := range []string{"pitch", "the lay ", "run 1", " %!", "<nil>"} {
				if strings.Contains(s, no) {
					t.Errorf("%s: %q has %q", name, s, no)
				}
			}
		}
	})
}

// The same plan gives the same cards.
func TestDeterministic(t *testing.T) {
	for name, p := range plans(t) {
		if !reflect.DeepEqual(Cards(p), Cards(p)) {
			t.Errorf("%s: cards differ", name)
		}
	}
}
