package packet

import (
	"context"
	"flag"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"strake/internal/rooms"
	"strake/internal/sample"
	"strake/jobfile"
	"strake/paper"
	"strake/plan"
	"strake/schedule"
	"strake/schedule/takeoff"
	"strake/sheet"
	"strake/tape"
)

var update = flag.Bool("update", false, "write the golden files")

// kept holds what was made for shipped jobs, which several tests look at.
var kept sync.Map

// made is all that goes into the packet of a job.
func made(t *testing.T, name string, data []byte) In {
	t.Helper()
	if in, ok := kept.Load(string(data)); ok {
		return in.(In)
	}
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatal(err)
	}
	in := of(plan.Make(context.Background(), j))
	if !strings.HasPrefix(name, "random") {
		kept.Store(string(data), in)
	}
	return in
}

func of(p plan.Plan) In {
	in := In{Plan: p, Choices: plan.Choose(p.Job), Goods: p.Goods(), Calendar: schedule.Make(takeoff.Of(p), p.Job.Schedule)}
	in.Purchases = p.Purchases(context.Background(), plan.Effort{Lays: 200, Workers: 2})
	return in
}

// shipped are the jobs in examples.
func shipped(t *testing.T) map[string][]byte {
	t.Helper()
	out := map[string][]byte{}
	for _, dir := range []string{"../examples", "../examples/cases"} {
		files, err := filepath.Glob(dir + "/*.yaml")
		if err != nil || len(files) == 0 {
			t.Fatalf("no jobs in %s: %v", dir, err)
		}
		for _, f := range files {
			data, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			out[strings.TrimSuffix(filepath.Base(f), ".yaml")] = data
		}
	}
	return out
}

func texts(s sheet.Sheet) []sheet.Text {
	var out []sheet.Text
	for _, it := range s.Items {
		if t, ok := it.(sheet.Text); ok && t.Text != "" {
			out = append(out, t)
		}
	}
	return out
}

// faults are texts of a page that lie on one another or leave it.
func faults(s sheet.Sheet) []string {
	var out []string
	ts := texts(s)
	boxes := make([][4]sheet.Pt, len(ts))
	for i, t := range ts {
		boxes[i] = inked(t)
		for _, p := range boxes[i] {
			if p.X < 0 || p.Y < 0 || p.X > s.W || p.Y > s.H {
				out = append(out, fmt.Sprintf("%q leaves the page at %.1f, %.1f", t.Text, p.X, p.Y))
				break
			}
		}
	}
	for i, a := range boxes {
		for k := i + 1; k < len(boxes); k++ {
			if far(a, boxes[k]) {
				continue
			}
			if sheet.Overlap(a[:], boxes[k][:]) {
				out = append(out, fmt.Sprintf("%q lies on %q at %.1f, %.1f", ts[i].Text, ts[k].Text, ts[i].At.X, ts[i].At.Y))
			}
		}
	}
	return out
}

// far tells at once of most pairs that they do not meet.
func far(a, b [4]sheet.Pt) bool {
	d := a[0].Sub(b[0])
	reach := length(a[2].Sub(a[0])) + length(b[2].Sub(b[0]))
	return length(d) > reach
}

func length(p sheet.Pt) float64 { return math.Hypot(p.X, p.Y) }

// inked is the box of a text in the letters that it is printed in; one without letters
// that hang below the line, as figures are, takes up nothing there.
func inked(t sheet.Text) [4]sheet.Pt {
	b := t.PrintedBox()
	if strings.ContainsAny(t.Text, "gjpqy(),;[]Q_@") {
		return b
	}
	up := b[3].Sub(b[0]).Times(0.21 / 0.98) // of the box, what lies below the line
	b[0], b[1] = b[0].Add(up), b[1].Add(up)
	return b
}

func hold(t *testing.T, name string, sheets []sheet.Sheet, paper Paper) {
	t.Helper()
	for i, s := range sheets {
		if (s.W != paper.W || s.H != paper.H) && (s.W != paper.H || s.H != paper.W) {
			t.Errorf("%s, page %d is %v by %v mm: not %s", name, i+1, s.W, s.H, paper.Name)
		}
		for _, f := range faults(s) {
			t.Errorf("%s, page %d, %s: %s", name, i+1, s.Title, f)
		}
	}
}

func TestNothingOverlaps(t *testing.T) {
	for name, data := range shipped(t) {
		in := made(t, name, data)
		for _, p := range []Paper{A4, Letter} {
			hold(t, name, Sheets(in, p), p)
		}
	}
}

func TestNothingOverlapsInRandomRooms(t *testing.T) {
	n, groups := 200, 4
	if testing.Short() {
		n = 16
	}
	var laid atomic.Int64
	t.Run("rooms", func(t *testing.T) {
		for g := range groups {
			t.Run(fmt.Sprintf("group %d", g), func(t *testing.T) {
				t.Parallel()
				for i := g; i < n; i += groups {
					name := fmt.Sprintf("random room %d", i)
					in := made(t, name, []byte(rooms.Job(rand.New(rand.NewPCG(uint64(i), 23)))))
					if len(in.Plan.Lay.Runs) > 0 {
						laid.Add(1)
					}
					p := []Paper{A4, Letter}[i/groups%2]
					hold(t, name, Sheets(in, p), p)
				}
			})
		}
	})
	if int(laid.Load()) < n*9/10 {
		t.Errorf("only %d of %d are laid", laid.Load(), n)
	}
}

// The rule can be broken.
func TestFaultsAreSeen(t *testing.T) {
	s := sheet.Sheet{W: 100, H: 100}
	s.Put(sheet.Text{Text: "one", At: sheet.Pt{X: 10, Y: 10}, Size: 4}, sheet.Text{Text: "two", At: sheet.Pt{X: 12, Y: 11}, Size: 4}, sheet.Text{Text: "away", At: sheet.Pt{X: 95, Y: 50}, Size: 4})
	got := strings.Join(faults(s), "; ")
	if !strings.Contains(got, `"one" lies on "two"`) || !strings.Contains(got, `"away" leaves`) {
		t.Errorf("seen: %s", got)
	}
}

// written is what a packet says, page by page, in the order it is drawn.
func written(sheets []sheet.Sheet) string {
	var b strings.Builder
	for i, s := range sheets {
		fmt.Fprintf(&b, "== %d %s, %v by %v mm, %d items\n", i+1, s.Title, s.W, s.H, len(s.Items))
		for _, t := range texts(s) {
			b.WriteString(t.Text + "\n")
		}
	}
	return b.String()
}

func TestGolden(t *testing.T) {
	jobs := shipped(t)
	for _, name := range []string{"ferry-parlour", "ticket-office", "sail-loft"} {
		in := made(t, name, jobs[name])
		in.Purchases = nil // simulated; tested where they are made
		size := A4
		if in.Plan.Job.Unit.Imperial() {
			size = Letter
		}
		got := written(Sheets(in, size))
		file := filepath.Join("testdata", name+".txt")
		if *update {
			if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if got != string(want) {
			t.Errorf("%s says something else than %s; look at the difference, then go test ./packet -update", name, file)
		}
	}
}

// The same plan gives the same pages.
func TestSame(t *testing.T) {
	in := of(sample.Hearth())
	if a, b := written(Sheets(in, Letter)), written(Sheets(in, Letter)); a != b {
		t.Error("two packets of one plan differ")
	}
}

// Every piece of the plan stands on one row card, with its length; every cut that is
// made in one batch.
func TestCardsHoldEveryPiece(t *testing.T) {
	for name, data := range shipped(t) {
		in := made(t, name, data)
		d := newDesk(in, A4)
		d.cards()
		rows := 0
		seen := map[string]bool{}
		for _, w := range d.walks {
			if len(w.rows) == 0 || len(w.rows) > rowsOnCard {
				t.Errorf("%s: a card of %d rows", name, len(w.rows))
			}
			for _, r := range w.rows {
				rows++
				if seen[fmt.Sprint(r.Order)] {
					t.Errorf("%s: row %s stands twice", name, r.Name)
				}
				seen[fmt.Sprint(r.Order)] = true
			}
		}
		if rows != len(in.Plan.Lay.Runs) {
			t.Errorf("%s: %d rows on cards, %d in the plan", name, rows, len(in.Plan.Lay.Runs))
		}
		have := map[string]int{}
		for _, l := range d.pages {
			for _, x := range texts(l.Sheet) {
				if x.Size > 6 && !x.Bold { // titles are bold
					if x.Size < Numeral && x.Printed() < 200 {
						t.Errorf("%s: %q on a card is set in %.1f mm, not %.1f", name, x.Text, x.Size, Numeral)
					}
					have[strings.Trim(x.Text, "()")]++
				}
			}
		}
		want := map[string]int{}
		for _, p := range in.Plan.Lay.Pieces { // from the plan itself, not from the list of rows
			lo, hi := p.Outline.Box()
			want[d.bareSaw(hi.X-lo.X)]++
		}
		for s, n := range want {
			if have[s] < n {
				t.Errorf("%s: length %s stands %d times on cards, %d pieces are as long", name, s, have[s], n)
			}
		}
	}
}

// Every cut of the cut list stands in a batch once.
func TestBatchesHoldEveryCut(t *testing.T) {
	for name, data := range shipped(t) {
		in := made(t, name, data)
		d := newDesk(in, Letter)
		d.cards()
		d.pages = nil
		d.batches()
		ticks := 0
		for _, l := range d.pages {
			for _, it := range l.Items {
				if g, ok := it.(sheet.Polygon); ok && g.Fill == sheet.White {
					ticks++
				}
			}
		}
		want := 0
		for _, c := range paper.CutList(in.Plan) {
			if !c.Same {
				want++
			}
		}
		if ticks != want {
			t.Errorf("%s: %d cuts to tick, the list has %d", name, ticks, want)
		}
	}
}

// What closes a row at a wall, has a notch or ends at what stays is measured first;
// whole boards never are.
func TestMeasureFirst(t *testing.T) {
	first := 0
	for name, data := range shipped(t) {
		in := made(t, name, data)
		d := newDesk(in, A4)
		for _, r := range paper.Rows(in.Plan) {
			for _, p := range r.Pieces {
				m := d.first(r, p).any()
				if m {
					first++
				}
				if p.Whole && m {
					t.Errorf("%s: whole board %s of row %s is to be measured", name, p.Board, r.Name)
				}
				if slices.ContainsFunc(paper.Work(p, d.saw), func(s string) bool { return paper.IsNotch(s) && !strings.HasPrefix(s, "saw the corner off") }) && !m {
					t.Errorf("%s: row %s piece %d has a notch and is cut unmeasured", name, r.Name, p.No)
				}
			}
		}
	}
	if first == 0 {
		t.Error("nothing at all is measured first")
	}
}

// At a wall that base and shoe cover a piece is marked on the loose row, for one walk to
// the saw; at what stays it waits until the row beside it is nailed.
func TestLooseOrFirst(t *testing.T) {
	loose, first := 0, 0
	for name, data := range shipped(t) {
		d := newDesk(made(t, name, data), A4)
		for _, r := range paper.Rows(d.in.Plan) {
			for _, p := range r.Pieces {
				f := d.first(r, p)
				if f.loose && f.length {
					t.Errorf("%s: row %s piece %d is both", name, r.Name, p.No)
				}
				for k, e := range []paper.End{r.Left, r.Right} {
					if at := []int{1, len(r.Pieces)}[k]; p.No != at || !p.Sawn[k] {
						continue
					}
					switch {
					case f.loose && !d.kept[e.Edge]:
						loose++
					case d.kept[e.Edge] && !f.length:
						t.Errorf("%s: row %s piece %d ends at %s and is cut unmeasured", name, r.Name, p.No, e.Edge)
					case f.length:
						first++
					}
				}
			}
		}
	}
	if loose < 30 || first < 10 {
		t.Errorf("%d pieces are marked on the loose row, %d measured first", loose, first)
	}
}

// Where both ends of a row come to the jambs of one doorway they are told apart.
func TestJambsToldApart(t *testing.T) {
	n := 0
	for name, data := range shipped(t) {
		d := newDesk(made(t, name, data), A4)
		for _, r := range paper.Rows(d.in.Plan) {
			if !strings.HasPrefix(r.Left.Edge, "jamb of ") || r.Left.Edge != r.Right.Edge {
				continue
			}
			n++
			if a, b := d.toward(r, false), d.toward(r, true); a == b {
				t.Errorf("%s: row %s, both ends %q", name, r.Name, a)
			}
		}
	}
	if n == 0 {
		t.Error("no row lies in a doorway")
	}
}

// The strips of a story stick bear every row's front once, each where it belongs at
// full size: the top edge's distance and the way down the strip add up.
func TestStoryStickIsFullSize(t *testing.T) {
	in := made(t, "sail-loft", shipped(t)["sail-loft"])
	d := newDesk(in, A4)
	d.storyStick()
	rows := 0
	for _, l := range d.pages {
		bar := 0.0
		for _, it := range l.Items {
			if p, ok := it.(sheet.Polyline); ok && len(p.Points) == 2 && p.Points[0].Y == p.Points[1].Y && p.Points[0].X == l.body.x && p.Pen.Width == rule.Width {
				if w := p.Points[1].X - p.Points[0].X; w < 120 && w > 90 {
					bar = w
				}
			}
		}
		if bar != checkBar {
			t.Errorf("check bar of %v mm", bar)
		}
		rows += marksHold(t, l, d)
	}
	if rows < 25 {
		t.Errorf("%d rows have a mark", rows)
	}
}

// marksHold holds each row's mark on a page to the figure written beside it.
func marksHold(t *testing.T, l *leaf, d *desk) int {
	t.Helper()
	type strip struct {
		x, top float64
		from   tape.Length
	}
	var strips []strip
	read := func(s string) tape.Length {
		v, err := tape.Parse(s, tape.UnitMillimetre)
		if err != nil {
			t.Fatalf("%q: %v", s, err)
		}
		return v
	}
	ts := texts(l.Sheet)
	for _, x := range ts {
		if _, s, ok := strings.Cut(x.Text, ". top edge at "); ok {
			strips = append(strips, strip{x.At.X - 1, l.topOf(x.At.X - 1), read(s)})
		}
	}
	n := 0
	for i, x := range ts {
		if !strings.HasPrefix(x.Text, "row ") || x.Size != 4 {
			continue
		}
		for _, s := range strips {
			if x.At.X-s.x != 4 {
				continue
			}
			n++
			want := (read(ts[i+1].Text) - s.from).Millimetres()
			line := x.At.Y - 4.4 - s.top
			if above := x.At.Y + 1 + figureUnder - s.top; (line-want)*(line-want) > 0.3 && (above-want)*(above-want) > 0.3 {
				t.Errorf("%s at %s lies %.2f mm under the top edge, want %.2f", x.Text, ts[i+1].Text, line, want)
			}
		}
	}
	return n
}

// topOf is where the strip at x begins.
func (l *leaf) topOf(x float64) float64 {
	for _, it := range l.Items {
		if p, ok := it.(sheet.Polyline); ok && p.Points[0].X == x && p.Points[1].X == x+stripWide {
			return p.Points[0].Y
		}
	}
	return -1
}

// A name that is longer than a page is wide does not run off it.
func TestLongName(t *testing.T) {
	in := of(sample.Hearth())
	in.Plan.Job.Name = strings.Repeat("The room over the cooper's shop ", 5)
	in.Choices.Job.Name = in.Plan.Job.Name
	hold(t, "long name", Sheets(in, A4)[:4], A4)
}

// Brackets stand at what is measured: a length that a row ends in by measure, a rip of a
// closing row or the starter, a notch; never at the length of a board that is not cut.
func TestBracketsStandAtWhatIsMeasured(t *testing.T) {
	lengths, rips := 0, 0
	for name, data := range shipped(t) {
		d := newDesk(made(t, name, data), A4)
		for _, r := range paper.Rows(d.in.Plan) {
			for _, p := range r.Pieces {
				f := d.first(r, p)
				if f.length {
					lengths++
				}
				if f.length && !p.Sawn[0] && !p.Sawn[1] && !p.InPlace {
					t.Errorf("%s: row %s piece %d is not cut to length, and is to be measured", name, r.Name, p.No)
				}
				if f.rip != p.Cuts.Rip.Done {
					t.Errorf("%s: row %s piece %d is ripped: %v, measured: %v", name, r.Name, p.No, p.Cuts.Rip.Done, f.rip)
				}
				for _, s := range d.work(r, p) {
					if strings.HasPrefix(s, "rip to") || strings.HasPrefix(s, "taper from") || f.notch && paper.IsNotch(s) {
						t.Errorf("%s: row %s piece %d: %q without brackets", name, r.Name, p.No, s)
					}
				}
				if f.rip {
					rips++
				}
			}
		}
	}
	if lengths == 0 || rips == 0 {
		t.Errorf("%d lengths, %d rips are measured first", lengths, rips)
	}
}
