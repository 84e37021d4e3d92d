package jobfile

import (
	"slices"
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/stock"
	"strake/tape"
)

// shiftLike is what a shift looks like.
const shiftLike = "a part of a board such as 1/3, a length such as 13-1/2\", or random"

// shiftField reads how far joints move from row to row. 1/3 alone is a part of
// a board: no joints move by a third of an inch.
func shiftField() field[stock.Boards] {
	s := shape{words: shiftLike, schema: map[string]any{"type": []any{"string", "number"}}}
	return custom("shift", "With one, or a tally of one length: joints move by this from row to row, a fixed pattern, from where the smallest end piece is longest; random leaves them to fall where they look best.", s,
		func(d *decoder, n ast.Node, b *stock.Boards) {
			v, ok := d.text(n, shiftLike)
			if !ok || v == "random" {
				return
			}
			if num, den, ok := part(v); ok {
				if num < 1 || num >= den || den > mostParts {
					d.fail(n.GetToken(), "this is no part of a board that joints can move by", v, "a part such as 1/3, of less than a whole board and at most 16 parts")
					return
				}
				b.Shift = stock.Shift{Num: num, Den: den}
				return
			}
			if r, ok := d.reading(n, boardShift); ok {
				b.Shift = stock.Shift{Length: r.Value}
			}
		})
}

// What joints may move by, and in how many parts a board is thought of.
var boardShift = within{25 * mm, 12000 * mm}

const mostParts = 16

// part reads a bare fraction.
func part(s string) (num, den int, ok bool) {
	a, b, ok := strings.Cut(strings.TrimSpace(s), "/")
	num, errA := strconv.Atoi(strings.TrimSpace(a))
	den, errB := strconv.Atoi(strings.TrimSpace(b))
	return num, den, ok && errA == nil && errB == nil
}

// shifted checks that a shift goes with boards of one length, and is less.
func shifted(d *decoder, j *draft, b stock.Boards, path string) {
	s := tape.Paper(j.Unit)
	if !b.Shift.Fixed() {
		return // random, or not read
	}
	one := b.One
	if len(b.Tally) > 0 {
		one = b.Tally[0].Length
	}
	several := slices.ContainsFunc(b.Tally, func(c stock.Class) bool { return c.Length != one })
	switch {
	case several || !d.given(at(path, "one")) && !d.given(at(path, "tally")):
		d.failPath(at(path, "shift"), "a shift goes with boards of one length: those of many have no fixed pattern", "", "lengths: {one: "+oneLike(d.unit.Imperial())+", shift: 1/3}, or no shift")
	case one > 0 && b.Shift.Length >= one:
		d.failPath(at(path, "shift"), "the shift is no less than a board", s.Of(b.Shift.Length), "less than "+s.Of(one))
	}
}

func oneLike(imperial bool) string {
	if imperial {
		return "48 in"
	}
	return "1200 mm"
}
