package jobfile

import (
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/room"
	"strake/tape"
)

var doorwayTable = table[room.Doorway]{fields: []field[room.Doorway]{
	wall("wall", "The wall it is in.", func(w *room.Doorway) *room.Wall { return &w.Wall }).must(),
	corner("from", "The corner of that wall it is measured from.", func(w *room.Doorway) *string { return &w.From }).must(),
	length("at", "From that corner to the near jamb.", anywhere, func(w *room.Doorway) *tape.Length { return &w.At }).must(),
	length("width", "Between the jambs.", within{200 * mm, 12000 * mm}, func(w *room.Doorway) *tape.Length { return &w.Width }).must(),
	length("thickness", "Of the wall there, with plaster or drywall on both sides.", within{10 * mm, 2000 * mm}, func(w *room.Doorway) *tape.Length { return &w.Thickness }).must(),
	yes("undercut", "The jambs are sawn off so that boards pass under them.", func(w *room.Doorway) *bool { return &w.Undercut }).or("no: the jambs are met like walls"),
	told(length("casing", "From a jamb's face to the outer edge of its casing on the wall: base and shoe stop there. 0 where there is none.", within{0, 400 * mm}, func(w *room.Doorway) *tape.Length { return &w.Casing }), func(w *room.Doorway) { w.Cased = true }).or("that of the goods"),
	beyondField().must(),
	length("ends", "How deep in the wall this floor ends, from this room's side (not where another room of this job lies beyond).", within{0, 2000 * mm}, func(w *room.Doorway) *tape.Length { return &w.Ends }).or("half the wall's thickness, under the door leaf"),
	sub("old_floor", "Boards that lie beyond already, where this floor ends.", oldTable, func(w *room.Doorway) *room.Old { return &w.Old }),
	rowsField(),
}}

// rowsField reads what rows do in a doorway; that they go through is the zero
// value, written or not.
func rowsField() field[room.Doorway] {
	const through = "through"
	f := choice("rows", "What the rows do here, where another room of this job lies beyond: through (they go on), turn (beyond, rows lie along the doorway and their first one meets the ends of these), or header (a board across it, and each side has rows of its own).",
		[]room.RowsAt{through, room.RowsTurn, room.RowsHeader}, func(w *room.Doorway) *room.RowsAt { return &w.Rows }).or(through)
	read := f.read
	f.read = func(d *decoder, n ast.Node, w *room.Doorway) {
		if read(d, n, w); w.Rows == through {
			w.Rows = room.RowsThrough
		}
	}
	return f
}

// oldTable is an old floor of boards beyond a doorway.
var oldTable = table[room.Old]{fields: []field[room.Old]{
	choice("offers", "What its edge or its row ends offer here.", []room.Offer{room.OffersTongue, room.OffersGroove, room.OffersSquare}, func(o *room.Old) *room.Offer { return &o.Offers }).must(),
	length("row_width", "What one of its rows takes up: measure over ten.", within{20 * mm, 500 * mm}, func(o *room.Old) *tape.Length { return &o.RowWidth }).must(),
	yes("along", "Its rows lie along the opening; else they end at it.", func(o *room.Old) *bool { return &o.Along }).or("no"),
	length("row_edge_at", "Where one of its row edges comes to the wall, from the corner that the doorway is measured from.", anywhere, func(o *room.Old) *tape.Length { return &o.EdgeAt }),
}}

// farSide is where a doorway comes out in another room.
var farSide = table[room.Doorway]{fields: []field[room.Doorway]{
	wall("wall", "The wall of the other room that it is in.", func(w *room.Doorway) *room.Wall { return &w.OtherWall }).must(),
	corner("from", "The corner of that wall it is measured from.", func(w *room.Doorway) *string { return &w.OtherFrom }).must(),
	length("at", "From that corner to the near jamb.", anywhere, func(w *room.Doorway) *tape.Length { return &w.OtherAt }).must(),
}}

// beyondWords are the words for what lies beyond when it is no room of the job.
var beyondWords = []struct {
	word string
	is   room.Beyond
}{
	{"flush", room.BeyondFlush},
	{"transition", room.BeyondTransition},
	{"stair", room.BeyondStair},
}

func beyondField() field[room.Doorway] {
	far := farSide.shape()
	var enum []any
	var names []string
	for _, b := range beyondWords {
		enum, names = append(enum, b.word), append(names, b.word)
	}
	want := strings.Join(names, ", ") + ", or {wall: , from: , at: } of another room of this job"
	s := shape{words: want, keys: far.keys, schema: map[string]any{"anyOf": []any{map[string]any{"enum": enum}, far.schema}}}
	const doc = "What lies beyond: flush (tile or another floor at the same height, met by a fine joint), transition (other flooring or carpet, under a strip), stair (a stair head), or the place in another room of this job where the doorway comes out."
	return custom("beyond", doc, s, func(d *decoder, n ast.Node, w *room.Doorway) {
		if _, single := scalar(n); !single {
			w.Beyond = room.BeyondRoom
			farSide.read(d, n, w)
			return
		}
		v, _ := scalar(n)
		for _, b := range beyondWords {
			if b.word == v {
				w.Beyond = b.is
				return
			}
		}
		d.fail(n.GetToken(), "“"+v+"” is not known here", v, suggest(v, names)+", or {wall: , from: , at: } of another room of this job")
	})
}

func addDoorway(j *draft, name string, w room.Doorway) {
	w.Name = name
	j.Sketch.Doorways = append(j.Sketch.Doorways, w)
}
