package paper

import (
	"fmt"
	"slices"
	"sort"

	"strake/lay"
	"strake/tape"
	"strake/words"
)

// from says where a piece comes from: a board from the pallet, or what an
// earlier piece left of one.
func (l *lister) from(p lay.Piece) string {
	on := l.onBoard(p.Board)
	if i := slices.Index(on, p.ID); i > 0 {
		return "rest of board " + words.Board(p.Board) + ", from " + l.name(on[i-1])
	}
	return "board " + words.Board(p.Board)
}

// rest says where what p leaves of its board goes: the next piece from it, and
// what lies nearest to p of the parts that are no pieces.
func (l *lister) rest(p lay.Piece) []string {
	on := l.onBoard(p.Board)
	var out []string
	if i := slices.Index(on, p.ID); i+1 < len(on) {
		lo, hi := l.p.Lay.Pieces[on[i+1]].InBoard.Box()
		out = append(out, l.say.Of(hi.X-lo.X)+" to "+l.name(on[i+1]))
	}
	for _, part := range l.p.Lay.Boards[p.Board].Parts {
		if l.nearest(part, on) == p.ID && !l.thin(part) {
			out = append(out, l.left(part))
		}
	}
	return out
}

// thin tells whether a part is too small to measure one way.
func (l *lister) thin(part lay.Part) bool {
	lo, hi := part.Outline.Box()
	return l.say.Of(hi.X-lo.X) == l.say.Of(0) || l.say.Nil(hi.Y-lo.Y)
}

// left names a part that is no piece, with its size.
func (l *lister) left(part lay.Part) string {
	lo, hi := part.Outline.Box()
	long, wide := l.say.Of(hi.X-lo.X), l.say.Rip(hi.Y-lo.Y)
	switch part.Kind {
	case lay.IsOffcut:
		return "offcut " + long
	case lay.IsStrip:
		return fmt.Sprintf("strip %s by %s", long, wide)
	}
	return fmt.Sprintf("scrap %s by %s", long, wide)
}

// nearest is the piece that an offcut, a strip or a scrap was cut from: the
// one it lies next to on the board, of two the later laid; -1 for a piece or a
// kerf.
func (l *lister) nearest(part lay.Part, on []int) int {
	if part.Kind == lay.IsPiece || part.Kind == lay.IsKerf {
		return -1
	}
	best, least := -1, tape.Longest
	lo, hi := part.Outline.Box()
	for _, id := range on {
		a, b := l.p.Lay.Pieces[id].InBoard.Box()
		if d := max(0, lo.X-b.X, a.X-hi.X); d <= least {
			best, least = id, d
		}
	}
	return best
}

// onBoard are the pieces of a board in the order they are laid.
func (l *lister) onBoard(board int) []int {
	var ids []int
	for _, part := range l.p.Lay.Boards[board].Parts {
		if part.Kind == lay.IsPiece {
			ids = append(ids, part.Piece)
		}
	}
	sort.Slice(ids, func(i, j int) bool {
		a, b := l.run(ids[i]), l.run(ids[j])
		if a.Order != b.Order {
			return a.Order < b.Order
		}
		return l.place(ids[i]) < l.place(ids[j])
	})
	return ids
}

func (l *lister) run(piece int) lay.Run { return l.runs[l.p.Lay.Pieces[piece].Run] }
func (l *lister) place(piece int) int   { return slices.Index(l.run(piece).Pieces, piece) }
func (l *lister) name(piece int) string { return words.Piece(l.run(piece), l.place(piece)+1) }
