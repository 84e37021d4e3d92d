package jobfile

import (
	"fmt"
	"sort"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"

	"strake/tape"
)

// decoder reads a tree by tables of keys, and keeps every error and the place
// of every value.
type decoder struct {
	file   string
	lines  []string
	unit   tape.Unit // of bare numbers
	errs   Errors
	at     map[string]*token.Token // where each value stands, by its path
	lost   bool                    // a named thing was dropped, so names may be missing
	sketch bool                    // read for what is to be measured
	path   string                  // of the value being read: doorways.hall.width
}

func newDecoder(name string, data []byte) *decoder {
	text := strings.ReplaceAll(string(data), "\r\n", "\n")
	return &decoder{file: name, lines: strings.Split(text, "\n"), unit: tape.UnitInch, at: map[string]*token.Token{}}
}

// spares tells whether a key that has to be there may be missing this time: in
// a sketch, the boards and what the tape says of doorways.
func (d *decoder) spares(key string) bool {
	if !d.sketch {
		return false
	}
	if strings.HasPrefix(d.path, "doorways"+sep) {
		return key == "at" || key == "width" || key == "thickness"
	}
	return d.path == "" && key == "boards"
}

// fail records an error at a token.
func (d *decoder) fail(t *token.Token, what, read, accept string) {
	line, column := d.position(t)
	d.failAt(line, column, what, read, accept)
}

// maxErrors is the most errors that are told of one file: past it the file is
// something else than a job.
const maxErrors = 200

// failAt records an error at a line and column.
func (d *decoder) failAt(line, column int, what, read, accept string) {
	if len(d.errs) >= maxErrors {
		return
	}
	e := &Error{File: d.file, Line: line, Column: column, What: what, Read: read, Accept: accept}
	if line <= len(d.lines) {
		e.Source = strings.TrimRight(d.lines[line-1], " \r")
	}
	d.errs = append(d.errs, e)
}

// failPath records an error at the value with this path, or at the nearest
// one round it.
func (d *decoder) failPath(path, what, read, accept string) {
	for {
		if t, ok := d.at[path]; ok {
			d.fail(t, what, read, accept)
			return
		}
		i := strings.LastIndexByte(path, sep[0])
		if i < 0 {
			d.failAt(1, 1, what, read, accept)
			return
		}
		path = path[:i]
	}
}

// sep parts the steps of a path. Names may hold dots and spaces, so it is a
// sign that no text has.
const sep = "\x00"

// key is the suffix of the path to a key itself, not to its value.
const keyOf = sep + "\x01"

func at(steps ...string) string { return strings.Join(steps, sep) }

// given tells whether a value was written for the path.
func (d *decoder) given(path string) bool { _, ok := d.at[path]; return ok }

// under reads a value whose path is one step further.
func (d *decoder) under(step string, n ast.Node, read func(ast.Node)) {
	outer := d.path
	if d.path = step; outer != "" {
		d.path = outer + sep + step
	}
	d.at[d.path] = start(n)
	read(n)
	d.path = outer
}

// start is the token where a value begins: the first key of a mapping, not
// its first colon.
func start(n ast.Node) *token.Token {
	switch n := n.(type) {
	case *ast.MappingNode:
		if !n.IsFlowStyle && len(n.Values) > 0 {
			return n.Values[0].Key.GetToken()
		}
		return n.Start
	case *ast.MappingValueNode:
		return n.Key.GetToken()
	}
	return n.GetToken()
}

// entry is one key of a mapping with its value.
type entry struct {
	key   string
	token *token.Token
	value ast.Node
}

// entries are the keys of a mapping, each once; not ok when n is none, which
// is then an error that says what was looked for.
func (d *decoder) entries(n ast.Node, want string) ([]entry, bool) {
	var values []*ast.MappingValueNode
	switch n := n.(type) {
	case *ast.MappingNode:
		values = n.Values
	case *ast.MappingValueNode:
		values = []*ast.MappingValueNode{n}
	default:
		d.wrong(n, want)
		return nil, false
	}
	var out []entry
	seen := map[string]bool{}
	for _, v := range values {
		e, ok := d.entry(v)
		if !ok {
			continue
		}
		if seen[e.key] {
			d.fail(e.token, "“"+e.key+"” is written twice here", e.key, "each once")
			continue
		}
		seen[e.key] = true
		out = append(out, e)
	}
	return out, true
}

func (d *decoder) entry(v *ast.MappingValueNode) (entry, bool) {
	if v.Key == nil || v.Value == nil || v.Key.IsMergeKey() {
		return entry{}, false
	}
	text, ok := scalar(v.Key)
	if !ok {
		if !refused(v.Key) {
			d.fail(v.Key.GetToken(), "a key is one word or name", describe(v.Key), "key: value")
		}
		return entry{}, false
	}
	return entry{text, v.Key.GetToken(), v.Value}, true
}

// items are the values of a list; a single value stands for a list of one.
func (d *decoder) items(n ast.Node, want string) ([]ast.Node, bool) {
	switch s := n.(type) {
	case *ast.SequenceNode:
		return s.Values, true
	case *ast.MappingNode, *ast.MappingValueNode, *ast.NullNode:
		d.wrong(n, want)
		return nil, false
	}
	return []ast.Node{n}, true
}

// text is the text of a single value; not ok when n is none.
func (d *decoder) text(n ast.Node, want string) (string, bool) {
	s, ok := scalar(n)
	if !ok {
		d.wrong(n, want)
	}
	return s, ok
}

// wrong records that n is not of the kind that was looked for.
func (d *decoder) wrong(n ast.Node, want string) {
	if !refused(n) { // else it was reported while the tree was walked
		d.fail(start(n), "something else belongs here", describe(n), want)
	}
}

// refused tells whether n is a thing that the visitor has reported.
func refused(n ast.Node) bool {
	switch n.Type() {
	case ast.TagType, ast.AnchorType, ast.AliasType, ast.MergeKeyType, ast.DirectiveType:
		return true
	}
	return false
}

// scalar is the text of a single value as it was written, without its quotes.
func scalar(n ast.Node) (string, bool) {
	switch n := n.(type) {
	case *ast.StringNode:
		return n.Value, true
	case *ast.LiteralNode:
		return strings.TrimSpace(n.Value.Value), true
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode, *ast.InfinityNode, *ast.NanNode:
		return n.GetToken().Value, true
	}
	return "", false
}

// describe says what n is, for what was read.
func describe(n ast.Node) string {
	switch n := n.(type) {
	case *ast.MappingNode, *ast.MappingValueNode:
		return "keys with values"
	case *ast.SequenceNode:
		return fmt.Sprintf("a list of %d", len(n.Values))
	case *ast.NullNode:
		return "nothing"
	}
	if s, ok := scalar(n); ok {
		return s
	}
	return n.Type().String()
}

// nearest is the word of words most like s, "" when none is like it.
func nearest(s string, words []string) string {
	best, least := "", len(s)/2+1
	sorted := append([]string(nil), words...)
	sort.Strings(sorted)
	for _, w := range sorted {
		if n := distance(strings.ToLower(s), strings.ToLower(w)); n < least {
			best, least = w, n
		}
	}
	return best
}

// suggest lists words, the one most like s first as a question.
func suggest(s string, words []string) string {
	known := strings.Join(words[:min(len(words), 30)], ", ")
	if len(words) > 30 {
		known += " ..."
	}
	if like := nearest(s, words); like != "" {
		return "did you mean “" + like + "”? Known here: " + known
	}
	return "one of " + known
}

// distance is the least number of letters to add, drop or change to make b of a.
func distance(a, b string) int {
	x, y := []rune(a), []rune(b)
	if len(x) > 64 || len(y) > 64 {
		return 64
	}
	row := make([]int, len(y)+1)
	for j := range row {
		row[j] = j
	}
	for i := range x {
		diag := row[0]
		row[0] = i + 1
		for j := range y {
			change := diag
			if x[i] != y[j] {
				change++
			}
			diag = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(y)]
}
