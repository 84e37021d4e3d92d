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

// What is taped at an end of a line stands nearer to that end than to the other, and the
// left one's figure is not at the right: a helper tapes from the wall that it stands by.
func TestFiguresStandByTheirEnds(t *testing.T) {
	n := 0
	for _, name := range []string{"ferry-parlour", "ticket-office", "three-rooms", "hearth-askew", "bay-window"} {
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
		d := newDraw(p, usual)
		var texts []sheet.Text
		for _, it := range Lines(p).Items {
			if x, ok := it.(sheet.Text); ok {
				texts = append(texts, x)
			}
		}
		snapped, _ := setout.Lines(p)
		for _, l := range snapped {
			a, b := d.where(l.Left.Place()), d.where(l.Right.Place())
			if length(b.Sub(a)) < 60 { // one end's figure may have to stand off the floor
				continue
			}
			for _, end := range []struct {
				text       string
				own, other sheet.Pt
			}{{d.say.Rip(l.Left.At) + " from " + l.Left.From.Short, a, b}, {d.say.Rip(l.Right.At) + " from " + l.Right.From.Short, b, a}} {
				best := 1e9
				for _, x := range texts {
					if x.Text != end.text {
						continue
					}
					m := middle(x)
					if own := length(m.Sub(end.own)); own < best && own < length(m.Sub(end.other)) {
						best = own
					}
				}
				n++
				if best > max(45, length(b.Sub(a))/3) { // farther along where something that stays lies at the end
					t.Errorf("%s: row %d: %q does not stand by its end of the line", name, l.Row, end.text)
				}
			}
		}
	}
	if n < 80 {
		t.Errorf("only %d figures", n)
	}
}
