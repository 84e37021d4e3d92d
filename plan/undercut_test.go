package plan_test

import (
	"context"
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/plan"
	"strake/room"
	"strake/tape"
)

// doors is a rectangle, a little out of square, with an opening in two of its
// walls, mostly undercut, and rows at any angle to the first: often at 30, 45 or
// 60 degrees, or nearly along it. The floor ends at the face of the wall or in it.
func (f floors) doors() job.Job {
	j := roomJob(float64(90+f.IntN(120)), float64(80+f.IntN(100)), []float64{2.25, 3.25, 4, 5}[f.IntN(4)], 0.75, 0.5, []float64{0, 0.5, 0.75}[f.IntN(3)])
	for i := range j.Readings {
		j.Readings[i].Value += tape.Length(f.IntN(9)-4) * tape.Sixteenth / 2
	}
	for k, w := range [][2]string{{"A", "B"}, {"B", "C"}} {
		if f.chance(0.7) {
			j.Sketch.Doorways = append(j.Sketch.Doorways, room.Doorway{
				Name: fmt.Sprint("door ", k), Wall: w, From: w[0], At: tape.Length(6*16+f.IntN(36*16)) * tape.Sixteenth, Width: tape.Length(24*16+f.IntN(14*16)) * tape.Sixteenth,
				Thickness: in(4.5), Ends: []tape.Length{0, in(2.25), in(1), in(4)}[f.IntN(4)], Undercut: f.chance(0.8),
				Beyond: []room.Beyond{room.BeyondTransition, room.BeyondFlush, room.BeyondStair}[f.IntN(3)]})
		}
	}
	j.Wishes.Direction = room.Wall{"A", "B"}
	j.Wishes.Angle = []float64{45, 30, 60, 0, float64(f.IntN(1800))/10 - 90, float64(f.IntN(300))/10 - 15}[f.IntN(6)]
	return j
}

// onceRefused are floors of doors that were refused, each for another cause.
var onceRefused = []uint64{17, 42, 106, 107, 114, 121, 194, 245}

// TestDoorsAtAnyAngle: every one of these floors gets a plan that holds. A row
// that ends at an undercut jamb and the wall beside it names the one it reaches
// to; what a row line leaves of a jamb may be under a mm.
func TestDoorsAtAnyAngle(t *testing.T) {
	t.Parallel()
	seeds := slices.Clone(onceRefused)
	for seed := range uint64(floorCount(20)) {
		seeds = append(seeds, seed)
	}
	for _, seed := range seeds {
		f := floors{rand.New(rand.NewPCG(seed, 21))}
		j := f.doors()
		p := plan.MakeWithin(context.Background(), j, light/50)
		for _, x := range p.Findings {
			if x.Level == finding.Stop {
				t.Errorf("floor %d, rows at %v degrees: %s", seed, j.Wishes.Angle, x)
			}
		}
	}
}

// Floors that the checker refused though nothing was wrong with the boards: it
// took a rounding at a jamb for a line between zones, a doorway's step of a few
// hundredths of a mm at its room for another edge, and the hole for a pipe for a
// fault of the outline of a row in a floor of several zones.
func TestUndercutDoorwaysHold(t *testing.T) {
	for name, text := range map[string]string{"three rooms in a ring": threeRooms, "a zone line at a jamb": jambAtLine, "a pipe in a floor of two zones": pipeInZones} {
		j, _, err := jobfile.ReadJob(name, []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		p := plan.MakeWithin(context.Background(), j, light)
		for _, f := range p.Findings {
			if f.Level == finding.Stop {
				t.Errorf("%s: %v", name, f)
			}
		}
		if name == "a pipe in a floor of two zones" && len(p.Lay.Zones) < 2 {
			t.Errorf("%s: %d zone", name, len(p.Lay.Zones))
		}
	}
}

const threeRooms = `strake: 1
name: Three rooms in a ring
unit: mm
rooms:
  one: {corners: [A, B, C, D], walk: counter-clockwise}
  two: {corners: [E, F, G, H], walk: counter-clockwise}
  three: {corners: [I, J, K, L], walk: counter-clockwise}
readings:
  A-B: 3000
  B-C: 2500
  C-D: 3000
  D-A: 2500
  A-C: 3905
  B-D: 3905
  E-F: 2885
  F-G: 2500
  G-H: 2885
  H-E: 2500
  E-G: 3817
  F-H: 3817
  I-J: 6000
  J-K: 2385
  K-L: 6000
  L-I: 2385
  I-K: 6457
  J-L: 6457
doorways:
  ab: {wall: B-C, from: B, at: 800, width: 800, thickness: 115, beyond: {wall: H-E, from: E, at: 800}}
  ac: {wall: C-D, from: C, at: 800, width: 800, thickness: 115, beyond: {wall: I-J, from: I, at: 1400}}
  bc: {wall: G-H, from: G, at: 800, width: 800, thickness: 115, undercut: yes, beyond: {wall: I-J, from: J, at: 800}}
boards: {face: 140, thickness: 20, species: oak, lengths: {mix: {least: 400, most: 2200, mean: 1200}}}
base: 15
shoe: 15
`

const jambAtLine = `strake: 1
unit: mm
seed: 43
rooms:
  one: {corners: [A, B, C, D], walk: counter-clockwise}
  two: {corners: [E, F, G, H], walk: counter-clockwise}
readings:
  A-B: 2305
  B-C: 3751
  C-D: 2322
  D-A: 3741
  A-C: 4410
  B-D: 4395
  E-F: 3285
  F-G: 3043
  G-H: 3312
  H-E: 3046
  E-G: 4496
  F-H: 4482
doorways:
  mid: {wall: C-D, from: C, at: 1112, width: 762, thickness: 100, undercut: yes, beyond: {wall: E-F, from: E, at: 324}}
stays: {s: {kind: hearth, wall: A-B, from: A, at: 763, width: 900, depth: 400}}
boards: {face: 120, thickness: 20, species: oak, lengths: {one: 1200}}
base: 12

wishes: {rows_along: A-B}
`

const pipeInZones = `strake: 1
unit: mm
seed: 11
rooms:
  one: {corners: [A, B, C, D], walk: counter-clockwise}
  two: {corners: [E, F, G, H], walk: counter-clockwise}
readings:
  A-B: 3570
  B-C: 3403
  C-D: 3567
  D-A: 3400
  A-C: 4922
  B-D: 4937
  E-F: 2235
  F-G: 1738
  G-H: 2208
  H-E: 1729
  E-G: 2821
  F-H: 2815
doorways:
  mid: {wall: C-D, from: C, at: 2303, width: 1008, thickness: 115, undercut: yes, beyond: {wall: E-F, from: E, at: 561}}
  hall: {wall: A-B, from: B, at: 407, width: 800, thickness: 100, undercut: yes, beyond: stair}
stays: {s: {kind: pipe, cover: 25 mm, wall: A-B, from: A, at: 839, off: 300, width: 30, depth: 30}}
boards: {face: 90, thickness: 20, species: oak, lengths: {mix: {least: 400, most: 2200, mean: 1200}}}
base: 20
shoe: 20
wishes: {rows_along: A-B}
`
