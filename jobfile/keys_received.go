package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/receive"
	"strake/stock"
	"strake/tape"
)

var openedTable = table[receive.Carton]{fields: []field[receive.Carton]{
	whole("boards", "How many boards were in it.", 1, 1000, func(c *receive.Carton) *int { return &c.Boards }).must(),
	whole("culls", "How many of them can be laid nowhere.", 0, 1000, func(c *receive.Carton) *int { return &c.Culls }).or("0"),
	openedLengths().or("not measured"),
	text("lot", "The lot or date code on it.", func(c *receive.Carton) *string { return &c.Lot }).or("not written down"),
	text("shade", "Its shade against the others, in a word.", func(c *receive.Carton) *string { return &c.Shade }).or("not written down"),
}}

// openedLengths reads the lengths of the boards of one carton.
func openedLengths() field[receive.Carton] {
	s := shape{words: "a list such as [3 x 48 in, 61-1/2 in]", schema: map[string]any{"type": "array", "minItems": 1, "items": map[string]any{"type": []any{"string", "number"}}}}
	return custom("lengths", "The lengths of its boards, without the tongue: with a mix they refine the spread that strake order draws from.", s, func(d *decoder, n ast.Node, c *receive.Carton) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				if b, ok := d.class(n); ok {
					c.Lengths = append(c.Lengths, b)
				}
			})
		}
	})
}

func receivedField() field[draft] {
	tens := shape{words: "a list of lengths", schema: map[string]any{"type": "array", "items": lengthSchema(false)}}
	tb := table[receive.Delivery]{fields: []field[receive.Delivery]{
		list("opened", "The cartons that were opened and looked through.", "carton", openedTable, func(d *decoder, node ast.Node, r *receive.Delivery, c receive.Carton) {
			if c.Culls > c.Boards {
				d.fail(start(node), "more culls than boards", strconv.Itoa(c.Culls), "at most "+strconv.Itoa(c.Boards))
				return
			}
			if n := counted(c.Lengths); n > c.Boards {
				d.fail(start(node), "more boards were measured than are in the carton", strconv.Itoa(n), "at most "+strconv.Itoa(c.Boards))
				return
			}
			r.Cartons = append(r.Cartons, c)
		}).or("none yet"),
		custom("ten_boards", "Widths over ten boards, two from each of five cartons, pushed tight, over their faces without the last tongue. Rows go up by a tenth of their mean where boards give no ten_boards.", tens, func(d *decoder, n ast.Node, r *receive.Delivery) {
			nodes, _ := d.items(n, tens.words)
			for i, v := range nodes {
				d.under(strconv.Itoa(i), v, func(n ast.Node) {
					if w, ok := d.reading(n, within{100 * mm, 10 * 400 * tape.Millimetre}); ok {
						r.Tens = append(r.Tens, w.Value.Millimetres())
					}
				})
			}
		}).or("not measured"),
		rankedField(receive.Guides, func(r *receive.Delivery) *receive.Limits { return &r.Limits }).or("trade guidance, each with its source"),
	}}
	return sub("received", "What was seen of the delivery: strake ready says when to stop opening cartons and call the seller.", tb, func(j *draft) *receive.Delivery { return &j.Received })
}

func counted(cs []stock.Class) int {
	n := 0
	for _, c := range cs {
		n += c.Count
	}
	return n
}
