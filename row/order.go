package row

import (
	"cmp"
	"slices"

	"strake/floor"
	"strake/plane"
)

// order is the cells as they are laid: start by start and turn by turn, each once
// the rows behind it lie. Among those that can be laid, rows of the room that the
// last one lies in come first, so that a room is finished, or stopped where its
// rows wait for others, before the next one is begun; else the row nearest to the
// start, from left to right.
func (l *Layout) order(g grid, rooms []floor.RoomOutline) []int {
	in := l.roomsOf(g, rooms)
	left := make([]int, len(g.cells))
	for i := range left {
		left[i] = i
	}
	first := func(i int) (int, int) { r := l.Runs[g.cells[i].runs[0]]; return r.Row * g.cells[i].ahead, r.Part }
	slices.SortStableFunc(left, func(i, j int) int {
		a, b := g.cells[i], g.cells[j]
		row, part := first(i)
		other, otherPart := first(j)
		return cmp.Or(cmp.Compare(a.start, b.start), cmp.Compare(a.turn, b.turn), cmp.Compare(row, other), cmp.Compare(part, otherPart))
	})
	var out []int
	laid := make([]bool, len(g.cells))
	for len(left) > 0 {
		k := l.next(g, left, laid, func(i int) bool { return len(out) > 0 && in[i] == in[out[len(out)-1]] })
		laid[left[k]] = true
		out = append(out, left[k])
		left = slices.Delete(left, k, k+1)
	}
	return out
}

// next is the place in left of the cell to be laid: the first of the same room
// that can be, else the first that can be.
func (l *Layout) next(g grid, left []int, laid []bool, same func(int) bool) int {
	lead := g.cells[left[0]]
	for k, i := range left {
		c := g.cells[i]
		if c.start != lead.start || c.turn != lead.turn {
			break
		}
		if same(i) && g.ready(i, laid) {
			return k
		}
	}
	return 0 // it can be: what lies behind it comes before it in left
}

// ready tells whether all that lies behind a cell, and is laid in the same sense
// from the same start, lies.
func (g grid) ready(i int, laid []bool) bool {
	c := g.cells[i]
	back := g.down[i]
	if c.ahead < 0 {
		back = g.up[i]
	}
	return !slices.ContainsFunc(back, func(j int) bool {
		b := g.cells[j]
		return !laid[j] && b.ahead == c.ahead && b.start == c.start && b.turn == c.turn
	})
}

// roomsOf is the room of each cell, by the middle of its longest run; -1 where it
// lies in no room. Rows in the depth of a doorway are those of the room that they
// lead to.
func (l *Layout) roomsOf(g grid, rooms []floor.RoomOutline) []int {
	out := make([]int, len(g.cells))
	var outlines []plane.Ring
	for _, o := range rooms {
		outlines = append(outlines, l.outlineOf(o))
	}
	for i, c := range g.cells {
		longest := slices.MaxFunc(c.runs, func(a, b int) int { return cmp.Compare(l.Runs[a].Length(), l.Runs[b].Length()) })
		r := l.Runs[longest]
		at := plane.P(r.Left.Reach+r.Length()/2, r.Low+(r.High-r.Low)/2)
		out[i] = slices.IndexFunc(outlines, func(o plane.Ring) bool { return o.Where(at) >= 0 })
	}
	for changed := true; changed; {
		changed = false
		for i, c := range g.cells {
			on := g.up[i]
			if c.ahead < 0 {
				on = g.down[i]
			}
			for _, j := range on {
				if out[i] < 0 && out[j] >= 0 {
					out[i], changed = out[j], true
				}
			}
		}
	}
	return out
}

// outlineOf is a room in the frame of the rows.
func (l *Layout) outlineOf(o floor.RoomOutline) plane.Ring {
	var out plane.Ring
	for _, c := range o.Corners {
		out = append(out, l.Dir.ToRow(c))
	}
	return out
}
