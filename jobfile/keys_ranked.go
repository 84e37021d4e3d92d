package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/ready"
	"strake/tape"
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

// rankedLengthTable is a limit whose figure is a length; it is kept in ticks.
var rankedLengthTable = table[ranked]{fields: append([]field[ranked]{rankedLengthIs()}, rankedTable.fields[1:]...)}

func rankedLengthIs() field[ranked] {
	s := shape{words: "a length", schema: lengthSchema(false)}
	return custom("is", "The figure.", s, func(d *decoder, n ast.Node, r *ranked) {
		if l, ok := d.reading(n, within{0, 500 * mm}); ok {
			r.is = float64(l.Value)
		}
	}).must()
}

// rankedLengths is rankedField for limits that are lengths.
func rankedLengths[T any](guides ready.Guides, to func(*T) *ready.Limits) field[T] {
	tb := table[T]{}
	for _, g := range guides {
		tb.fields = append(tb.fields, rankedBy(g, rankedLengthTable, tape.Length(g.Is).String(), to))
	}
	return sub("limits", limitsDoc, tb, func(t *T) *T { return t })
}

const limitsDoc = "Limits of the maker's or of local code. Each is {is: , by: maker or code, source: }, or a list of such: local code outranks the maker, and the maker trade guidance."

// rankedField reads limits of other than trade guidance: each one, or a list.
func rankedField[T any](guides ready.Guides, to func(*T) *ready.Limits) field[T] {
	tb := table[T]{}
	for _, g := range guides {
		tb.fields = append(tb.fields, rankedBy(g, rankedTable, strconv.FormatFloat(g.Is, 'g', -1, 64), to))
	}
	return sub("limits", limitsDoc, tb, func(t *T) *T { return t })
}

// rankedBy reads the limits of one key by the table of one; is is how the
// guide's own figure is said.
func rankedBy[T any](g ready.Guide, one table[ranked], is string, to func(*T) *ready.Limits) field[T] {
	in := one.shape().schema
	s := shape{words: "{is: , by: maker or code, source: }, or a list of such", schema: map[string]any{"anyOf": []any{in, map[string]any{"type": "array", "items": in}}}}
	f := custom(g.Key, g.Doc, s, func(d *decoder, n ast.Node, t *T) {
		nodes := []ast.Node{n}
		if seq, ok := n.(*ast.SequenceNode); ok {
			nodes = seq.Values
		}
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				l, ok := d.ranked(n, one)
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
	return f.or(is + ", trade guidance")
}

// ranked reads one limit; not ok where something is wrong with it.
func (d *decoder) ranked(n ast.Node, one table[ranked]) (ready.Limit, bool) {
	r := ranked{source: fromJob}
	before := len(d.errs)
	one.read(d, n, &r)
	return ready.Limit{Is: r.is, By: ready.Ranks[r.by], Source: r.source}, len(d.errs) == before
}
