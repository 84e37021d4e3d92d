package drawing

import (
	"math"

	"strake/plan"
	"strake/plane"
	"strake/sheet"
	"strake/tape"
)

// Sizes of writing, mm, and of the parts of the sheet.
const (
	title    = 5.0
	large    = 4.2
	middling = 3.0
	small    = 2.5
	tiny     = 2.1
	least    = 1.8 // where nothing larger goes in
	margin   = 8.0
	panel    = 80.0
)

// around is what is kept free round the floor for rows' numbers, rips,
// dimensions and what stands at the top and the foot.
var around = sides{left: 42, right: 30, top: 29, foot: 27}

type sides struct{ left, right, top, foot float64 }

// box is an upright rectangle on the page: its upper left and lower right corner.
type box struct{ a, b sheet.Pt }

func (b box) w() float64 { return b.b.X - b.a.X }
func (b box) h() float64 { return b.b.Y - b.a.Y }

func (b box) less(s sides) box {
	return box{b.a.Add(sheet.Pt{X: s.left, Y: s.top}), b.b.Sub(sheet.Pt{X: s.right, Y: s.foot})}
}

func (b box) holds(ps []sheet.Pt) bool {
	for _, p := range ps {
		if p.X < b.a.X || p.X > b.b.X || p.Y < b.a.Y || p.Y > b.b.Y {
			return false
		}
	}
	return true
}

func (b box) corners() []sheet.Pt {
	return []sheet.Pt{{X: b.a.X, Y: b.b.Y}, b.b, {X: b.b.X, Y: b.a.Y}, b.a}
}

// area is where the floor is drawn, the panel beside it.
func (p paper) area() box {
	return box{sheet.Pt{X: margin, Y: margin}, sheet.Pt{X: p.w - margin - p.panel, Y: p.h - margin}}
}

// free is what of the area the floor may take up.
func (p paper) free() box {
	if p.tight != nil {
		return p.area().less(*p.tight)
	}
	return p.area().less(around)
}

// view is how the row frame lies on the page.
type view struct {
	page  paper
	scale scale
	area  box
	zero  sheet.Pt // where the row frame's origin lies
	floor box      // what is drawn of walls and floor
	main  plane.Dir
	along plane.Dir // of what is drawn now; zero: main
}

// newView fits the walls and the floor of p on a sheet.
func newView(p plan.Plan, choose sizing) view {
	lo, hi := extent(p)
	w, h := (hi.X - lo.X).Millimetres(), (hi.Y - lo.Y).Millimetres()
	v := view{main: p.Aligned.Dir}
	v.page, v.scale = choose(p.Job.Unit, w, h, p.Job.Boards.NarrowestPitch().Millimetres())
	v.area = v.page.area()
	free := v.page.free()
	left := free.a.X + (free.w()-v.on(hi.X-lo.X))/2
	top := free.a.Y + (free.h()-v.on(hi.Y-lo.Y))/2
	v.zero = sheet.Pt{X: left - v.on(lo.X), Y: top + v.on(hi.Y)}
	v.floor = box{v.at(plane.P(lo.X, hi.Y)), v.at(plane.P(hi.X, lo.Y))}
	return v
}

// extent is the low and the high corner of all that is drawn to scale.
func extent(p plan.Plan) (lo, hi plane.Pt) {
	all := append(plane.Region(nil), p.Aligned.Bare...)
	for _, r := range p.Floor.Rooms {
		all = append(all, toRow(p, r.Corners))
	}
	for _, s := range p.Floor.Stays {
		all = append(all, toRow(p, s.Corners))
	}
	return all.Box()
}

func toRow(p plan.Plan, at []plane.XY) plane.Ring {
	out := make(plane.Ring, len(at))
	for i, c := range at {
		out[i] = p.Aligned.Dir.ToRow(c)
	}
	return out
}

// on is a length on the floor as drawn, mm.
func (v view) on(l tape.Length) float64 { return l.Millimetres() / v.scale.one }

// at is a place of the row frame on the page. The row frame's Y runs up, the
// page's down: the floor is seen from above.
func (v view) at(p plane.Pt) sheet.Pt {
	if v.along != (plane.Dir{}) && v.along != v.main {
		p = v.main.ToRow(v.along.FromRow(p))
	}
	return sheet.Pt{X: v.zero.X + v.on(p.X), Y: v.zero.Y - v.on(p.Y)}
}

// turnOf is how far writing along the frame's rows is turned, so that it reads
// from the foot of the sheet or from its right side.
func (v view) turnOf() float64 {
	if v.along == (plane.Dir{}) || v.along == v.main {
		return 0
	}
	m, f := plane.XY(v.main), plane.XY(v.along)
	t := -math.Atan2(m.Cross(f), m.Dot(f)) * 180 / math.Pi
	for t > 89.5 {
		t -= 180
	}
	for t <= -90.5 {
		t += 180
	}
	return math.Round(t*100) / 100
}

func (v view) ring(r plane.Ring) []sheet.Pt {
	out := make([]sheet.Pt, len(r))
	for i, p := range r {
		out[i] = v.at(p)
	}
	return out
}
