package jobfile

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"

	"strake/room"
	"strake/tape"
)

// within is the range that a length must lie in, ends counted. A range far
// wider than anything sold or built: it is there to catch a wrong unit.
type within struct{ least, most tape.Length }

func (w within) words(u tape.Unit) string {
	s := tape.Paper(u)
	if w.least < tape.Sixteenth && w.least > 0 {
		s.Step /= 10
	}
	return "from " + s.Up(w.least) + " to " + s.Down(w.most)
}

// lengthSchema is what an editor can tell about a length: the grammar itself
// stays in tape.
func lengthSchema(signed bool) map[string]any {
	s := map[string]any{"type": []any{"string", "number"}, "pattern": `^ *[0-9.¼½¾⅛⅜⅝⅞]`}
	if signed {
		s["pattern"] = `^ *[-−]? *[0-9.¼½¾⅛⅜⅝⅞]`
	} else {
		s["minimum"] = 0
	}
	return s
}

// reading reads a length with the step it was read to.
func (d *decoder) reading(n ast.Node, w within) (tape.Reading, bool) {
	s, ok := d.text(n, "a length, "+w.words(d.unit))
	if !ok {
		return tape.Reading{}, false
	}
	r, err := d.parseLength(s, w.least < 0)
	var q *tape.Question
	if errors.As(err, &q) {
		d.question(n.GetToken(), s, q)
		return tape.Reading{}, false
	}
	if r.Value < w.least || r.Value > w.most {
		d.fail(n.GetToken(), "this length is out of range", s+" ("+tape.Paper(d.unit).Of(r.Value)+")", "a length "+w.words(d.unit))
		return tape.Reading{}, false
	}
	return r, true
}

func (d *decoder) parseLength(s string, signed bool) (tape.Reading, error) {
	if signed {
		l, err := tape.ParseSigned(s, d.unit)
		return tape.Reading{Value: l}, err
	}
	return tape.ParseReading(s, d.unit)
}

// question records what a length's parser asks.
func (d *decoder) question(t *token.Token, s string, q *tape.Question) {
	read := s
	if q.Read != "" {
		read = q.Read
	}
	d.fail(t, q.Ask, read, q.Accept)
}

// length is a key whose value is a length.
func length[T any](key, doc string, w within, to func(*T) *tape.Length) field[T] {
	s := shape{words: "a length", schema: lengthSchema(w.least < 0)}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		if r, ok := d.reading(n, w); ok {
			*to(t) = r.Value
		}
	})
}

// text is a key whose value is one line of text.
func text[T any](key, doc string, to func(*T) *string) field[T] {
	s := shape{words: "text", schema: map[string]any{"type": []any{"string", "number"}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		v, ok := d.text(n, "text")
		if ok && d.printable(n.GetToken(), v) {
			*to(t) = strings.TrimSpace(v)
		}
	})
}

// texts is a key whose value is a list of lines of text.
func texts[T any](key, doc, like string, to func(*T) *[]string) field[T] {
	s := shape{words: "a list of texts, such as " + like, schema: map[string]any{"type": "array", "items": map[string]any{"type": []any{"string", "number"}}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		nodes, _ := d.items(n, s.words)
		for i, in := range nodes {
			d.under(strconv.Itoa(i), in, func(n ast.Node) {
				if v, ok := d.text(n, "text"); ok && d.printable(n.GetToken(), v) && strings.TrimSpace(v) != "" {
					*to(t) = append(*to(t), strings.TrimSpace(v))
				}
			})
		}
	})
}

// printable refuses text that would spoil a list or a drawing.
func (d *decoder) printable(t *token.Token, s string) bool {
	if len([]rune(s)) > 200 {
		d.fail(t, "this text is too long", fmt.Sprintf("%d characters", len([]rune(s))), "at most 200")
		return false
	}
	for _, r := range s {
		if !unicode.IsPrint(r) {
			d.fail(t, "this text holds a sign that does not print", fmt.Sprintf("%q", r), "one line of plain text")
			return false
		}
	}
	return true
}

// yes is a key whose value is yes or no.
func yes[T any](key, doc string, to func(*T) *bool) field[T] {
	s := shape{words: "yes or no", schema: map[string]any{"enum": []any{true, false, "yes", "no"}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		v, ok := d.text(n, "yes or no")
		switch {
		case !ok:
		case v == "yes" || v == "true":
			*to(t) = true
		case v == "no" || v == "false":
			*to(t) = false
		default:
			d.fail(n.GetToken(), "this is neither yes nor no", v, "yes or no")
		}
	})
}

// whole is a key whose value is a whole number from least to most.
func whole[T any](key, doc string, least, most int, to func(*T) *int) field[T] {
	s := shape{words: "a whole number", schema: map[string]any{"type": "integer", "minimum": least, "maximum": most}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		if v, ok := d.whole(n, least, most); ok {
			*to(t) = v
		}
	})
}

func (d *decoder) whole(n ast.Node, least, most int) (int, bool) {
	want := fmt.Sprintf("a whole number from %d to %d", least, most)
	s, ok := d.text(n, want)
	if !ok {
		return 0, false
	}
	v, err := strconv.Atoi(s)
	if err != nil || v < least || v > most {
		d.fail(n.GetToken(), "this is not such a number", s, want)
		return 0, false
	}
	return v, true
}

// figure is a key whose value is a number from least to most.
func figure[T any](key, doc string, least, most float64, to func(*T) *float64) field[T] {
	s := shape{words: "a number", schema: map[string]any{"type": "number", "minimum": least, "maximum": most}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		if v, ok := d.figure(n, least, most); ok {
			*to(t) = v
		}
	})
}

func (d *decoder) figure(n ast.Node, least, most float64) (float64, bool) {
	want := fmt.Sprintf("a number from %g to %g", least, most)
	s, ok := d.text(n, want)
	if !ok {
		return 0, false
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil || math.IsNaN(v) || v < least || v > most {
		d.fail(n.GetToken(), "this is not such a number", s, want)
		return 0, false
	}
	return v, true
}

// choice is a key whose value is one of a few words.
func choice[T any, S ~string](key, doc string, words []S, to func(*T) *S) field[T] {
	var enum []any
	var names []string
	for _, w := range words {
		enum, names = append(enum, string(w)), append(names, string(w))
	}
	want := "one of " + strings.Join(names, ", ")
	s := shape{words: want, schema: map[string]any{"enum": enum}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		v, ok := d.text(n, want)
		if !ok {
			return
		}
		for _, w := range words {
			if string(w) == v {
				*to(t) = w
				return
			}
		}
		d.notOne(n.GetToken(), v, names)
	})
}

// notOne records a word that is none of those known.
func (d *decoder) notOne(t *token.Token, v string, names []string) {
	d.fail(t, "“"+v+"” is not known here", v, suggest(v, names))
}

// named tells whether s can be the name of a thing, and records an error when
// it cannot.
func (d *decoder) named(t *token.Token, s, what string) bool {
	if strings.TrimSpace(s) == "" || len([]rune(s)) > 40 || strings.ContainsFunc(s, func(r rune) bool { return !unicode.IsPrint(r) }) {
		d.fail(t, "this is no name for a "+what, s, "a name of 1 to 40 letters, figures and spaces")
		return false
	}
	return true
}

// dot tells whether s can be the name of a corner or point.
func (d *decoder) dot(t *token.Token, s string) bool {
	if strings.Contains(s, "-") {
		d.fail(t, "a corner's or point's name has no dash: the dash stands between two of them", s, "a name such as A, B2 or door left")
		return false
	}
	return d.named(t, s, "corner or point")
}

// corner is a key whose value is the name of one corner or point.
func corner[T any](key, doc string, to func(*T) *string) field[T] {
	s := shape{words: "the name of a corner", schema: map[string]any{"type": []any{"string", "number"}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		if v, ok := d.text(n, "the name of a corner"); ok && d.dot(n.GetToken(), v) {
			*to(t) = v
		}
	})
}

// corners is a key whose value is a list of names of corners.
func corners[T any](key, doc string, to func(*T) *[]string) field[T] {
	s := shape{words: "a list of corners, such as [A, B, C, D]", schema: map[string]any{
		"type": "array", "items": map[string]any{"type": []any{"string", "number"}}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		nodes, _ := d.items(n, s.words)
		for i, in := range nodes {
			d.under(strconv.Itoa(i), in, func(n ast.Node) {
				if v, ok := d.text(n, "the name of a corner"); ok && d.dot(n.GetToken(), v) {
					*to(t) = append(*to(t), v)
				} else {
					d.lost = true
				}
			})
		}
	})
}

// wall is a key whose value is a wall, by its two corners.
func wall[T any](key, doc string, to func(*T) *room.Wall) field[T] {
	s := shape{words: "a wall by its two corners, such as A-B", schema: map[string]any{"type": "string", "pattern": "^[^-]+-[^-]+$"}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		v, ok := d.text(n, s.words)
		if !ok {
			return
		}
		if w, ok := d.pair(n.GetToken(), v, s.words); ok {
			*to(t) = w
		}
	})
}

// pair reads two names with a dash between them.
func (d *decoder) pair(t *token.Token, s, want string) (room.Wall, bool) {
	parts := strings.Split(s, "-")
	if len(parts) != 2 || strings.TrimSpace(parts[0]) == "" || strings.TrimSpace(parts[1]) == "" {
		d.fail(t, "these are not two names with a dash between them", s, want)
		return room.Wall{}, false
	}
	w := room.Wall{strings.TrimSpace(parts[0]), strings.TrimSpace(parts[1])}
	if !d.named(t, w[0], "corner or point") || !d.named(t, w[1], "corner or point") {
		return w, false
	}
	if w[0] == w[1] {
		d.fail(t, "this runs from a point to itself", s, want)
		return w, false
	}
	return w, true
}
