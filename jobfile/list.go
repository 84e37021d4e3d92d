package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"
)

// list is a key whose value is a list of the like of U.
func list[T, U any](key, doc, named string, tb table[U], add func(d *decoder, n ast.Node, t *T, u U)) field[T] {
	in := tb.shape()
	s := shape{words: "a list, each " + named + " with its keys", keys: in.keys, named: named}
	s.schema = map[string]any{"type": "array", "items": in.schema}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				var u U
				before := len(d.errs)
				tb.read(d, n, &u)
				if len(d.errs) == before {
					add(d, n, t, u)
				}
			})
		}
	})
}
