package row

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"strake/floor"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Candidate is one way the rows could lie, with what it would mean.
type Candidate struct {
	Fields  []Field
	Layout  Layout // of the first field
	Aligned floor.Aligned
	Heading string // "along wall A-B"
	Name    string // "along wall A-B, from the middle"
	Kind    Kind
	Variant Variant
	Score   Score
}

// Variant is what is done otherwise than in the plain candidate of a direction.
type Variant string

// The variants.
const (
	Plain      Variant = ""
	FromMiddle Variant = "from the middle"
	OtherSide  Variant = "from the other side"
	Carried    Variant = "no spline, each start from a carried line"
	TurnedAt   Variant = "turned at a doorway"
	Shared     Variant = "taper shared by two walls"
	Stepped    Variant = "closing rows stepped"
)

// Kind is what two candidates must differ in to be worth showing side by side.
type Kind string

// The kinds of direction, against the longest wall.
const (
	WithLongest   Kind = "with the longest wall"
	SquareLongest Kind = "across the longest wall"
	Diagonal      Kind = "diagonal"
)

// Score is what a person weighs.
type Score struct {
	Narrowest   tape.Length // rip at a closing edge; the pitch: none is ripped
	At          string      // where that is
	Under       tape.Length // length of edges where rows run out narrower than the limit
	Ripped      tape.Length // length of all rips along closing edges
	Closing     int         // edges that rows close along
	Tapers      []Taper
	Notched     int      // rows with a notch, a jog or something that stays in them
	Through     []string // doorways that rows run through
	Beside      []string // doorways that rows pass side by side
	Joists      Joists
	ByHand      int // runs to be fastened by hand, in whole or in part
	Rows, Runs  int
	Spline      tape.Length // of all splines
	Starts      int         // first rows set to a line
	Transitions int         // doorways where this floor ends at another, under a strip or flush
	Changes     []string    // doorways where rows turn or a header lies
	AcrossWidth tape.Length // of the floor, square to the rows
	From        string      // rows are wished to go on from there; empty: no such wish
	Breaks      string      // why they do not; empty: they do

	longest tape.Length // board
}

// Taper is a rip that is wider at one end.
type Taper struct {
	Edge  string
	Row   int
	By    tape.Length // how much it loses from end to end
	Per6  tape.Length // how much the edge slants over 6 ft
	Shown bool        // it will be seen: at tile or stone, more than is usually noticed, or much of its width
	// Pieces of its row up to Fits are each ripped to one width, since what covers
	// the gap hides the step to the next; a longer one tapers, unless the row is
	// Stepped: then Step is the step that the longest board makes, and Over how much
	// of it shows.
	Fits       tape.Length
	Hidden     bool // no board is longer: each piece is of one width
	Stepped    bool
	Step, Over tape.Length

	wall  room.Wall // empty: none; its row is never stepped
	run   tape.Length
	play  tape.Length
	slope float64
}

// Joists is how the rows lie to them.
type Joists string

// The ways.
const (
	JoistsUnknown Joists = "not known"
	AcrossJoists  Joists = "across the joists"
	AlongJoists   Joists = "along the joists"
	OverJoists    Joists = "slanting over the joists"
)

// Per is a slant over 6 ft as it is told in a job: over 6 ft, or over 2 m.
func Per(over6 tape.Length, imperial bool) (tape.Length, string) {
	if imperial {
		return over6, "6 ft"
	}
	return tape.Length(math.Round(float64(over6) * float64(2*tape.Metre) / float64(6*tape.Foot))), "2 m"
}

// Noticed is the taper over 6 ft under which it usually goes unnoticed along a
// plain wall (common craft figure, no source).
const Noticed = tape.Inch / 4

// heading is one direction to try.
type heading struct {
	dir  plane.Dir
	from basis
	name string
	as   Variant
}

// shownCandidates is how many are kept.
const shownCandidates = 5

// Candidates are the ways worth comparing, each with its best start: the one
// that the wishes give first, then the others, best first, with at least one of
// each kind that there is. Exact in the start for each direction; no claim
// between angles.
func Candidates(p Place, joists room.Wall) []Candidate {
	var out []Candidate
	wished := p.Wishes.Continuous
	p.whole = map[plane.Dir]floor.Aligned{}
	p, _ = p.weighed()
	longest, _ := along(p.Built, Wishes{})
	main, _ := wallDir(p.Built, longest.wall)
	for i, h := range headings(p.Built, p.Wishes, joists) {
		v := p
		if i > 0 { // what was wished for another direction
			v.Wishes.StartWall, v.Wishes.EdgeOn, v.Wishes.Pins, v.Wishes.Doorways, v.Wishes.Middle = room.Wall{}, "", nil, nil, false
		}
		c, ok := v.candidate(h, h.as, joists)
		if !ok {
			continue
		}
		c.Kind = kindOf(h.dir, main)
		out = append(out, c)
		if s, ok := v.stepped(c); ok {
			out = append(out, s)
		}
		if i == 0 {
			for _, alt := range v.variants(h, c, joists) {
				alt.Kind = c.Kind
				out = append(out, alt)
			}
		}
	}
	for i := range out {
		out[i].Score.goesOn(p.Built, out[i].Fields, wished)
	}
	return keep(out, p.Limits)
}

// candidate lays out one way.
func (p Place) candidate(h heading, v Variant, joists room.Wall) (Candidate, bool) {
	fs := p.fields(h.dir, h.from, nil)
	if len(fs[0].Layout.Runs) == 0 {
		return Candidate{}, false
	}
	c := Candidate{Fields: fs, Layout: fs[0].Layout, Aligned: fs[0].Aligned, Heading: h.name, Name: h.name, Variant: v}
	if v != Plain && v != Shared {
		c.Name += ", " + string(v)
	}
	c.Score = p.scoreOf(fs, joists)
	return c, true
}

// variants are the other ways to start in a direction: from the middle where
// the floor is wide, from the other side, without splines, and with the rows
// turned at a doorway.
func (p Place) variants(h heading, plain Candidate, joists room.Wall) []Candidate {
	var out []Candidate
	try := func(h heading, v Variant, change func(*Wishes)) {
		q := p
		q.Wishes.StartWall, q.Wishes.Pins = room.Wall{}, nil
		change(&q.Wishes)
		if c, ok := q.candidate(h, v, joists); ok {
			out = append(out, c)
		}
	}
	if plain.Score.AcrossWidth > p.Limits.WideFloor.Value && !p.Wishes.Middle {
		try(h, FromMiddle, func(w *Wishes) { w.Middle = true })
	}
	if plain.Score.Spline > 0 && p.Wishes.Turning != TurnNone {
		try(h, Carried, func(w *Wishes) { w.Turning, w.Middle = TurnNone, false })
	}
	if p.Wishes.StartWall == (room.Wall{}) {
		flipped := h
		flipped.dir = h.dir.Flip()
		try(flipped, OtherSide, func(*Wishes) {})
	}
	for _, d := range p.Built.Doorways {
		if _, _, ok := sides(p.Built, d); ok && p.Wishes.Doorways[d.Name] == Through {
			try(h, TurnedAt+Variant(": "+d.Name), func(w *Wishes) {
				w.Doorways = maps.Clone(w.Doorways)
				if w.Doorways == nil {
					w.Doorways = map[string]Change{}
				}
				w.Doorways[d.Name] = Turn
			})
			if n := len(out); n > 0 && len(out[n-1].Fields) < 2 && strings.HasPrefix(string(out[n-1].Variant), string(TurnedAt)) {
				out = out[:n-1] // it cannot turn there
			}
		}
	}
	return out
}

// headings is the finite list: what the wishes give, each long wall, the
// bisector of each pair of walls within 2 degrees, across the joists, through
// the widest doorway.
func headings(b room.Built, w Wishes, joists room.Wall) []heading {
	d, from, _ := direction(b, w)
	out := []heading{{d, from, nameOf(from), Plain}}
	add := func(d plane.Dir, from basis, name string, as Variant) {
		for _, h := range out {
			if math.Abs(plane.XY(h.dir).Cross(plane.XY(d))) < 2e-4 { // 0.01 degrees
				return
			}
		}
		out = append(out, heading{d, from, name, as})
	}
	walls := longWalls(b)
	for _, v := range walls {
		if d, ok := wallDir(b, v); ok {
			from := basis{wall: v, why: fmt.Sprintf("rows along wall %s", v)}
			add(d, from, nameOf(from), Plain)
		}
	}
	for i, v := range walls {
		for _, u := range walls[:i] {
			if d, ok := between(b, u, v); ok {
				from := halfway(u, v)
				add(d, from, nameOf(from), Shared)
			}
		}
	}
	if d, ok := wallDir(b, joists); ok {
		from := basis{wall: joists, across: true, why: "rows across the joists"}
		add(plane.Dir(plane.XY(d).Left()), from, "across the joists", Plain)
	}
	if dw, ok := widest(b); ok {
		if d, ok := wallDir(b, dw.Wall); ok {
			from := basis{wall: dw.Wall, across: true, why: fmt.Sprintf("rows through %s", dw.Said())}
			add(plane.Dir(plane.XY(d).Left()), from, "through "+dw.Said(), Plain)
		}
	}
	return out
}

func nameOf(from basis) string {
	switch {
	case from.wall == (room.Wall{}):
		return strings.TrimPrefix(from.why, "rows ")
	case from.across:
		return "square to wall " + from.wall.String()
	}
	return "along wall " + from.wall.String()
}

// longWalls are the walls at least half as long as the longest, longest first.
func longWalls(b room.Built) []room.Wall {
	type measured struct {
		w room.Wall
		l float64
	}
	var all []measured
	for _, r := range b.Rooms {
		ring := r.Ring()
		for i, c := range ring {
			n := ring[(i+1)%len(ring)]
			all = append(all, measured{room.Wall{c, n}, b.At[n].Sub(b.At[c]).Len()})
		}
	}
	slices.SortStableFunc(all, func(x, y measured) int {
		if math.Abs(x.l-y.l) > 0.5 {
			return int(math.Copysign(1, y.l-x.l))
		}
		return 0
	})
	var out []room.Wall
	for _, m := range all {
		if m.l*2 >= all[0].l && len(out) < 12 {
			out = append(out, m.w)
		}
	}
	return out
}

// between is the direction that halves two walls within 2 degrees of parallel.
func between(b room.Built, u, v room.Wall) (plane.Dir, bool) {
	p, ok := wallDir(b, u)
	q, ok2 := wallDir(b, v)
	if !ok || !ok2 {
		return p, false
	}
	x, y := plane.XY(p), plane.XY(q)
	if x.Dot(y) < 0 {
		y = y.Times(-1)
	}
	if math.Abs(x.Cross(y)) > math.Sin(2*math.Pi/180) {
		return p, false
	}
	return plane.Dir(x.Add(y).Unit()), true
}

func widest(b room.Built) (room.Doorway, bool) {
	best := room.Doorway{}
	for _, d := range b.Doorways {
		if d.Width > best.Width {
			best = d
		}
	}
	return best, best.Width > 0
}

// kindOf compares a direction with the longest wall's.
func kindOf(d, main plane.Dir) Kind {
	switch s := math.Abs(plane.XY(d).Cross(plane.XY(main))); {
	case s < math.Sin(10*math.Pi/180):
		return WithLongest
	case s > math.Cos(10*math.Pi/180):
		return SquareLongest
	}
	return Diagonal
}

// keep is the first candidate, then the best of each other kind of direction,
// then the best of each variant, then the best of the rest.
func keep(cs []Candidate, lim limits.Limits) []Candidate {
	if len(cs) < 2 {
		return cs
	}
	rest := slices.Clone(cs[1:])
	slices.SortStableFunc(rest, func(a, b Candidate) int {
		if a.betterThan(b, lim) {
			return -1
		}
		if b.betterThan(a, lim) {
			return 1
		}
		return 0
	})
	out := cs[:1:1]
	kinds := map[Kind]bool{cs[0].Kind: true}
	variants := map[Variant]bool{cs[0].Variant: true}
	take := func(fits func(Candidate) bool) {
		var left []Candidate
		for _, c := range rest {
			if len(out) < shownCandidates && fits(c) {
				out = append(out, c)
			} else {
				left = append(left, c)
			}
		}
		rest = left
	}
	take(func(c Candidate) bool { n := kinds[c.Kind]; kinds[c.Kind] = true; return !n })
	take(func(c Candidate) bool {
		v := c.Variant
		if strings.HasPrefix(string(v), string(TurnedAt)) {
			v = TurnedAt
		}
		n := variants[v]
		variants[v] = true
		return !n && c.differs(cs[0])
	})
	take(func(c Candidate) bool {
		return c.Variant == Plain && !slices.ContainsFunc(out, func(d Candidate) bool { return !c.differs(d) })
	})
	return out
}

// differs tells whether a candidate would be told from another: a start from
// the other side of a plain room is the same thing turned round.
func (c Candidate) differs(d Candidate) bool {
	x, y := c.Score, d.Score
	return c.Kind != d.Kind || c.Variant == FromMiddle || c.Variant == Stepped && d.Variant != Stepped || len(c.Fields) != len(d.Fields) || x.Narrowest != y.Narrowest ||
		x.Spline != y.Spline || x.Starts != y.Starts || x.ByHand != y.ByHand || len(x.Tapers) != len(y.Tapers) || x.Notched != y.Notched
}

// betterThan orders candidates: no sliver, over the joists, rows that go on where
// that is wished, fewer shown tapers,
// the wider narrowest rip, fewer rows.
func (c Candidate) betterThan(d Candidate, lim limits.Limits) bool {
	x, y := c.Score, d.Score
	if a, b := c.sliver(lim), d.sliver(lim); a != b {
		return b
	}
	if a, b := x.Joists == AlongJoists, y.Joists == AlongJoists; a != b {
		return b
	}
	if a, b := x.Breaks == "", y.Breaks == ""; a != b {
		return a
	}
	if a, b := x.shown(), y.shown(); a != b {
		return a < b
	}
	if x.Under != y.Under {
		return x.Under < y.Under
	}
	if x.Narrowest != y.Narrowest {
		return x.Narrowest > y.Narrowest
	}
	return x.Runs < y.Runs
}

// sliver tells whether some rip is under the limit of its board.
func (c Candidate) sliver(lim limits.Limits) bool {
	for _, f := range c.Fields {
		if slices.ContainsFunc(f.Layout.Rips, func(r Rip) bool { return r.Narrowest < r.Limit }) {
			return true
		}
	}
	return false
}

func (s Score) shown() int {
	n := 0
	for _, t := range s.Tapers {
		if t.Shown {
			n++
		}
	}
	return n
}
