package words

import (
	"fmt"
	"strconv"

	"strake/lay"
)

// Row is a run's name: "12", or "12a" where the row is more than one run.
func Row(r lay.Run) string { return RowPart(r.Row, r.Part) }

// RowPart is the name of part p of a row; part 0 is the whole row.
func RowPart(row, p int) string {
	name := strconv.Itoa(row)
	if p <= 0 {
		return name
	}
	return name + letters(p)
}

// letters counts a, b ... z, aa, ab ...
func letters(n int) string {
	s := ""
	for ; n > 0; n = (n - 1) / 26 {
		s = string(rune('a'+(n-1)%26)) + s
	}
	return s
}

// Board is a board's number on paper: they are counted from 1 there, in
// plan.json from 0.
func Board(id int) string { return strconv.Itoa(id + 1) }

// Piece names the n-th piece of a run from the left, counted from 1.
func Piece(r lay.Run, n int) string { return fmt.Sprintf("row %s piece %d", Row(r), n) }

// Fasten is a fastening zone in words.
func Fasten(f lay.Fasten) string {
	switch f {
	case lay.Nailer:
		return "nailer"
	case lay.HandNail:
		return "hand-nailed"
	case lay.FaceNail:
		return "face-nailed"
	}
	return string(f)
}
