package detail

import (
	"context"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"strake/internal/sample"
	"strake/jobfile"
	"strake/plan"
	"strake/section"
	"strake/sheet"
	"strake/sheet/png"
)

// jobs are those in the tree and some of them otherwise, by name.
func jobs(t *testing.T) map[string][]byte {
	t.Helper()
	out := map[string][]byte{}
	for _, g := range []string{"../examples/*.yaml", "../examples/cases/*.yaml"} {
		files, err := filepath.Glob(g)
		if err != nil || len(files) < 3 {
			t.Fatalf("%s: %v, %v", g, files, err)
		}
		for _, f := range files {
			data, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			out[strings.TrimSuffix(filepath.Base(f), ".yaml")] = data
		}
	}
	turn := func(name, as string, changes ...string) {
		s := string(out[name])
		for i := 0; i < len(changes); i += 2 {
			n := strings.ReplaceAll(s, changes[i], changes[i+1])
			if n == s {
				t.Fatalf("%s: no %q", name, changes[i])
			}
			s = n
		}
		out[as] = []byte(s)
	}
	turn("hearth-askew", "hearth-butted", "mitred", "butted", "turned_by: 45", "rows_along: A-B")
	turn("hearth-askew", "hearth-bare", ", frame: mitred", "", "turned_by: 45", "rows_along: A-B")
	turn("hearth-askew", "hearth-wide", `face: 5"`, `face: 8"`, "wishes:", "heights: {measured_from: subfloor, openings: {hearth: {covering: stone, height: 13/16\"}}}\nwishes:")
	turn("trapezoid", "trapezoid-slab", "wishes:", "subfloor: {on: slab, layers: [{what: plywood, thickness: 3/4\"}, {what: concrete}]}\nfasteners: {kind: staple, length: 1-1/2\", source: the leaflet}\nwishes:", `face: 5"`, `face: 8"`)
	turn("three-rooms", "three-turned", "undercut: yes", "undercut: yes, rows: turn")
	turn("three-rooms", "three-headers", "undercut: yes", "undercut: yes, rows: header", "rows_along: A-B", "rows_along: B-C", `face: 5"`, `face: 4"`)
	turn("sail-loft", "sail-middle", "wishes:", "heights: {measured_from: subfloor, panel: 12, sheet: 1, openings: {stair door: {covering: carpet, height: 14, jambs: {of: wood}, leaf: {of: hollow-core, clear: 60}}}}\nwishes:")
	turn("ferry-parlour", "ferry-mould", "wishes:", "heights: {measured_from: subfloor, openings: {hall door: {covering: boards, height: 11/16\", jambs: {of: wood}}, hearth: {covering: stone, height: 3/4\"}}}\nsite: {level: above, subfloor: wood, heated: no, sheet: {kind: felt, perm: 5}}\nwishes:")
	turn("ferry-mould", "ferry-reducer", "height: 11/16\"", "height: 7/16\", shim: 1/8\"")
	turn("ferry-mould", "ferry-ramp", "height: 11/16\"", "height: 0")
	turn("ferry-mould", "ferry-higher", "height: 11/16\"", "height: 1-1/8\"")
	return out
}

// plans are those made so far, by name.
var plans = map[string]plan.Plan{}

// planOf is the plan of a job; tests run one after the other and share them.
func planOf(t *testing.T, name string, data []byte) plan.Plan {
	t.Helper()
	if p, ok := plans[name]; ok {
		return p
	}
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	plans[name] = plan.MakeWithin(context.Background(), j, 0)
	return plans[name]
}

// TestLook writes each detail as a picture into the directory that DETAIL_LOOK
// names; DETAIL_JOB names one job.
func TestLook(t *testing.T) {
	dir := os.Getenv("DETAIL_LOOK")
	if dir == "" {
		t.Skip("DETAIL_LOOK is not set: no pictures asked for")
	}
	all := jobs(t)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		if only := os.Getenv("DETAIL_JOB"); only != "" && only != name {
			continue
		}
		for _, d := range Of(planOf(t, name, all[name])) {
			if err := look(filepath.Join(dir, name+"--"+d.Name+".png"), d); err != nil {
				t.Fatal(err)
			}
			t.Logf("%s %s: %s, %s, %.0f by %.0f", name, d.Name, d.Title, d.Scale, d.W, d.H)
		}
	}
}

// look writes a detail on a page with its title above and its notes below.
func look(file string, d Detail) error {
	f := section.Figure{W: d.W, H: d.H, Items: d.Items}
	fs := []section.Figure{section.Caption(d.Title, section.Large, MostW, true), f}
	for _, n := range d.Notes {
		fs = append(fs, section.Caption(n, section.Small, MostW-10, false))
	}
	f = section.Below(2, fs...)
	w, err := os.Create(file)
	if err != nil {
		return err
	}
	defer w.Close()
	return png.Write(w, sheet.Sheet{W: f.W, H: f.H, Items: f.Items}, 150)
}

// faults are texts that lie on texts or leave the detail, leaders over texts, names
// twice, and a size beyond the most.
func faults(d Detail) []string {
	var out []string
	bad := func(format string, args ...any) { out = append(out, d.Name+": "+fmt.Sprintf(format, args...)) }
	var texts []sheet.Text
	for _, it := range d.Items {
		if x, ok := it.(sheet.Text); ok {
			texts = append(texts, x)
		}
	}
	for i, a := range texts {
		x := a.Box()
		for _, c := range x {
			if c.X < 0 || c.Y < 0 || c.X > d.W || c.Y > d.H {
				bad("%q leaves the detail", a.Text)
				break
			}
		}
		if a.Size < 3.2 { // read at arm's length
			bad("%q is %v mm high", a.Text, a.Size)
		}
		for _, b := range texts[:i] {
			if y := b.Box(); sheet.Overlap(x[:], y[:]) {
				bad("%q lies on %q", a.Text, b.Text)
			}
		}
	}
	for _, it := range d.Items {
		l, ok := it.(sheet.Polyline)
		if !ok || l.Name != "leader" {
			continue
		}
		for _, a := range texts {
			if box := a.Box(); over(l.Points[1], l.Points[2], box[:]) {
				bad("a leader passes over %q", a.Text)
			}
		}
	}
	if d.W > MostW || d.H > MostH || d.W < 40 || d.H < 20 {
		bad("%v by %v mm", d.W, d.H)
	}
	return out
}

// over tells whether a line passes over a box: as a very thin area.
func over(a, b sheet.Pt, box []sheet.Pt) bool {
	d := b.Sub(a)
	off := sheet.Pt{X: -d.Y, Y: d.X}.Times(1e-6)
	return sheet.Overlap([]sheet.Pt{a, b, b.Add(off), a.Add(off)}, box)
}

func TestNothingOverlaps(t *testing.T) {
	all := jobs(t)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		p := planOf(t, name, all[name])
		seen := map[string]bool{}
		ds := Of(p)
		if len(ds) < 3 {
			t.Errorf("%s: %d details", name, len(ds))
		}
		for _, d := range ds {
			if seen[d.Name] || d.Name == "" || d.Title == "" || d.Scale == "" || len(d.Notes) == 0 {
				t.Errorf("%s: %q twice, or without title, scale or notes", name, d.Name)
			}
			seen[d.Name] = true
			for _, f := range faults(d) {
				t.Errorf("%s, %s", name, f)
			}
		}
	}
	for i, p := range []plan.Plan{sample.Rectangle(), sample.Hearth(), sample.TwoRooms()} {
		for _, d := range Of(p) {
			for _, f := range faults(d) {
				t.Errorf("sample %d, %s", i, f)
			}
		}
	}
}
