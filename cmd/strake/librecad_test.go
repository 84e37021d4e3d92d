//go:build outside

package main

import (
	"math"
	"os"
	"os/exec"
	"strings"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/plan"
)

// LibreCAD draws the floor, fitted to a page: what is dark on the page is as long to its
// height as the walls of the job are. A machine without LibreCAD says so and skips;
// make librecad is the target for it.
func TestLibreCADDraws(t *testing.T) {
	if _, err := exec.LookPath("librecad"); err != nil {
		t.Skip("LibreCAD is not installed: nothing was drawn by it")
	}
	file := drawn(t, "floor.dxf")
	out := strings.TrimSuffix(file, ".dxf") + ".pdf"
	c := exec.Command("librecad", "dxf2pdf", "-a", "-m", file)
	c.Env = append(os.Environ(), "QT_QPA_PLATFORM=offscreen")
	if text, err := c.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	m := rendered(t, out, 1, "-scale-to", "2000")
	x0, y0, x1, y1 := inked(m)
	data, err := examples.Read("ferry-parlour")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("job", data)
	if err != nil {
		t.Fatal(err)
	}
	lo, hi := math.Inf(1), math.Inf(-1)
	low, high := lo, hi
	for _, r := range plan.Rows(j).Floor.Rooms {
		for _, c := range r.Corners {
			lo, hi, low, high = math.Min(lo, c.X), math.Max(hi, c.X), math.Min(low, c.Y), math.Max(high, c.Y)
		}
	}
	want, got := (hi-lo)/(high-low), float64(x1-x0)/float64(y1-y0)
	if math.Abs(got/want-1) > 0.05 { // names of corners stand outside the walls
		t.Errorf("drawn %d by %d dots, %.3f; the walls are as %.3f", x1-x0, y1-y0, got, want)
	}
}
