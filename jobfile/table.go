package jobfile

import (
	"strings"

	"github.com/goccy/go-yaml/ast"
)

// shape says what a value looks like, to people and to editors.
type shape struct {
	words  string         // such as "a length", "yes or no"
	schema map[string]any // JSON Schema 2020-12
	keys   []keyDoc       // of a value that has keys of its own
	named  string         // what the names are, where the keys are the user's
}

// field is one key: its words, its shape and where its value goes in a T.
type field[T any] struct {
	key, doc string
	without  string // what holds when it is left out
	need     bool
	instead  string                     // a key that stands in for one that has to be there
	like     func(imperial bool) string // what to write, where the shape's words are too few
	shape    shape
	read     func(d *decoder, n ast.Node, t *T)
}

// must is f as a key that has to be there.
func (f field[T]) must() field[T] { f.need = true; return f }

// unless is f as a key that has to be there where the other is not.
func (f field[T]) unless(other string) field[T] { f.need, f.instead = true, other; return f }

// or is f with the words for what holds when it is left out.
func (f field[T]) or(s string) field[T] { f.without = s; return f }

// written is f with what to write said by an example.
func (f field[T]) written(like func(imperial bool) string) field[T] { f.like = like; return f }

// accepts says what would be accepted for f where there is nothing.
func (f field[T]) accepts(d *decoder) string {
	if f.like != nil {
		return f.like(d.unit.Imperial())
	}
	return f.key + ": " + f.shape.words
}

// table is the keys of one kind of mapping.
type table[T any] struct {
	doc    string
	fields []field[T]
}

// read reads n by the table, its fields in the order of the table.
func (tb table[T]) read(d *decoder, n ast.Node, t *T) {
	entries, ok := d.entries(n, "keys: "+strings.Join(tb.names(), ", "))
	if !ok {
		return
	}
	byKey := map[string]entry{}
	meant := map[string]bool{} // keys that a wrong one was probably meant for
	for _, e := range entries {
		byKey[e.key] = e
		if !tb.has(e.key) {
			meant[d.unknown(e, tb.names())] = true
		}
	}
	for _, f := range tb.fields {
		e, ok := byKey[f.key]
		if ok && e.value.Type() != ast.NullType {
			d.under(f.key, e.value, func(n ast.Node) { f.read(d, n, t) })
			continue
		}
		if other, ok := byKey[f.instead]; ok && other.value.Type() != ast.NullType {
			continue
		}
		if f.need && !meant[f.key] && !d.spares(f.key) {
			d.missing(n, f.key, f.accepts(d), ok, e)
		}
	}
}

// unknown records a key that is none, and returns the one that may have been
// meant.
func (d *decoder) unknown(e entry, names []string) string {
	d.fail(e.token, "“"+e.key+"” is not a key here", e.key, suggest(e.key, names))
	return nearest(e.key, names)
}

// missing records a key that has to be there: in n, or after its empty entry.
func (d *decoder) missing(n ast.Node, key, accept string, empty bool, e entry) {
	t := start(n)
	if empty {
		t = e.token
	}
	d.fail(t, "“"+key+"” is missing", "", accept)
}

func (tb table[T]) names() []string {
	out := make([]string, len(tb.fields))
	for i, f := range tb.fields {
		out[i] = f.key
	}
	return out
}

func (tb table[T]) has(key string) bool {
	for _, f := range tb.fields {
		if f.key == key {
			return true
		}
	}
	return false
}

// shape is the table as the shape of a value.
func (tb table[T]) shape() shape {
	props, need, either := map[string]any{}, []any{}, map[string][]any{}
	var keys []keyDoc
	for _, f := range tb.fields {
		s := f.schema()
		props[f.key] = s
		switch {
		case f.instead != "":
			either[f.instead] = append(either[f.instead], f.key)
		case f.need:
			need = append(need, f.key)
		}
		keys = append(keys, keyDoc{f.key, f.doc, f.without, f.need && f.instead == "", f.shape})
	}
	out := map[string]any{"type": "object", "additionalProperties": false, "properties": props}
	if len(need) > 0 {
		out["required"] = need
	}
	for other, keys := range either { // of a table there is one such key at the most
		out["anyOf"] = []any{map[string]any{"required": keys}, map[string]any{"required": []any{other}}}
	}
	if tb.doc != "" {
		out["description"] = tb.doc
	}
	return shape{words: "keys with values", schema: out, keys: keys}
}

// schema is the field's shape with its words; nothing at all is accepted
// where the key may be left out.
func (f field[T]) schema() map[string]any {
	out := map[string]any{}
	for k, v := range f.shape.schema {
		out[k] = v
	}
	if !f.need {
		nullable(out)
	}
	doc := f.doc
	if f.without != "" {
		doc += " Left out: " + f.without + "."
	}
	out["description"] = doc
	return out
}

// nullable lets s accept nothing at all.
func nullable(s map[string]any) {
	switch t := s["type"].(type) {
	case string:
		s["type"] = []any{t, "null"}
	case []any:
		s["type"] = append(append([]any{}, t...), "null")
	}
	if e, ok := s["enum"].([]any); ok {
		s["enum"] = append(append([]any{}, e...), nil)
	}
	if a, ok := s["anyOf"].([]any); ok {
		s["anyOf"] = append(append([]any{}, a...), map[string]any{"type": "null"})
	}
}

// custom is a key whose value is read by a function of its own.
func custom[T any](key, doc string, s shape, read func(d *decoder, n ast.Node, t *T)) field[T] {
	return field[T]{key: key, doc: doc, shape: s, read: read}
}

// sub is a key whose value has keys of its own.
func sub[T, U any](key, doc string, tb table[U], to func(*T) *U) field[T] {
	return custom(key, doc, tb.shape(), func(d *decoder, n ast.Node, t *T) { tb.read(d, n, to(t)) })
}

// each is a key whose value is a mapping from names to the like of U.
func each[T, U any](key, doc, named string, tb table[U], add func(t *T, name string, u U)) field[T] {
	in := tb.shape()
	s := shape{words: "a name for each " + named + ", and its keys under it", keys: in.keys, named: named}
	s.schema = map[string]any{"type": "object", "additionalProperties": in.schema}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		entries, _ := d.entries(n, s.words)
		for _, e := range entries {
			if !d.named(e.token, e.key, named) {
				d.lost = true
				continue
			}
			d.at[d.path+sep+e.key+keyOf] = e.token
			d.under(e.key, e.value, func(n ast.Node) {
				var u U
				tb.read(d, n, &u)
				add(t, e.key, u)
			})
		}
	})
}
