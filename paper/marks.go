package paper

import (
	"strake/lay"
	"strake/stock"
	"strake/tape"
)

// marks are what is known of a piece's board besides its length, with what to
// do about it.
func (l *lister) marks(p lay.Piece) []string {
	b := l.p.Lay.Boards[p.Board]
	var out []string
	if s := l.fault(p, b); s != "" {
		out = append(out, s)
	}
	if b.Carton != "" {
		out = append(out, "carton "+b.Carton)
	}
	if b.Shade != "" {
		out = append(out, "shade "+b.Shade)
	}
	return out
}

// fault is what to do about what is wrong with a board.
func (l *lister) fault(p lay.Piece, b lay.Board) string {
	lo, hi := p.Outline.Box()
	switch b.Fault {
	case stock.Crooked:
		if hi.X-lo.X < stock.StraightEnough {
			return "crooked, but short enough to pull tight"
		}
		return "crooked: pull it straight with a block screwed to the subfloor and a wedge or pry bar, more fasteners, face and fingers clear"
	case stock.Bowed:
		return "bowed: kneel on it and nail it down, more fasteners"
	case stock.SpoiledGroove:
		return "its damaged groove end (" + l.say.Of(b.Spoiled) + ") is cut off"
	case stock.SpoiledTongue:
		return "its damaged tongue end (" + l.say.Of(b.Spoiled) + ") is cut off"
	case stock.OffWidth:
		return "off in width: the rip takes it away"
	case stock.OffShade:
		return "off in shade"
	}
	return ""
}

// lots is how the cartons are mixed.
type lots struct {
	Most        int    // most boards of one carton that lie together, end to end or side by side; 0: no carton is known
	Carton      string // which
	Same, Pairs int    // neighbours of one carton; neighbours whose cartons are known
}

// lotsOf looks at every two neighbours.
func lotsOf(strips map[int][]pieceAt) (out lots) {
	var all []pieceAt
	at := map[int]int{} // strip -> first of its pieces in all
	for _, k := range sorted(strips) {
		at[k] = len(all)
		all = append(all, strips[k]...)
	}
	group := make([]int, len(all))
	for i := range group {
		group[i] = i
	}
	var root func(i int) int
	root = func(i int) int {
		if group[i] != i {
			group[i] = root(group[i])
		}
		return group[i]
	}
	join := func(i, j int) {
		if all[i].carton == "" || all[j].carton == "" {
			return
		}
		out.Pairs++
		if all[i].carton == all[j].carton {
			out.Same++
			group[root(i)] = root(j)
		}
	}
	for k, ps := range strips {
		for i, p := range ps {
			for j := range ps[:i] {
				if ps[j].from <= p.to && p.from <= ps[j].to {
					join(at[k]+i, at[k]+j)
				}
			}
			for j, q := range strips[k+1] {
				if q.from < p.to && p.from < q.to {
					join(at[k]+i, at[k+1]+j)
				}
			}
		}
	}
	boards := map[int]map[int]bool{} // group -> boards
	for i := range all {
		if all[i].carton == "" {
			continue
		}
		r := root(i)
		if boards[r] == nil {
			boards[r] = map[int]bool{}
		}
		if boards[r][all[i].board] = true; len(boards[r]) > out.Most || len(boards[r]) == out.Most && all[i].carton < out.Carton {
			out.Most, out.Carton = len(boards[r]), all[i].carton
		}
	}
	return out
}

// pieceAt is where a piece lies along its strip.
type pieceAt struct {
	from, to tape.Length
	board    int
	carton   string
}
