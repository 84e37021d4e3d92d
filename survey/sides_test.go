package survey

import (
	"testing"

	"strake/finding"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Offsets between rooms: to a mark in the office from the closet's wall, to a
// corner of the closet from the office's side wall, whose line runs past both,
// and to a corner of a slate in the office from the closet's wall. The figures
// are exact, so the fit leaves nothing. The office is 168 x 132 in from P; the
// closet's wall K-L lies 136-1/2 in up, K 38 in from the line of S-P.
func TestOffsetsBetweenRooms(t *testing.T) {
	s, _ := twoRooms()
	s.Points = []room.Point{{Name: "mark", Wall: room.Wall{"P", "Q"}, From: "P", At: 70 * tape.Inch}}
	s.Stays = []room.Stay{{Name: "slate", Kind: room.Tile, Corners: []string{"H", "I", "J", "G"}}}
	at := map[string]plane.XY{"P": {}, "Q": {X: 168}, "H": {X: 40, Y: 100}, "I": {X: 60, Y: 100}, "J": {X: 60, Y: 120}, "G": {X: 40, Y: 120}}
	base := within()
	for _, c := range []string{"H", "I", "J", "G"} {
		base = append(base, in("P", c, at[c].Len()), in("Q", c, at[c].Sub(at["Q"]).Len()))
	}
	for _, c := range []struct {
		of   string
		wall room.Wall
		is   float64
	}{
		{"mark", room.Wall{"K", "L"}, 136.5}, {"H", room.Wall{"K", "L"}, 36.5},
		{"N", room.Wall{"S", "P"}, 38}, {"M", room.Wall{"P", "S"}, 98},
		{"K", room.Wall{"R", "S"}, 4.5}, {"P", room.Wall{"K", "L"}, 136.5},
	} {
		r := in(c.of, "", c.is)
		r.Kind, r.Wall = Off, c.wall
		rs := append(append([]Reading(nil), base...), r)
		fit := Adjust(s, rs, Tape())
		if v := fit.Residuals[len(rs)-1]; v > 1 || v < -1 {
			t.Errorf("%s: the fit misses it by %.1f mm", r.Name(), v)
		}
		if rep := fit.Report(rs); rep.Wrong {
			t.Errorf("%s: something is called wrong: %s", r.Name(), rep.names(rep.Suspects, rs))
		}
	}
}

// A corner of a slate that has but one distance in the office and an offset from
// the closet's wall may lie on either side of that wall: that is said.
func TestSideOfAWallNotKnown(t *testing.T) {
	s, _ := twoRooms()
	s.Stays = []room.Stay{{Name: "slate", Kind: room.Tile, Corners: []string{"H", "I", "J", "G"}}}
	rs := append(within(), in("P", "I", 116.6), in("Q", "I", 147.1), in("P", "J", 134.2), in("Q", "J", 161.5), in("P", "G", 126.5), in("Q", "G", 175.4))
	off := in("H", "", 36.5)
	off.Kind, off.Wall = Off, room.Wall{"K", "L"}
	along := in("P", "H", 40)
	along.Kind, along.Wall = Along, room.Wall{"P", "Q"}
	said := func(rs []Reading) bool {
		for _, f := range Adjust(s, rs, Tape()).Findings(rs, inches16) {
			if f.Rule == "side of a wall" {
				if f.Level != finding.Stop || f.Where != "H square to wall K-L" {
					t.Errorf("%v", f)
				}
				return true
			}
		}
		return false
	}
	if !said(append(rs, off, along)) {
		t.Error("nothing says that the side is not known")
	}
	if said(append(rs, off, in("P", "H", 107.7), in("Q", "H", 162.43))) {
		t.Error("said, though two distances place it")
	}
}

// A distance along a wall and one off it place a corner of what stays from the
// start, wherever in the room.
func TestSetOffFromAWall(t *testing.T) {
	s, _ := twoRooms()
	s.Stays = []room.Stay{{Name: "slate", Kind: room.Tile, Corners: []string{"H", "I", "J"}}}
	square := func(kind Kind, from, to string, w room.Wall, v float64) Reading {
		r := in(from, to, v)
		r.Kind, r.Wall = kind, w
		return r
	}
	side := room.Wall{"Q", "R"}
	rs := append(within(),
		square(Off, "H", "", side, 100), square(Along, "Q", "H", side, 40),
		square(Off, "I", "", side, 80), square(Along, "R", "I", side, 92),
		square(Off, "J", "", side, 80), square(Along, "Q", "J", side, 60))
	m := Tape()
	m.NoSquares = true
	r := Adjust(s, rs, m)
	for c, want := range map[string]plane.XY{"H": {X: 68, Y: 40}, "I": {X: 88, Y: 40}, "J": {X: 88, Y: 60}} {
		if d := r.Built.At[c].Sub(want.Times(25.4)).Len(); d > 2 {
			t.Errorf("%s is %.1f mm off", c, d)
		}
	}
}
