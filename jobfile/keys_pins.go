package jobfile

import (
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/job"
	"strake/room"
	"strake/tape"
)

var edgeShape = shape{words: "a wall such as A-B, or the name of a doorway or of something that stays", schema: map[string]any{"type": []any{"string", "number"}}}

var ripTable = table[job.Rip]{fields: []field[job.Rip]{
	edge("at", "The edge that the ripped row lies along.", func(r *job.Rip) *string { return &r.At }).must(),
	length("width", "How wide the row is there, at its narrowest.", within{0, 400 * mm}, func(r *job.Rip) *tape.Length { return &r.Width }).must(),
}}

var pinTable = table[job.Pins]{fields: []field[job.Pins]{
	corner("row_edge_on", "A row edge falls on this corner or point.", func(p *job.Pins) *string { return &p.RowEdge }),
	edge("full_board_at", "The row along this edge is a full board.", func(p *job.Pins) *string { return &p.FullBoard }),
	sub("rip", "The row along an edge is ripped to a width.", ripTable, func(p *job.Pins) *job.Rip { return &p.Rip }),
	corner("spline_on", "The first two rows meet on the line through this corner or point, groove to groove on a spline, and rows are laid from it both ways.", func(p *job.Pins) *string { return &p.Spline }),
	wall("tongues_toward", "Side tongues face this wall, so that rows are laid toward it.", func(p *job.Pins) *room.Wall { return &p.Tongues }),
	wall("taper_at", "This wall takes all of the taper: rows run along the one that faces it.", func(p *job.Pins) *room.Wall { return &p.Taper }),
}}

// edge is a key whose value names an edge of the floor.
func edge[T any](key, doc string, to func(*T) *string) field[T] {
	return custom(key, doc, edgeShape, func(d *decoder, n ast.Node, t *T) {
		if v, ok := d.text(n, edgeShape.words); ok && d.named(n.GetToken(), v, "wall, doorway or thing that stays") {
			*to(t) = strings.TrimSpace(v)
		}
	})
}

// pins checks that what is pinned is there.
func (n *names) pins() {
	p := n.j.Pins
	n.place(at("pins", "row_edge_on"), p.RowEdge)
	n.place(at("pins", "spline_on"), p.Spline)
	n.edge(at("pins", "full_board_at"), p.FullBoard)
	n.edge(at("pins", "rip", "at"), p.Rip.At)
	n.wall(at("pins", "tongues_toward"), p.Tongues)
	n.wall(at("pins", "taper_at"), p.Taper)
	if p.Taper != (room.Wall{}) && (n.j.Wishes.Direction != (room.Wall{}) || n.j.Wishes.Between != [2]room.Wall{}) {
		n.d.failPath(at("pins", "taper_at"), "the wishes give a direction too, and both cannot hold", p.Taper.String(), "one of the two")
	}
}

// edge checks that a name is that of a wall, a doorway or something that stays.
func (n *names) edge(path, s string) {
	if s == "" || n.broken {
		return
	}
	var all []string
	for _, w := range n.j.Sketch.Doorways {
		all = append(all, w.Name)
	}
	for _, w := range n.j.Sketch.Stays {
		all = append(all, w.Name)
	}
	for _, v := range all {
		if v == s {
			return
		}
	}
	if a, b, ok := strings.Cut(s, "-"); ok {
		n.wall(path, room.Wall{strings.TrimSpace(a), strings.TrimSpace(b)})
		return
	}
	want := "a wall such as A-B"
	if len(all) > 0 {
		want += ", or one of " + strings.Join(all, ", ")
	}
	n.d.failPath(path, "“"+s+"” is no wall, doorway or thing that stays of this job", s, want)
}
