package jobfile

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"
)

// What a job file may be at most. A house with every board tallied one by one
// stays far below both.
const (
	maxSize  = 128 << 10 // bytes
	maxDepth = 32        // brackets in brackets, dashes in dashes
)

// parse turns the text into a tree. It has no tree when an error says why.
func (d *decoder) parse(data []byte) ast.Node {
	if !d.readable(data) {
		return nil
	}
	file, err := parser.ParseBytes(data, 0)
	if err != nil {
		d.syntax(err)
		return nil
	}
	if len(file.Docs) > 1 && file.Docs[1].Body != nil {
		d.fail(file.Docs[1].Body.GetToken(), "a second document starts here", "", "one job a file, without --- between its parts")
		return nil
	}
	if len(file.Docs) == 0 || file.Docs[0].Body == nil {
		d.failAt(1, 1, "the file is empty", "", "a job; strake new writes a first one")
		return nil
	}
	body := file.Docs[0].Body
	ast.Walk(visitor{d}, body)
	return body
}

// readable refuses what the parser should not be given.
func (d *decoder) readable(data []byte) bool {
	if len(data) > maxSize {
		d.failAt(1, 1, "the file is too long for a job", fmt.Sprintf("%d bytes", len(data)), fmt.Sprintf("at most %d bytes", maxSize))
		return false
	}
	for i, line := range bytes.Split(data, []byte("\n")) {
		if !utf8.Valid(line) || bytes.IndexByte(line, 0) >= 0 {
			d.failAt(i+1, 1, "this line is not text", "bytes that are no UTF-8", "the file saved as UTF-8 text")
			return false
		}
	}
	if line := tooDeep(string(data)); line > 0 {
		d.failAt(line, 1, "lists are nested too deep here", "", fmt.Sprintf("at most %d inside each other", maxDepth))
		return false
	}
	return true
}

// tooDeep is the line where brackets or dashes nest deeper than maxDepth, 0
// for none. The parser calls itself for each level, so it must not be handed
// a hundred thousand of them. Closing brackets in comments and quotes are
// counted too: the figure is a guard, not a grammar.
func tooDeep(s string) int {
	depth := 0
	for i, line := range strings.Split(s, "\n") {
		dashes := 0
		for j, r := range line {
			switch r {
			case '[', '{':
				depth++
			case ']', '}':
				depth = max(0, depth-1)
			case '-', '?', ':':
				if j+1 == len(line) || line[j+1] == ' ' || line[j+1] == '\t' {
					dashes++
				}
			}
			if depth > maxDepth || dashes > 4*maxDepth {
				return i + 1
			}
		}
	}
	return 0
}

// syntax records what the parser did not understand; what people trip over is
// said in our own words.
func (d *decoder) syntax(err error) {
	const accepted = "key: value, lists as [a, b], and each level indented by spaces under its key"
	var se *yaml.SyntaxError
	if !errors.As(err, &se) || se.Token == nil || se.Token.Position == nil {
		d.failAt(1, 1, "this is not a job file's form: "+firstLine(err.Error()), "", accepted)
		return
	}
	var key string
	var line, column int
	switch n, _ := fmt.Sscanf(se.Message, "mapping key %q already defined at [%d:%d]", &key, &line, &column); {
	case n == 3:
		d.fail(se.Token, fmt.Sprintf("“%s” is written twice, first on line %d", key, line), "", "each key once; a reading taken more than once as a list: A-B: [12' 7-3/8\", 12' 7-5/16\"]")
	case strings.HasPrefix(se.Message, "found character '\t'"):
		d.fail(se.Token, "a tab stands here", "", "spaces: two for each level")
	default:
		d.fail(se.Token, "this is not a job file's form: "+se.Message, "", accepted)
	}
}

func firstLine(s string) string {
	s, _, _ = strings.Cut(s, "\n")
	return s
}

// visitor refuses what a job has no use for: tags, anchors, aliases, merges.
type visitor struct{ d *decoder }

func (v visitor) Visit(n ast.Node) ast.Visitor {
	var what string
	switch n.Type() {
	case ast.TagType:
		what = "a tag (!)"
	case ast.AnchorType:
		what = "an anchor (&)"
	case ast.AliasType:
		what = "an alias (*)"
	case ast.MergeKeyType:
		what = "a merge (<<)"
	case ast.DirectiveType:
		what = "a directive (%)"
	default:
		return v
	}
	v.d.fail(n.GetToken(), what+" has no place in a job file", "", "the value written out")
	return nil
}

// position is where a token stands, on a line and column of the file.
func (d *decoder) position(t *token.Token) (line, column int) {
	if t == nil || t.Position == nil {
		return 1, 1
	}
	line = min(max(t.Position.Line, 1), max(len(d.lines), 1))
	return line, max(t.Position.Column, 1)
}
