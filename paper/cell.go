package paper

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
)

// guard keeps a spreadsheet from reading a cell as a formula: one that starts
// with = + - or @ (or a tab or return, which some skip) gets an apostrophe.
// A plain negative number is left alone.
func guard(cell string) string {
	if _, err := strconv.ParseFloat(cell, 64); err == nil && strings.HasPrefix(cell, "-") {
		return cell
	}
	if cell != "" && strings.ContainsRune("=+-@\t\r", rune(cell[0])) {
		return "'" + cell
	}
	return cell
}

// table writes lines of cells as CSV, every cell guarded.
func table(w io.Writer, lines [][]string) error {
	c := csv.NewWriter(w)
	for _, line := range lines {
		safe := make([]string, len(line))
		for i, cell := range line {
			safe[i] = guard(cell)
		}
		if err := c.Write(safe); err != nil {
			return err
		}
	}
	c.Flush()
	return c.Error()
}
