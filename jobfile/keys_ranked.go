package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/ready"
)

// ranked is a limit as it is written.
type ranked struct {
	is         float64
	by, source string
}

var rankedTable = table[ranked]{fields: []field[ranked]{
	figure("is", "The figure, in the unit that is said with the limit.", 0, 100_000, func(r *ranked) *float64 { return &r.is }).must(),
	choice("by", "Whose it is: maker (outranks trade guidance) or code (local code, which outranks both).", []string{"maker", "code"}, func(r *ranked) *string { return &r.by }).must(),
	text("source", "Where it stands, such as the leaflet and its page.", func(r *ranked) *string { return &r.source }).or(fromJob),
}}

// rankedField reads limits of other than trade guidance: each one, or a list.
func rankedField[T any](guides ready.Guides, to func(*T) *ready.Limits) field[T] {
	tb := table[T]{}
	for _, g := range guides {
		tb.fields = append(tb.fields, rankedLimit(g, to))
	}
	return sub("limits", "Limits of the maker's or of local code. Each is {is: , by: maker or code, source: }, or a list of such: local code outranks the maker, and the maker trade guidance.", tb, func(t *T) *T { return t })
}

func rankedLimit[T any](g ready.Guide, to func(*T) *ready.Limits) field[T] {
	in := rankedTable.shape().schema
	s := shape{words: "{is: , by: maker or code, source: }, or a list of such", schema: map[string]any{"anyOf": []any{in, map[string]any{"type": "array", "items": in}}}}
	f := custom(g.Key, g.Doc, s, func(d *decoder, n ast.Node, t *T) {
		nodes := []ast.Node{n}
		if seq, ok := n.(*ast.SequenceNode); ok {
			nodes = seq.Values
		}
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				l, ok := d.ranked(n)
				if !ok {
					return
				}
				if *to(t) == nil {
					*to(t) = ready.Limits{}
				}
				(*to(t))[g.Key] = append((*to(t))[g.Key], l)
			})
		}
	})
	return f.or(strconv.FormatFloat(g.Is, 'g', -1, 64) + ", trade guidance")
}

// ranked reads one limit; not ok where something is wrong with it.
func (d *decoder) ranked(n ast.Node) (ready.Limit, bool) {
	r := ranked{source: fromJob}
	before := len(d.errs)
	rankedTable.read(d, n, &r)
	return ready.Limit{Is: r.is, By: ready.Ranks[r.by], Source: r.source}, len(d.errs) == before
}
