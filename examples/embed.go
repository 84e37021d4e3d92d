// Package examples holds four jobs at an invented place, the landing at
// Sandlin Quay, to read, run and change: one rectangle in millimetres, one
// L-shaped parlour out of square with a closet and a hearth, two rooms joined by
// a doorway, and a kitchen with all that is looked at before the first board.
package examples

import (
	"embed"
	"strings"
)

//go:embed *.yaml
var files embed.FS

// Example is one job file.
type Example struct {
	Name string // of the file, such as sail-loft.yaml
	Says string // what it shows, in one line
}

// List is all examples, the plainest first.
func List() []Example {
	names := []string{"sail-loft.yaml", "ticket-office.yaml", "ferry-parlour.yaml", "keepers-kitchen.yaml"}
	out := make([]Example, len(names))
	for i, n := range names {
		data, _ := Read(n)
		first, _, _ := strings.Cut(string(data), "\n")
		out[i] = Example{n, strings.TrimPrefix(first, "# ")}
	}
	return out
}

// Read is the text of one example; the .yaml may be left out.
func Read(name string) ([]byte, error) {
	return files.ReadFile(strings.TrimSuffix(name, ".yaml") + ".yaml")
}
