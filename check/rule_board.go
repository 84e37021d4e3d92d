package check

import (
	"fmt"
	"math/big"

	"strake/finding"
	"strake/lay"
)

var _ = declare("board",
	"Every board is a rectangle, as wide as the row that it lies in, that its pieces, offcuts, strips, scrap and kerfs partition: all inside, none on another, doubled areas adding up exactly.",
	holdBoard)

// holdBoard needs no rule of its own for lengths: where every part is as wide
// as the board, areas that add up are lengths that add up.
func holdBoard(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	cutFrom := s.piecesByBoard()
	for i := range s.lay.Boards {
		b := &s.lay.Boards[i]
		what := boardFault(b)
		if what == "" {
			what = partsFault(b, cutFrom[b.ID])
		}
		if what == "" {
			continue
		}
		f := r.stop(fmt.Sprintf("board %d", b.ID), idsOf(cutFrom[b.ID])...)
		f.Measured, f.Do = what, "Cut the board so that its parts and the saw's kerfs make the whole of it."
		out = append(out, f)
	}
	return append(out, s.widths(r)...)
}

func (s *site) piecesByBoard() [][]*piece {
	out := make([][]*piece, len(s.lay.Boards))
	for _, p := range s.pieces {
		out[p.Board] = append(out[p.Board], p)
	}
	return out
}

func idsOf(ps []*piece) []int {
	var out []int
	for _, p := range ps {
		out = append(out, p.ID)
	}
	return out
}

// boardFault is why the parts do not partition the board.
func boardFault(b *lay.Board) string {
	whole := box{}
	whole.hi.X, whole.hi.Y = b.Length, b.Width
	sum := new(big.Int)
	for i, p := range b.Parts {
		at := boxOf(p.Outline)
		if !whole.covers(at) {
			return fmt.Sprintf("a %s stands out of the board", p.Kind)
		}
		for _, q := range b.Parts[:i] {
			if _, ok := at.meet(boxOf(q.Outline)); ok && common(one(p.Outline), one(q.Outline)).Sign() > 0 {
				return fmt.Sprintf("a %s and a %s are cut out of the same wood", q.Kind, p.Kind)
			}
		}
		sum.Add(sum, area2(p.Outline))
	}
	size := new(big.Int).Mul(bigInt(b.Length), bigInt(b.Width))
	if sum.Cmp(size.Lsh(size, 1)) != 0 {
		return "the parts do not add up to the board"
	}
	return ""
}

// partsFault is why the pieces said to be parts of the board are not those
// that say they come from it.
func partsFault(b *lay.Board, ps []*piece) string {
	parts := map[int]int{}
	for i, p := range b.Parts {
		if p.Kind != lay.IsPiece {
			continue
		}
		if _, twice := parts[p.Piece]; twice {
			return fmt.Sprintf("piece id %d is cut from it twice", p.Piece)
		}
		parts[p.Piece] = i
	}
	for _, p := range ps {
		i, ok := parts[p.ID]
		if !ok {
			return fmt.Sprintf("piece id %d says it comes from it, and is none of its parts", p.ID)
		}
		if !sameShape(b.Parts[i].Outline, p.InBoard) {
			return fmt.Sprintf("piece id %d has another shape in the piece than in the board", p.ID)
		}
	}
	if len(parts) != len(ps) {
		return "a part is a piece that does not come from it"
	}
	return ""
}

// widths holds the boards' width to their rows' and the rows' to the stock: the
// pitch in the field, the face in a header or frame. Where the job has boards
// of several widths its rows follow each other as it says.
func (s *site) widths(r Rule) []finding.Finding {
	var out []finding.Finding
	for _, z := range s.zones {
		want, word := s.stock.Pitch(), "the pitch"
		if z.Kind != lay.Field {
			want, word = s.stock.Face, "the face width"
		}
		switch {
		case z.Kind == lay.Field && len(s.stock.Widths) > 0:
			if s.otherWidths(z) {
				f := r.stop("rows of the " + z.nameOrKind())
				f.Measured, f.Limit = s.sayWidths(widthsOf(z.Zone))+" wide in turn", s.pattern()
				f.Do = "Plan with the widths that the boards take up, in the order that the job has."
				out = append(out, f)
			}
		case z.Width != want || len(z.Pattern) > 0:
			f := r.stop("boards of the " + z.nameOrKind())
			f.Measured, f.Limit = s.sayWidths(widthsOf(z.Zone))+" wide", s.say(want)+", "+word
			f.Do = "Plan with the width that the boards take up there."
			out = append(out, f)
		}
		for _, p := range z.pieces {
			if p.board.Width != p.run.wide() {
				f := r.stop(fmt.Sprintf("board %d, %s", p.Board, p.label()), p.ID)
				f.Measured, f.Limit = s.say(p.board.Width)+" wide", s.say(p.run.wide())
				f.Do = "Plan with the width that the boards take up there."
				out = append(out, f)
			}
		}
	}
	return out
}
