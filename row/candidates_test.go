package row

import (
	"math"
	"slices"
	"testing"

	"strake/floor"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// trapezoid is a room whose end wall is 2 in longer than its start wall's
// other end: 15 ft at one side, 15 ft 2 in at the other.
func trapezoid() room.Built {
	b := rectangle(240, 180)
	b.At["C"] = plane.XY{X: 240 * 25.4, Y: 182 * 25.4}
	b.Doorways = []room.Doorway{{Name: "hall", Wall: room.Wall{"A", "B"}, From: "A", At: in(40), Width: in(32), Thickness: in(4), Ends: in(2), Beyond: room.BeyondTransition}}
	return b
}

func candidates(t *testing.T, b room.Built, w Wishes, joists room.Wall) []Candidate {
	t.Helper()
	lim := limits.Default(in(5), in(0.75))
	f, fs := floor.New(b, floor.Trim{Base: in(0.5), Shoe: in(0.75)}, lim, style)
	if len(f.Rings) == 0 {
		t.Fatal(fs)
	}
	return Candidates(Place{Floor: f, Built: b, Trim: floor.Trim{Base: in(0.5), Shoe: in(0.75)}, Pitch: in(5), Face: in(5), Limits: lim, Wishes: w, Style: style}, joists)
}

// Out of parallel (common practice, no source: each wall may take half of it):
// along one wall all of the taper is at the other, halfway between them each
// has an inch.
func TestTaperIsShared(t *testing.T) {
	b := trapezoid()
	b.Doorways = nil // it would split the taper of its wall in two
	cs := candidates(t, b, Wishes{}, room.Wall{})
	tapers := map[string]map[string]tape.Length{}
	for _, c := range cs {
		tapers[c.Name] = map[string]tape.Length{}
		for _, x := range c.Score.Tapers {
			tapers[c.Name][x.Edge] = x.By
		}
	}
	along, other, half := tapers["along wall C-D"], "wall A-B", tapers["halfway between walls A-B and C-D"]
	if along == nil {
		along, other = tapers["along wall A-B"], "wall C-D"
	}
	if half == nil {
		half = tapers["halfway between walls C-D and A-B"]
	}
	if along == nil || half == nil {
		t.Fatalf("candidates %v", tapers)
	}
	near := func(got tape.Length, want float64) bool { return (got - in(want)).Abs() < in(0.3) } // the play takes 1/4 in
	if !near(along[other], 1.75) || len(along) != 1 {
		t.Errorf("along the wall: %v", along)
	}
	if !near(half["wall A-B"], 0.75) || !near(half["wall C-D"], 0.75) {
		t.Errorf("halfway: %v", half)
	}
}

// Kinds differ, joists and doorways are told, and each start is as good as any
// tried by steps of 1/64 in.
func TestCandidatesAreComparable(t *testing.T) {
	b := trapezoid()
	cs := candidates(t, b, Wishes{}, room.Wall{"B", "C"})
	kinds := map[Kind]bool{}
	for _, c := range cs {
		kinds[c.Kind] = true
		want := AcrossJoists
		through := []string{"hall"}
		if c.Kind == SquareLongest {
			want = AlongJoists
		} else {
			through = nil
		}
		if c.Score.Joists != want || !slices.Equal(c.Score.Through, through) {
			t.Errorf("%s: %s, through %v", c.Name, c.Score.Joists, c.Score.Through)
		}
		lim := limits.Default(in(5), in(0.75))
		p := newProblem(c.Aligned, []tape.Length{in(5)}, lim)
		for o := tape.Length(0); o < in(5); o += tape.SixtyFourth {
			if s := p.at(o); s.narrowest(in(5)) > c.Score.Narrowest {
				t.Fatalf("%s: offset %v leaves %v, chosen %v", c.Name, o, s.narrowest(in(5)), c.Score.Narrowest)
			}
		}
	}
	if len(cs) < 2 || len(cs) > shownCandidates || !kinds[WithLongest] || !kinds[SquareLongest] {
		t.Errorf("%d candidates of kinds %v", len(cs), kinds)
	}
}

// What a wish gives comes first, and an eighth at the start line moves the far
// rip by an eighth the other way.
func TestWishComesFirstAndSlips(t *testing.T) {
	cs := candidates(t, rectangle(240, 144), Wishes{Direction: room.Wall{"B", "C"}}, room.Wall{})
	if cs[0].Name != "along wall B-C" {
		t.Fatalf("first is %s", cs[0].Name)
	}
	lim := limits.Default(in(5), in(0.75))
	for _, s := range Sensitivity(cs[0].Layout, cs[0].Aligned, lim) {
		if s.Rip == in(5) {
			continue
		}
		in8, out8 := s.LineIn-s.Rip, s.LineOut-s.Rip
		if in8.Abs() != tape.Eighth || in8 != -out8 {
			t.Errorf("%s: 1/8 in at the line gives %v and %v", s.Edge, in8, out8)
		}
	}
}

// Rows halfway between two walls on request.
func TestBetweenOnRequest(t *testing.T) {
	b := trapezoid()
	cs := candidates(t, b, Wishes{Between: [2]room.Wall{{"A", "B"}, {"C", "D"}}}, room.Wall{})
	d := cs[0].Layout.Dir
	want := math.Atan2(2, 240) / 2
	if got := math.Abs(math.Atan2(d.Y, d.X)); math.Abs(got-want) > 1e-6 && math.Abs(got-math.Pi+want) > 1e-6 {
		t.Errorf("direction %v, want %v off wall A-B", got, want)
	}
}
