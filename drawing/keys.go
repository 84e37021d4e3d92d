package drawing

import (
	"strconv"

	"strake/floor"
	"strake/plan"
	"strake/sheet"
	"strake/words"
)

// key is a line of the table of edges: all the edges of one name that boards
// meet in one way.
type key struct {
	no    int // on the drawing; 0 for a wall, which goes by its corners
	name  string
	meets string
	edges []floor.AlignedEdge
}

func keysOf(p plan.Plan, say words.Lengths) []key {
	var out []key
	no := 0
	for _, e := range p.Aligned.Edges {
		if i := findKey(out, e); i >= 0 {
			out[i].edges = append(out[i].edges, e)
			continue
		}
		k := key{name: e.Name, meets: words.Meets(e, say), edges: []floor.AlignedEdge{e}}
		if e.Kind != floor.Wall {
			no++
			k.no = no
		}
		out = append(out, k)
	}
	return out
}

func findKey(keys []key, e floor.AlignedEdge) int {
	for i, k := range keys {
		f := k.edges[0]
		if f.Name == e.Name && f.Kind == e.Kind && f.Beside == e.Beside && f.Range == e.Range && f.InPlace == e.InPlace {
			return i
		}
	}
	return -1
}

// short are one word or two for what an edge meets.
var short = map[floor.Kind]string{
	floor.Jamb: "undercut", floor.Flush: "flush", floor.Transition: "transition", floor.Nosing: "nosing", floor.Stays: "gap",
}

// nameEdges writes at every edge that is no wall what it meets, or its number
// in the table.
func (d *draw) nameEdges() {
	for _, k := range d.keys {
		if k.no == 0 {
			continue
		}
		for i, e := range k.edges {
			if !d.edgeWords(k, e) && (i == 0 || d.on(edgeLength(e)) > 8) {
				d.edgeTag(k, e)
			}
		}
	}
}

// edgeWords writes along an edge, off the floor, as much as there is room for.
// Only an edge of some length may have words longer than itself.
func (d *draw) edgeWords(k key, e floor.AlignedEdge) bool {
	a, b := d.at(e.From), d.at(e.To)
	out, turn, long := outward(a, b), reading(a, b), d.on(edgeLength(e))
	var texts []sheet.Text
	for _, s := range []string{k.name + ": " + k.meets, k.meets, short[e.Kind] + " (" + strconv.Itoa(k.no) + ")"} {
		for _, off := range []float64{2.2, 5.5} {
			t := sheet.Text{Text: s, Size: tiny, Anchor: sheet.Middle, Turn: turn}
			t.At = between(a, b, 0.5).Add(out.Times(off)).Sub(up(turn).Times(0.36 * tiny))
			if long >= 15 || t.Width() < long {
				texts = append(texts, t)
			}
		}
	}
	t, ok := d.labels.first(texts, func(t sheet.Text) bool { return clearOf(d.bare, outline(t)) })
	if ok {
		d.onWhite(t)
	}
	return ok
}

const tagRadius = 1.9

// edgeTag sets the number of an edge in a ring beside it.
func (d *draw) edgeTag(k key, e floor.AlignedEdge) {
	a, b := d.at(e.From), d.at(e.To)
	out := outward(a, b)
	for _, off := range []float64{2.6, 5, 8, 12, 17, -3, -6, -10} {
		for _, part := range []float64{0.5, 0.25, 0.75} {
			foot := between(a, b, part)
			mid := foot.Add(out.Times(off))
			o := disc(mid, tagRadius)
			if !d.labels.free(o) || off > 0 && !clearOf(d.bare, box{mid.Sub(sheet.Pt{X: 1, Y: 1}), mid.Add(sheet.Pt{X: 1, Y: 1})}.corners()) {
				continue
			}
			d.labels.reserve(o)
			d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{foot, mid}, Pen: thin})
			d.text = append(d.text, sheet.Polygon{Rings: [][]sheet.Pt{o}, Fill: sheet.White, Pen: thin},
				sheet.Text{Text: strconv.Itoa(k.no), At: sheet.Pt{X: mid.X, Y: mid.Y + 0.36*tiny}, Size: tiny, Anchor: sheet.Middle})
			return
		}
	}
}
