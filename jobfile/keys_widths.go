package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/stock"
	"strake/tape"
)

// boardsOfWidth are the keys of boards of one face width among several.
var boardsOfWidth = table[stock.Boards]{fields: []field[stock.Boards]{
	length("face", "Face width of these boards.", within{15 * mm, 500 * mm}, func(b *stock.Boards) *tape.Length { return &b.Face }).must(),
	tenBoardsField(),
	lengthsField().must().written(lengthsLike),
}}

// mostWidths is the most face widths of one floor: more have not been heard of.
const mostWidths = 8

// widthsLike is an example of boards of several face widths.
func widthsLike(imperial bool) string {
	if imperial {
		return "widths: [{face: 3 in, lengths: {" + tallyLike(true) + "}}, {face: 5 in, lengths: {" + tallyLike(true) + "}}]"
	}
	return "widths: [{face: 90 mm, lengths: {" + tallyLike(false) + "}}, {face: 130 mm, lengths: {" + tallyLike(false) + "}}]"
}

// widthsField reads boards of several face widths. One that cannot be read
// keeps its place in the list, so that errors name the right one.
func widthsField() field[stock.Boards] {
	in := boardsOfWidth.shape()
	s := shape{words: "a list, each face width with its keys", keys: in.keys}
	s.schema = map[string]any{"type": "array", "items": in.schema, "minItems": 2, "maxItems": mostWidths}
	return custom("widths", "Boards of several face widths, each row of one: the face, ten boards and lengths of each.", s, func(d *decoder, n ast.Node, b *stock.Boards) {
		nodes, ok := d.items(n, s.words)
		if !ok {
			return
		}
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				var one stock.Boards
				boardsOfWidth.read(d, n, &one)
				b.Widths = append(b.Widths, one)
			})
		}
	})
}

// mostRows is the most rows that a pattern has before it begins again.
const mostRows = 60

// patternField reads the faces of rows in turn.
func patternField() field[stock.Boards] {
	s := shape{words: "a list of face widths, such as [2 in, 4 in, 3 in, 2 in, 5 in, 3 in]",
		schema: map[string]any{"type": "array", "items": lengthSchema(false), "minItems": 1, "maxItems": mostRows}}
	return custom("pattern", "With widths: the faces of the rows one after the other, over and over.", s, func(d *decoder, n ast.Node, b *stock.Boards) {
		nodes, ok := d.items(n, s.words)
		if ok && len(nodes) == 0 || len(nodes) > mostRows {
			d.fail(start(n), "a pattern has from 1 to "+strconv.Itoa(mostRows)+" rows", strconv.Itoa(len(nodes)), s.words)
			return
		}
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				if r, ok := d.reading(n, within{15 * mm, 500 * mm}); ok {
					b.Pattern = append(b.Pattern, r.Value)
				}
			})
		}
	})
}
