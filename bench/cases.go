package main

import "strake/rack"

// bout is one case of the table: a room, boards, and what is asked of them.
type bout struct {
	name    string
	place   place
	mix     mix
	targets []target
	noLater bool // only the first answer: nothing is bettered
	layer   bool // held against the careful layer too
	seeds   int  // 0: as many as asked for
}

// target is one figure to reach.
type target struct {
	what string
	most float64
}

func (p place) woodFirst() place           { p.wood = true; return p }
func (p place) known(boards int) place     { p.atHand = boards; return p }
func (p place) everyCut() place            { p.cut = true; return p }
func (p place) stocked(over float64) place { p.overage = over; return p }
func both(b bout) []bout {
	with, none := b, b
	with.name, with.place = b.name+", range 3/4 to 1 in", withPlay(b.place)
	none.name, none.place = b.name+", range 3/8 in", noPlay(b.place)
	return []bout{with, none}
}

// kerfBound is what every run's kerf comes to in the bench room, in hundredths
// of its length: 1/8 in of 276.
const kerfBound = 100 * 0.125 / 276

// strips is a hall of 12,000 sq ft in strip of 2-1/4 in: 640 runs of 100 ft.
var strips = place{runs: 640, length: 1200 * inch, face: 9 * inch / 4, preferred: 10 * inch, overage: 1.05,
	joint: 6 * inch, kerf: benchRoom.kerf, shortest: 8 * inch}

func bouts() []bout {
	looks := []target{{"waste %", 0.01}, {"crosscuts", 1}, {"H-joints", 0}, {"stairs", 1}, {"seeds under 10 in", 1}, {"first ms", 100}, {"ms", 1000}, {"MB", 32}}
	wood := []target{{"waste %", 0.005}, {"crosscuts", 1}, {"H-joints", 0}, {"under 10 in %", 0.5}, {"first ms", 100}, {"ms", 1000}, {"MB", 32}}
	var out []bout
	out = append(out, both(bout{name: "mixed, all tallied, looks first", place: benchRoom, mix: mixed, targets: looks})...)
	out = append(out, both(bout{name: "mixed, all tallied, wood first", place: benchRoom.woodFirst(), mix: mixed, targets: wood})...)
	hand := []target{{"waste %", 0.005}, {"crosscuts", 1}, {"ms", 60}}
	open := benchRoom.known(24).stocked(1.1)
	out = append(out, both(bout{name: "mixed, 24 at hand, wood first", place: open.woodFirst(), mix: mixed, targets: hand, noLater: true})...)
	out = append(out, both(bout{name: "short-heavy, 24 at hand, wood first", place: open.woodFirst(), mix: shorts, targets: hand, noLater: true})...)
	out = append(out, both(bout{name: "mixed, 24 at hand, looks first", place: open, mix: mixed, layer: true,
		targets: []target{{"waste %", 0.005}, {"crosscuts", 1}, {"H-joints", 0}, {"under 10 in %", 0.2}, {"first ms", 60},
			{"waste of the layer's %", 15}, {"H of the layer's %", 5}, {"under 10 in of the layer's %", 10}}})...)
	out = append(out, both(bout{name: "short-heavy, 24 at hand, looks first", place: open, mix: shorts,
		targets: []target{{"waste %", 0.21}, {"H-joints", 0}, {"under 10 in %", 10}}})...)
	out = append(out,
		bout{name: "mixed, every run cut, looks first", place: benchRoom.everyCut(), mix: mixed,
			targets: []target{{"waste %", kerfBound + 0.005}, {"H-joints", 0}, {"under 10 in %", 0.2}}},
		bout{name: "stepped 6 in, every run cut, wood first", place: benchRoom.everyCut().woodFirst(), mix: stepped, targets: []target{{"waste %", 0.3}}},
		bout{name: "strip, 12,000 sq ft, looks first", place: strips, mix: strip, seeds: 2,
			targets: []target{{"waste %", 0.005}, {"under 10 in %", 10}, {"ms", 5000}, {"MB", 100}}},
	)
	return out
}

// polishing is the work allowed for bettering a filled floor.
func (b bout) polishing() int {
	if b.noLater {
		return 0
	}
	return rack.Polishing
}
