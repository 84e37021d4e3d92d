package paper

import (
	"strings"
	"testing"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// slanted is a lister of a floor with wall B-C running away to the right at a
// low slant, and an upright jamb at 100 in from 0 to 4 in up.
func slanted() *lister {
	l := newLister(two())
	l.p.Aligned.Edges = []floor.AlignedEdge{
		{Name: "wall B-C", Kind: floor.Wall, Beside: true, From: plane.P(60*in, 0), To: plane.P(0, 12*in), Range: floor.Range{Least: in / 2, Greatest: in}},
		{Name: "jamb", Kind: floor.Jamb, From: plane.P(100*in, 0), To: plane.P(100*in, 4*in), Range: floor.Range{Least: in / 2, Greatest: in}},
	}
	l.at = l.p.Aligned
	return l
}

// A row whose end has no edge of its own still says what it comes to: the edge
// that rows end at, else the one beside that it runs out at.
func TestEndsSayWhatTheyMeet(t *testing.T) {
	l := slanted()
	r := lay.Run{Low: 0, High: 5 * in}
	if e := l.end(99*in, r, lay.EndRange{}); e.Edge != "jamb" || !strings.Contains(e.Meets, "gap") {
		t.Errorf("near the jamb: %+v", e)
	}
	if e := l.end(45*in, r, lay.EndRange{}); e.Edge != "runs out to a point at wall B-C" || e.Meets != "" {
		t.Errorf("along the slant: %+v", e)
	}
	if e := l.end(80*in, r, lay.EndRange{}); e.Edge != "" {
		t.Errorf("nothing is near: %+v", e)
	}
	if e := l.end(99*in, lay.Run{Low: 20 * in, High: 25 * in}, lay.EndRange{}); e.Edge != "" {
		t.Errorf("the jamb does not reach so high: %+v", e)
	}
	if e := l.end(5*in, r, lay.EndRange{Edge: "jamb"}); e.Edge != "jamb" || e.Meets == "" {
		t.Errorf("an edge that is known stays: %+v", e)
	}
}

// A tongue that is in the way over less than can be measured is no work.
func TestTonguesBelowTheStepAreNoWork(t *testing.T) {
	p := two()
	for off, want := range map[plane.Span]int{
		{From: 0, To: in / 40}: 0, {From: 0, To: in / 16}: 1, {From: 3 * in, To: 5 * in}: 1,
	} {
		p.Lay.Pieces[0].Off = []plane.Span{off}
		l := newLister(p)
		if got := tongues(l.piece(p.Lay.Runs[0], 0), l.say); len(got) != want {
			t.Errorf("%v: %v", off, got)
		}
	}
}

// An end slanted by less than half the saw's step is a square crosscut, and
// counted as one; a slant that shows is a mitre.
func TestMitreBelowTheStepIsSquare(t *testing.T) {
	for slant, want := range map[tape.Length]Kind{in / 640: Crosscut, in / 16: Mitre} {
		p := two()
		pc := &p.Lay.Pieces[3]
		pc.Right = lay.Cut
		pc.Outline[2].X -= slant
		n := Count(p)
		last := CutList(p)
		kind := Kind("")
		for _, c := range last {
			if c.Piece.Lay.ID == 3 && !c.Left && (c.Kind == Crosscut || c.Kind == Mitre) {
				kind = c.Kind
			}
		}
		if kind != want || n.Crosscuts != 3 || (n.Mitres == 1) != (want == Mitre) {
			t.Errorf("slant %v is a %q: %d crosscuts, %d mitres", slant, kind, n.Crosscuts, n.Mitres)
		}
	}
}
