package rack

import (
	"cmp"
	"slices"

	"strake/board"
	"strake/lay"
	"strake/plane"
	"strake/row"
	"strake/stock"
	"strake/tape"
)

// build turns filled runs into a lay: outlines on the floor and in the boards.
func (e *engine) build(a Ask, ls []tape.Length, plan []filled) lay.Lay {
	l := lay.Lay{
		Example: a.Boards.Known == stock.MixOnly, Known: a.Boards.Known, Seed: a.Seed, Kerf: e.blade,
		Zones: zonesOf(a),
	}
	b := builder{engine: e, ask: a, lay: &l, number: map[int]int{}, lengths: ls, plain: a.Boards.EndTongue == 0}
	for _, f := range a.Fields {
		b.steps = append(b.steps, steppedIn(f))
	}
	for i, f := range plan {
		b.addRun(i, f)
	}
	b.sideTongues(a)
	b.slipTongues()
	b.endTongues(a)
	b.meetings()
	b.oldFloors()
	b.besideFrames()
	b.boards()
	l.Spare = e.spare(ls, b.number)
	l.Pins = a.Fields[0].Layout.Pins
	for _, f := range a.Fields {
		l.Exempt = append(l.Exempt, slivers(f.Layout, a)...)
	}
	l.Exempt = append(l.Exempt, wide(b.steps)...)
	for _, o := range odd(a) {
		l.Exempt = append(l.Exempt, lay.Exemption{Rule: "narrowest rip", Run: -1, Edge: o.Edge, Why: "the edge is too slanted for one rip"})
	}
	return l
}

// slivers name the closing edges whose rip no start line could keep, each edge
// once with its narrowest.
func slivers(l row.Layout, a Ask) []lay.Exemption {
	var out []lay.Exemption
	for _, r := range l.Rips {
		narrow := min(r.Narrowest, r.Neck)
		if narrow >= r.Limit {
			continue
		}
		if i := slices.IndexFunc(out, func(x lay.Exemption) bool { return x.Edge == r.Edge }); i >= 0 {
			out[i].To = min(out[i].To, narrow)
			continue
		}
		x := lay.Exemption{Rule: "narrowest rip", Run: -1, Edge: r.Edge, To: narrow, Why: "no start line keeps every rip in this direction"}
		if l.Pin != "" {
			x.Pin, x.Why = l.Pin, "pinned: "+l.Pin
		}
		out = append(out, x)
	}
	return out
}

// odd are the edges too slanted for one rip, of all fields.
func odd(a Ask) []row.Odd {
	var out []row.Odd
	for _, f := range a.Fields {
		for _, o := range f.Layout.Odd {
			if !slices.ContainsFunc(out, func(p row.Odd) bool { return p.Edge == o.Edge }) {
				out = append(out, o)
			}
		}
	}
	return out
}

// zonesOf are the zones of the lay: of each field what is laid ahead, and what
// is laid backwards from a spline.
func zonesOf(a Ask) []lay.Zone {
	var out []lay.Zone
	for _, f := range a.Fields {
		l := f.Layout
		for _, r := range l.Areas {
			out = append(out, lay.Zone{ID: len(out), Kind: f.Kind, Dir: l.Dir, Width: l.Pitch, Offset: l.Offset, Pattern: l.Pattern,
				Ahead: r.Ahead, Hand: a.Boards.Hand, Outline: r.Outline})
		}
	}
	return out
}

// zoneOf is the zone that a run lies in.
func (b *builder) zoneOf(f filled) int {
	n := 0
	for _, g := range b.ask.Fields[:f.field] {
		n += len(g.Layout.Areas)
	}
	return n + b.ask.Fields[f.field].Layout.AreaOf(f.Run)
}

type builder struct {
	*engine
	lay     *lay.Lay
	ask     Ask
	fields  []int       // of each run
	number  map[int]int // stock board -> lay board
	lengths []tape.Length
	steps   []stepped // of each field
	plain   bool      // ends are not matched
}

func (b *builder) addRun(id int, f filled) {
	r := lay.Run{
		ID: id, Zone: b.zoneOf(f), Row: f.Row, Part: f.Part, Low: f.Low, High: f.High, Order: f.Order,
		Nailing: f.Nailing, LeftEnd: f.Left, RightEnd: f.Right, Unfilled: !f.ok,
	}
	r.Outline = cutTo(f.Shape, f.Left.Reach, f.Right.Reach)
	if f.ok {
		pieces := f.pieces
		if f.sign < 0 {
			pieces = slices.Clone(pieces)
			slices.Reverse(pieces)
		}
		for i, p := range pieces {
			r.Pieces = append(r.Pieces, b.addPiece(f, p, i > 0, i+1 < len(pieces)))
		}
		from, to := f.faces()
		r.Outline = cutTo(f.Shape, from, to)
		if f.least < b.jointMin {
			b.lay.Relaxed = append(b.lay.Relaxed, lay.Relaxation{Rule: "joint distance", Run: id, From: b.jointMin, To: f.least,
				Why: b.whyNear()})
		}
	}
	if b.exempt(f.run) {
		b.lay.Exempt = append(b.lay.Exempt, lay.Exemption{Rule: "shortest piece", Run: id, Why: "the run is shorter than the shortest piece"})
	}
	b.lay.Runs = append(b.lay.Runs, r)
	b.fields = append(b.fields, f.field)
}

// faces are the left and right ends of a filled run.
func (f filled) faces() (from, to tape.Length) {
	from, to = f.pieces[0].start, f.pieces[len(f.pieces)-1].end
	if f.sign < 0 {
		from, to = -to, -from
	}
	return
}

// cutTo is the outer ring of a shape between two lines across the row.
func cutTo(g plane.Region, from, to tape.Length) plane.Ring {
	var best plane.Ring
	for _, r := range g.RightOf(from).LeftOf(to) {
		if best == nil || r.Area2() > best.Area2() {
			best = r
		}
	}
	return best
}

func (b *builder) addPiece(f filled, p placed, hasLeft, hasRight bool) int {
	from, to := p.start, p.end
	if f.sign < 0 {
		from, to = -to, -from
	}
	id := len(b.lay.Pieces)
	width := f.High - f.Low
	out := lay.Piece{ID: id, Run: len(b.lay.Runs), Board: b.boardOf(p.board, width), How: lay.Slid}
	out.Outline = b.steps[f.field].straight(cutTo(f.Shape, from, to), f.Low, f.High)
	out.Turned = f.Ahead < 0
	out.InBoard = b.inBoard(out.Outline, f, p, from, to)
	near, far := b.ends(p)
	out.Left, out.Right = near, far
	if f.sign < 0 {
		out.Left, out.Right = far, near
	}
	out.Behind, out.Ahead = edges(out.InBoard, width)
	if out.Turned {
		out.Behind, out.Ahead = out.Ahead, out.Behind
	}
	b.lay.Pieces = append(b.lay.Pieces, out)
	return id
}

// inBoard is the outline of a piece from x to y on the floor, in the frame of
// its board. Stretches of a board are counted from its groove end, which is
// at its X 0 or, with the tongue on the other hand, at its length.
func (b *builder) inBoard(r plane.Ring, f filled, p placed, from, to tape.Length) plane.Ring {
	at := p.from // X in the board of the end that lies lower there
	if b.hand == stock.LeftHand {
		at = b.lengths[p.board] - p.to
	}
	if f.Ahead < 0 {
		return r.Turn(at+to, f.High)
	}
	return r.Move(plane.Pt{X: at - from, Y: -f.Low})
}

func (b *builder) boardOf(stockBoard int, width tape.Length) int {
	n, ok := b.number[stockBoard]
	if !ok {
		n = len(b.number)
		b.number[stockBoard] = n
		b.lay.Boards = append(b.lay.Boards, lay.Board{ID: n, Length: b.lengths[stockBoard], Width: width, Marks: b.mark(stockBoard)})
	}
	return n
}

// ends are the profiles of a piece at its near and its far end.
func (b *builder) ends(p placed) (near, far lay.Profile) {
	near, far = lay.Cut, lay.Cut
	if p.groove {
		near = lay.Groove
	}
	switch {
	case p.tongue && p.tongueOff && !b.plain:
		far = lay.TongueOff
	case p.tongue:
		far = lay.Tongue
	}
	if b.plain {
		if p.groove {
			near = lay.Plain
		}
		if p.tongue {
			far = lay.Plain
		}
	}
	return
}

// edges are the profiles of a piece's long edges: the factory's where it
// reaches the board's, else ripped.
func edges(r plane.Ring, width tape.Length) (behind, ahead lay.Profile) {
	behind, ahead = lay.Ripped, lay.Ripped
	for i, p := range r {
		q := r[(i+1)%len(r)]
		if p.Y == 0 && q.Y == 0 {
			behind = lay.Groove
		}
		if p.Y == width && q.Y == width {
			ahead = lay.Tongue
		}
	}
	return
}

// boards cuts every board that was used.
func (b *builder) boards() {
	pieces := map[int][]board.Piece{}
	for _, p := range b.lay.Pieces {
		pieces[p.Board] = append(pieces[p.Board], board.Piece{ID: p.ID, Outline: p.InBoard})
	}
	for i := range b.lay.Boards {
		d := &b.lay.Boards[i]
		s := board.Saw{Length: d.Length, Width: d.Width, Blade: b.blade, Useful: b.shortest}
		d.Parts = b.spoiled(*d, s.Parts(pieces[i]))
	}
}

// spoiled makes scrap of an offcut that is no use but for a damaged end.
func (b *builder) spoiled(d lay.Board, parts []lay.Part) []lay.Part {
	if d.Spoiled == 0 {
		return parts
	}
	from, to := tape.Length(0), d.Spoiled // of the damage, along the board
	if (d.Fault == stock.SpoiledTongue) != (b.hand == stock.LeftHand) {
		from, to = d.Length-d.Spoiled, d.Length
	}
	for i, p := range parts {
		lo, hi := p.Outline.Box()
		bad := min(hi.X, to) - max(lo.X, from)
		if p.Kind == lay.IsOffcut && bad > 0 && hi.X-lo.X-bad < b.shortest {
			parts[i].Kind = lay.IsScrap
		}
	}
	return parts
}

// spare are the boards not touched, by width, length and marks.
func (e *engine) spare(ls []tape.Length, used map[int]int) []stock.Class {
	count := map[stock.Class]int{}
	for i, l := range ls {
		if _, ok := used[i]; !ok {
			c := stock.Class{Length: l, Marks: e.mark(i)}
			if e.kinds.of != nil {
				c.Width = e.kinds.of[i]
			}
			count[c]++
		}
	}
	var out []stock.Class
	for c, n := range count {
		c.Count = n
		out = append(out, c)
	}
	slices.SortFunc(out, func(a, b stock.Class) int {
		return cmp.Or(cmp.Compare(a.Width, b.Width), cmp.Compare(a.Length, b.Length), cmp.Compare(a.Fault, b.Fault), cmp.Compare(a.Spoiled, b.Spoiled), cmp.Compare(a.Carton, b.Carton), cmp.Compare(a.Shade, b.Shade))
	})
	return out
}
