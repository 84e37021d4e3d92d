package sample

import (
	"strake/finding"
	"strake/floor"
	"strake/job"
	"strake/lay"
	"strake/limits"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/row"
	"strake/stock"
	"strake/tape"
)

const (
	mm   = tape.Millimetre
	inch = tape.Inch
)

// Rectangle is a box room of 3.62 by 2.48 m, boards of 140 mm with a measured
// row width of 140.6 mm, every length known.
func Rectangle() plan.Plan {
	wall := floor.Range{Least: 15 * mm, Greatest: 20 * mm}
	at := []plane.XY{{X: 0, Y: 0}, {X: 3620, Y: 0}, {X: 3620, Y: 2480}, {X: 0, Y: 2480}}
	var outline []side
	for i, n := range []string{"wall A-B", "wall B-C", "wall C-D", "wall D-A"} {
		outline = append(outline, side{at[i], n, floor.Wall, wall, wall, false})
	}
	p := start("Box room", tape.UnitMillimetre, stock.Boards{Name: "Ash", Face: 140 * mm, TenBoards: 1406 * mm, Thickness: 20 * mm,
		SideTongue: 6 * mm, EndTongue: 6 * mm, Hand: stock.RightHand, Known: stock.Tallied})
	p.Floor, p.Aligned = align(outline)
	name(&p, "box room", []string{"A", "B", "C", "D"}, at)
	p.Layout.Why = "along the longest wall, A-B; the same rip at both walls"
	rack(&p, -30*mm, []tape.Length{1810 * mm, 1240 * mm, 2005 * mm, 1575 * mm, 960 * mm}, 1000)
	p.Layout.Rips = []row.Rip{
		{Edge: "wall A-B", Kind: floor.Wall, Row: 1, Left: 95*mm + 4800, Right: 95*mm + 4800, Narrowest: 95*mm + 4800},
		{Edge: "wall C-D", Kind: floor.Wall, Row: 18, Left: 104*mm + 6400, Right: 104*mm + 6400, Narrowest: 104*mm + 6400},
	}
	return p
}

// Hearth is an L-shaped room of about 16 by 13 ft: wall B-C leans, wall E-F is
// slanted so that the last row tapers, a hearth stands against wall D-E and a
// doorway in wall A-B leads under a transition. The boards are not known.
func Hearth() plan.Plan {
	p := hearth(1000)
	return p
}

// ShortOfBoards is Hearth with boards for half of the runs only.
func ShortOfBoards() plan.Plan {
	p := hearth(20)
	p.Lay.Example = false
	return p
}

// Sized is Hearth with all its corners k times as far apart and boards of
// another face width.
func Sized(k float64, face tape.Length) plan.Plan {
	p := build(1000, k, face, face)
	p.Layout.Rips = nil
	return p
}

func hearth(limit int) plan.Plan { return build(limit, 1, 5*inch, 5*inch+inch/32) }

func build(limit int, k float64, face, pitch tape.Length) plan.Plan {
	p := start("Front room", tape.UnitFoot, stock.Boards{Name: "White oak no. 1", Species: "white oak", Face: face,
		TenBoards: 10 * pitch, Thickness: 3 * inch / 4, SideTongue: inch / 4, EndTongue: inch / 4, Hand: stock.RightHand,
		Known: stock.MixOnly})
	p.Floor, p.Aligned = align(larger(hearthOutline(), k))
	at := []plane.XY{xy(0, 0), xy(192, 0), xy(193.5, 100), xy(120, 100), xy(120, 157), xy(0, 154.75)}
	for i := range at {
		at[i] = at[i].Times(k)
	}
	name(&p, "front room", []string{"A", "B", "C", "D", "E", "F"}, at)
	p.Floor.Stays = []floor.StayOutline{{Name: "hearth", Kind: "hearth", Corners: []plane.XY{
		xy(100, 110).Times(k), xy(120, 110).Times(k), xy(120, 150).Times(k), xy(100, 150).Times(k)}}}
	p.Built.Doorways = []room.Doorway{{Name: "hall doorway", Wall: room.Wall{"A", "B"}, Width: 32 * inch, Beyond: room.BeyondTransition}}
	p.Layout.Why = "along the longest wall, A-B"
	lengths := []tape.Length{47*inch + inch/4, 62 * inch, 38*inch + inch/2, 71*inch + inch/8, 29 * inch, 55*inch + 3*inch/4, 18 * inch, 84 * inch}
	// Row 1 lies in the doorway alone.
	rack(&p, -inch/2-p.Job.Boards.Pitch(), lengths, limit)
	p.Lay.Example = true
	p.Layout.Rips = []row.Rip{{Edge: "wall A-B", Kind: floor.Wall, Row: 2, Left: 3*inch + 25*inch/32, Right: 3*inch + 25*inch/32, Narrowest: 3*inch + 25*inch/32}}
	p.Findings = []finding.Finding{
		{Level: finding.Note, Rule: "joint distance", Where: "row 7, row 8", Measured: `6-1/2"`, Limit: `8"`, Do: "Within the minimum; preferred is wider."},
		{Level: finding.Stop, Rule: "gap", Where: "wall B-C", Measured: `1/2"`, Limit: `3/4"`, Do: "Cut the last piece of row 4 shorter."},
		{Level: finding.Warn, Rule: "square corners", Where: "front room", Measured: "no diagonal", Do: "Measure A-C."},
	}
	return p
}

func larger(outline []side, k float64) []side {
	for i := range outline {
		outline[i].from = outline[i].from.Times(k)
	}
	return outline
}

// xy is a place given in inches.
func xy(x, y float64) plane.XY { return plane.XY{X: x * 25.4, Y: y * 25.4} }

func hearthOutline() []side {
	wall := floor.Range{Least: 3 * inch / 4, Greatest: inch}
	jamb := floor.Range{Least: -inch / 2, Greatest: -inch / 4}
	strip := floor.Range{Least: 3 * inch / 8, Greatest: 5 * inch / 8}
	fine, soft := floor.Range{Least: inch / 16, Greatest: inch / 16}, floor.Range{Least: inch / 4, Greatest: inch / 4}
	w := func(x, y float64, name string) side { return side{xy(x, y), name, floor.Wall, wall, wall, false} }
	h := func(x, y float64) side { return side{xy(x, y), "hearth", floor.Flush, fine, soft, true} }
	return []side{
		w(0, 0, "wall A-B"),
		{xy(40, 0), "hall doorway, jamb near A", floor.Jamb, jamb, jamb, false},
		{xy(40, -4), "hall doorway", floor.Transition, strip, strip, false},
		{xy(72, -4), "hall doorway, jamb near B", floor.Jamb, jamb, jamb, false},
		w(72, 0, "wall A-B"), w(192, 0, "wall B-C"), w(193.5, 100, "wall C-D"), w(120, 100, "wall D-E"),
		h(120, 110), h(100, 110), h(100, 150),
		w(120, 150, "wall D-E"), w(120, 157, "wall E-F"), w(0, 154.75, "wall F-A"),
	}
}

func start(title string, u tape.Unit, b stock.Boards) plan.Plan {
	return plan.Plan{
		Job: job.Job{Name: title, Unit: u, Boards: b, Limits: limits.Default(b.Face, b.Thickness)},
		Lay: lay.Lay{Known: b.Known},
	}
}

// name gives the plan its one room.
func name(p *plan.Plan, title string, corners []string, at []plane.XY) {
	p.Floor.Rooms = []floor.RoomOutline{{Name: title, Names: corners, Corners: at}}
	p.Built.Rooms = []room.Room{{Name: title, Corners: corners}}
	p.Built.At = map[string]plane.XY{}
	for i, c := range corners {
		p.Built.At[c] = at[i]
	}
	p.Job.Sketch = p.Built.Sketch
}

// TwoRooms is two rooms in mm with a doorway between them, its jambs
// undercut; the rows run through it and are two runs beside it.
func TwoRooms() plan.Plan {
	p := start("Two bedrooms", tape.UnitMillimetre, stock.Boards{Name: "Ash", Face: 140 * mm, TenBoards: 1406 * mm, Thickness: 20 * mm,
		SideTongue: 6 * mm, EndTongue: 6 * mm, Hand: stock.RightHand, Known: stock.OneSize, One: 1200 * mm})
	wall := floor.Range{Least: 15 * mm, Greatest: 20 * mm}
	jamb := floor.Range{Least: -12 * mm, Greatest: -6 * mm}
	w := func(x, y float64, name string) side {
		return side{plane.XY{X: x, Y: y}, name, floor.Wall, wall, wall, false}
	}
	j := func(x, y float64, name string) side {
		return side{plane.XY{X: x, Y: y}, name, floor.Jamb, jamb, jamb, false}
	}
	p.Floor, p.Aligned = align([]side{
		w(0, 0, "wall A-B"), w(3600, 0, "wall B-C"), j(3600, 800, "inner doorway, jamb near B"),
		w(3720, 800, "wall H-E"), w(3720, 0, "wall E-F"), w(6200, 0, "wall F-G"), w(6200, 2480, "wall G-H"),
		w(3720, 2480, "wall H-E"), j(3720, 1700, "inner doorway, jamb near C"), w(3600, 1700, "wall B-C"),
		w(3600, 2480, "wall C-D"), w(0, 2480, "wall D-A"),
	})
	name(&p, "front bedroom", []string{"A", "B", "C", "D"}, []plane.XY{{X: 0, Y: 0}, {X: 3600, Y: 0}, {X: 3600, Y: 2480}, {X: 0, Y: 2480}})
	first, rooms := p.Floor.Rooms, p.Built.Rooms
	name(&p, "back bedroom", []string{"E", "F", "G", "H"}, []plane.XY{{X: 3720, Y: 0}, {X: 6200, Y: 0}, {X: 6200, Y: 2480}, {X: 3720, Y: 2480}})
	p.Floor.Rooms, p.Built.Rooms = append(first, p.Floor.Rooms...), append(rooms, p.Built.Rooms...)
	p.Layout.Why = "along the longest wall, A-B"
	rack(&p, -30*mm, []tape.Length{1200 * mm}, 1000)
	return p
}
