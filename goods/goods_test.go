package goods

import (
	"math"
	"slices"
	"strings"
	"testing"

	"strake/fasten"
	"strake/plane"
	"strake/site"
	"strake/tape"
	"strake/trim"
)

const (
	in = tape.Inch
	ft = tape.Foot
)

// den is a room of 12 by 10 ft, rows along its 12 ft.
func den() Floor {
	return Floor{Unit: tape.UnitInch, Style: tape.Paper(tape.UnitInch), Base: in / 2, Shoe: 3 * in / 4, Kerf: in / 8,
		Under:     UnderFloor{Fields: []Field{{plane.Region{plane.Rect(plane.P(0, 0), plane.P(12*ft, 10*ft))}}}, Sheet: "felt", Face: 4 * in},
		Stretches: []Stretch{{Wall: "A-B", Length: 12 * ft}, {Wall: "B-C", Length: 10 * ft}, {Wall: "C-D", Length: 5 * ft}, {Wall: "C-D", From: 8 * ft, Length: 4 * ft}, {Wall: "D-A", Length: 10 * ft}}}
}

func find(t *testing.T, l List, what string) Line {
	t.Helper()
	i := slices.IndexFunc(l.Lines, func(x Line) bool { return strings.HasPrefix(x.What, what) })
	if i < 0 {
		t.Fatalf("no %s in %+v", what, l.Lines)
	}
	return l.Lines[i]
}

func has(l List, what string) bool {
	return slices.ContainsFunc(l.Lines, func(x Line) bool { return strings.HasPrefix(x.What, what) })
}

func TestOutsideMitre(t *testing.T) {
	for _, c := range []struct {
		thick tape.Length
		turn  float64
		want  tape.Length
	}{{in / 2, 90, in / 2}, {3 * in / 4, 90, 3 * in / 4}, {in, 0, 0}, {in, -90, 0}, {in, 45, 7 * in / 16}} { // tan 22.5 = 0.414, up to a sixteenth
		if got := mitre(c.thick, c.turn); got != c.want {
			t.Errorf("%v at %v: %v, want %v", c.thick, c.turn, got, c.want)
		}
	}
}

func TestBaseBought(t *testing.T) {
	f := den()
	f.Stretches[0].Turns = [2]float64{90, 90}
	k := &work{f: f, w: Wants{Base: Buy, FitTold: true, BaseSold: []tape.Length{8 * ft}}.Filled()}
	names, pieces, whole := k.pieces(in/2, k.w.BaseSold, true)
	// 12 ft and 1 in with both mitres: a bar, and 49-1/2 in with a scarf of 1/2 in.
	if whole != 5 || names[0] != "A-B 1a" || pieces[0] != 96*in || pieces[1] != 49*in+in/2 {
		t.Errorf("%v %v of %d", names, pieces, whole)
	}
	// 10 ft: the rest of 24-1/2 in is longer than a stud's spacing.
	if names[2] != "B-C 1a" || pieces[3] != 24*in+in/2 || names[5] != "C-D 2" {
		t.Errorf("%v %v", names, pieces)
	}
}

func TestScarfLeavesNoStub(t *testing.T) {
	got := scarfed(100*in, 96*in, in/2)
	if len(got) != 2 || got[1] != 16*in || got[0]+got[1]-in/2 != 100*in || got[0] > 96*in {
		t.Errorf("%v", got)
	}
	for l := 20 * in; l < 400*in; l += 7 * in / 2 {
		sum := in / 2
		for _, p := range scarfed(l, 96*in, in/2) {
			sum += p - in/2
			if p > 96*in || p < min(l, 16*in) {
				t.Fatalf("%v of %v", p, l)
			}
		}
		if sum != l {
			t.Fatalf("%v is not %v", sum, l)
		}
	}
}

func TestRefitIsNumbered(t *testing.T) {
	x := find(t, Of(den(), Wants{}), "base as it is")
	if x.Count != 5 || !slices.Contains(x.Notes, `C-D 2 48"`) {
		t.Errorf("%+v", x)
	}
}

func TestStrips(t *testing.T) {
	f := den()
	f.Openings = []Opening{{Name: "hall", Strip: trim.TMould, Length: 30 * in}, {Name: "bath", Strip: trim.TMould, Length: 28 * in},
		{Name: "patio", Strip: trim.Threshold, Length: 96 * in}, {Name: "stair", Strip: trim.Nosing, Length: 36 * in}, {Name: "den", Length: 30 * in}}
	l := Of(f, Wants{FitTold: true, DoorJoints: true})
	if x := find(t, l, "T-mould"); x.Count != 1 || x.Unit != "bar" || !strings.Contains(x.Notes[0], `19-7/8"`) && !strings.Contains(x.Notes[0], `20"`) {
		t.Errorf("78 less 30 and 28: %+v", x)
	}
	if x := find(t, l, "threshold"); x.Count != 2 {
		t.Errorf("two pieces of 48: %+v", x)
	}
	if x := find(t, l, "transition strip"); !strings.Contains(x.Do, "measure it") {
		t.Errorf("%+v", x)
	}
	l = Of(f, Wants{FitTold: true})
	if x := find(t, l, "threshold"); x.Unit != "piece" || !strings.Contains(x.Do, "must not be joined") {
		t.Errorf("no joint in a doorway unless allowed: %+v", x)
	}
	f.Openings = []Opening{{Name: "stair", Strip: trim.Nosing, Length: 90 * in}}
	if x := find(t, Of(f, Wants{FitTold: true, DoorJoints: true}), "nosing"); !strings.Contains(x.Do, "must not be joined") {
		t.Errorf("never on a step: %+v", x)
	}
}

func TestSheetsAcrossRows(t *testing.T) {
	f := den()
	// 144 in by 36 less 4: sheets begin at 0, 32, 64, 96; the fourth ends at 132, a fifth at 144.
	n := Unroll(f.Under.Fields, Roll{36 * in, 144 * ft, 4 * in})
	if n.Sheets != 5 || n.Length != 50*ft || n.Rolls != 1 || n.Joined != 0 {
		t.Errorf("%+v", n)
	}
	// Rolls of 15 ft: 10, then 5 and 5 4 in more, and so on: one and a half rolls for every sheet at least.
	n = Unroll(f.Under.Fields, Roll{36 * in, 15 * ft, 4 * in})
	if n.Joined == 0 || n.Length != 50*ft+tape.Length(n.Joined)*4*in || n.Rolls != 4 {
		t.Errorf("%+v", n)
	}
	// An L: sheets beside the notch are short.
	l := plane.Region{plane.Ring{plane.P(0, 0), plane.P(12*ft, 0), plane.P(12*ft, 5*ft), plane.P(6*ft, 5*ft), plane.P(6*ft, 10*ft), plane.P(0, 10*ft)}}
	n = Unroll([]Field{{l}}, Roll{36 * in, 144 * ft, 4 * in})
	if n.Sheets != 5 || n.Length != 3*10*ft+2*5*ft {
		t.Errorf("%+v", n)
	}
}

func TestGlueOrSheet(t *testing.T) {
	for _, c := range []struct {
		name        string
		u           UnderFloor
		glue, sheet bool
	}{
		{"narrow", UnderFloor{Face: 4 * in}, false, true},
		{"wide, nothing told", UnderFloor{Face: 6 * in}, true, false},
		{"wide, a sheet told", UnderFloor{Face: 6 * in, Sheet: "felt"}, false, true},
		{"glue told", UnderFloor{Face: 4 * in, Sheet: "felt", Glue: site.Yes}, true, false},
		{"both allowed", UnderFloor{Face: 4 * in, Sheet: "felt", Glue: site.Yes, Both: true}, true, true},
		{"wide, no glue", UnderFloor{Face: 6 * in, Glue: site.No}, false, true},
	} {
		f := den()
		c.u.Fields = f.Under.Fields
		f.Under = c.u
		l := Of(f, Wants{})
		if got := has(l, "flooring adhesive"); got != c.glue {
			t.Errorf("%s: adhesive %v", c.name, got)
		}
		if got := has(l, "felt, roll"); got != c.sheet {
			t.Errorf("%s: sheet %v", c.name, got)
		}
		if got := has(l, "no sheet under glued boards"); got == c.sheet {
			t.Errorf("%s: the list does not say which", c.name)
		}
	}
	f := den()
	f.Under.Sheet = "polyethylene"
	if l := Of(f, Wants{}); !has(l, "no polyethylene") || has(l, "polyethylene, roll") {
		t.Error("polyethylene is never listed over wood")
	}
}

func TestBeads(t *testing.T) {
	f := den()
	length, lines := Beads(f.Under.Fields, ft) // at 6 in, 18 in ... across 10 ft
	if lines != 12 || length != 120*ft {
		t.Errorf("%v in %d", length, lines)
	}
	f.Under.Glue = site.Yes
	// 120 ft of 1/4 in: pi/64 sq in by 1440 in is 70.7 cu in, 1158 ml, two tubes of 828.
	x := find(t, Of(f, Wants{}), "flooring adhesive")
	if x.Count != 2 || !strings.Contains(x.From, "1158 ml") {
		t.Errorf("%+v", x)
	}
}

func TestFixing(t *testing.T) {
	f := den()
	f.Fixed = Fixed{Known: true, Use: fasten.Use{Kind: fasten.Cleat, Length: 2 * in, Spacing: 8 * in}, Total: fasten.Total{Nailer: 960, Hand: 60, Face: 40}, Box: 1000, Splines: []tape.Length{40 * in, 30 * in}, Cuts: 1200, Rips: 3}
	l := Of(f, Wants{})
	if x := find(t, l, "flooring cleats"); x.Count != 2 { // 960 and 5 % are over a box
		t.Errorf("%+v", x)
	}
	if x := find(t, l, "spline"); x.Count != 3 {
		t.Errorf("%+v", x)
	}
	if x := find(t, l, "saw blade, fine"); x.Count != 2 {
		t.Errorf("%+v", x)
	}
	if x := find(t, Of(den(), Wants{}), "cleats or staples"); x.Count != 0 || x.Do == "" {
		t.Errorf("nothing is counted that is not known: %+v", x)
	}
}

// 180 sq ft of carpet with its pad: 20 square yards, 100 to 200 lb, and by 105 lb
// a cubic yard at most two of those.
func TestTearOut(t *testing.T) {
	f := den()
	f.Out = TearOut{SqFt: 180, Layers: []OutLayer{{What: "carpet", Thickness: in / 2}, {What: "foam", Thickness: in / 2}}}
	l := Of(f, Wants{})
	if x := find(t, l, "carpet and pad"); !strings.Contains(x.From, "100 lb to 200 lb") || !strings.Contains(x.Do, "4 rolls") {
		t.Errorf("%+v", x)
	}
	if x := find(t, l, "disposal"); x.Count != 2 {
		t.Errorf("%+v", x)
	}
	if x := find(t, l, "tack strip"); !strings.Contains(x.From, "41 ft") || !strings.Contains(x.From, "11 sticks") {
		t.Errorf("%+v", x)
	}
	f.Out = TearOut{SqFt: 180, Layers: []OutLayer{{What: "resilient tile", Test: true, Thickness: in / 8}}}
	if l := Of(f, Wants{}); has(l, "disposal") || !strings.Contains(find(t, l, "resilient").Do, "laboratory") {
		t.Error("what may hold asbestos is not counted as rubble")
	}
}

func TestTools(t *testing.T) {
	f := den()
	f.Saws = Saws{Face: 5 * in, Steepest: 45, Rips: 4, Narrowest: 2 * in, Tapers: 1, Longest: 60 * in}
	w := Wants{Tools: []Tool{{Name: Nailer, Have: Rent, Days: 3, Daily: Exactly(40)}, {Name: MitreSaw, Have: Own}}}
	f.Fixed.Use = fasten.Use{Kind: fasten.Cleat, Length: 2 * in}
	l := Of(f, w)
	reach := 5 / math.Cos(math.Pi/4) // 7.07 in
	if x := find(t, l, MitreSaw); !strings.Contains(x.From, "45 degrees") || !strings.Contains(x.From, `7-1/8"`) || reach > 7.125 || x.Do != "Owned." || x.Count != 0 {
		t.Errorf("%+v", x)
	}
	if x := find(t, l, TableSaw); !strings.Contains(x.From, "jig") || !strings.Contains(x.From, "fence") || !strings.Contains(x.From, `2"`) {
		t.Errorf("%+v", x)
	}
	if x := find(t, l, Nailer); x.Total().Likely != 120 {
		t.Errorf("%+v", x)
	}
}

// A price by length is one of a bar; a range goes through to the total.
func TestPrices(t *testing.T) {
	p := Prices{Of: map[Item]Money{BaseItem: Exactly(1.5), SheetItem: {true, 20, 25, 30}}}
	l := Of(den(), Wants{Base: Buy, Shoe: NoWay, FitTold: true, BaseSold: []tape.Length{12 * ft}, Prices: p})
	x := find(t, l, "base, 144")
	if x.Count != 4 || x.Each.Likely != 18 || x.Total().Likely != 72 { // 12; 10; 10; 5 and 4 with a kerf
		t.Errorf("%+v", x)
	}
	if x := find(t, l, "felt"); x.Total() != (Money{true, 20, 25, 30}) {
		t.Errorf("%+v", x)
	}
}

// Floor nailer and compressor are rented for the days that the schedule has them in the
// house; days of the job go before that, and say so; other tools, and a schedule that
// knows no days, leave it to the job.
func TestRentedBySchedule(t *testing.T) {
	f := den()
	f.Fixed.Use = fasten.Use{Kind: fasten.Cleat, Length: 2 * in}
	f.Saws = Saws{Face: 5 * in, Rips: 4, Narrowest: 2 * in}
	rent := func(names ...string) (w Wants) {
		for _, n := range names {
			w.Tools = append(w.Tools, Tool{Name: n, Have: Rent, Daily: Exactly(40)})
		}
		return w
	}
	w := rent(Nailer, Compressor, TableSaw)
	for _, n := range []string{Nailer, Compressor, TableSaw} {
		if x := find(t, Of(f, w), n); x.Count != 1 || !strings.Contains(x.Do, "One day is taken") {
			t.Errorf("nobody knows the days: %+v", x)
		}
	}
	f.Rental = Rental{Days: 4, Worked: 3, Span: "Fri 2027-03-12 to Mon 2027-03-15", Firm: true}
	for n, want := range map[string]int{Nailer: 4, Compressor: 4, TableSaw: 1} {
		x := find(t, Of(f, w), n)
		if x.Count != want || x.Total().Likely != 40*float64(want) || (want == 4) != strings.Contains(x.Do, "Fri 2027-03-12 to Mon 2027-03-15: 4 days, rows on 3 of them") {
			t.Errorf("%+v", x)
		}
		if strings.Contains(x.Do, "reserve") {
			t.Errorf("firm: %+v", x)
		}
	}
	f.Rental.Firm = false
	w.Tools[0].Days = 7
	if x := find(t, Of(f, w), Nailer); x.Count != 7 || !strings.Contains(x.Do, "The job says 7 days") || !strings.Contains(x.Do, "reserve, and do not fetch") {
		t.Errorf("%+v", x)
	}
}

// What has to be made for the job costs something that nobody has priced.
func TestMadeHasNoPrice(t *testing.T) {
	f := den()
	f.Openings = []Opening{{Name: "arch", Length: 9 * ft}}
	l := Of(f, Wants{Prices: Prices{Of: map[Item]Money{Transition: Exactly(30)}}})
	x := find(t, l, `transition strip, 108-1/2" in one piece`)
	if !x.Made || !x.Bought() || x.Each.Told {
		t.Errorf("%+v", x)
	}
	if s := Cost(l.Lines, 0); !slices.Contains(s.Unpriced, x.What) {
		t.Errorf("without a price: %v", s.Unpriced)
	}
}

// Where base stops is said with the casing that was taken, and its source.
func TestCasingIsSaid(t *testing.T) {
	f := den()
	f.Casings = []string{"hall", "study"}
	for _, w := range []Wants{{Base: Buy}, {Base: Refit}} {
		l := find(t, Of(f, w), "base")
		if !strings.Contains(l.Source, SrcCasing) || !strings.Contains(strings.Join(l.Notes, "; "), `2-1/2" from the jambs of hall and study`) {
			t.Errorf("%+v", l)
		}
	}
	if l := find(t, Of(f, Wants{Base: Buy, Casing: 3 * in, CasingTold: true}), "base"); strings.Contains(l.Source, SrcCasing) || !strings.Contains(strings.Join(l.Notes, "; "), `3" from the jambs`) {
		t.Errorf("%+v", l)
	}
	f.Casings = nil
	if l := find(t, Of(f, Wants{Base: Buy}), "base"); strings.Contains(l.Source, SrcCasing) || strings.Contains(strings.Join(l.Notes, "; "), "jambs") {
		t.Errorf("%+v", l)
	}
}
