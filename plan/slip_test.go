package plan_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/plan"
)

// Where rows turn in a doorway the slips of both fields are told: the closing edges of
// each are those of its own rooms, and each rip is the one that its rows were set out
// with.
func TestSlipsOfEveryField(t *testing.T) {
	data, err := os.ReadFile("../examples/cases/three-rooms.yaml")
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Replace(string(data), "undercut: yes, beyond: {wall: E-F", "undercut: yes, rows: turn, beyond: {wall: E-F", 1)
	j, _, err := jobfile.ReadJob("three", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	c := plan.Choose(j)
	first := c.Candidates[0]
	if len(first.Fields) < 2 {
		t.Fatalf("%d fields", len(first.Fields))
	}
	var edges []string
	for _, s := range c.Shifts {
		edges = append(edges, s.Edge)
		if s.Row == 0 || strings.Contains(s.Edge, "rows beyond") {
			t.Errorf("%+v", s)
		}
		found := false
		for _, f := range first.Fields {
			for _, r := range f.Layout.Rips {
				found = found || r.Edge == s.Edge && (r.Left == s.Rip || r.Right == s.Rip)
			}
		}
		if !found {
			t.Errorf("no rip of %s at %s", s.Rip, s.Edge)
		}
	}
	for edge, want := range map[string]bool{"wall F-G": true, "wall H-E": true, "wall O-P": true, "wall E-F": false, "wall N-O": false} {
		if slices.Contains(edges, edge) != want {
			t.Errorf("%s: told %v, want %v, among %q", edge, !want, want, edges)
		}
	}
}
