package plan

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"strake/fasten"
	"strake/floor"
	"strake/goods"
	"strake/plane"
	"strake/room"
	"strake/schedule"
	"strake/site"
	"strake/stock"
	"strake/tape"
	"strake/trim"
)

// Goods is everything to have on site but the boards.
func (p Plan) Goods() goods.List { return p.GoodsOn(schedule.Calendar{}) }

// GoodsOn is Goods with the days of rental of a calendar.
func (p Plan) GoodsOn(c schedule.Calendar) goods.List {
	f := p.GoodsFloor()
	if r := c.Rental; r.Needed {
		span := r.Start()
		if r.Return() != span {
			span += " to " + r.Return()
		}
		f.Rental = goods.Rental{Days: r.Days(), Worked: r.Worked, Span: span, Firm: c.Firm()}
	}
	return goods.Of(f, p.Job.Goods)
}

// Currency is what prices of the job are in, "" not told.
func (p Plan) Currency() string { return cmp.Or(p.Job.Goods.Prices.Currency, p.Job.Boards.Currency) }

// GoodsFloor is what the list of goods wants to know of its floor.
func (p Plan) GoodsFloor() goods.Floor {
	j := p.Job
	return goods.Floor{
		Unit: j.Unit, Style: tape.Paper(j.Unit), Base: j.Base, Shoe: j.Shoe, Kerf: j.Limits.Kerf.Value,
		Stretches: p.Stretches(), Casings: p.casings(), Openings: p.Stripped(), Fixed: p.fixed(), Under: p.UnderBoards(),
		Out: p.tornOut(), Saws: p.sawn(), Site: p.asked(),
	}
}

// Stretches are the walls less openings, their casings and what stands against them,
// going round each ring of the floor; a bowed wall is one.
func (p Plan) Stretches() []goods.Stretch {
	var out []goods.Stretch
	for _, r := range p.Floor.Rings {
		out = append(out, p.round(r)...)
	}
	first := map[string]int{}
	for i, s := range out {
		if _, seen := first[s.Wall]; !seen {
			first[s.Wall] = i
		}
	}
	slices.SortStableFunc(out, func(a, b goods.Stretch) int { // along one wall from its first corner
		return cmp.Or(cmp.Compare(first[a.Wall], first[b.Wall]), cmp.Compare(a.From, b.From))
	})
	return out
}

// round are the stretches of one ring. What a casing leaves nothing of is none.
func (p Plan) round(r floor.Ring) []goods.Stretch {
	n := len(r.Edges)
	at := func(i int) floor.Edge { return p.Floor.Edges[r.Edges[(i+n)%n]] }
	first := 0
	for first < n && goesOn(at(first-1), at(first)) {
		first++
	}
	var out []goods.Stretch
	for k := range n {
		e, before, after := at(first+k), at(first+k-1), at(first+k+1)
		if !moulded(e) {
			continue
		}
		l := micro(e.To.Sub(e.From).Len())
		if k == 0 || !goesOn(before, e) {
			c := p.casing(before)
			out = append(out, goods.Stretch{Wall: e.Wall.String(), From: micro(e.From.Sub(p.Built.At[e.Wall[0]]).Len()) + c, Length: -c, Turns: [2]float64{turn(before, e), 0}})
		}
		s := &out[len(out)-1]
		s.Length += l
		if !goesOn(e, after) {
			s.Length -= p.casing(after)
		}
		s.Turns[1] = turn(e, after)
	}
	return slices.DeleteFunc(out, func(s goods.Stretch) bool { return s.Length <= 0 })
}

// casing is how far from the jamb base stops where an edge of a doorway follows; 0
// beside anything else.
func (p Plan) casing(e floor.Edge) tape.Length {
	if e.Stay != "" || moulded(e) {
		return 0
	}
	name := strings.TrimPrefix(e.Name, "jamb of ")
	for _, d := range p.Job.Sketch.Doorways {
		if d.Said() != name {
			continue
		}
		if d.Cased {
			return d.Casing
		}
		return p.Job.Goods.Filled().Casing
	}
	return 0
}

// casings are the doorways that do not tell their casing.
func (p Plan) casings() []string {
	var out []string
	for _, d := range p.Job.Sketch.Doorways {
		if !d.Cased {
			out = append(out, d.Name)
		}
	}
	return out
}

// moulded tells whether base stands along an edge.
func moulded(e floor.Edge) bool { return e.Kind == floor.Wall && e.Wall[0] != "" }

// goesOn tells whether an edge goes on along the wall of the one before it.
func goesOn(a, b floor.Edge) bool { return moulded(a) && moulded(b) && a.Wall == b.Wall }

// turn is by how many degrees base goes round an outside corner from a to b; 0
// where it does not.
func turn(a, b floor.Edge) float64 {
	if !moulded(a) || !moulded(b) || a.Wall == b.Wall {
		return 0
	}
	u, v := a.To.Sub(a.From), b.To.Sub(b.From)
	return max(0, math.Round(-10*math.Atan2(u.Cross(v), u.Dot(v))*180/math.Pi)/10)
}

// Stripped are the edges that take a strip or a nosing.
func (p Plan) Stripped() []goods.Opening {
	strips := map[string]trim.Strip{}
	if s, ok := p.HeightSheet(); ok {
		for _, m := range s.Meetings {
			strips[m.Name] = m.Strip
		}
	}
	var out []goods.Opening
	for _, d := range p.Job.Sketch.Doorways {
		o := goods.Opening{Name: d.Name, Length: d.Width, Strip: strips[d.Name]}
		if d.Beyond == room.BeyondStair {
			o.Strip = trim.Nosing
		}
		if d.Beyond == room.BeyondTransition || d.Beyond == room.BeyondStair {
			out = append(out, o)
		}
	}
	for _, s := range p.Job.Sketch.Stays {
		o := goods.Opening{Name: s.Name, Strip: strips[s.Name]}
		for _, e := range p.Floor.Edges {
			if e.Stay == s.Name && e.Kind == floor.Transition {
				o.Sides = append(o.Sides, micro(e.To.Sub(e.From).Len()))
			}
		}
		if len(o.Sides) > 0 {
			out = append(out, o)
		}
	}
	return out
}

// UnderBoards is what lies between boards and subfloor, field by field.
func (p Plan) UnderBoards() goods.UnderFloor {
	s := p.Job.Site
	u := goods.UnderFloor{Sheet: s.Sheet.Kind, Slab: onSlab(p.Job), Glue: s.Glue, Both: s.GlueOver == site.Yes}
	for _, b := range p.Job.Boards.Each() {
		u.Face = max(u.Face, b.Face)
	}
	for _, f := range p.Fields {
		area := f.Part.Bare
		if len(area) == 0 {
			area = f.Layout.Face
		}
		u.Fields = append(u.Fields, goods.Field{Area: plane.Region(area)})
	}
	return u
}

// fixed is what the boards laid are nailed with.
func (p Plan) fixed() goods.Fixed {
	f := p.Nailing()
	_, u, ok := f.Use()
	x := goods.Fixed{Known: ok && len(p.Lay.Pieces) > 0, Example: p.Job.Boards.Known == stock.MixOnly || p.Lay.Example, Use: u, Box: fasten.Box(u.Kind), BoxSource: fasten.SrcBox}
	if x.Known {
		x.Total, x.Cuts, x.Rips = fasten.Sum(fasten.Places(p.Lay, u)), p.sawCuts(), p.sawn().Rips
	}
	if x.Example { // its rows close with whole boards; in truth nearly each ends in a cut
		x.Cuts = max(x.Cuts, len(p.Lay.Runs)+x.Rips)
	}
	if f.Own.Box > 0 {
		x.Box, x.BoxSource = f.Own.Box, f.Own.Source
	}
	for _, f := range p.Fields {
		for _, s := range f.Layout.Splines {
			x.Splines = append(x.Splines, s.Along.Len())
		}
	}
	return x
}
