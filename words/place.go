package words

import (
	"slices"
	"strings"

	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/setout"
	"strake/tape"
)

// RoomWall is a wall of a room in the frame of the rows, the room on its left.
type RoomWall struct {
	Room     string
	Name     string // A-B, as the job writes it
	From, To plane.Pt
}

// Walls are all walls of all rooms, as built.
func Walls(p plan.Plan) []RoomWall {
	var out []RoomWall
	for _, r := range p.Floor.Rooms {
		for i, c := range r.Corners {
			k := (i + 1) % len(r.Corners)
			out = append(out, RoomWall{
				Room: r.Name,
				Name: wallName(p.Built.Rooms, r.Names[i], r.Names[k]),
				From: p.Aligned.Dir.ToRow(c), To: p.Aligned.Dir.ToRow(r.Corners[k]),
			})
		}
	}
	return out
}

// wallName is the wall between two corners in the order the job goes round.
func wallName(rooms []room.Room, a, b string) string {
	for _, r := range rooms {
		i := slices.Index(r.Corners, b)
		if i >= 0 && r.Corners[(i+1)%len(r.Corners)] == a {
			return room.Wall{b, a}.String()
		}
	}
	return room.Wall{a, b}.String()
}

// topWalls are the walls that are topmost on a sheet on which the rows lie
// level and Y runs up: the highest of those that face
// up and lie within 20 degrees of level, and what is about as high as it.
func topWalls(p plan.Plan) []string {
	mid := func(w RoomWall) tape.Length { return (w.From.Y + w.To.Y) / 2 }
	var up []RoomWall
	highest, low, high := tape.Length(0), tape.Length(0), tape.Length(0)
	for i, w := range Walls(p) {
		if i == 0 {
			low, high = w.From.Y, w.From.Y
		}
		low, high = min(low, w.From.Y), max(high, w.From.Y)
		if along := w.From.X - w.To.X; along > 0 && float64(along)*0.364 >= float64((w.To.Y-w.From.Y).Abs()) {
			if len(up) == 0 || mid(w) > highest {
				highest = mid(w)
			}
			up = append(up, w)
		}
	}
	var names []string
	for _, w := range up {
		if highest-mid(w) <= (high-low)/40 { // not told apart at a glance
			names = append(names, w.Name)
		}
	}
	if len(names) > 0 && high-highest > (high-low)/10 {
		return nil // a corner stands out over them
	}
	return names
}

// Top says what is at the top of a sheet on which the rows lie level and Y runs up: its walls, or where none lies level there
// the corner; "" for no room.
func Top(p plan.Plan) string {
	switch w := topWalls(p); {
	case len(w) == 1:
		return "Wall " + w[0] + " is at the top of the sheet."
	case len(w) > 1:
		return "Walls " + strings.Join(w[:len(w)-1], ", ") + " and " + w[len(w)-1] + " are at the top of the sheet."
	}
	name, high := "", tape.Length(0)
	for _, r := range p.Floor.Rooms {
		for i, c := range r.Corners {
			if y := p.Aligned.Dir.ToRow(c).Y; name == "" || y > high {
				name, high = r.Names[i], y
			}
		}
	}
	if name == "" {
		return ""
	}
	return "Corner " + name + " is at the top of the sheet."
}

// Corner is the name of the room corner at q in the row frame, "" when there
// is none within 2 mm.
func Corner(p plan.Plan, q plane.Pt) string {
	for _, r := range p.Floor.Rooms {
		for i, c := range r.Corners {
			d := p.Aligned.Dir.ToRow(c).Sub(q)
			if d.X.Abs() <= 2*tape.Millimetre && d.Y.Abs() <= 2*tape.Millimetre {
				return r.Names[i]
			}
		}
	}
	return ""
}

// WorkingLine is the straight line that the first long row keeps to: its front
// edge, which stays in sight when it is laid, less the tongue.
type WorkingLine struct {
	Y           tape.Length // in the row frame
	Row         string      // the row whose front edge keeps to it
	From, To    tape.Length // X of that row's ends
	Wall        string      // measured from this wall; empty: none lies nearly along it, only marks tell it
	LeftCorner  string      // what stands at the wall's left end; may be empty
	RightCorner string
	Left, Right tape.Length // square to the line, from the wall's two ends
}

// Line finds the working line; false when nothing is laid.
func Line(p plan.Plan) (WorkingLine, bool) {
	first, ok := firstLong(p.Lay.Runs)
	if !ok {
		return WorkingLine{}, false
	}
	if n, ok := setout.Begin(p); ok { // the line that is snapped
		first = longestOf(p, n, first)
	}
	lo, hi := first.Outline.Box()
	w := WorkingLine{Y: front(p, first), Row: Row(first), From: lo.X, To: hi.X}
	a, b, ok := startWall(p, first.Row, w.Y)
	if !ok {
		return w, true
	}
	left, right := a.ends[0], b.ends[1]
	if (w.Y < left.Y) != (w.Y < right.Y) { // the wall crosses the line
		return w, true
	}
	w.Wall = a.Name
	w.Left, w.Right = (w.Y - left.Y).Abs(), (w.Y - right.Y).Abs()
	w.LeftCorner, w.RightCorner = Corner(p, left), Corner(p, right)
	return w, true
}

// firstLong is the run laid first of those at least half as long as the
// longest: a run in a doorway's depth gives no line to snap.
func firstLong(runs []lay.Run) (first lay.Run, ok bool) {
	most := tape.Length(0)
	for _, r := range runs {
		most = max(most, runLength(r))
	}
	for _, r := range runs {
		if 2*runLength(r) >= most && (!ok || r.Order < first.Order) {
			first, ok = r, true
		}
	}
	return
}

// longestOf is the longest run of a row of the main field, else r.
func longestOf(p plan.Plan, row int, r lay.Run) lay.Run {
	most := tape.Length(0)
	for _, q := range p.Lay.Runs {
		if q.Row == row && q.Zone < len(p.Lay.Zones) && p.Lay.Zones[q.Zone].Kind == lay.Field && p.Lay.Zones[q.Zone].Dir == p.Layout.Dir && runLength(q) > most {
			most, r = runLength(q), q
		}
	}
	return r
}

func runLength(r lay.Run) tape.Length {
	lo, hi := r.Outline.Box()
	return hi.X - lo.X
}

// front is the Y of the edge of a run that its tongues stand out from.
func front(p plan.Plan, r lay.Run) tape.Length {
	for _, z := range p.Lay.Zones {
		if z.ID == r.Zone && z.Ahead < 0 {
			return r.Low
		}
	}
	return r.High
}

// beside is an edge of the floor beside the rows, its ends from left to right.
type beside struct {
	floor.AlignedEdge
	ends [2]plane.Pt
}

// nearlyAlong is how far a wall may slant for each unit along the rows to measure
// a line from it at both ends: 2 degrees. What is square to the rows is then
// square to the wall within 1/64 in over 2 ft.
const nearlyAlong = 0.035

func (b beside) nearlyAlong() bool {
	d := b.ends[1].Sub(b.ends[0])
	return float64(d.Y.Abs()) <= nearlyAlong*float64(d.X)
}

// startWall is the wall that the row lies along, else the one beside the
// rows that is nearest to the line: its left-most and its right-most edge. None
// where no wall lies nearly along the rows.
func startWall(p plan.Plan, row int, y tape.Length) (left, right beside, ok bool) {
	walls := slices.DeleteFunc(wallsBeside(p), func(b beside) bool { return !b.nearlyAlong() })
	if len(walls) == 0 {
		return
	}
	name := nearest(walls, y)
	for _, r := range p.Layout.Rips {
		if r.Row == row && slices.ContainsFunc(walls, func(b beside) bool { return b.Name == r.Edge }) {
			name = r.Edge
			break
		}
	}
	for _, b := range walls {
		if b.Name != name {
			continue
		}
		if !ok || b.ends[0].X < left.ends[0].X {
			left = b
		}
		if !ok || b.ends[1].X > right.ends[1].X {
			right = b
		}
		ok = true
	}
	return
}

func wallsBeside(p plan.Plan) []beside {
	var out []beside
	for _, e := range p.Aligned.Edges {
		if e.Kind != floor.Wall || !e.Beside {
			continue
		}
		b := beside{e, [2]plane.Pt{e.From, e.To}}
		if e.To.X < e.From.X {
			b.ends = [2]plane.Pt{e.To, e.From}
		}
		out = append(out, b)
	}
	return out
}

func nearest(walls []beside, y tape.Length) string {
	best := walls[0]
	for _, b := range walls[1:] {
		if (b.ends[0].Y - y).Abs() < (best.ends[0].Y - y).Abs() {
			best = b
		}
	}
	return best.Name
}
