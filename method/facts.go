package method

import (
	"strake/fasten"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plan"
	"strake/room"
	"strake/row"
	"strake/tape"
	"strake/words"
)

// facts are what cards take from a job.
type facts struct {
	plan.Plan
	say      words.Lengths
	fine     tape.Style  // heights, to 1/32 in or 0.1 mm
	face     tape.Length // of the widest boards
	thick    tape.Length
	tongue   tape.Length
	gauge    string // of the fasteners by the schedule, "" none speaks of such boards
	use      fasten.Use
	known    bool        // use is whole
	under    tape.Length // what is rolled out under the boards, 0 nothing
	base     tape.Length // thickness of what is nailed into, 0 not known
	slab     bool
	lim      limits.Limits
	gap      floor.Range // at walls, beside the rows
	cover    tape.Length // base and shoe
	count    fasten.Total
	turns    bool // a spline is glued somewhere
	closing  []row.Rip
	pipes    []pipe
	jambs    []jamb
	stone    []string // by name, what is met by a fine joint
	imperial bool
}

// pipe is a pipe that stands in the floor.
type pipe struct {
	name         string
	wide         tape.Length // the wider of its two measures
	hole, collar tape.Length // hole: with the gap round it; collar: at least so wide
	told         bool        // the collar's width is the job's
}

// jamb is an opening whose jambs are undercut.
type jamb struct {
	name   string
	height tape.Length // 0 not known
	clear  tape.Length // of it: room to slide in
	lift   tape.Length // of it: panel and shim under the sheet
	deep   tape.Length // only so far into the wall; 0 all of it
}

func factsOf(p plan.Plan) facts {
	j := p.Job
	n := p.Nailing()
	s, u, ok := n.Use()
	f := facts{Plan: p, say: words.In(j.Unit), fine: tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 10},
		face: n.Face, thick: n.Thickness, tongue: j.Boards.SideTongue, use: u, known: ok, under: n.Paper, base: n.Base, slab: n.Slab,
		lim: j.Limits, cover: n.Cover, imperial: j.Unit.Imperial()}
	if f.imperial {
		f.fine = tape.Style{Unit: tape.UnitInch, Step: tape.Inch / 32}
	}
	if f.face == 0 {
		f.face = j.Boards.Face
	}
	if f.gauge = s.Cleat; u.Kind == fasten.Staple {
		f.gauge = s.Staple
	}
	if ok {
		f.count = fasten.Sum(fasten.Places(p.Lay, u))
	}
	f.gap = wallGap(p)
	f.turns = turns(p)
	for _, x := range p.AllFields() {
		for _, r := range x.Layout.Rips {
			if closes(x.Layout, r) {
				f.closing = append(f.closing, r)
			}
		}
	}
	f.pipes, f.jambs = pipesOf(p), jambsOf(p)
	for _, s := range j.Sketch.Stays {
		if s.Meets == room.MeetsFlush {
			f.stone = append(f.stone, s.Name)
		}
	}
	return f
}

// closes tells whether work ends at the edge of a rip: the tongues of its row face it.
func closes(l row.Layout, r row.Rip) bool {
	told := false
	for _, x := range l.Runs {
		if x.Row == r.Row {
			told = true
			if (x.Ahead >= 0) != r.Above {
				return true
			}
		}
	}
	return !told && !r.Above // a layout without runs is laid one way
}

// wallGap is the gap range of a wall beside the rows; of a plan without walls the
// least gap that its limits ask for.
func wallGap(p plan.Plan) floor.Range {
	for _, e := range p.Floor.Edges {
		if e.Kind == floor.Wall {
			return e.Sides
		}
	}
	least := p.Job.Limits.GapLeast.Value
	return floor.Range{Least: least, Greatest: least}
}

// turns tells whether a spline is glued into a groove anywhere.
func turns(p plan.Plan) bool {
	if words.SplineLength(p) > 0 {
		return true
	}
	for _, pc := range p.Lay.Pieces {
		if len(pc.Slip) > 0 {
			return true
		}
		for _, side := range []lay.Profile{pc.Left, pc.Right, pc.Behind, pc.Ahead} {
			if side == lay.Spline {
				return true
			}
		}
		for _, r := range pc.Routed {
			if r.As == lay.Spline {
				return true
			}
		}
	}
	return false
}

func pipesOf(p plan.Plan) []pipe {
	var out []pipe
	for _, s := range p.Job.Sketch.Stays {
		if s.Kind != room.Pipe {
			continue
		}
		least := p.Job.Limits.GapLeast.Value
		x := pipe{name: s.Name, wide: max(s.Width, s.Depth), told: s.Cover > 0}
		if x.wide > 0 {
			x.hole = x.wide + 2*least
			x.collar = x.hole + 2*p.Job.Limits.Lap.Value
			if x.told {
				x.collar = x.wide + 2*s.Cover
			}
		}
		out = append(out, x)
	}
	return out
}

// jambsOf are the openings whose jambs boards pass under, but those that may not be
// cut; with their heights where the job tells of any.
func jambsOf(p plan.Plan) []jamb {
	sheet, told := p.HeightSheet()
	var out []jamb
	for _, d := range p.Job.Sketch.Doorways {
		if !d.Undercut {
			continue
		}
		x, may := jamb{name: d.Name}, true
		if d.Beyond != room.BeyondRoom {
			x.deep = d.Ends
		}
		for _, u := range sheet.Undercuts {
			if told && u.Name == d.Name {
				x.height, x.deep, may = u.Height, u.Deep, u.Not == ""
				x.clear = sheet.JambClear
				for _, l := range u.Stack {
					if l.What == "panel" || l.What == "shim" {
						x.lift += l.Thickness
					}
				}
			}
		}
		if may {
			out = append(out, x)
		}
	}
	return out
}
