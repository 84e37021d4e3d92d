package jobfile

import (
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/job"
	"strake/room"
	"strake/tape"
)

// laidLike is an example of a row as laid, in words and with its keys.
const (
	laidPieces = `58", 71", 44-1/2"`
	laidLike   = "2: [" + laidPieces + "] for the pieces of row 2 from left to right, or 2: {pieces: [" + laidPieces + `], start: 3/4", cut: right}`
)

// What a piece as laid may measure, and how far the place of a row may lie from
// what it is read from: behind the face of an undercut jamb it is negative.
var (
	laidPiece = within{10 * mm, 12000 * mm}
	laidStart = within{-100 * mm, 100_000 * mm}
	laidFront = within{0, 100_000 * mm}
)

// namesRow tells whether s is how the row list names a run: 12, or 12a.
func namesRow(s string) bool {
	number := strings.TrimRightFunc(s, func(r rune) bool { return 'a' <= r && r <= 'z' })
	n, err := strconv.Atoi(number)
	return err == nil && n > 0 && n < 100_000 && strconv.Itoa(n) == number && len(s) <= len(number)+2
}

var laidTable = table[job.Laid]{fields: []field[job.Laid]{
	laidPiecesField().must(),
	laidRead("start", "Where its first piece begins: its distance from what the row's left end comes to, square to that (the gap there); or from the line of a wall, along the row, as in 3' 2\" from D-A.",
		laidStart, `a distance, such as 3/4" or 3' 2" from D-A`, func(l *job.Laid) *job.Read { return &l.Start }).or("at the least gap"),
	choice("cut", "Which ends of the row are cut: an end that is not keeps its tongue or its groove.", []job.Cut{job.CutNone, job.CutLeft, job.CutRight, job.CutBoth},
		func(l *job.Laid) *job.Cut { return &l.Cut }).or("not known, and the end tongue is not asked about"),
	laidRead("tongue", "Where its tongue edge lies, without the tongue: its distance from the front of the first row, as the story stick has it; or from the line of a wall, square to the rows, as in 9' 4-1/2\" from A-B.",
		laidFront, `a distance, such as 26-3/8" or 9' 4-1/2" from A-B`, func(l *job.Laid) *job.Read { return &l.Tongue }).or("where the plan has it"),
}}

// laidField reads the rows as laid: by their names, each a list of its pieces
// or keys.
func laidField() field[draft] {
	in := laidTable.shape()
	list := map[string]any{"type": "array", "items": lengthSchema(false), "minItems": 1}
	s := shape{words: "rows by their names, each with its pieces from left to right, such as {12a: [40\", 33-1/2\"]}, or with keys", keys: in.keys, named: "row",
		schema: map[string]any{"type": "object", "additionalProperties": map[string]any{"anyOf": []any{list, in.schema}}}}
	return custom("laid", "Rows as they lie on the floor, nailed or laid dry, named as the row list names them: strake check --laid holds them to the limits, strake rack goes on from them.", s,
		func(d *decoder, n ast.Node, j *draft) {
			entries, _ := d.entries(n, laidLike)
			for _, e := range entries {
				if !namesRow(e.key) {
					d.fail(e.token, "this is not how the row list names a row", e.key, "the row's number, with a letter where it lies in parts, such as 12 or 12a")
					continue
				}
				d.at[d.path+sep+e.key+keyOf] = e.token
				d.under(e.key, e.value, func(n ast.Node) { d.laidRow(n, j, e.key) })
			}
		})
}

// laidRow reads one row as laid.
func (d *decoder) laidRow(n ast.Node, j *draft, name string) {
	l := job.Laid{Row: name}
	before := len(d.errs)
	switch n.(type) {
	case *ast.MappingNode, *ast.MappingValueNode:
		laidTable.read(d, n, &l)
	case *ast.SequenceNode:
		d.laidPieces(n, &l)
	default:
		d.wrong(n, laidLike)
	}
	if len(d.errs) == before {
		j.Laid = append(j.Laid, l)
	}
}

func laidPiecesField() field[job.Laid] {
	s := shape{words: "a list of lengths, such as [" + laidPieces + "]", schema: map[string]any{"type": "array", "items": lengthSchema(false), "minItems": 1}}
	return custom("pieces", "The pieces of the row from left to right by the lengths of their faces, tongues not counted; a mitred piece by its long side.", s,
		func(d *decoder, n ast.Node, l *job.Laid) { d.laidPieces(n, l) })
}

func (d *decoder) laidPieces(n ast.Node, l *job.Laid) {
	nodes, ok := d.items(n, laidLike)
	if ok && len(nodes) == 0 {
		d.fail(start(n), "the row has no pieces", "", laidLike)
	}
	for i, v := range nodes {
		d.under(strconv.Itoa(i), v, func(n ast.Node) {
			if r, ok := d.reading(n, laidPiece); ok {
				l.Pieces = append(l.Pieces, r.Value)
			}
		})
	}
}

// laidRead is a key whose value is a distance, or a distance from a wall.
func laidRead(key, doc string, w within, words string, to func(*job.Laid) *job.Read) field[job.Laid] {
	schema := lengthSchema(w.least < 0)
	delete(schema, "minimum")
	s := shape{words: words, schema: schema}
	return custom(key, doc, s, func(d *decoder, n ast.Node, l *job.Laid) {
		text, ok := d.text(n, words)
		if !ok {
			return
		}
		r := job.Read{Told: true}
		length, from, far := strings.Cut(text, " from ")
		if far {
			if r.From, ok = d.pair(n.GetToken(), strings.TrimSpace(from), words); !ok {
				return
			}
		}
		v, err := d.parseLength(length, w.least < 0)
		if q, bad := err.(*tape.Question); bad {
			d.question(n.GetToken(), text, q)
			return
		}
		if v.Value < w.least || v.Value > w.most {
			d.fail(n.GetToken(), "this distance is out of range", text+" ("+tape.Paper(d.unit).Of(v.Value)+")", "a distance "+w.words(d.unit))
			return
		}
		r.At = v.Value
		*to(l) = r
	})
}

// laid checks that the walls are there that rows as laid are read from.
func (n *names) laid() {
	for _, l := range n.j.Laid {
		for key, w := range map[string]room.Wall{"start": l.Start.From, "tongue": l.Tongue.From} {
			n.wall(at("laid", l.Row, key), w)
		}
	}
}
