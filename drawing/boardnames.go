package drawing

import (
	"strake/lay"
	"strake/plane"
	"strake/saw"
	"strake/sheet"
	"strake/stock"
	"strake/words"
)

// nameBoards writes in each piece its board's number and its length, and for a
// piece from an offcut the row that the rest of the board lies in; less of it
// where there is less room, nothing where there is none.
func (d *draw) nameBoards() {
	for _, r := range d.p.Lay.Runs {
		size := d.boardSize(r)
		d.inZone(r)
		if r.Unfilled {
			d.nameUnfilled(r)
		}
		for _, id := range r.Pieces {
			if size > 0 {
				d.nameBoard(d.p.Lay.Pieces[id], size)
			}
		}
	}
	d.along = plane.Dir{}
}

// boardSize is the size of writing that goes into a row, 0 when it would be
// too small to read.
func (d *draw) boardSize(r lay.Run) float64 {
	if len(d.p.Lay.Zones) == 0 {
		return 0
	}
	row := d.on(d.p.Lay.Zones[0].Width)
	if len(d.p.Job.Boards.Widths) > 0 {
		row = d.on(r.High - r.Low)
	}
	for _, size := range []float64{small, tiny, least} {
		if row >= size*1.15+2*clear {
			return size
		}
	}
	return 0
}

func (d *draw) nameBoard(p lay.Piece, size float64) {
	lo, hi := p.Outline.Box()
	turn := d.turnOf()
	mid := d.at(lo).Add(d.at(hi)).Times(0.5).Sub(up(turn).Times(0.36 * size))
	along := unit(d.at(plane.P(hi.X, lo.Y)).Sub(d.at(lo)))
	var texts []sheet.Text
	for _, s := range d.boardWords(p) {
		for _, shift := range []float64{0, 0.15, -0.15, 0.3, -0.3} {
			at := mid.Add(along.Times(shift * d.on(hi.X-lo.X)))
			texts = append(texts, sheet.Text{Text: s, At: at, Size: size, Anchor: sheet.Middle, Turn: turn})
		}
	}
	ring := [][]sheet.Pt{d.ring(p.Outline)}
	bands := d.bands(p)
	t, ok := d.labels.first(texts, func(t sheet.Text) bool {
		return within(ring, grown(t, 0.2)) && clearOf(bands, outline(t))
	})
	if ok {
		d.text = append(d.text, t)
	}
}

// boardWords are what may stand in a piece, the most telling first.
func (d *draw) boardWords(p lay.Piece) []string {
	lo, hi := p.Outline.Box()
	no, long := words.Board(p.Board), d.say.Of(hi.X-lo.X)
	full := no + ":  " + long
	out := []string{full, no}
	if from, ok := d.restOf(p); ok {
		out = append([]string{full + ", rest of row " + from}, out...)
	}
	if rip := saw.Of(p).Rip; rip.Done {
		if _, _, all := d.ripWidths(d.run(p.ID)); !all {
			out = append([]string{full + ", rip " + d.say.Rips(rip.Left, rip.Right)}, out...)
		}
	}
	return out
}

// restOf is the row that the first piece of p's board lies in, when p was cut
// from what that one left.
func (d *draw) restOf(p lay.Piece) (string, bool) {
	first := p.ID
	for _, part := range d.p.Lay.Boards[p.Board].Parts {
		if part.Kind == lay.IsPiece && d.order(part.Piece) < d.order(first) {
			first = part.Piece
		}
	}
	if first == p.ID {
		return "", false
	}
	return words.Row(d.run(first)), true
}

// order is the place of a piece in the order of laying, its run first.
func (d *draw) order(piece int) int { return d.run(piece).Order*10_000 + d.place(piece) }

func (d *draw) run(piece int) lay.Run { return d.runs[d.p.Lay.Pieces[piece].Run] }

func (d *draw) place(piece int) int {
	for i, id := range d.run(piece).Pieces {
		if id == piece {
			return i
		}
	}
	return 0
}

// withoutBoards is what stands in a row without boards.
func (d *draw) withoutBoards() string {
	if d.p.Job.Boards.Known == stock.Unknown {
		return "boards picked on site"
	}
	return "no boards left"
}

func (d *draw) nameUnfilled(r lay.Run) {
	lo, hi := r.Outline.Box()
	mid := d.at(lo).Add(d.at(hi)).Times(0.5)
	for _, size := range []float64{middling, small, tiny} {
		t := sheet.Text{Text: d.withoutBoards(), At: sheet.Pt{X: mid.X, Y: mid.Y + 0.36*size}, Size: size, Anchor: sheet.Middle}
		if size*1.1 > d.on(hi.Y-lo.Y) {
			continue
		}
		if t, ok := d.labels.first([]sheet.Text{t}, nil); ok {
			d.onWhite(t)
			return
		}
	}
}

// onWhite writes t on a white ground.
func (d *draw) onWhite(t sheet.Text) {
	d.text = append(d.text, sheet.Polygon{Rings: [][]sheet.Pt{grown(t, 0.3)}, Fill: sheet.White}, t)
}
