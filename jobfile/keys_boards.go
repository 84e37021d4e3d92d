package jobfile

import (
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"

	"strake/stock"
	"strake/tape"
)

// boardLength is what one board may measure.
var boardLength = within{50 * mm, 12000 * mm}

// Defaults for the profile, from memory: the tongues of 3/4 in T&G flooring
// stand out by about 1/4 in at side and end; measure one board.
const (
	sideTongue = in / 4
	endTongue  = in / 4
)

var boardsTable = table[stock.Boards]{fields: []field[stock.Boards]{
	text("name", "What the boards are called on paper.", func(b *stock.Boards) *string { return &b.Name }),
	text("species", "The wood, such as red oak.", func(b *stock.Boards) *string { return &b.Species }),
	length("face", "Face width: what is seen of a board, without the tongue.", within{15 * mm, 500 * mm}, func(b *stock.Boards) *tape.Length { return &b.Face }).unless("widths").or("it stands under widths"),
	tenBoardsField(),
	length("thickness", "Thickness of a board.", within{5 * mm, 80 * mm}, func(b *stock.Boards) *tape.Length { return &b.Thickness }).must(),
	length("side_tongue", "How far the tongue along the board stands out.", within{mm, 20 * mm}, func(b *stock.Boards) *tape.Length { return &b.SideTongue }).or("1/4 in"),
	length("end_tongue", "How far the tongue at the end stands out; 0 where the ends are plain.", within{0, 20 * mm}, func(b *stock.Boards) *tape.Length { return &b.EndTongue }).or("1/4 in"),
	choice("hand", "Which end carries the end tongue, seen from above with the side tongue away from you.", []stock.Hand{stock.RightHand, stock.LeftHand}, func(b *stock.Boards) *stock.Hand { return &b.Hand }).or("right"),
	lengthsField().unless("widths").written(lengthsLike).or("they stand under widths"),
	widthsField().or("all boards are of one width"),
	patternField().or("the pattern that uses up what was delivered most evenly"),
	sub("carton", "One pack as sold.", cartonTable, func(b *stock.Boards) *stock.Carton { return &b.Carton }),
	whole("cartons", "Cartons bought.", 0, 100_000, func(b *stock.Boards) *int { return &b.Cartons }).or("not bought yet"),
	text("lot", "The lot or batch number.", func(b *stock.Boards) *string { return &b.Lot }),
	text("currency", "What prices are in, such as USD.", func(b *stock.Boards) *string { return &b.Currency }),
}}

func tenBoardsField() field[stock.Boards] {
	return length("ten_boards", "Ten boards pushed tight, measured over all ten faces: rows then go up by a tenth of it.", within{150 * mm, 5100 * mm}, func(b *stock.Boards) *tape.Length { return &b.TenBoards }).or("rows go up by the face width")
}

// boardsLike is an example of boards.
func boardsLike(imperial bool) string {
	board := "face: 5 in, thickness: 3/4 in"
	if !imperial {
		board = "face: 130 mm, thickness: 20 mm"
	}
	return "boards: {" + board + ", lengths: {" + tallyLike(imperial) + "}}, with the figures of your boards; lengths may be one or mix instead of tally"
}

// lengthsLike is an example of each way to give lengths.
func lengthsLike(imperial bool) string {
	one, mix := "one: 48 in", "mix: {least: 12 in, most: 84 in, mean: 36 in}"
	if !imperial {
		one, mix = "one: 1200 mm", "mix: {least: 300 mm, most: 2100 mm, mean: 900 mm}"
	}
	return "lengths: {" + tallyLike(imperial) + "} for boards counted by length, lengths: {" + one + "} where all are alike, or lengths: {" + mix + "} for what a carton says; lengths: unknown where nothing is known"
}

func tallyLike(imperial bool) string {
	if imperial {
		return "tally: [24 x 36 in, 12 x 48 in]"
	}
	return "tally: [24 x 900 mm, 12 x 1200 mm]"
}

// lengthsField reads what is known about the lengths. A list or a length alone
// is a likely slip: it is told once, with what to write.
func lengthsField() field[stock.Boards] {
	f := sub("lengths", "What is known about the lengths: a tally, one length, or the mix in a carton; or the word unknown, for rows and rules without boards.", lengthsTable, func(b *stock.Boards) *stock.Boards { return b })
	read := f.read
	f.read = func(d *decoder, n ast.Node, b *stock.Boards) {
		switch n.(type) {
		case *ast.MappingNode, *ast.MappingValueNode:
			read(d, n, b)
		default:
			if s, ok := n.(*ast.StringNode); ok && s.Value == string(stock.Unknown) {
				b.Known = stock.Unknown
				return
			}
			d.wrong(n, lengthsLike(d.unit.Imperial()))
			delete(d.at, d.path)
		}
	}
	f.shape.schema = map[string]any{"anyOf": []any{map[string]any{"const": string(stock.Unknown)}, f.shape.schema}}
	return f
}

var lengthsTable = table[stock.Boards]{fields: []field[stock.Boards]{
	tallyField(),
	length("one", "The one length that all boards have.", boardLength, func(b *stock.Boards) *tape.Length { return &b.One }),
	whole("count", "With one: how many boards there are.", 0, 1_000_000, func(b *stock.Boards) *int { return &b.OneCount }).or("as many as it takes"),
	length("read_to", "With a tally: the step that the lengths were read to.", within{mm / 100, 50 * mm}, func(b *stock.Boards) *tape.Length { return &b.ReadTo }).or("the step of the tally, 1/4 in or 5 mm at the most"),
	length("slip", "With a tally: how far the reading of one board may well be off besides, as a standard deviation; 0 for boards measured against a stop.", within{0, 50 * mm}, func(b *stock.Boards) *tape.Length { return &b.Slip }).or("1/16 in: common practice, no source"),
	yes("trusted", "With a tally: rows may be planned to close with whole boards. No: every row ends in a cut, measured when its other boards lie.", func(b *stock.Boards) *bool { return &b.Doubted }).or("yes"),
	shiftField().or("joints fall where they look best: no H-joints, no steps"),
	sub("mix", "The spread of lengths in a carton, where the boards are not yet known one by one: gives an example layout.", mixTable, func(b *stock.Boards) *stock.Mix { return &b.Mix }),
}}

func gradeNames() []string {
	var out []string
	for _, g := range stock.Grades {
		out = append(out, g.Name)
	}
	return out
}

var mixTable = table[stock.Mix]{fields: []field[stock.Mix]{
	choice("grade", "The lengths that a grading rule gives or lets pass: NOFMA averages for oak, MFMA limits on shorts for maple. With it least, most and mean are left out.", gradeNames(), func(m *stock.Mix) *string { return &m.Grade }).or("least, most and mean say it"),
	length("least", "The shortest board.", boardLength, func(m *stock.Mix) *tape.Length { return &m.Least }).unless("grade"),
	length("most", "The longest board.", boardLength, func(m *stock.Mix) *tape.Length { return &m.Most }).unless("grade"),
	length("mean", "The average length of a board.", boardLength, func(m *stock.Mix) *tape.Length { return &m.Mean }).unless("grade"),
	length("step", "Lengths go up by this.", within{mm / 10, 1000 * mm}, func(m *stock.Mix) *tape.Length { return &m.Step }).or("1/16 in"),
}}

var cartonTable = table[stock.Carton]{fields: []field[stock.Carton]{
	area("area", "Face area of its boards, as printed on it.", func(c *stock.Carton) *tape.Area { return &c.Area }),
	measureField(),
	whole("count", "Boards in one.", 1, 10_000, func(c *stock.Carton) *int { return &c.Count }),
	figure("price", "Price of one.", 0, 1e6, func(c *stock.Carton) *float64 { return &c.Price }),
}}

// area is a key whose value is an area.
func area[T any](key, doc string, to func(*T) *tape.Area) field[T] {
	s := shape{words: "an area, such as 20 sq ft or 1.86 m2", schema: map[string]any{"type": "string", "pattern": "^ *[0-9.]"}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		v, ok := d.text(n, s.words)
		if !ok {
			return
		}
		a, err := tape.ParseArea(v)
		if q, bad := err.(*tape.Question); bad {
			d.question(n.GetToken(), v, q)
			return
		}
		*to(t) = a
	})
}

// maxBoards is the most boards of one class: a pallet holds a few thousand.
const maxBoards = 100_000

// tallyField reads a list of boards: 24 x 36 in, or a length alone for one
// board.
func tallyField() field[stock.Boards] {
	item := map[string]any{"anyOf": []any{map[string]any{"type": []any{"string", "number"}}, markedTable.shape().schema}}
	s := shape{words: "a list such as [24 x 36 in, 3 x 7' 0\", 61-1/2 in]", schema: map[string]any{"type": "array", "minItems": 1, "items": item}}
	const doc = "Every board by its length, tongue not counted: “24 x 36 in” for 24 boards of 36 in, a length alone for one board, {boards: 2 x 61 in, fault: crooked, carton: 3} for marked ones (fault: crooked, bowed, twisted, damaged groove end, damaged tongue end, off width, off shade or kept out; spoiled: how much of a damaged end; carton; shade)."
	return custom("tally", doc, s, func(d *decoder, n ast.Node, b *stock.Boards) {
		nodes, ok := d.items(n, s.words)
		if ok && len(nodes) == 0 {
			d.fail(start(n), "the tally is empty", "", s.words)
		}
		for i, in := range nodes {
			d.under(strconv.Itoa(i), in, func(n ast.Node) {
				if c, ok := d.classes(n); ok {
					b.Tally = append(b.Tally, c)
				}
			})
		}
	})
}

// class reads one entry of a tally.
func (d *decoder) class(n ast.Node) (stock.Class, bool) {
	const want = "“24 x 36 in” for 24 boards of 36 in, or a length for one board"
	s, ok := d.text(n, want)
	if !ok {
		return stock.Class{}, false
	}
	c := stock.Class{Count: 1}
	if i := strings.IndexAny(s, "x×X"); i >= 0 {
		sign := len("x")
		if strings.HasPrefix(s[i:], "×") {
			sign = len("×")
		}
		count, err := strconv.Atoi(strings.TrimSpace(s[:i]))
		if err != nil || count < 1 || count > maxBoards {
			d.fail(n.GetToken(), "the number of boards comes first, then x, then their length", s, want)
			return c, false
		}
		c.Count, s = count, s[i+sign:]
	}
	l, ok := d.board(n.GetToken(), s)
	c.Length = l
	return c, ok
}

// board reads the length of one board in a tally.
func (d *decoder) board(t *token.Token, s string) (tape.Length, bool) {
	l, err := tape.Parse(s, d.unit)
	if q, bad := err.(*tape.Question); bad {
		d.question(t, strings.TrimSpace(s), q)
		return 0, false
	}
	if l < boardLength.least || l > boardLength.most {
		d.fail(t, "this is no length of a board", strings.TrimSpace(s)+" ("+tape.Paper(d.unit).Of(l)+")", "a length "+boardLength.words(d.unit))
		return 0, false
	}
	return l, true
}

// measureField reads what the area of a carton counts.
func measureField() field[stock.Carton] {
	const doc = "What that area counts: face (what lies on the floor, as cartons have it) or nominal (the width before the tongue was milled, as bundles are tallied: 3/4 in more a board)."
	f := choice("measure", doc, []string{"face", "nominal"}, func(*stock.Carton) *string { return new(string) })
	f.read = func(d *decoder, n ast.Node, c *stock.Carton) {
		var said string
		choice("measure", doc, []string{"face", "nominal"}, func(*stock.Carton) *string { return &said }).read(d, n, c)
		c.Nominal = said == "nominal"
	}
	return f.or("face")
}
