package examples_test

import (
	"math"
	"testing"

	"strake/examples"
	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/room"
	"strake/stock"
	"strake/survey"
	"strake/tape"
)

// The true shapes behind the readings of the examples, invented: corners in
// inches for the jobs in inches, in mm for the loft. The hearth, the
// doorways and the marks are set out along walls, so they have no corners here.
var truth = map[string]map[string][2]float64{
	"sail-loft.yaml": {
		"A": {0, 0}, "B": {5638, 0}, "C": {5641, 4162}, "D": {-2, 4158},
	},
	"ferry-parlour.yaml": {
		"A": {0, 0}, "B": {216.4, 0.6}, "C": {217.0, 122.3}, "D": {131.2, 121.8}, "E": {130.9, 190.5}, "F": {-0.7, 189.8},
		"K": {140.0, 126.4}, "L": {206.1, 126.8}, "M": {206.2, 152.1}, "N": {139.8, 151.7},
	},
	"keepers-kitchen.yaml": {
		"A": {0, 0}, "B": {151.6, 0.4}, "C": {151.9, 123.5}, "D": {-0.5, 123.1},
	},
	"ticket-office.yaml": {
		"P": {0, 0}, "Q": {148.3, 0.2}, "R": {148.0, 118.4}, "S": {0.4, 118.0},
		"T": {-20.5, 123.6}, "U": {183.6, 124.1}, "V": {183.2, 255.0}, "W": {-20.9, 254.6},
	},
}

// markOf is the mark that the tape of each job was read to, and mm its unit.
var markOf = map[string]struct{ mark, unit tape.Length }{
	"sail-loft.yaml":       {tape.Millimetre, tape.Millimetre},
	"ferry-parlour.yaml":   {tape.Sixteenth, tape.Inch},
	"ticket-office.yaml":   {tape.Sixteenth, tape.Inch},
	"keepers-kitchen.yaml": {tape.Sixteenth, tape.Inch},
}

func read(t *testing.T, name string) job.Job {
	t.Helper()
	data, err := examples.Read(name)
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return j
}

func apart(a, b [2]float64) float64 { return math.Hypot(a[0]-b[0], a[1]-b[1]) }

// Each reading of the examples is the true distance to the nearest mark of
// the tape.
func TestReadingsAreTrue(t *testing.T) {
	widths := 0
	for name, at := range truth {
		m, j := markOf[name], read(t, name)
		for _, r := range j.Readings {
			var is float64
			switch r.Kind {
			case survey.Between:
				is = apart(place(j, at, m.unit, r.From), place(j, at, m.unit, r.To))
			case survey.Width:
				is, widths = across(j, at, m.unit, r), widths+1
			default:
				t.Errorf("%s: %s: no example has such readings", name, r.Name())
			}
			exact := tape.Length(math.Round(is * float64(m.unit)))
			if r.Value != tape.Nearest(exact, m.mark) {
				t.Errorf("%s: %s reads %v, and is %v", name, r.Name(), r.Value, tape.Nearest(exact, m.mark))
			}
		}
	}
	if widths != 16 {
		t.Errorf("%d widths in all the examples; want 16", widths)
	}
}

// place is where a corner is, or a point on the face of its wall.
func place(j job.Job, at map[string][2]float64, unit tape.Length, name string) [2]float64 {
	for _, p := range j.Sketch.Points {
		if p.Name == name {
			q := along(at, p.Wall, p.From, float64(p.At)/float64(unit))
			x, y := normal(at, p.Wall)
			out := bow(j, at, unit, p.Wall, apart(at[p.Wall[0]], q))
			return [2]float64{q[0] - x*out, q[1] - y*out}
		}
	}
	return at[name]
}

// normal is square to a wall, into its room: all examples go round
// counter-clockwise.
func normal(at map[string][2]float64, w room.Wall) (x, y float64) {
	a, b := at[w[0]], at[w[1]]
	l := apart(a, b)
	return -(b[1] - a[1]) / l, (b[0] - a[0]) / l
}

// bow is how far a wall lies behind its straight line at a place this far from
// its first corner. No example has more than one bow on a wall.
func bow(j job.Job, at map[string][2]float64, unit tape.Length, w room.Wall, x float64) float64 {
	long := apart(at[w[0]], at[w[1]])
	for _, r := range j.Sketch.Rooms {
		for _, b := range r.Bows {
			if b.Wall != w {
				continue
			}
			top := float64(b.At) / float64(unit)
			if b.From != w[0] {
				top = long - top
			}
			return float64(b.Out) / float64(unit) * math.Min(x/top, (long-x)/(long-top))
		}
	}
	return 0
}

// across is a width: from a mark, square to its wall, to the face of another.
func across(j job.Job, at map[string][2]float64, unit tape.Length, r survey.Reading) float64 {
	var own room.Wall
	for _, p := range j.Sketch.Points {
		if p.Name == r.From {
			own = p.Wall
		}
	}
	p := place(j, at, unit, r.From)
	ux, uy := normal(at, own)
	nx, ny := normal(at, r.Wall)
	a := at[r.Wall[0]]
	far := ((a[0]-p[0])*nx + (a[1]-p[1])*ny) / (ux*nx + uy*ny)
	hit := [2]float64{p[0] + ux*far, p[1] + uy*far}
	return far + bow(j, at, unit, r.Wall, apart(a, hit))
}

// untold are the examples with readings that cannot be told apart: nothing but the
// walls and diagonals was read, or their shape leaves no reading that would.
var untold = map[string]bool{"sail-loft.yaml": true, "keepers-kitchen.yaml": true}

// An example shows a job done well: no reading goes unchecked, none is called
// wrong, and in those that strake measure was followed in, each could be told
// from every other, but for three of the kitchen, where its sheet says so.
func TestReadingsAreChecked(t *testing.T) {
	for name := range truth {
		j := read(t, name)
		for _, f := range survey.Adjust(j.Sketch, j.Readings, j.Tape).Findings(j.Readings, tape.Paper(j.Unit)) {
			if f.Level != finding.Note || f.Rule == "readings that cannot be told apart" && !untold[name] {
				t.Errorf("%s: %s", name, f)
			}
		}
	}
}

// Marks lie on walls, not in openings.
func TestMarksAreOnWalls(t *testing.T) {
	marks := 0
	for name, at := range truth {
		j, m := read(t, name), markOf[name]
		size := func(l tape.Length) float64 { return float64(l) / float64(m.unit) }
		for _, p := range j.Sketch.Points {
			marks++
			q := along(at, p.Wall, p.From, size(p.At))
			for _, d := range j.Sketch.Doorways {
				for _, o := range []struct {
					w    room.Wall
					from string
					at   tape.Length
				}{{d.Wall, d.From, d.At}, {d.OtherWall, d.OtherFrom, d.OtherAt}} {
					if o.w != p.Wall {
						continue
					}
					mid := along(at, o.w, o.from, size(o.at+d.Width/2))
					if apart(q, mid) < size(d.Width)/2+1 {
						t.Errorf("%s: mark %s lies in the %s", name, p.Name, d.Name)
					}
				}
			}
		}
	}
	if marks != 25 {
		t.Errorf("%d marks; want 25", marks)
	}
}

// along is the place at a distance from a corner along a wall.
func along(at map[string][2]float64, w room.Wall, from string, d float64) [2]float64 {
	a, b := at[w[0]], at[w[1]]
	if from == w[1] {
		a, b = b, a
	}
	l := apart(a, b)
	return [2]float64{a[0] + (b[0]-a[0])*d/l, a[1] + (b[1]-a[1])*d/l}
}

// A doorway between two rooms comes out opposite itself: its jambs on both
// sides lie a wall's thickness apart, within half an inch for the walls are
// not quite parallel.
func TestDoorwaysMeet(t *testing.T) {
	met := 0
	for name, at := range truth {
		m := markOf[name]
		for _, w := range read(t, name).Sketch.Doorways {
			if w.Beyond != room.BeyondRoom {
				continue
			}
			met++
			size := func(l tape.Length) float64 { return float64(l) / float64(m.unit) }
			near := along(at, w.Wall, w.From, size(w.At))
			far := along(at, w.Wall, w.From, size(w.At+w.Width))
			a := along(at, w.OtherWall, w.OtherFrom, size(w.OtherAt))
			b := along(at, w.OtherWall, w.OtherFrom, size(w.OtherAt+w.Width))
			d1 := math.Min(apart(near, a), apart(near, b))
			d2 := math.Min(apart(far, a), apart(far, b))
			for _, d := range []float64{d1, d2} {
				if math.Abs(d-size(w.Thickness)) > 0.5 {
					t.Errorf("%s: %s: jambs %.2f apart through a wall of %.2f", name, w.Name, d, size(w.Thickness))
				}
			}
		}
	}
	if met != 2 {
		t.Errorf("%d doorways join rooms; want 2", met)
	}
}

// area is the true area of a room, in square units.
func area(at map[string][2]float64, corners []string) float64 {
	sum := 0.0
	for i, c := range corners {
		a, b := at[c], at[corners[(i+1)%len(corners)]]
		sum += a[0]*b[1] - b[0]*a[1]
	}
	return sum / 2
}

// The parlour's tally is 1.06 to 1.10 times what the floor needs: the rooms
// and doorways less the hearth, in boards as wide as the row.
func TestParlourTally(t *testing.T) {
	j, at := read(t, "ferry-parlour.yaml"), truth["ferry-parlour.yaml"]
	need := 0.0
	for _, r := range j.Sketch.Rooms {
		need += area(at, r.Corners)
	}
	for _, w := range j.Sketch.Doorways {
		depth := w.Ends
		if w.Beyond == room.BeyondRoom {
			depth = w.Thickness
		}
		need += w.Width.Inches() * depth.Inches()
	}
	for _, s := range j.Sketch.Stays {
		need -= s.Width.Inches() * s.Depth.Inches()
	}
	boards, long := 0, 0.0
	for _, c := range j.Boards.Tally {
		boards += c.Count
		long += float64(c.Count) * c.Length.Inches()
	}
	over := long * j.Boards.Pitch().Inches() / need
	t.Logf("%d boards of %.1f in on average, %.3f times the need of %.1f sq ft", boards, long/float64(boards), over, need/144)
	if boards < 200 || over < 1.06 || over > 1.10 {
		t.Errorf("%d boards, %.3f times the need", boards, over)
	}
}

// The first three examples differ in what is known about the lengths, and together
// use every kind.
func TestKindsOfKnowledge(t *testing.T) {
	for name, want := range map[string]stock.Known{"sail-loft.yaml": stock.MixOnly, "ferry-parlour.yaml": stock.Tallied, "ticket-office.yaml": stock.OneSize} {
		if got := read(t, name).Boards.Known; got != want {
			t.Errorf("%s: %s; want %s", name, got, want)
		}
	}
}

// The base and shoe leave a real gap range in each example: what covers the
// edge, less the lap, is more than the least gap.
func TestGapRangesAreReal(t *testing.T) {
	for _, e := range examples.List() {
		j := read(t, e.Name)
		if most := j.Base + j.Shoe - j.Limits.Lap.Value; most <= j.Limits.GapLeast.Value {
			t.Errorf("%s: gap from %v to %v", e.Name, j.Limits.GapLeast.Value, most)
		}
	}
}

func TestList(t *testing.T) {
	for _, e := range examples.List() {
		if len(e.Says) < 20 || e.Says[len(e.Says)-1] != '.' {
			t.Errorf("%s says %q; want a sentence", e.Name, e.Says)
		}
	}
	if _, err := examples.Read("sail-loft"); err != nil {
		t.Error(err)
	}
	if _, err := examples.Read("../go.mod"); err == nil {
		t.Error("read a file that is no example")
	}
}
