package sample

import (
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/tape"
)

// racker fills runs from left to right.
type racker struct {
	p       *plan.Plan
	lengths []tape.Length // of the next boards, used in turn
	next    int
	offcuts []offcut
	limit   int // runs to fill; the boards run out after that
}

// offcut is the end of a board that a later run may start with.
type offcut struct {
	board  int
	from   tape.Length // along the board
	length tape.Length
}

// rack fills p's layout. The rows lie on lines at offset plus whole pitches.
func rack(p *plan.Plan, offset tape.Length, lengths []tape.Length, limit int) {
	r := &racker{p: p, lengths: lengths, limit: limit}
	p.Layout.Dir, p.Layout.Pitch, p.Layout.Offset = p.Aligned.Dir, p.Job.Boards.Pitch(), offset
	p.Lay.Kerf = p.Job.Limits.Kerf.Value
	p.Lay.Zones = []lay.Zone{{Kind: lay.Field, Dir: p.Aligned.Dir, Width: p.Layout.Pitch, Offset: offset, Ahead: 1, Hand: p.Job.Boards.Hand}}
	_, hi := p.Aligned.Reach.Box()
	row := 1
	for y := offset; y < hi.Y; y += p.Layout.Pitch {
		r.row(row, y)
		row++
	}
}

func (r *racker) row(row int, low tape.Length) {
	parts := r.p.Aligned.Reach.Strip(low, low+r.p.Layout.Pitch).Parts()
	for i, part := range parts {
		run := lay.Run{ID: len(r.p.Lay.Runs), Row: row, Low: low, High: low + r.p.Layout.Pitch,
			Outline: part[0], Order: len(r.p.Lay.Runs) + 1}
		by := lay.Nailer
		if row == 1 {
			by = lay.FaceNail
		}
		lo, hi := part.Box()
		run.Nailing = []lay.Stretch{{Along: plane.Span{From: lo.X, To: hi.X}, By: by}}
		if len(parts) > 1 {
			run.Part = i + 1
		}
		run.LeftEnd, run.RightEnd = r.end(lo.X, run), r.end(hi.X, run)
		if run.ID >= r.limit {
			run.Unfilled = true
		} else {
			r.fill(&run, part)
		}
		r.p.Lay.Runs = append(r.p.Lay.Runs, run)
	}
}

// end names what a run meets at x: the nearest floor edge that rows end at,
// level with the middle of the row.
func (r *racker) end(x tape.Length, run lay.Run) lay.EndRange {
	out, best := lay.EndRange{Reach: x, Need: x}, tape.Longest
	mid := (run.Low + run.High) / 2
	for _, e := range r.p.Aligned.Edges {
		if e.Beside || min(e.From.Y, e.To.Y) > mid || max(e.From.Y, e.To.Y) < mid {
			continue
		}
		if d := (e.From.X - x).Abs(); d < best {
			best, out.Edge, out.InPlace, out.Mitred = d, e.Name, e.InPlace, e.From.X != e.To.X
		}
	}
	return out
}

func (r *racker) fill(run *lay.Run, part plane.Region) {
	lo, hi := part.Box()
	x := lo.X
	if o, ok := r.takeOffcut(hi.X - lo.X); ok {
		r.piece(run, part, plane.Span{From: x, To: x + o.length}, o.board, o.from)
		x += o.length
	}
	for x < hi.X {
		board := len(r.p.Lay.Boards)
		length := r.lengths[r.next%len(r.lengths)]
		r.next++
		if rest := hi.X - x - length; rest > 0 && rest < r.p.Job.Limits.ShortestPiece.Value {
			length -= r.p.Job.Limits.ShortestPiece.Value
		}
		r.p.Lay.Boards = append(r.p.Lay.Boards, lay.Board{ID: board, Length: length, Width: r.p.Layout.Pitch})
		to := min(x+length, hi.X)
		r.piece(run, part, plane.Span{From: x, To: to}, board, 0)
		r.keep(board, to-x, length)
		x = to
	}
}

// takeOffcut takes the longest offcut shorter than the run.
func (r *racker) takeOffcut(room tape.Length) (offcut, bool) {
	best := -1
	for i, o := range r.offcuts {
		if o.length < room && (best < 0 || o.length > r.offcuts[best].length) {
			best = i
		}
	}
	if best < 0 || len(r.offcuts) < 3 {
		return offcut{}, false
	}
	o := r.offcuts[best]
	r.offcuts = append(r.offcuts[:best], r.offcuts[best+1:]...)
	b := &r.p.Lay.Boards[o.board]
	for i := range b.Parts {
		if b.Parts[i].Kind == lay.IsOffcut {
			b.Parts = append(b.Parts[:i], b.Parts[i+1:]...)
			break
		}
	}
	return o, true
}

// keep notes the kerf behind a piece and what is left of its board.
func (r *racker) keep(board int, used, length tape.Length) {
	if used >= length {
		return
	}
	b := &r.p.Lay.Boards[board]
	from := min(length, used+r.p.Lay.Kerf)
	part := func(k lay.PartKind, a, z tape.Length) {
		b.Parts = append(b.Parts, lay.Part{Kind: k, Piece: -1, Outline: plane.Rect(plane.P(a, 0), plane.P(z, b.Width))})
	}
	part(lay.IsKerf, used, from)
	switch {
	case length-from >= r.p.Job.Limits.ShortestPiece.Value:
		part(lay.IsOffcut, from, length)
		r.offcuts = append(r.offcuts, offcut{board, from, length - from})
	case length > from:
		part(lay.IsScrap, from, length)
	}
}

// piece lays the part of the run between two places along the rows.
func (r *racker) piece(run *lay.Run, part plane.Region, at plane.Span, board int, from tape.Length) {
	shape := part.RightOf(at.From).LeftOf(at.To)[0]
	b := &r.p.Lay.Boards[board]
	inBoard := shape.Move(plane.P(from-at.From, -run.Low))
	pc := lay.Piece{ID: len(r.p.Lay.Pieces), Run: run.ID, Board: board, Outline: shape, InBoard: inBoard, How: lay.Slid}
	pc.Left, pc.Right = lay.Groove, lay.Tongue
	if from > 0 {
		pc.Left = lay.Cut
	}
	if from+at.Len() < b.Length {
		pc.Right = lay.Cut
	}
	_, hi := part.Box()
	if pc.Right == lay.Tongue && at.To == hi.X {
		pc.Right = lay.TongueOff
	}
	pc.Behind, pc.Ahead = edges(shape, *run)
	b.Parts = append(b.Parts, lay.Part{Kind: lay.IsPiece, Piece: pc.ID, Outline: inBoard})
	r.rest(b, inBoard)
	run.Pieces = append(run.Pieces, pc.ID)
	r.p.Lay.Pieces = append(r.p.Lay.Pieces, pc)
}

// edges says what the long edges carry: ripped where they touch no row line.
func edges(shape plane.Ring, run lay.Run) (behind, ahead lay.Profile) {
	behind, ahead = lay.Ripped, lay.Ripped
	for i, a := range shape {
		b := shape[(i+1)%len(shape)]
		if a.Y == run.Low && b.Y == run.Low {
			behind = lay.Groove
		}
		if a.Y == run.High && b.Y == run.High {
			ahead = lay.Tongue
		}
	}
	return
}

// rest makes what the piece leaves of its length of board into strips.
func (r *racker) rest(b *lay.Board, piece plane.Ring) {
	lo, hi := piece.Box()
	if lo.Y > 0 {
		b.Parts = append(b.Parts, lay.Part{Kind: lay.IsStrip, Piece: -1, Outline: plane.Rect(plane.P(lo.X, 0), plane.P(hi.X, lo.Y))})
	}
	if hi.Y < b.Width {
		b.Parts = append(b.Parts, lay.Part{Kind: lay.IsStrip, Piece: -1, Outline: plane.Rect(plane.P(lo.X, hi.Y), plane.P(hi.X, b.Width))})
	}
}
