package jobfile

import (
	"github.com/goccy/go-yaml/ast"

	"strake/stock"
	"strake/tape"
)

// marked is an entry of a tally with what is known of its boards besides.
type marked struct {
	class stock.Class
	read  bool // its boards could be read
}

var markedTable = table[marked]{fields: []field[marked]{
	boardsOfEntry().must(),
	choice("fault", "What is wrong with them.", stock.Faults, func(m *marked) *stock.Fault { return &m.class.Fault }).or("nothing"),
	length("spoiled", "How much of a damaged end is no use.", within{mm, 3000 * mm}, func(m *marked) *tape.Length { return &m.class.Spoiled }),
	text("carton", "The carton they came in.", func(m *marked) *string { return &m.class.Carton }),
	text("shade", "Their shade among the others, such as dark.", func(m *marked) *string { return &m.class.Shade }),
}}

func boardsOfEntry() field[marked] {
	s := shape{words: "boards such as 2 x 61-1/2 in", schema: map[string]any{"type": []any{"string", "number"}}}
	return custom("boards", "How many, of which length.", s, func(d *decoder, n ast.Node, m *marked) {
		c, ok := d.class(n)
		m.class.Length, m.class.Count, m.read = c.Length, c.Count, ok
	})
}

// classes reads one entry of a tally: boards alone, or boards with marks.
func (d *decoder) classes(n ast.Node) (stock.Class, bool) {
	switch n.(type) {
	case *ast.MappingNode, *ast.MappingValueNode:
	default:
		return d.class(n)
	}
	var m marked
	markedTable.read(d, n, &m)
	damaged := m.class.Fault == stock.SpoiledGroove || m.class.Fault == stock.SpoiledTongue
	switch {
	case !m.read:
	case damaged && m.class.Spoiled == 0:
		d.fail(start(n), "nothing says how much of the damaged end is no use", string(m.class.Fault), "spoiled: with a length, such as spoiled: 4 in")
	case !damaged && m.class.Spoiled > 0:
		d.fail(start(n), "spoiled goes with a damaged end", "", "fault: damaged groove end or fault: damaged tongue end")
	case m.class.Spoiled >= m.class.Length:
		d.fail(start(n), "nothing of the board is left", tape.Paper(d.unit).Of(m.class.Spoiled)+" of "+tape.Paper(d.unit).Of(m.class.Length), "less than its length, or fault: kept out")
	}
	return m.class, m.read
}
