package drawing

import (
	"context"
	"os"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/plan"
	"strake/sheet"
)

// What is kept free in the kitchen is drawn with its margin, named, and explained:
// 4 by 20 in with an inch round it, at 1:16 (sides 6 in and 22 in are 9.5 and 34.9
// mm on paper), rows turned or not. A job that keeps nothing free says nothing of it.
func TestKeepFreeIsDrawn(t *testing.T) {
	data, err := os.ReadFile("../examples/keepers-kitchen.yaml")
	if err != nil {
		t.Fatal(err)
	}
	kitchen := string(data)
	for name, text := range map[string]string{
		"along":  kitchen,
		"turned": strings.Replace(kitchen, "{rows_along: A-B}", "{turned_by: 30}", 1),
		"none":   strings.Replace(kitchen, "  water pipe: {what: pipe, wall: C-D, from: C, at: 40, off: 24, width: 4, depth: 20, below: 3}\n", "", 1),
	} {
		text = strings.Replace(text, "keep_free:\n\n", "\n", 1)
		j, _, err := jobfile.ReadJob(name, []byte(text))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		p := plan.MakeWithin(context.Background(), j, 0)
		s := Floor(p)
		var named, told bool
		for _, x := range texts(s) {
			named = named || strings.HasPrefix(x.Text, "water pipe")
			told = told || strings.HasPrefix(x.Text, "keep free of fasteners")
		}
		var ring []sheet.Pt
		for _, it := range s.Items {
			if l, ok := it.(sheet.Polyline); ok && l.Name == "free water pipe" {
				ring = l.Points
			}
		}
		if want := name != "none"; named != want || told != want || (len(ring) == 5) != want {
			t.Fatalf("%s: named %v, told %v, drawn %v", name, named, told, ring)
		}
		if len(ring) == 0 {
			continue
		}
		one := newDraw(p, usual).scale.one
		for i, want := range []float64{6 * 25.4 / one, 22 * 25.4 / one} {
			if got := length(ring[i+1].Sub(ring[i])); got < want-0.01 || got > want+0.01 {
				t.Errorf("%s: side %d is %.2f mm, want %.2f", name, i, got, want)
			}
		}
		for _, f := range faults(s) {
			t.Errorf("%s: %s", name, f)
		}
	}
}
