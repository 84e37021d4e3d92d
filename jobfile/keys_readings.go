package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/survey"
	"strake/tape"
)

// tapeRange is what a tape reading may be.
var tapeRange = within{10 * mm, tape.Longest}

// trusted is a reading with how far to trust it.
type trusted struct {
	value tape.Reading
	doubt tape.Length
	text  string // as written
}

var trustedTable = table[trusted]{fields: []field[trusted]{
	custom("is", "The reading.", shape{words: "a length", schema: lengthSchema(false)}, func(d *decoder, n ast.Node, t *trusted) {
		t.value, t.text = d.written(n)
	}).must(),
	length("doubt", "How far off it may well be, such as 1/4 in where the tape sagged.", within{mm / 10, 1000 * mm}, func(t *trusted) *tape.Length { return &t.doubt }).must(),
}}

// readingsField reads the distances between named points: A-B: 12' 7-3/8", a
// list of lengths where one was read more than once, or {is: , doubt: }.
func readingsField() field[draft] {
	const doc = "What the tape said between any two named corners or points: walls, diagonals, widths, a tie through a doorway. Give a list where one was read more than once, or {is: , doubt: } where one is to be trusted less."
	return pairsField("readings", doc, func(j *draft) *[]survey.Reading { return &j.Readings })
}

// roughField reads guesses, which shape the measuring sheet and nothing else.
func roughField() field[draft] {
	const doc = "Guesses of walls and diagonals, for strake measure before anything was read; strake plan does not look at them."
	return pairsField("rough", doc, func(j *draft) *[]survey.Reading { return &j.rough })
}

func pairsField(key, doc string, to func(*draft) *[]survey.Reading) field[draft] {
	in := trustedTable.shape()
	s := shape{
		words: "two names with a dash, and the distance between them: A-B: 12' 7-3/8\"",
		keys:  in.keys, named: "pair of corners or points",
		schema: map[string]any{
			"type":          "object",
			"propertyNames": map[string]any{"pattern": "^[^-]+-[^-]+$"},
			"additionalProperties": map[string]any{"anyOf": []any{
				lengthSchema(false), in.schema,
				map[string]any{"type": "array", "items": map[string]any{"anyOf": []any{lengthSchema(false), in.schema}}},
			}},
		},
	}
	return custom(key, doc, s, func(d *decoder, n ast.Node, j *draft) {
		entries, _ := d.entries(n, s.words)
		for _, e := range entries {
			pair, ok := d.pair(e.token, e.key, s.words)
			if !ok {
				continue
			}
			d.at[d.path+sep+pair.String()+keyOf] = e.token
			d.under(e.key, e.value, func(n ast.Node) {
				for _, r := range d.readings(n) {
					r.From, r.To = pair[0], pair[1]
					*to(j) = append(*to(j), r)
				}
			})
		}
	})
}

// readings reads one reading or a list of them.
func (d *decoder) readings(n ast.Node) []survey.Reading {
	list, ok := n.(*ast.SequenceNode)
	if !ok {
		return d.trusted(n)
	}
	var out []survey.Reading
	for i, n := range list.Values {
		d.under(strconv.Itoa(i), n, func(n ast.Node) { out = append(out, d.trusted(n)...) })
	}
	return out
}

// trusted reads one reading, alone or with its doubt; none when it is wrong.
func (d *decoder) trusted(n ast.Node) []survey.Reading {
	t := d.trust(n)
	if t.value.Value == 0 {
		return nil
	}
	return []survey.Reading{t.as(d, n)}
}

// trust reads one reading, alone or with its doubt.
func (d *decoder) trust(n ast.Node) trusted {
	var t trusted
	switch n.(type) {
	case *ast.MappingNode, *ast.MappingValueNode:
		trustedTable.read(d, n, &t)
	default:
		t.value, t.text = d.written(n)
	}
	return t
}

// written is a reading with its text, in which slips of the pen are looked for.
func (d *decoder) written(n ast.Node) (tape.Reading, string) {
	r, ok := d.reading(n, tapeRange)
	if !ok {
		return r, ""
	}
	s, _ := d.text(n, "")
	return r, s
}

// as is t for the survey, with its line.
func (t trusted) as(d *decoder, n ast.Node) survey.Reading {
	line, _ := d.position(start(n))
	return survey.Reading{Value: t.value.Value, Step: t.value.Step, SD: t.doubt.Millimetres(), Line: line, Text: t.text, Unit: d.unit}
}
