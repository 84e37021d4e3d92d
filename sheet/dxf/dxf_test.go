package dxf

import (
	"bytes"
	"strings"
	"testing"
)

// Groups come in pairs of lines whatever a name holds, letters outside ASCII by their
// numbers, and every layer that is drawn on stands in the table.
func TestGroups(t *testing.T) {
	d := Drawing{Units: Inches, Layers: []Layer{{"BOARDS", 3}}, Lines: []Line{{"BOARDS", []Pt{{0, 0}, {48, 0}, {48, 5}}, true}},
		Texts: []Text{{Layer: "BOARDS", Height: 2, Text: "7½\n0\nEOF"}}}
	var b bytes.Buffer
	if err := Write(&b, d); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSuffix(b.String(), "\n"), "\n")
	if len(lines)%2 != 0 || lines[len(lines)-1] != "EOF" || strings.Count(b.String(), "\nEOF\n") != 1 {
		t.Errorf("%d lines, the last %q", len(lines), lines[len(lines)-1])
	}
	count := map[string]int{}
	for i := 0; i < len(lines); i += 2 {
		count[strings.TrimSpace(lines[i])+" "+lines[i+1]]++
	}
	for group, want := range map[string]int{`1 7\U+00BD 0 EOF`: 1, "0 VERTEX": 3, "0 SEQEND": 1, "2 BOARDS": 1, "70 1": 4} {
		if count[group] != want {
			t.Errorf("%q stands %d times, want %d", group, count[group], want)
		}
	}
}
