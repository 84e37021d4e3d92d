package survey

import (
	"strings"
	"testing"

	"strake/finding"
	"strake/room"
	"strake/tape"
)

// within are walls and both diagonals of each of two rooms, nothing between.
func within() []Reading {
	return []Reading{
		in("P", "Q", 168), in("Q", "R", 132), in("R", "S", 168), in("S", "P", 132), in("P", "R", 213.65), in("Q", "S", 213.65),
		in("K", "L", 60), in("L", "M", 36), in("M", "N", 60), in("N", "K", 36), in("K", "M", 69.97), in("L", "N", 69.97),
	}
}

func untiedFinding(r Result, rs []Reading) (finding.Finding, bool) {
	for _, f := range r.Findings(rs, inches16) {
		if f.Rule == "rooms tied by a reading" {
			return f, true
		}
	}
	return finding.Finding{}, false
}

// Two rooms, each read all over, with nothing read through their doorway: the
// plan asks for the tie that says most, and is content once it is read.
func TestRoomsWithoutATie(t *testing.T) {
	s, _ := twoRooms()
	rs := within()
	r := Adjust(s, rs, Tape())
	f, ok := untiedFinding(r, rs)
	if !ok || f.Where != "closet door, between office and closet" || !strings.Contains(f.Do, "through “closet door”") {
		t.Fatalf("%v", f)
	}
	ask := strings.TrimSuffix(strings.TrimPrefix(f.Do, "Measure "), " through “closet door”.")
	a, b, ok := strings.Cut(ask, "-")
	if !ok {
		t.Fatalf("%q is no reading from corner to corner", ask)
	}
	before := r.DistanceSD(a, b)
	v := r.Built.At[a].Sub(r.Built.At[b]).Len()
	rs = append(rs, Reading{From: a, To: b, Value: ticks(v), Step: tape.Sixteenth})
	r = Adjust(s, rs, Tape())
	if f, ok := untiedFinding(r, rs); ok {
		t.Errorf("tied, and still: %v", f)
	}
	if after := r.DistanceSD(a, b); after > 0.6*before {
		t.Errorf("the tie takes %s from %.2f mm to %.2f only", ask, before, after)
	}
}

// Where the doorway's jambs say as much as a tape would, no tie is asked for:
// neither by the plan nor by the measuring sheet. Where they say little, both do.
func TestATieIsAskedForWhereItBuys(t *testing.T) {
	s, rough := twoRooms()
	for _, c := range []struct {
		door float64
		want bool
	}{{0.1, false}, {1.5, true}, {10, true}} {
		m := Tape()
		m.DoorMM = c.door
		rs := within()
		if _, ok := untiedFinding(Adjust(s, rs, m), rs); ok != c.want {
			t.Errorf("jambs to %g mm: the plan asks for a tie: %v", c.door, ok)
		}
		ties := 0
		for _, it := range Suggest(s, Want{Rough: rough, Step: tape.Sixteenth}, m).Items {
			if it.Purpose == Ties {
				ties++
				if it.Doubt < 2*1.0 {
					t.Errorf("jambs to %g mm: tie %s, in doubt by %.1f mm only", c.door, it.Ask.Reading.Name(), it.Doubt)
				}
			}
		}
		if (ties > 0) != c.want {
			t.Errorf("jambs to %g mm: %d ties on the measuring sheet", c.door, ties)
		}
	}
}

// A tie keeps off the jambs and off what stands up in either room.
func TestTiesKeepClear(t *testing.T) {
	s, rough := twoRooms()
	s.Stays = []room.Stay{{Name: "post", Kind: room.Column, Wall: room.Wall{"R", "S"}, From: "S", At: 60 * tape.Inch, Off: 10 * tape.Inch, Width: 14 * tape.Inch, Depth: 8 * tape.Inch}}
	r := Adjust(s, rough, Tape())
	free, past := r.candidates(r.net.with(), r.x, nil, tape.Sixteenth)
	count := func(cs []candidate) (n int) {
		for _, c := range cs {
			if c.ask.Through != "" {
				n++
			}
		}
		return n
	}
	if count(free) == 0 || count(past) == 0 {
		t.Fatalf("%d ties beside the post, %d behind it", count(free), count(past))
	}
	post := s.Stays[0]
	for _, c := range free {
		if c.ask.Through == "" {
			continue
		}
		net := r.net.with()
		for _, p := range c.ask.Marks {
			net.points[p.Name] = p
		}
		p, q := net.at(c.ask.Reading.From, r.x), net.at(c.ask.Reading.To, r.x)
		if nearOutline(r.Outline(post), p, q) < clearOf {
			t.Errorf("%s touches the post", c.ask.Name(inches16))
		}
		for _, jamb := range []float64{52, 82} { // from S, which lies at x 0; the wall is from y 132 to 136.5
			for _, y := range []float64{132, 136.5} {
				k := (y*25.4 - p.Y) / (q.Y - p.Y)
				if x := (p.X + k*(q.X-p.X)) / 25.4; x < 52.9 || x > 81.1 {
					t.Errorf("%s passes the jamb at %g in by %.2f in", c.ask.Name(inches16), jamb, x-jamb)
				}
			}
		}
	}
}
