package drawing

import (
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"strake/finding"
	"strake/internal/rooms"
	"strake/internal/sample"
	"strake/jobfile"
	"strake/plan"
	"strake/setout"
	"strake/sheet"
	"strake/stock"
	"strake/words"
)

// marks are what is on a sheet, by what may not lie on what.
type marks struct {
	texts   []sheet.Text
	heavy   []sheet.Polyline // walls, joints, seams, splines, lines to snap, arrows' shafts
	leaders []sheet.Polyline // from a row's name to the row
	black   []sheet.Polygon  // arrow heads, dots
	pieces  []sheet.Polygon
}

func marksOf(s sheet.Sheet) (m marks) {
	for _, it := range s.Items {
		switch v := it.(type) {
		case sheet.Text:
			m.texts = append(m.texts, v)
		case sheet.Polyline:
			switch {
			case v.Pen.Width >= 0.3:
				m.heavy = append(m.heavy, v)
			case v.Pen.Width == leader.Width:
				m.leaders = append(m.leaders, v)
			}
		case sheet.Polygon:
			switch {
			case v.Fill == sheet.Black:
				m.black = append(m.black, v)
			case strings.HasPrefix(v.Name, "piece-"):
				m.pieces = append(m.pieces, v)
			}
		}
	}
	return m
}

// crosses tells whether a line of no width passes through an outline.
func crosses(o []sheet.Pt, line []sheet.Pt) bool {
	for i := 1; i < len(line); i++ {
		if sheet.Overlap(o, strip(line[i-1], line[i], 0.01)) {
			return true
		}
	}
	return false
}

// faults are the rules of a sheet that it breaks:
//
//   - writing keeps on the sheet and off other writing;
//   - it covers no wall, joint, seam, spline, working line or line to snap;
//   - it covers no arrow and no dot;
//   - the line from a row's name to the row passes over no board and no writing.
func faults(s sheet.Sheet) []string {
	m := marksOf(s)
	var out []string
	bad := func(f string, v ...any) { out = append(out, fmt.Sprintf(f, v...)) }
	page := box{sheet.Pt{}, sheet.Pt{X: s.W, Y: s.H}}
	for i, t := range m.texts {
		b := t.Box()
		if !page.holds(b[:]) {
			bad("%q leaves the sheet at %.1f", t.Text, t.At)
		}
		for _, o := range m.texts[:i] {
			if c := o.Box(); sheet.Overlap(b[:], c[:]) {
				bad("%q lies on %q at %.1f", t.Text, o.Text, t.At)
			}
		}
		core := grown(t, -0.1)
		for _, l := range m.heavy {
			if crosses(core, l.Points) {
				bad("%q at %.1f lies on a line of %v mm", t.Text, t.At, l.Pen.Width)
			}
		}
		for _, p := range m.black {
			if sheet.Overlap(core, p.Rings[0]) {
				bad("%q at %.1f lies on an arrow or dot", t.Text, t.At)
			}
		}
		for _, l := range m.leaders {
			if crosses(core, l.Points) {
				bad("%q at %.1f lies on the line to a row", t.Text, t.At)
			}
		}
	}
	for _, l := range m.leaders {
		a, b := l.Points[0], l.Points[len(l.Points)-1]
		for _, p := range m.pieces {
			for k := 0.02; k < 0.99; k += 0.02 {
				if q := between(a, b, k); length(b.Sub(q)) > 1 && inside(p.Rings, q) {
					bad("the line to a row at %.1f passes over %s", b, p.Name)
					break
				}
			}
		}
	}
	return out
}

// missing is what a person needs and does not find: each row's number and each
// wall's length on the plan, each corner's letter on both sheets, each line with
// its two marks and each line through a doorway on the sheet of lines.
//
// Where nothing is free in or beside a row it goes without a number: unnamed
// counts these.
func missing(p plan.Plan, floor, snap sheet.Sheet) (out []string, unnamed int) {
	need := func(s sheet.Sheet, what string, wanted []string) {
		have := map[string]int{}
		for _, t := range texts(s) {
			have[t.Text]++
		}
		for _, w := range wanted {
			if have[w]--; have[w] < 0 {
				out = append(out, fmt.Sprintf("%s: %q is not told", what, w))
			}
		}
	}
	d := newDraw(p, usual)
	var corners, walls, rows, lines []string
	for _, r := range p.Floor.Rooms {
		corners = append(corners, r.Names...)
	}
	for _, w := range words.Walls(p) {
		walls = append(walls, w.Name+"  "+d.say.Of(span(w.From, w.To)))
	}
	for _, r := range p.Lay.Runs {
		// A tip that is smaller than a number may go without.
		if lo, hi := r.Outline.Box(); d.on(hi.Y-lo.Y) > 2.8 && d.on(hi.X-lo.X) > 7 {
			rows = append(rows, words.Row(r))
		}
	}
	all, _ := setout.Lines(p)
	for _, l := range all {
		row := "row " + words.RowPart(l.Row, l.Part)
		if l.Start {
			row += ", start"
		}
		lines = append(lines, row, d.say.Rip(l.Left.At)+" from "+l.Left.From.Short, d.say.Rip(l.Right.At)+" from "+l.Right.From.Short)
	}
	need(floor, "plan", rows)
	unnamed = len(out)
	out = nil
	need(floor, "plan", append(walls, corners...))
	need(snap, "lines", append(lines, corners...))
	n := 0
	for _, t := range texts(snap) {
		if strings.Contains(t.Text, " from jamb at ") || strings.Contains(t.Text, " the face") && strings.HasPrefix(t.Text, "row ") {
			n++
		}
	}
	if want := len(setout.DoorLines(p)); n < want {
		out = append(out, fmt.Sprintf("lines: %d of %d doorways told", n, want))
	}
	return out, unnamed
}

// shipped are the jobs in the tree, and some of them otherwise.
func shipped(t *testing.T) map[string][]byte {
	out := map[string][]byte{}
	for _, g := range []string{"../examples/*.yaml", "../examples/cases/*.yaml"} {
		files, err := filepath.Glob(g)
		if err != nil || len(files) < 3 {
			t.Fatalf("%s: %v, %v", g, files, err)
		}
		for _, f := range files {
			data, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			out[filepath.Base(f)] = data
		}
	}
	turn := func(name, old, new string) {
		s := strings.Replace(string(out[name]), old, new, 1)
		if s == string(out[name]) {
			t.Fatalf("%s: no %q", name, old)
		}
		out[name+", "+new] = []byte(s)
	}
	turn("ring-hall.yaml", "{rows_along: A-B}", "{turned_by: 45}")
	turn("ring-hall.yaml", "{rows_along: A-B}", "{turned_by: 30}")
	turn("ticket-office.yaml", "rows_along: P-Q", "turned_by: 45")
	turn("ferry-parlour.yaml", "rows_along: A-B", "turned_by: 20")
	turn("three-rooms.yaml", "{rows_along: A-B}", "{turned_by: 30}")
	turn("closet-behind.yaml", "{rows_along: A-B, start_wall: A-B}", "{rows_along: J-A}")
	return out
}

// hold draws the sheets of a job, with its boards or bare, and tells what breaks
// a rule.
func hold(t *testing.T, name string, data []byte, choices, bare bool) (drawn bool, rows, unnamed int) {
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, data)
	}
	if bare {
		j.Boards.Known = stock.Unknown
	}
	p := plan.MakeWithin(context.Background(), j, 0)
	if finding.Worst(p.Findings) == finding.Stop && len(p.Lay.Runs) == 0 {
		return false, 0, 0
	}
	sheets := map[string]sheet.Sheet{"plan": Floor(p), "lines": Lines(p)}
	if choices {
		sheets["choices"] = Choices(plan.Choose(j))
	}
	wants, none := missing(p, sheets["plan"], sheets["lines"])
	for _, w := range wants {
		t.Errorf("%s: %s", name, w)
	}
	for what, s := range sheets {
		for _, f := range faults(s) {
			t.Errorf("%s, %s: %s", name, what, f)
		}
	}
	return true, len(p.Lay.Runs), none
}

func TestNothingOverlaps(t *testing.T) {
	for name, data := range shipped(t) {
		drawn, rows, unnamed := hold(t, name, data, true, false)
		if !drawn || unnamed*50 > rows || unnamed > 0 && !strings.Contains(name, "turned_by") {
			t.Errorf("%s: drawn: %v, %d of %d rows without a number", name, drawn, unnamed, rows)
		}
	}
}

func TestNothingOverlapsInRandomRooms(t *testing.T) {
	n, drawn, rows, unnamed := 200, 0, 0, 0
	if testing.Short() {
		n = 25
	}
	for i := range n {
		ok, r, u := hold(t, fmt.Sprintf("random room %d", i), []byte(rooms.Job(rand.New(rand.NewPCG(uint64(i), 17)))), i%4 == 0, i%2 == 1)
		if rows, unnamed = rows+r, unnamed+u; ok {
			drawn++
		}
	}
	if drawn < n*9/10 || unnamed*200 > rows {
		t.Errorf("%d of %d random rooms are drawn, %d of %d rows without a number", drawn, n, unnamed, rows)
	}
	t.Logf("%d of %d random rooms are drawn, %d of %d rows without a number", drawn, n, unnamed, rows)
}

// The rules can be broken: each sees what breaks it.
func TestRulesSee(t *testing.T) {
	clean := Floor(sample.Rectangle())
	m := marksOf(clean)
	if got := faults(clean); len(got) > 0 || len(m.pieces) == 0 {
		t.Fatalf("to begin with: %v", got)
	}
	word := m.texts[3]
	b := word.Box()
	mid := between(b[0], b[2], 0.5)
	on := m.pieces[0].Rings[0]
	in := between(on[0], on[2], 0.5)
	for what, it := range map[string]sheet.Item{
		"lies on \"":   word,
		"leaves":       sheet.Text{Text: "away", Size: 3, At: sheet.Pt{X: clean.W - 1, Y: 9}},
		"a line of":    sheet.Polyline{Points: []sheet.Pt{b[0], b[2]}, Pen: joint},
		"arrow or dot": sheet.Polygon{Rings: [][]sheet.Pt{disc(mid, 0.4)}, Fill: sheet.Black},
		"passes over":  sheet.Polyline{Points: []sheet.Pt{in, in.Add(sheet.Pt{X: -200})}, Pen: leader},
		"line to a":    sheet.Polyline{Points: []sheet.Pt{b[0], b[2]}, Pen: leader},
	} {
		s := clean
		s.Items = append(append([]sheet.Item(nil), clean.Items...), it)
		if got := strings.Join(faults(s), "\n"); !strings.Contains(got, what) {
			t.Errorf("%q is not seen: %s", what, got)
		}
	}
}
