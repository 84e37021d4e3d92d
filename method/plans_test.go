package method

import (
	"context"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"strake/examples"
	"strake/internal/sample"
	"strake/jobfile"
	"strake/plan"
)

// made is a plan of a job file, racked in little time.
func made(t *testing.T, name, text string) plan.Plan {
	t.Helper()
	j, _, err := jobfile.ReadJob(name, []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return plan.MakeWithin(context.Background(), j, 100)
}

// kitchen is the keeper's kitchen with what its job has not: pipes, and a start in
// the middle of the floor.
func kitchen(t *testing.T) string {
	t.Helper()
	data, err := examples.Read("keepers-kitchen")
	if err != nil {
		t.Fatal(err)
	}
	return swapped(t, string(data), "stays:\n", `stays:
  heating riser: {kind: pipe, cover: 1-1/4, wall: A-B, from: A, at: 60, off: 3, width: 1, depth: 1}
  soil pipe: {kind: pipe, wall: A-B, from: A, at: 90, off: 4, width: 4-1/2, depth: 4-1/2}
`, "{rows_along: A-B}", "{rows_along: A-B, start_middle: yes}")
}

// swapped is text with the first of each pair in it replaced by the second.
func swapped(t *testing.T, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("no %q in the job", pairs[i])
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

// metric is the kitchen's floor in mm, thicker and wider, nothing told of nails.
const metric = `
strake: 1
name: Laundry over the boat house
unit: mm
rooms:
  laundry:
    corners: [A, B, C, D]
readings: {A-B: 3620, B-C: 2480, C-D: 3620, D-A: 2480, A-C: 4388, B-D: 4388}
doorways:
  door to the yard: {wall: B-C, from: B, at: 600, width: 800, thickness: 120, undercut: yes, ends: 50, beyond: transition}
stays:
  cold main: {kind: pipe, wall: A-B, from: A, at: 900, off: 60, width: 28, depth: 28}
boards:
  species: European oak
  face: 220
  thickness: 28
  side_tongue: 8
  end_tongue: 8
  lengths: {mix: {least: 500, most: 2400, mean: 1350}}
base: 16
shoe: 20
`

var once = struct {
	sync.Mutex
	all map[string]plan.Plan
}{}

// plans are all examples, cases and samples, and jobs that want every card.
func plans(t *testing.T) map[string]plan.Plan {
	t.Helper()
	once.Lock()
	defer once.Unlock()
	if once.all != nil {
		return once.all
	}
	out := map[string]plan.Plan{"rectangle": sample.Rectangle(), "hearth": sample.Hearth(), "short of boards": sample.ShortOfBoards(), "two rooms": sample.TwoRooms(),
		"kitchen": made(t, "kitchen", kitchen(t)), "metric": made(t, "metric", metric)}
	out["slab"] = made(t, "slab", swapped(t, kitchen(t), "subfloor: wood", "subfloor: plywood on slab", "  on: wood\n", "  on: slab\n"))
	out["panel"] = made(t, "panel", swapped(t, kitchen(t), "  sheet: 1/32\n", "  sheet: 1/32\n  panel: 1/2\n"))
	for _, e := range examples.List() {
		data, err := examples.Read(e.Name)
		if err != nil {
			t.Fatal(err)
		}
		out[e.Name] = made(t, e.Name, string(data))
	}
	office, err := examples.Read("ticket-office")
	if err != nil {
		t.Fatal(err)
	}
	out["shifted"] = made(t, "shifted", swapped(t, string(office), "    one: 47-1/4", "    shift: 1/3\n    one: 47-1/4"))
	files, _ := filepath.Glob("../examples/cases/*.yaml")
	if len(files) < 9 {
		t.Fatalf("%d case files", len(files))
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		out[filepath.Base(file)] = made(t, file, string(data))
	}
	once.all = out
	return out
}

// each runs a test on every card of every plan.
func each(t *testing.T, run func(t *testing.T, name string, k Card)) {
	t.Helper()
	all := plans(t)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		for _, k := range Cards(all[name]) {
			run(t, name+", "+k.Name, k)
		}
	}
}
