package drawing

import (
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/plan"
	"strake/sheet"
)

// No text lies on another, and every candidate has its rows.
func TestChoicesSheet(t *testing.T) {
	for _, e := range examples.List() {
		data, err := examples.Read(e.Name)
		if err != nil {
			t.Fatal(err)
		}
		j, _, err := jobfile.ReadJob(e.Name, data)
		if err != nil {
			t.Fatal(err)
		}
		c := plan.Choose(j)
		if len(c.Candidates) < 2 {
			t.Errorf("%s: %d candidates", e.Name, len(c.Candidates))
		}
		s := Choices(c)
		var texts []sheet.Text
		polygons := 0
		for _, it := range s.Items {
			switch v := it.(type) {
			case sheet.Text:
				texts = append(texts, v)
			case sheet.Polygon:
				polygons++
			}
		}
		want := 0
		for _, k := range c.Candidates {
			want += len(k.Aligned.Bare)
			for _, f := range k.Fields {
				want += len(f.Layout.Runs)
			}
		}
		if polygons != want {
			t.Errorf("%s: %d outlines, want %d", e.Name, polygons, want)
		}
		for i, a := range texts {
			for _, b := range texts[:i] {
				x, y := a.Box(), b.Box()
				if sheet.Overlap(x[:], y[:]) {
					t.Errorf("%s: %q lies on %q", e.Name, a.Text, b.Text)
				}
			}
		}
	}
}
