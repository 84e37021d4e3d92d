package drawing

import (
	"context"
	"os"
	"slices"
	"strings"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/plan"
	"strake/setout"
	"strake/sheet"
)

// Every line to snap is drawn once, from mark to mark, with what is taped at
// both ends, and no writing lies on other writing.
func TestLinesSheet(t *testing.T) {
	for _, name := range []string{"ferry-parlour", "ticket-office", "three-rooms"} {
		data, err := examples.Read(name)
		if err != nil {
			data, err = os.ReadFile("../examples/cases/" + name + ".yaml")
		}
		if err != nil {
			t.Fatal(err)
		}
		j, _, err := jobfile.ReadJob(name, data)
		if err != nil {
			t.Fatal(err)
		}
		p := plan.MakeWithin(context.Background(), j, 0)
		s := Lines(p)
		lines, taped := 0, 0
		var texts []sheet.Text
		for _, it := range s.Items {
			switch v := it.(type) {
			case sheet.Polyline:
				if len(v.Pen.Dash) > 0 && v.Pen.Width == chain.Width && len(v.Pen.Dash) == len(chain.Dash) {
					lines++
				}
			case sheet.Text:
				texts = append(texts, v)
				if strings.Contains(v.Text, " from ") {
					taped++
				}
			}
		}
		snapped, _ := setout.Lines(p)
		if want := len(snapped); lines != want+len(setout.DoorLines(p)) || taped < 2*want {
			t.Errorf("%s: %d lines and %d marks told, want %d and %d", name, lines, taped, want, 2*want)
		}
		for _, l := range snapped { // each corner that is taped from has its letter
			for _, m := range []setout.Mark{l.Left, l.Right} {
				if m.From.Corner && !slices.ContainsFunc(texts, func(t sheet.Text) bool { return t.Text == m.From.Name }) {
					t.Errorf("%s: taped from %s, which is not named", name, m.From.Name)
				}
			}
		}
		for i, a := range texts {
			for _, b := range texts[:i] {
				x, y := a.Box(), b.Box()
				if sheet.Overlap(x[:], y[:]) {
					t.Errorf("%s: %q lies on %q", name, a.Text, b.Text)
				}
			}
		}
	}
}
