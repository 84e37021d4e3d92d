package plan_test

import (
	"math"
	"strings"
	"testing"

	"strake/goods"
	"strake/jobfile"
	"strake/plan"
	"strake/tape"
)

// The parlour is an L with an inner corner that stands into the room: base goes
// round it with a mitre, D-A and the like stop at openings and at the hearth.
func TestStretchesOfTheParlour(t *testing.T) {
	p := plan.Rows(exampleJob(t, "ferry-parlour.yaml"))
	of := map[string][]goods.Stretch{}
	for _, s := range p.GoodsFloor().Stretches {
		of[s.Wall] = append(of[s.Wall], s)
	}
	near := func(a, b tape.Length) bool { return math.Abs(float64(a-b)) < float64(tape.Inch/4) }
	ab := of["A-B"]
	if len(ab) != 2 || ab[0].From > ab[1].From {
		t.Fatalf("A-B in two, from A on: %+v", ab)
	}
	// 18 ft 3/8 in with a door of 32 in, 24 in from B, its casings out to 2-1/2 in
	whole, casing := 216*tape.Inch+3*tape.Inch/8, 5*tape.Inch/2
	if !near(ab[0].Length, whole-56*tape.Inch-casing) || !near(ab[1].Length, 24*tape.Inch-casing) || !near(ab[1].From, whole-24*tape.Inch+casing) {
		t.Errorf("A-B: %+v", ab)
	}
	if ef := of["E-F"]; len(ef) != 1 {
		t.Errorf("a bowed wall is one stretch: %+v", ef)
	}
	if fa := of["F-A"]; len(fa) != 2 || !near(fa[0].Length, tape.Inch*133/2) {
		t.Errorf("the hearth parts F-A: %+v", fa)
	}
	outside := 0
	for _, ss := range of {
		for _, s := range ss {
			for _, x := range s.Turns {
				if x > 0 {
					outside++
					if math.Abs(x-90) > 3 {
						t.Errorf("turn of %g at %s", x, s.Wall)
					}
				}
			}
		}
	}
	if outside != 2 {
		t.Errorf("one outside corner has two mitres, not %d", outside)
	}
}

// The list stands on the plan: the sheets cover the floor once and by their laps.
func TestGoodsOfTheKitchen(t *testing.T) {
	p := plan.Rows(exampleJob(t, "keepers-kitchen.yaml"))
	f := p.GoodsFloor()
	var area float64
	for _, x := range f.Under.Fields {
		area += x.Area.Area2().SquareFeet() / 2
	}
	w := p.Job.Goods.Filled()
	n := goods.Unroll(f.Under.Fields, w.Roll)
	covered := n.Length.Inches() * w.Roll.Width.Inches() / 144
	if covered < area || covered > 1.5*area {
		t.Errorf("sheets of %.1f sq ft over a floor of %.1f", covered, area)
	}
	var has []string
	for _, l := range p.Goods().Lines {
		has = append(has, l.What)
	}
	all := strings.Join(has, "\n")
	for _, want := range []string{"laminate out", "felt, roll", "threshold", "nosing", "base as it is", "shoe, ", goods.JambSaw} {
		if !strings.Contains(all, want) {
			t.Errorf("no %s in\n%s", want, all)
		}
	}
}

// Base stops at the casing that a doorway tells, runs up to the jamb where there is
// none, and where a casing fills the wall to the corner there is no piece.
func TestCasings(t *testing.T) {
	lengths := func(casing string) (ab []tape.Length, guessed int) {
		j, _, err := jobfile.ReadJob("c.yaml", []byte("strake: 1\nunit: in\nrooms: {den: {corners: [A, B, C, D]}}\nreadings: {A-B: 144, B-C: 120, C-D: 144, D-A: 120, A-C: 187-7/16}\nboards: {face: 5, thickness: 3/4, lengths: unknown}\nbase: 1/2\nshoe: 3/4\n"+
			"doorways: {hall: {wall: A-B, from: A, at: 4, width: 30, thickness: 5, beyond: transition, ends: 2"+casing+"}}\n"))
		if err != nil {
			t.Fatal(err)
		}
		f := plan.Rows(j).GoodsFloor()
		for _, s := range f.Stretches {
			if s.Wall == "A-B" {
				ab = append(ab, s.Length)
			}
		}
		return ab, len(f.Casings)
	}
	for casing, want := range map[string][]float64{"": {1.5, 107.5}, ", casing: 3-1/2": {0.5, 106.5}, ", casing: 0": {4, 110}, ", casing: 4": {106}, ", casing: 6": {104}} {
		got, guessed := lengths(casing)
		ok := len(got) == len(want) && guessed == map[bool]int{true: 1}[casing == ""]
		for i := range got {
			ok = ok && math.Abs(got[i].Inches()-want[i]) < 0.05
		}
		if !ok {
			t.Errorf("%s: %v, want %v; %d guessed", casing, got, want, guessed)
		}
	}
}
