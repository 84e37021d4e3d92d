package jobfile

import (
	"slices"
	"strconv"
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
	corner("row_edge_on", "A row edge falls on this corner or point, or on the row edge of the old floor beyond this doorway.", func(p *job.Pins) *string { return &p.RowEdge }),
	edge("full_board_at", "The row along this edge is a full board.", func(p *job.Pins) *string { return &p.FullBoard }),
	sub("rip", "The row along an edge is ripped to a width.", ripTable, func(p *job.Pins) *job.Rip { return &p.Rip }),
	corner("spline_on", "The first two rows meet on the line through this corner or point, groove to groove on a spline, and rows are laid from it both ways.", func(p *job.Pins) *string { return &p.Spline }),
	wall("tongues_toward", "Side tongues face this wall, so that rows are laid toward it.", func(p *job.Pins) *room.Wall { return &p.Tongues }),
	boardsField(),
	wall("taper_at", "This wall takes all of the taper: rows run along the one that faces it.", func(p *job.Pins) *room.Wall { return &p.Taper }),
	from("continuous_from", "Rows of this room, or through this doorway, go on without a break; the direction follows.", func(p *job.Pins) *string { return &p.From }),
	wall("stepped_at", "The row along this wall is stepped: each of its pieces is ripped to one width, also where what covers the gap does not hide the step. Left out, a piece is so where that hides it, and tapers elsewhere.", func(p *job.Pins) *room.Wall { return &p.Stepped }),
}}

// boardsField reads the boards that a row is to have.
func boardsField() field[job.Pins] {
	s := shape{words: "rows by their names, each with a list of lengths, such as {12a: [40\", 33-1/2\"]}",
		schema: map[string]any{"type": "object", "additionalProperties": map[string]any{"type": "array", "items": lengthSchema(false), "minItems": 1}}}
	return custom("boards", "Rows, named as the row list names them, that have these boards from left to right; the last is cut where it is too long.", s, func(d *decoder, n ast.Node, p *job.Pins) {
		entries, _ := d.entries(n, s.words)
		for _, e := range entries {
			d.under(e.key, e.value, func(n ast.Node) {
				nodes, _ := d.items(n, s.words)
				for i, v := range nodes {
					d.under(strconv.Itoa(i), v, func(n ast.Node) {
						if r, ok := d.reading(n, within{50 * mm, 10000 * mm}); ok {
							if p.Boards == nil {
								p.Boards = map[string][]tape.Length{}
							}
							p.Boards[e.key] = append(p.Boards[e.key], r.Value)
						}
					})
				}
			})
		}
	})
}

// edge is a key whose value names an edge of the floor.
func edge[T any](key, doc string, to func(*T) *string) field[T] {
	return custom(key, doc, edgeShape, func(d *decoder, n ast.Node, t *T) {
		if v, ok := d.text(n, edgeShape.words); ok && d.named(n.GetToken(), v, "wall, doorway or thing that stays") {
			*to(t) = strings.TrimSpace(v)
		}
	})
}

var fromShape = shape{words: "the name of a doorway between two rooms, or of a room with one such doorway", schema: map[string]any{"type": []any{"string", "number"}}}

// from is a key whose value names a doorway inside the floor, or a room that
// has one.
func from[T any](key, doc string, to func(*T) *string) field[T] {
	return custom(key, doc, fromShape, func(d *decoder, n ast.Node, t *T) {
		if v, ok := d.text(n, fromShape.words); ok && d.named(n.GetToken(), v, "doorway or room") {
			*to(t) = strings.TrimSpace(v)
		}
	})
}

// from checks that a name means one doorway that rows go on through.
func (n *names) from(path, s string) {
	if s == "" || n.broken {
		return
	}
	inner := n.j.Sketch.Inner(s)
	var all []string
	for _, d := range inner {
		all = append(all, d.Name)
	}
	switch {
	case len(inner) > 1:
		n.d.failPath(path, "“"+s+"” has more than one doorway to another room", s, "one of "+strings.Join(all, ", "))
	case len(inner) == 1 && inner[0].Rows != room.RowsThrough:
		n.d.failPath(path, "in the doorway “"+inner[0].Name+"” the job has rows: "+string(inner[0].Rows)+", so none goes on", s, "one of the two")
	case len(inner) == 0:
		for _, r := range n.j.Sketch.Rooms {
			for _, d := range n.j.Sketch.Inner(r.Name) {
				if !slices.Contains(all, d.Name) {
					all = append(all, d.Name)
				}
			}
		}
		want := "a doorway with another room of this job beyond"
		if len(all) > 0 {
			want = "one of " + strings.Join(all, ", ")
		}
		n.d.failPath(path, "“"+s+"” is no doorway between two rooms of this job, and no room with one", s, want)
	}
}

// pins checks that what is pinned is there.
func (n *names) pins() {
	p := n.j.Pins
	n.mark(at("pins", "row_edge_on"), p.RowEdge)
	n.place(at("pins", "spline_on"), p.Spline)
	n.edge(at("pins", "full_board_at"), p.FullBoard)
	n.edge(at("pins", "rip", "at"), p.Rip.At)
	n.ripWidth()
	n.wall(at("pins", "tongues_toward"), p.Tongues)
	n.taper(at("pins", "taper_at"), p.Taper)
	n.wall(at("pins", "stepped_at"), p.Stepped)
	n.from(at("pins", "continuous_from"), p.From)
}

// ripWidth checks that a row is as wide as it is to be ripped to; 1/64 in more
// is a full board read coarsely.
func (n *names) ripWidth() {
	r := n.j.Pins.Rip
	if r.Width == 0 || !n.d.given("boards") {
		return
	}
	widest := slices.Max(n.j.Boards.Pitches())
	if widest > 0 && r.Width > widest+in/64 {
		s := tape.Paper(n.j.Unit)
		n.d.failPath(at("pins", "rip", "width"), "no row is that wide: a whole board takes up "+s.Of(widest), s.Of(r.Width),
			"at most "+s.Of(widest)+", or full_board_at for a full board")
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
