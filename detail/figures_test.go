package detail

import (
	"context"
	"fmt"
	"maps"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"strake/fasten"
	"strake/floor"
	"strake/jobfile"
	"strake/lay"
	"strake/plan"
	"strake/room"
	"strake/section"
	"strake/sheet"
	"strake/stock"
	"strake/tape"
	"strake/trim"
)

// drawn reads a detail back in real mm.
type drawn struct {
	t     *testing.T
	d     Detail
	scale float64
}

func read(t *testing.T, d Detail) drawn {
	t.Helper()
	for _, s := range scales {
		if s.name == d.Scale {
			return drawn{t, d, s.is}
		}
	}
	t.Fatalf("%s: scale %q", d.Name, d.Scale)
	return drawn{}
}

// box is the box of a polygon or line by its name without the detail's, y up.
func (d drawn) box(name string) (x0, y0, x1, y1 float64) {
	d.t.Helper()
	x0, y0, x1, y1 = math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	take := func(ps []sheet.Pt) {
		for _, p := range ps {
			x, y := p.X/d.scale, -p.Y/d.scale
			x0, y0, x1, y1 = min(x0, x), min(y0, y), max(x1, x), max(y1, y)
		}
	}
	for _, it := range d.d.Items {
		switch it := it.(type) {
		case sheet.Polygon:
			if it.Name == d.d.Name+": "+name {
				take(it.Rings[0])
			}
		case sheet.Polyline:
			if it.Name == name {
				take(it.Points)
			}
		}
	}
	if x1 < x0 {
		d.t.Fatalf("%s: no %q", d.d.Name, name)
	}
	return
}

func (d drawn) is(what string, got float64, want tape.Length) {
	d.t.Helper()
	if math.Abs(got-want.Millimetres()) > 1e-6 {
		d.t.Errorf("%s: %s is drawn %.4f mm, the job has %.4f", d.d.Name, what, got, want.Millimetres())
	}
}

// byName are the details of a plan by their names.
func byName(p plan.Plan) map[string]Detail {
	out := map[string]Detail{}
	for _, d := range Of(p) {
		out[d.Name] = d
	}
	return out
}

// The gap drawn at walls is the one that the floor has there, base and shoe are as
// thick as in the job.
func TestGapsDrawn(t *testing.T) {
	all, found := jobs(t), 0
	for _, name := range slices.Sorted(maps.Keys(all)) {
		p := planOf(t, name, all[name])
		for n, d := range byName(p) {
			if !strings.HasPrefix(n, "gap-") {
				continue
			}
			beside := !strings.HasPrefix(n, "gap-row-ends")
			r := wallRange(p, beside)
			b := read(t, d)
			_, _, wall, _ := b.box("wall")
			board, _, _, _ := b.box("board")
			b.is(name+" least gap", board-wall, r.Least)
			if r.Play() > 0 {
				far, _, _, _ := b.box("farthest")
				b.is(name+" greatest gap", far-wall, r.Greatest)
			}
			x0, low, x1, _ := b.box("base")
			b.is(name+" base", x1-x0, p.Job.Base)
			s0, _, s1, _ := b.box("shoe")
			b.is(name+" shoe", s1-s0, p.Job.Shoe)
			_, y0, _, y1 := b.box("board")
			b.is(name+" thickness", y1-y0, p.Job.Boards.Thickness)
			if low <= y1 {
				t.Errorf("%s: the base lies on the board without air", name)
			}
			found++
		}
	}
	if found < len(all) {
		t.Errorf("%d gaps in %d jobs", found, len(all))
	}
}

// wallRange is the range of the first wall of the floor, all of which have one
// here.
func wallRange(p plan.Plan, beside bool) floor.Range {
	for _, e := range p.Floor.Edges {
		if e.Kind == floor.Wall && e.Wall[0] != "" {
			if beside {
				return e.Sides
			}
			return e.Ends
		}
	}
	return floor.Range{}
}

// Both floors at an opening are as high as the job says, boards end at their gap,
// and the strip lies over both.
func TestOpeningsDrawn(t *testing.T) {
	all := jobs(t)
	strips := map[trim.Strip]bool{}
	for _, name := range slices.Sorted(maps.Keys(all)) {
		p := planOf(t, name, all[name])
		h, told := p.HeightSheet()
		ds := byName(p)
		for _, m := range h.Meetings {
			d, ok := ds[slug("transition", m.Name)]
			if !ok {
				d, ok = ds[slug("flush", m.Name)]
			}
			if !told || !ok || m.Strip == trim.Nosing {
				continue
			}
			strips[m.Strip] = true
			b := read(t, d)
			_, _, _, zero := b.box("layer 1")
			_, _, end, here := b.box("board")
			b.is(name+" this floor", here-zero, m.Stack.Height())
			if m.Beyond > 0 {
				_, _, _, there := b.box("beyond")
				b.is(name+" floor beyond", there-zero, m.Beyond)
			}
			line, _, _, _ := b.box("where this floor ends")
			e, _ := longest(newWork(p).edges(kindOf(d), func(e floor.AlignedEdge) bool { return e.Name == room.DoorwaySaid(m.Name) }))
			b.is(name+" gap", line-end, e.Range.Least)
			switch m.Strip {
			case trim.None, trim.Ramp:
			default:
				x0, y0, x1, y1 := b.box("strip")
				if far := line - e.Range.Greatest.Millimetres(); x0 >= far || x1 < line-1 || y0 <= zero || y1 <= here {
					t.Errorf("%s: the %s from %.1f to %.1f leaves the joint open", name, m.Strip, x0, x1)
				}
			}
		}
	}
	for _, s := range []trim.Strip{trim.None, trim.TMould, trim.Reducer, trim.Threshold, trim.Ramp} {
		if !strips[s] {
			t.Errorf("no job has a %s", s)
		}
	}
}

func kindOf(d Detail) floor.Kind {
	if strings.HasPrefix(d.Name, "flush") {
		return floor.Flush
	}
	return floor.Transition
}

// A jamb is cut at the sum of what lies under the boards, the board and the room to
// slide in.
func TestJambsDrawn(t *testing.T) {
	all, found := jobs(t), 0
	for _, name := range slices.Sorted(maps.Keys(all)) {
		p := planOf(t, name, all[name])
		h, _ := p.HeightSheet()
		for n, d := range byName(p) {
			if !strings.HasPrefix(n, "jamb-") {
				continue
			}
			sum := h.JambClear
			for _, u := range h.Undercuts {
				if n == slug("jamb", u.Name) {
					sum += u.Shim
				}
			}
			for _, l := range h.Floor {
				sum += l.Thickness
			}
			b := read(t, d)
			_, _, _, zero := b.box("layer 1")
			face, low, _, _ := b.box("jamb")
			b.is(name+" cut", low-zero, sum)
			x0, y0, _, _ := b.box("blade")
			if x0 >= face || y0 > low || y0 < low-1 {
				t.Errorf("%s: the blade at %.2f does not cut at %.2f", name, y0, low)
			}
			face, _, _, _ = b.box("jamb 2")
			_, _, end, _ := b.box("board")
			b.is(name+" under the face", end-face, -p.Job.Limits.JambGreatest.Value)
			_, _, far, _ := b.box("farthest")
			b.is(name+" under the face at most", far-face, -p.Job.Limits.JambLeast.Value)
			found++
		}
	}
	if found < 6 {
		t.Errorf("%d jambs", found)
	}
}

// From the wall to the line is as far as the list of lines says, and the first row
// leaves the gap.
func TestStartDrawn(t *testing.T) {
	all, found := jobs(t), 0
	for _, name := range slices.Sorted(maps.Keys(all)) {
		p := planOf(t, name, all[name])
		s, ok := newWork(p).startOf()
		if !ok || !s.wall {
			continue
		}
		b := read(t, byName(p)["start-line"])
		from, _, _ := s.ends()
		_, _, wall, _ := b.box("wall")
		// The line across lies twice in the drawing: from above and cut; the upright one.
		line := math.NaN()
		for _, it := range b.d.Items {
			if l, ok := it.(sheet.Polyline); ok && l.Name == "line" && l.Points[0].X == l.Points[1].X {
				line = l.Points[0].X / b.scale
			}
		}
		b.is(name+" from wall to line", line-wall, from[0])
		first, _, _, _ := b.box("first")
		lo, hi := p.Job.Limits.GapLeast.Value, p.Job.Base+p.Job.Shoe
		if gap := first - wall; gap < lo.Millimetres()-0.3 || // beside a slanted wall the row is ripped to its ends, which lie a gap off the corners
			gap > hi.Millimetres() {
			t.Errorf("%s: a gap of %.2f at the start", name, gap)
		}
		found++
	}
	if found < 12 {
		t.Errorf("%d starts at a wall", found)
	}
}

// The floor cut through has the board over the sheet, and the fastener's tip as
// deep as it is worked out.
func TestBuildUpDrawn(t *testing.T) {
	all := jobs(t)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		p := planOf(t, name, all[name])
		b := read(t, byName(p)["build-up"])
		h, _ := p.HeightSheet()
		_, _, _, zero := b.box("layer 1")
		x0, _, x1, top := b.box("board")
		b.is(name+" build-up", top-zero, h.Floor.Height())
		b.is(name+" face and tongue", x1-x0, p.Job.Boards.Face+p.Job.Boards.SideTongue)
		next, _, _, _ := b.box("next")
		b.is(name+" row width", next-x0, p.Job.Boards.Pitch())
		f := p.Nailing()
		_, u, _ := f.Use()
		low := math.Inf(1)
		for _, it := range b.d.Items {
			if g, ok := it.(sheet.Polygon); ok && g.Fill == sheet.Black && g.Name == "" && len(g.Rings[0]) == 7 {
				for _, q := range g.Rings[0] {
					low = min(low, -q.Y/b.scale)
				}
			}
		}
		if got := zero + p.Job.Trim.Panel.Millimetres() - low; u.Kind != fasten.Staple && math.Abs(got-u.Tip(f.Paper).Millimetres()) > 1 {
			t.Errorf("%s: tip drawn %.2f down, worked out %.2f", name, got, u.Tip(f.Paper).Millimetres())
		}
	}
}

// A detail is there where the job has such a place, and only there.
func TestPlacesHaveTheirDetails(t *testing.T) {
	all := jobs(t)
	for name, want := range map[string][]string{
		"ferry-parlour":      {"edge-hearth", "jamb-hall-door", "spline", "transition-hall-door"},
		"keepers-kitchen":    {"edge-cabinets", "flush-dining-door", "jamb-cellar-door", "nosing-cellar-door", "transition-porch-door"},
		"between-old-floors": {"old-floor-east-floor", "old-floor-west-floor"},
		"three-turned":       {"jamb-west-door", "turn"},
		"three-headers":      {"header-west-door", "jamb-west-door"},
		"hearth-askew":       {"frame-hearth"},
		"trapezoid":          {},
	} {
		var got []string
		for n := range byName(planOf(t, name, all[name])) {
			if n != "build-up" && n != "start-line" && !strings.HasPrefix(n, "gap-") {
				got = append(got, n)
			}
		}
		slices.Sort(got)
		if !slices.Equal(got, want) {
			t.Errorf("%s: %v, want %v", name, got, want)
		}
	}
}

// Jobs changed at random still make details that keep all rules.
func TestNothingOverlapsAtRandom(t *testing.T) {
	all := jobs(t)
	names := slices.Sorted(maps.Keys(all))
	n := 60
	if testing.Short() {
		n = 20
	}
	for i := range n {
		rng := rand.New(rand.NewPCG(uint64(i), 5))
		name := names[i%len(names)]
		j, _, err := jobfile.ReadJob(name, all[name])
		if err != nil {
			t.Fatal(err)
		}
		of := func(ls ...tape.Length) tape.Length { return ls[rng.IntN(len(ls))] }
		in := tape.Inch
		j.Boards.Known = stock.Unknown
		j.Base, j.Shoe = of(0, in/2, 9*in/16, 16*tape.Millimetre), of(0, in/2, 3*in/4, 14*tape.Millimetre)
		if len(j.Boards.Widths) == 0 {
			j.Boards.Face = of(9*in/4, 4*in, 5*in, 6*in, 8*in, 140*tape.Millimetre)
			j.Boards.TenBoards = 10*j.Boards.Face + of(0, in/4)
		}
		if rng.IntN(2) == 0 {
			j.Unit = []tape.Unit{tape.UnitInch, tape.UnitFoot, tape.UnitMillimetre}[rng.IntN(3)]
		}
		j.Trim.Told, j.Trim.Panel, j.Trim.Sheet, j.Trim.SheetTold = true, of(0, 0, in/4, in/2), of(0, in/32, 3*tape.Millimetre), true
		j.Trim.Openings = nil
		for _, d := range j.Sketch.Doorways {
			if d.Beyond == room.BeyondRoom || rng.IntN(4) == 0 {
				continue
			}
			j.Trim.Openings = append(j.Trim.Openings, trim.Opening{Name: d.Name, Covering: []string{"tile", "carpet", "boards", "sill", "other", ""}[rng.IntN(6)], Known: true,
				Height: of(0, in/4, 5*in/8, 3*in/4, 25*in/32, 7*in/8, in, 5*in/4, 3*in/2), Shim: of(0, 0, in/8), Jambs: trim.Jambs{Told: true, Of: "wood"}})
		}
		p := plan.MakeWithin(context.Background(), j, 0)
		for _, d := range Of(p) {
			for _, f := range faults(d) {
				t.Errorf("%d %s, %s", i, name, f)
			}
		}
	}
}

// The rules can be broken, and are then seen.
func TestFaultsSee(t *testing.T) {
	d := byName(planOf(t, "trapezoid", jobs(t)["trapezoid"]))["start-line"]
	if got := faults(d); len(got) > 0 {
		t.Fatal(got)
	}
	var word sheet.Text
	for _, it := range d.Items {
		if x, ok := it.(sheet.Text); ok {
			word = x
		}
	}
	q := word.Box()
	for want, it := range map[string]sheet.Item{
		"lies on":     word,
		"leaves":      sheet.Text{Text: "away", Size: 3, At: sheet.Pt{X: d.W - 1, Y: 9}},
		"mm high":     sheet.Text{Text: "small", Size: 2, At: sheet.Pt{X: 20, Y: 20}},
		"passes over": sheet.Polyline{Name: "leader", Points: []sheet.Pt{{}, q[0], q[2]}},
	} {
		e := d
		e.Items = append(slices.Clone(d.Items), it)
		if got := strings.Join(faults(e), "\n"); !strings.Contains(got, want) {
			t.Errorf("%q is not seen: %s", want, got)
		}
	}
	e := d
	if e.W = 200; !strings.Contains(fmt.Sprint(faults(e)), "200 by") {
		t.Error("a detail too wide is not seen")
	}
}

func TestSameTwice(t *testing.T) {
	p := planOf(t, "keepers-kitchen", jobs(t)["keepers-kitchen"])
	if !reflect.DeepEqual(Of(p), Of(p)) {
		t.Error("two drawings of one plan differ")
	}
}

// Every polygon with a name has one of its own, in all details together.
func TestNamesAreUnique(t *testing.T) {
	for _, name := range []string{"keepers-kitchen", "ferry-mould", "hearth-askew"} {
		seen := map[string]bool{}
		for _, d := range Of(planOf(t, name, jobs(t)[name])) {
			for _, it := range d.Items {
				g, ok := it.(sheet.Polygon)
				if !ok || g.Name == "" {
					continue
				}
				if seen[g.Name] {
					t.Errorf("%s: %q twice", name, g.Name)
				}
				seen[g.Name] = true
			}
		}
	}
}

// Where a whole board is drawn with its groove to a wall, the boards of the plan
// have their groove there; where its edge is drawn sawn, none has.
func TestEdgesAsLaid(t *testing.T) {
	all, grooved, sawn := jobs(t), 0, 0
	for _, name := range slices.Sorted(maps.Keys(all)) {
		p := planOf(t, name, all[name])
		w := newWork(p)
		for _, f := range p.AllFields() {
			for _, r := range f.Layout.Rips {
				if r.Kind != floor.Wall || f.Kind != lay.Field {
					continue
				}
				want := w.edgeAt(r.Edge) == section.Grooved
				for _, q := range p.Lay.Runs {
					z := p.Lay.Zones[q.Zone]
					if q.Row != r.Row || z.Kind != lay.Field || z.Dir != f.Layout.Dir || len(q.Pieces) == 0 {
						continue
					}
					for _, id := range q.Pieces {
						as := p.Lay.Pieces[id].Ahead
						if r.Above {
							as = p.Lay.Pieces[id].Behind
						}
						switch {
						case want && r.Full() && as != lay.Groove && as != lay.Spline:
							t.Errorf("%s, row %d at %s: drawn with its groove, laid with %s", name, r.Row, r.Edge, as)
						case want && r.Full():
							grooved++
						case !want && as == lay.Ripped:
							sawn++
						}
					}
				}
			}
		}
	}
	if grooved < 10 || sawn < 100 {
		t.Errorf("%d pieces with grooves, %d sawn", grooved, sawn)
	}
}
