package detail

import (
	"fmt"
	"slices"
	"strings"

	"strake/floor"
	"strake/lay"
	"strake/section"
	"strake/tape"
)

// edges are the edges of all fields that come under a name and kind.
func (w work) edges(kind floor.Kind, holds func(floor.AlignedEdge) bool) []floor.AlignedEdge {
	var out []floor.AlignedEdge
	for _, f := range w.p.AllFields() {
		if f.Kind != lay.Field {
			continue
		}
		for _, e := range f.Part.Edges {
			if e.Kind == kind && holds(e) {
				out = append(out, e)
			}
		}
	}
	return out
}

// longest is the longest of edges; false for none.
func longest(es []floor.AlignedEdge) (floor.AlignedEdge, bool) {
	if len(es) == 0 {
		return floor.AlignedEdge{}, false
	}
	return slices.MaxFunc(es, func(a, b floor.AlignedEdge) int { return int(long(a) - long(b)) }), true
}

func long(e floor.AlignedEdge) tape.Length {
	d := e.To.Sub(e.From)
	return d.X.Abs() + d.Y.Abs()
}

// list lists names: "walls A-B and C-D", "wall A-B".
func list(one string, names []string) string {
	names = slices.Compact(slices.Sorted(slices.Values(names)))
	switch len(names) {
	case 0:
		return ""
	case 1:
		return one + " " + names[0]
	}
	return one + "s " + strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

// spread prints a range of gaps.
func (w work) spread(least, greatest tape.Length) string {
	if a, b := w.say.Rip(least), w.say.Rip(greatest); a != b {
		return a + " to " + b
	}
	return w.say.Rip(least)
}

// slug is a name for a file.
func slug(parts ...string) string {
	var b strings.Builder
	dash := false
	for _, r := range strings.ToLower(strings.Join(parts, "-")) {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			if dash && b.Len() > 0 {
				b.WriteByte('-')
			}
			b.WriteRune(r)
			dash = false
			continue
		}
		dash = true
	}
	return b.String()
}

// unique makes names of details unlike each other.
func unique(ds []Detail) []Detail {
	seen := map[string]int{}
	for i, d := range ds {
		seen[d.Name]++
		if n := seen[d.Name]; n > 1 {
			ds[i].Name = fmt.Sprintf("%s-%d", d.Name, n)
		}
	}
	return ds
}

// sideways is how the boards of this floor look in a cut square to an edge: cut
// across where the edge lies beside the rows, along their length where rows end
// at it. The board runs from x0 to x1; its right edge is at the edge.
func (w work) sideways(c *section.Canvas, name string, beside bool, x0, x1, y float64, at section.Edge) {
	if beside {
		c.Board(name, w.prof, x0, y, x1-x0, section.GoesOn, at)
		return
	}
	ring := w.prof.Ring(x1-x0, section.GoesOn, at)
	c.Cut(name, section.Grain, section.Shift(ring, section.At(x0, y)), len(ring)-2)
}
