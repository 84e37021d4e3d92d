package check

import (
	"testing"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// ripSite is one piece between two edges of the floor, gaps closed.
func ripSite(outline plane.Ring, edges ...floor.AlignedEdge) (*site, *zone) {
	z := &zone{Zone: lay.Zone{Width: in(5)}}
	z.at.Edges = edges
	z.pieces = []*piece{{Piece: lay.Piece{Outline: outline}, zone: z, run: &run{Run: lay.Run{High: z.Width}, zone: z}, box: boxOf(outline)}}
	s := &site{zones: []*zone{z}}
	s.lim.NarrowestRip.Value = in(2)
	return s, z
}

func beside(name string, from, to plane.Pt) floor.AlignedEdge {
	return floor.AlignedEdge{Name: name, From: from, To: to, Beside: true}
}

func TestRipIsMeasuredThroughTheWood(t *testing.T) {
	bottom := beside("wall", pt(0, 1), pt(40, 1))
	for _, c := range []struct {
		name  string
		r     plane.Ring
		e     floor.AlignedEdge
		other floor.AlignedEdge
		want  tape.Length
	}{
		{"a plain rip", rc(0, 1, 40, 5), bottom, floor.AlignedEdge{}, in(4)},
		{"a taper", plane.Ring{pt(0, 1), pt(40, 2), pt(40, 5), pt(0, 5)}, beside("wall", pt(0, 1), pt(40, 2)), floor.AlignedEdge{}, in(3)},
		{"a neck under a hearth", plane.Ring{pt(0, 1), pt(40, 1), pt(40, 3.5), pt(20, 3.5), pt(20, 5), pt(0, 5)},
			bottom, beside("hearth", pt(40, 3.5), pt(20, 3.5)), in(2.5)},
		// the slanted wall's points are its own: it is no closing edge
		{"a neck under a slant", plane.Ring{pt(0, 1), pt(40, 1), pt(40, 1.5), pt(35, 5), pt(0, 5)},
			bottom, beside("slant", pt(40, 1.5), pt(35, 5)), in(4)},
		// a C: the hole between the arms is not wood
		{"beside a hole", plane.Ring{pt(0, 0), pt(40, 0), pt(40, 2.5), pt(30, 2.5), pt(30, 2.75), pt(40, 2.75), pt(40, 5), pt(0, 5)},
			beside("register", pt(30, 2.75), pt(40, 2.75)), floor.AlignedEdge{}, in(2.25)},
	} {
		s, z := ripSite(c.r, c.e, c.other)
		got := s.ripAt(z, c.e)
		if got.p == nil || got.width.Cmp(rat(c.want)) != 0 {
			t.Errorf("%s: %v, want %v", c.name, got.width, c.want)
		}
	}
}

// A width between two edges is held once: where one of them is exempt by name,
// it is told there.
func TestNeckBesideAnExemptEdge(t *testing.T) {
	bottom, hearth := beside("wall", pt(0, 1), pt(40, 1)), beside("hearth", pt(40, 1.5), pt(20, 1.5))
	s, z := ripSite(plane.Ring{pt(0, 1), pt(40, 1), pt(40, 1.5), pt(20, 1.5), pt(20, 5), pt(0, 5)}, bottom, hearth)
	if got := s.ripAt(z, bottom); got.width.Cmp(rat(in(0.5))) != 0 {
		t.Errorf("neither exempt: %v", got.width)
	}
	s.lay.Exempt = []lay.Exemption{{Rule: ripRule, Run: -1, Edge: "hearth"}}
	if got := s.ripAt(z, bottom); got.width.Cmp(rat(in(4))) != 0 {
		t.Errorf("hearth exempt: %v at the wall, want 4 in", got.width)
	}
	if got := s.ripAt(z, hearth); got.width.Cmp(rat(in(0.5))) != 0 {
		t.Errorf("hearth exempt: %v at the hearth, want 1/2 in", got.width)
	}
}

// Slant less play under pitch less narrowest rip.
func TestClosingEdge(t *testing.T) {
	e := beside("wall", pt(0, 0), pt(100, 3.25))
	e.Range = floor.Range{Least: in(0.75), Greatest: in(1)}
	if isClosing(e, in(5), in(2)) {
		t.Error("slant 3-1/4 less play 1/4 is not under 5 less 2")
	}
	e.To.Y--
	if !isClosing(e, in(5), in(2)) {
		t.Error("a tick less is")
	}
}

// An exempt edge beside several zones is told once, by the zone whose row it is,
// and an exemption that the rip does not need is not told at all; one that no row
// lies at is told once too.
func TestExemptEdgeIsToldOnce(t *testing.T) {
	bottom, far := beside("wall", pt(0, 1), pt(40, 1)), beside("far", pt(0, 90), pt(40, 90))
	s, z := ripSite(rc(0, 1, 40, 5), bottom, far)
	z.pieces[0].run.name = "row 1"
	other := &zone{Zone: z.Zone}
	other.at.Edges = z.at.Edges
	s.zones = []*zone{other, z}
	s.tape = tape.Style{Unit: tape.UnitInch, Step: tape.SixtyFourth}
	s.lay.Exempt = []lay.Exemption{{Rule: ripRule, Run: -1, Edge: "wall", Why: "why"}, {Rule: ripRule, Run: -1, Edge: "far", Why: "why"}}
	fs := holdRip(Rule{Name: ripRule}, s)
	if len(fs) != 1 || fs[0].Where != "far" || fs[0].Measured != "no row closes against it" {
		t.Errorf("findings %v", fs)
	}
}

// A length between the marks is told exactly, in the boards' own unit.
func TestExactLengths(t *testing.T) {
	s := &site{tape: tape.Style{Unit: tape.UnitInch, Step: tape.SixtyFourth}}
	for l, want := range map[tape.Length]string{
		6 * tape.Inch: `6"`, 6*tape.Inch - 1: `about 6" (5.999995")`, 6*tape.Inch + tape.Inch/100: `about 6-1/64" (6.01")`, -1: `about 0" (-0.000005")`,
	} {
		if got := s.say(l); got != want {
			t.Errorf("%d ticks: %s, want %s", l, got, want)
		}
	}
	s.tape = tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 10}
	if got := s.say(tape.Millimetre + 1); got != "about 1 mm (1.000125 mm)" {
		t.Errorf("got %s", got)
	}
}
