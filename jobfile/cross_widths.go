package jobfile

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"strake/room"
	"strake/stock"
	"strake/tape"
)

// severalWidths checks boards of several face widths and their pattern, and
// takes for the face of all that of the widest.
func severalWidths(d *decoder, j *draft) {
	b := &j.Boards
	path := at("boards", "widths")
	for _, key := range []string{"face", "ten_boards", "lengths"} {
		if d.given(at("boards", key)) {
			d.failPath(at("boards", key), key+" stands under widths, for each face width by itself", "", widthsLike(d.unit.Imperial()))
		}
	}
	if n := len(b.Widths); n < 2 || n > mostWidths {
		d.failPath(path, fmt.Sprintf("from 2 to %d face widths go here", mostWidths), strconv.Itoa(n), widthsLike(d.unit.Imperial())+"; of one width, face and lengths stand under boards")
	}
	for i := range b.Widths {
		w, own := &b.Widths[i], at(path, strconv.Itoa(i))
		if boardLengths(d, j, w, at(own, "lengths")); w.Known == stock.Unknown {
			d.failPath(at(own, "lengths"), "boards of several face widths need lengths", "unknown", lengthsLike(d.unit.Imperial()))
		}
		tenBoards(d, j, *w, at(own, "ten_boards"))
		sameWidth(d, j, i, own)
	}
	pattern(d, j)
	changesOfRows(d, j)
	*b = stock.Several(*b)
	for i, w := range b.Widths {
		if own := at(path, strconv.Itoa(i), "lengths", "shift"); w.Shift.Fixed() && !b.Shift.Fixed() && d.given(own) {
			d.failPath(own, "a shift goes through rows of all widths: their boards are of one length and move alike", "", "the same length and shift for each width, or no shift")
			break
		}
	}
}

// faceStyle tells faces as finely as they are made.
func faceStyle(u tape.Unit) tape.Style {
	if u.Imperial() {
		return tape.Style{Unit: tape.UnitInch, Step: tape.SixtyFourth}
	}
	return tape.Style{Unit: tape.UnitMillimetre, Step: mm / 10}
}

// sameWidth tells of a width that is there already: rows would not be told
// apart.
func sameWidth(d *decoder, j *draft, i int, path string) {
	w, s := j.Boards.Widths[i], faceStyle(j.Unit)
	for _, v := range j.Boards.Widths[:i] {
		switch {
		case w.Face == 0:
		case v.Face == w.Face:
			d.failPath(at(path, "face"), "boards of this face are there already", s.Of(w.Face), "each face once, with all of its boards")
			return
		case v.Pitch() == w.Pitch():
			d.failPath(at(path, "ten_boards"), "by their ten boards these take up what those of "+s.Of(v.Face)+" do", s.Of(w.TenBoards), "ten boards of "+s.Of(w.Face)+" measured anew")
			return
		}
	}
}

// pattern checks that the rows of a pattern have boards, and that one can be
// proposed where there is none.
func pattern(d *decoder, j *draft) {
	b, s := j.Boards, faceStyle(j.Unit)
	var all []string
	for _, w := range b.Widths {
		if w.Face == 0 {
			return // not read, and said so
		}
		all = append(all, s.Of(w.Face))
	}
	faces := strings.Join(all, ", ")
	for i, f := range b.Pattern {
		if !slices.ContainsFunc(b.Widths, func(w stock.Boards) bool { return w.Face == f }) {
			d.failPath(at("boards", "pattern", strconv.Itoa(i)), "there are no boards of this face", s.Of(f), "one of "+faces)
		}
	}
	if d.given(at("boards", "pattern")) {
		return
	}
	for i, w := range b.Widths {
		if have, known := w.Delivered(); w.Known != "" && (!known || have == 0) {
			d.failPath(at("boards", "widths", strconv.Itoa(i), "lengths"), "how much there is of this width is not known, so no pattern can be proposed",
				"", "a tally, one with a count, or the rows yourself under boards: pattern: ["+faces+"]")
			return
		}
	}
}

// changesOfRows tells of rows that change at a doorway and of frames: both are
// for rows of one width.
func changesOfRows(d *decoder, j *draft) {
	const rows = "go on: rows of several widths run through; or a job of its own for each part, with boards of one width"
	for _, w := range j.Sketch.Doorways {
		if w.Rows == room.RowsTurn || w.Rows == room.RowsHeader {
			d.failPath(at("doorways", w.Name, "rows"), "rows of several widths cannot change at a doorway", string(w.Rows), rows)
		}
	}
	for _, s := range j.Sketch.Stays {
		if s.Frame != room.NoFrame {
			d.failPath(at("stays", s.Name, "frame"), "no frame goes with rows of several widths", string(s.Frame), "no frame, or boards of one width")
		}
	}
}
