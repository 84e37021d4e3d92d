package main

import (
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/rack"
	"strake/row"
	"strake/stock"
	"strake/tape"
)

// place is a room of equal runs, to be racked.
type place struct {
	runs        int
	length      tape.Length // what whole boards of a run have to come to
	face        tape.Length
	play        tape.Length // that a run may be shorter by, without a tongue taken off
	tongue      tape.Length // the far end may come closer by this with its tongue off
	cut         bool        // every run ends in a crosscut
	preferred   tape.Length
	overage     float64
	atHand      int
	wood        bool
	joint, kerf tape.Length
	shortest    tape.Length
}

// The two cases of the bench room. Walls to walls it has the least gap at one
// end and least gap and tongue at the other besides its 276 in: with gaps of
// 3/4 to 1 in the faces fill 275-3/4 to 276 in; with gaps of 3/8 in neither
// more nor less, exactly 276 in with the end tongue off.
var (
	benchRoom = place{runs: 40, length: 276 * inch, face: 5 * inch, preferred: 10 * inch, overage: 1.03,
		joint: 6 * inch, kerf: tape.Eighth, shortest: 8 * inch}
	withPlay = func(p place) place { p.play, p.tongue = inch/4, inch/4; return p }
	noPlay   = func(p place) place { return p }
)

// ask is what racking is asked for with these boards.
func (p place) ask(boards []tape.Length, seed uint64) rack.Ask {
	all := plane.Region{plane.Rect(plane.P(0, 0), plane.P(p.length+p.tongue, tape.Length(p.runs)*p.face))}
	at := floor.Aligned{Dir: plane.Dir{X: 1}, Reach: all, Need: all, Bare: all}
	l := row.Layout{Dir: plane.Dir{X: 1}, Pitch: p.face, Rows: p.runs, StartRow: 1, Starts: 1, Areas: []row.Area{{Ahead: 1, Outline: all}}}
	for i := range p.runs {
		l.Runs = append(l.Runs, p.run(i))
	}
	a := rack.Ask{
		Fields: []row.Field{{Kind: lay.Field, Layout: l, Part: at, Aligned: at}},
		Boards: stock.Boards{Face: p.face, Thickness: 3 * inch / 4, SideTongue: inch / 4, EndTongue: inch / 4, Hand: stock.RightHand, Known: stock.Tallied},
		Limits: limits.Default(p.face, 3*inch/4), Seed: seed, WoodFirst: p.wood, AtHand: p.atHand,
	}
	a.Limits.JointMin.Value, a.Limits.JointPreferred.Value = p.joint, p.preferred
	a.Limits.Kerf.Value, a.Limits.ShortestPiece.Value = p.kerf, p.shortest
	for _, l := range boards {
		a.Boards.Tally = append(a.Boards.Tally, stock.Class{Length: l, Count: 1})
	}
	return a
}

func (p place) run(i int) row.Run {
	low := tape.Length(i) * p.face
	return row.Run{
		Row: i + 1, Low: low, High: low + p.face, Order: i + 1, Ahead: 1,
		Shape:     plane.Region{plane.Rect(plane.P(0, low), plane.P(p.length+p.tongue, low+p.face))},
		Left:      lay.EndRange{Edge: "a", Reach: 0, Need: p.play},
		Right:     lay.EndRange{Edge: "b", Reach: p.length + p.tongue, Need: p.length, InPlace: p.cut},
		WidthLeft: p.face, WidthRight: p.face, Narrowest: p.face, Widest: p.face,
	}
}

// need is the length of all runs.
func (p place) need() tape.Length { return tape.Length(p.runs) * p.length }

// stock are boards of a mix for the place.
func (p place) stock(m mix, seed uint64) []tape.Length {
	return m.draw(seed, tape.Length(float64(p.need())*p.overage))
}
