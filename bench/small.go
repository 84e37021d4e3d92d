package main

import (
	"slices"

	"strake/rack"
	"strake/tape"
)

// small is a floor small enough for a solver to prove its best.
type small struct {
	name    string
	mix     mix
	runs    int
	length  tape.Length
	grid    tape.Length // all lengths are whole numbers of it
	overage float64
}

// The twelve floors: loose ones, two without a board to spare, and stepped
// lengths of which none add up to the run.
func smalls() []small {
	one, two, six := inch, 2*inch, 6*inch
	m, s, t := mixed, shorts, stepped
	return []small{
		{"mixed 6 x 126, 2 in", m, 6, 126 * inch, two, 1.05},
		{"mixed 6 x 126, 2 in, none to spare", m, 6, 126 * inch, two, 1.00},
		{"mixed 8 x 252, 2 in", m, 8, 252 * inch, two, 1.10},
		{"mixed 8 x 252, 2 in, scarce", m, 8, 252 * inch, two, 1.02},
		{"mixed 8 x 252, 1 in", m, 8, 252 * inch, one, 1.10},
		{"short-heavy 8 x 252, 2 in", s, 8, 252 * inch, two, 1.05},
		{"short-heavy 10 x 252, 2 in", s, 10, 252 * inch, two, 1.02},
		{"stepped 6 x 250", t, 6, 250 * inch, six, 1.10},
		{"stepped 8 x 250", t, 8, 250 * inch, six, 1.02},
		{"stepped 8 x 248", t, 8, 248 * inch, six, 1.05},
		{"stepped 10 x 250", t, 10, 250 * inch, six, 1.03},
		{"stepped 10 x 244", t, 10, 244 * inch, six, 1.03},
	}
}

// place is the room: joints 6 in apart, no more is preferred, no kerf.
func (s small) place() place {
	return place{runs: s.runs, length: s.length, face: 5 * inch, wood: true, overage: s.overage,
		joint: 6 * inch, preferred: 6 * inch, shortest: 8 * inch}
}

// stock are boards on the grid, the same for every solver.
func (s small) stock() []tape.Length {
	m := s.mix
	m.step = s.grid
	boards := s.place().stock(m, uint64(s.runs)*1000+uint64(s.length/inch))
	if s.overage == 1 {
		trim(boards, s.place().need(), s.grid)
	}
	return boards
}

// trim takes steps off the longest boards until together they are no more than
// the need.
func trim(boards []tape.Length, need, grid tape.Length) {
	for _, b := range boards {
		need -= b
	}
	for ; need < 0; need += grid {
		slices.Sort(boards)
		boards[len(boards)-1] -= grid
	}
}

// ask is what our own search is asked for.
func (s small) ask() rack.Ask {
	a := s.place().ask(s.stock(), 1)
	a.Polishing = rack.Polishing
	return a
}
