//go:build outside

package main

import (
	"bytes"
	"context"
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/packet"
	"strake/plan"
	"strake/sheet"
	"strake/sheet/pdf"
	"strake/tape"
)

// Files for other programs, read by other programs: make outside. A program that is
// missing fails the test: this target is for machines that have them.

func drawn(t *testing.T, name string, args ...string) string {
	t.Helper()
	dir := t.TempDir()
	job := filepath.Join(dir, "job.yaml")
	data, err := examples.Read("ferry-parlour")
	if err != nil {
		t.Fatal(err)
	}
	writeFile(t, job, data)
	var out, errs bytes.Buffer
	file := filepath.Join(dir, name)
	if code := run(append(append([]string{"draw", job}, args...), "-o", file), rim{ctx: context.Background(), out: &out, err: &errs}); code != exitOK {
		t.Fatalf("%d\n%s%s", code, out.String(), errs.String())
	}
	return file
}

func said(t *testing.T, name string, args ...string) string {
	t.Helper()
	out, err := exec.Command(name, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s %q: %v\n%s", name, args, err, out)
	}
	return string(out)
}

// The document holds by qpdf; poppler finds its fonts in it, its words, and its pages.
func TestPDFOutside(t *testing.T) {
	file := drawn(t, "all.pdf", "all")
	said(t, "qpdf", "--check", file)
	for _, line := range strings.Split(strings.TrimSpace(said(t, "pdffonts", file)), "\n")[2:] {
		if f := strings.Fields(line); f[len(f)-5] != "yes" {
			t.Errorf("a font is not in the file: %s", line)
		}
	}
	words := said(t, "pdftotext", file, "-")
	for _, want := range []string{"Parlour of the ferryman's house", "Lines to snap", "Scale"} {
		if !strings.Contains(words, want) {
			t.Errorf("%q is not in its words", want)
		}
	}
	if info := said(t, "pdfinfo", file); !regexp.MustCompile(`Pages: +4\n`).MatchString(info) {
		t.Errorf("%s", info)
	}
}

// The drawing passes the audit of ezdxf without an error or a fix, and the area of its
// boards and the length round them, added up there, are those of the plan.
func TestDXFOutside(t *testing.T) {
	file := drawn(t, "floor.dxf")
	const script = `
import sys, ezdxf
from ezdxf.math import area
doc = ezdxf.readfile(sys.argv[1])
a = doc.audit()
assert not a.errors and not a.fixes, (a.errors, a.fixes)
boards = [[v.dxf.location for v in e.vertices] for e in doc.modelspace().query('POLYLINE[layer=="BOARDS"]')]
print(doc.units, sum(area(b) for b in boards), sum(p.distance(q) for b in boards for p, q in zip(b, b[1:] + b[:1])))
`
	f := strings.Fields(said(t, "/usr/bin/python3", "-c", script, file))
	got, err := strconv.ParseFloat(f[1], 64)
	if err != nil {
		t.Fatal(err)
	}
	data, err := examples.Read("ferry-parlour")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("job", data)
	if err != nil {
		t.Fatal(err)
	}
	var want, round float64
	for _, q := range plan.Make(context.Background(), j).Lay.Pieces {
		want += tape.Area(q.Outline.Area2()/2).SquareFeet() * 144
		for i, a := range q.Outline {
			b := q.Outline[(i+1)%len(q.Outline)]
			round += math.Hypot(float64(b.X-a.X), float64(b.Y-a.Y)) / float64(tape.Inch)
		}
	}
	if got, err := strconv.ParseFloat(f[2], 64); err != nil || math.Abs(got-round) > 1e-6*round {
		t.Errorf("%.2f in round the boards, the plan has %.2f, %v", got, round, err)
	}
	if f[0] != "1" || math.Abs(math.Abs(got)-want) > 1e-6*want {
		t.Errorf("units %s, %.2f sq in of boards, the plan has %.2f", f[0], got, want)
	}
}

// Sheets drawn in real units pass the audit too; on that of the lines to snap a wall that
// nothing interrupts is as long as the plan has it, and each line's writing is
// there.
func TestSheetDXFOutside(t *testing.T) {
	const script = `
import sys, ezdxf
doc = ezdxf.readfile(sys.argv[1])
a = doc.audit()
assert not a.errors and not a.fixes, (a.errors, a.fixes)
msp = doc.modelspace()
walls = [[v.dxf.location for v in e.vertices] for e in msp.query('POLYLINE[layer=="OUTLINES"]')]
near = min((abs(p.distance(q) - float(sys.argv[2])) for b in walls for p, q in zip(b, b[1:])), default=1e9)
print(doc.units, near, len(msp.query('TEXT')))
`
	data, err := examples.Read("ferry-parlour")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("job", data)
	if err != nil {
		t.Fatal(err)
	}
	p := plan.Rows(j)
	at := p.Survey.Built.At
	want := at["E"].Sub(at["D"]).Len() / 25.4
	for what, writing := range map[string]int{"lines": 30, "measured": 10, "tongues": 5, "detail-start-line": 10} {
		file := drawn(t, what+".dxf", what)
		f := strings.Fields(said(t, "/usr/bin/python3", "-c", script, file, fmt.Sprint(want)))
		off, err := strconv.ParseFloat(f[1], 64)
		n, err2 := strconv.Atoi(f[2])
		if err != nil || err2 != nil || f[0] != "1" || n < writing {
			t.Errorf("%s: units %s, %d texts", what, f[0], n)
		}
		if what == "lines" && off > 0.02 {
			t.Errorf("no line is as long as wall D-E, %.3f in: the nearest is off by %.3f", want, off)
		}
	}
}

// A bar of 100 mm on a sheet is 100 mm on the page, as poppler renders it: its dark
// dots are counted, ten to a millimetre.
func TestTrueSizeOutside(t *testing.T) {
	s := sheet.Sheet{W: 210, H: 297}
	s.Put(sheet.Polyline{Points: []sheet.Pt{{X: 30, Y: 50}, {X: 130, Y: 50}}, Pen: sheet.Pen{Width: 2, Ink: sheet.Black}})
	var b bytes.Buffer
	if err := pdf.Write(&b, "bar", s); err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "bar.pdf")
	writeFile(t, file, b.Bytes())
	first, _, last, _ := inked(rendered(t, file, 1))
	if long := float64(last-first+1) / 10; math.Abs(long-100) > 0.2 || math.Abs(float64(first)/10-30) > 0.2 {
		t.Errorf("the bar is %.1f mm long, from %.1f mm on", long, float64(first)/10)
	}
}

func writeFile(t *testing.T, name string, data []byte) {
	t.Helper()
	if err := os.WriteFile(name, data, 0o600); err != nil {
		t.Fatal(err)
	}
}

// packetOf writes the packet of an example and gives its file.
func packetOf(t *testing.T, example string, args ...string) string {
	t.Helper()
	dir := t.TempDir()
	data, err := examples.Read(example)
	if err != nil {
		t.Fatal(err)
	}
	writeFile(t, filepath.Join(dir, "job.yaml"), data)
	var out, errs bytes.Buffer
	if code := run(append([]string{"plan", filepath.Join(dir, "job.yaml"), "-o", dir}, args...), rim{ctx: context.Background(), out: &out, err: &errs}); code != exitOK {
		t.Fatalf("%d\n%s%s", code, out.String(), errs.String())
	}
	return filepath.Join(dir, packetName)
}

// rendered is a page of a document, a tenth of a millimetre a dot unless asked otherwise.
func rendered(t *testing.T, file string, page int, how ...string) image.Image {
	t.Helper()
	if len(how) == 0 {
		how = []string{"-r", "254"}
	}
	base := filepath.Join(t.TempDir(), "page")
	said(t, "pdftoppm", append(how, "-gray", "-png", "-singlefile", "-f", strconv.Itoa(page), "-l", strconv.Itoa(page), file, base)...)
	data, err := os.ReadFile(base + ".png")
	if err != nil {
		t.Fatal(err)
	}
	m, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// inked is the box of the dark dots of a page.
func inked(m image.Image) (x0, y0, x1, y1 int) {
	x0, y0, x1, y1 = m.Bounds().Dx(), m.Bounds().Dy(), -1, -1
	for y := range m.Bounds().Dy() {
		for x := range m.Bounds().Dx() {
			if dark(m, x, y) {
				x0, y0, x1, y1 = min(x0, x), min(y0, y), max(x1, x), max(y1, y)
			}
		}
	}
	return
}

func dark(m image.Image, x, y int) bool {
	r, _, _, _ := m.At(x, y).RGBA()
	return r < 0x8000
}

// pageOf is the first page that says something.
func pageOf(t *testing.T, file, says string) int {
	t.Helper()
	for i, p := range strings.Split(said(t, "pdftotext", file, "-"), "\f") {
		if strings.Contains(p, says) {
			return i + 1
		}
	}
	t.Fatalf("no page says %q", says)
	return 0
}

// The packet holds by qpdf; its pages are Letter or A4 as asked, all its fonts are in
// it, its words are found, it is no larger than 5 MB.
func TestPacketOutside(t *testing.T) {
	for _, tt := range []struct {
		example, paper string
		w, h           float64 // of a page, in points of 1/72 in
	}{{"ferry-parlour", "letter", 612, 792}, {"ferry-parlour", "a4", 595.28, 841.89}, {"sail-loft", "a4", 595.28, 841.89}} {
		file := packetOf(t, tt.example, "--paper", tt.paper)
		said(t, "qpdf", "--check", file)
		if info, err := os.Stat(file); err != nil || info.Size() > 5<<20 {
			t.Errorf("%v, %v", info.Size(), err)
		}
		for _, line := range strings.Split(strings.TrimSpace(said(t, "pdffonts", file)), "\n")[2:] {
			if f := strings.Fields(line); f[len(f)-5] != "yes" {
				t.Errorf("a font is not in the file: %s", line)
			}
		}
		sizes := regexp.MustCompile(`Page +\d+ size: +([\d.]+) x ([\d.]+) pts`).FindAllStringSubmatch(said(t, "pdfinfo", "-f", "1", "-l", "999", file), -1)
		pages := strings.Count(said(t, "pdftotext", file, "-"), "\f")
		if len(sizes) != pages || pages < 30 {
			t.Errorf("%d sizes of %d pages", len(sizes), pages)
		}
		for i, m := range sizes {
			w, _ := strconv.ParseFloat(m[1], 64)
			h, _ := strconv.ParseFloat(m[2], 64)
			if math.Abs(min(w, h)-tt.w) > 0.1 || math.Abs(max(w, h)-tt.h) > 0.1 {
				t.Errorf("%s, page %d is %v by %v points", tt.example, i+1, w, h)
			}
		}
		if last := fmt.Sprintf("page %d of %d", pages, pages); pageOf(t, file, last) != pages {
			t.Errorf("%q is not on the last page", last)
		}
		for _, want := range []string{"The room as measured", "Ways to lay the rows", "Row plan to scale", "Lines to snap", "MEASURE FIRST", "Story stick", "May it be laid?",
			"What to buy", "Steps and days", "When the boards come", "Readings on site", "How it is done", "What to mind", "EXAMPLE"} {
			if want != "EXAMPLE" || tt.example == "sail-loft" {
				pageOf(t, file, want)
			}
		}
	}
}

// The bar of 100 mm beside the story stick is 100 mm on the page as it is rendered, and
// so is the scale of the strips: the marks of two neighbouring rows on one strip lie a
// row width apart.
func TestStoryStickOutside(t *testing.T) {
	file := packetOf(t, "sail-loft")
	m := rendered(t, file, pageOf(t, file, "Row lines at full size"))
	long, rows := 0, 0
	for y := range m.Bounds().Dy() / 2 {
		if n := run100(m, y); n > long {
			long = n
		}
	}
	if bar := float64(long)/10 - stroke; math.Abs(bar-100) > 0.2 {
		t.Errorf("the bar is %.2f mm", bar)
	}
	// The rows of the loft are taken from its layout; the strip is read down its left side.
	data, err := examples.Read("sail-loft")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("job", data)
	if err != nil {
		t.Fatal(err)
	}
	pitch := j.Boards.Pitch().Millimetres()
	var at []int
	for y := 500; y < m.Bounds().Dy()-250; y++ {
		if dark(m, 120+200, y) && !dark(m, 120+200, y-1) { // 20 mm into the strip, right of the triangle and left of the names
			at = append(at, y)
		}
	}
	for i := 1; i < len(at); i++ {
		if d := float64(at[i]-at[i-1]) / 10; math.Abs(d-pitch) < 0.25 {
			rows++
		}
	}
	if rows == 0 {
		t.Errorf("no two marks lie %.1f mm apart: %v", pitch, at)
	}
}

// stroke is how thick the strokes at the ends of a bar are, mm: half of each lies beyond it.
const stroke = 0.35

// The bar scale of a tile of the row plan is as long as its figures say at the scale that
// the tile names: 5 ft at 1:24 are 63.5 mm on the page, as poppler renders it.
func TestTileScaleOutside(t *testing.T) {
	file := packetOf(t, "ferry-parlour")
	page := pageOf(t, file, "Tile A1")
	text := said(t, "pdftotext", "-f", strconv.Itoa(page), "-l", strconv.Itoa(page), file, "-")
	if !strings.Contains(text, "(1:24)") || !strings.Contains(text, "5 ft") {
		t.Fatalf("the tile is not at 1:24 with a bar of 5 ft: %s", text)
	}
	m := rendered(t, file, page)
	long := 0
	for y := 150; y < 350; y++ { // the head of the page; the line under it is longer than 110 mm
		if n := run100(m, y); n > long {
			long = n
		}
	}
	if bar, want := float64(long)/10, 5*304.8/24; bar < want-0.2 || bar > want+stroke+0.2 {
		t.Errorf("the bar of 5 ft is %.2f mm, want %.2f", bar, want)
	}
}

// run100 is the longest run of dark dots on a line that is about 100 mm long.
func run100(m image.Image, y int) int {
	best, n := 0, 0
	for x := range m.Bounds().Dx() {
		if dark(m, x, y) {
			n++
			continue
		}
		if n > best && n < 1100 {
			best = n
		}
		n = 0
	}
	return best
}

// Figures on row cards are 8 mm high or more: one set in their size, as it is rendered,
// from its top to its foot.
func TestNumeralsOutside(t *testing.T) {
	s := sheet.Sheet{W: 60, H: 30}
	s.Put(sheet.Text{Text: "8", At: sheet.Pt{X: 10, Y: 20}, Size: packet.Numeral, Ink: sheet.Black})
	var b bytes.Buffer
	if err := pdf.Write(&b, "figure", s); err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "figure.pdf")
	writeFile(t, file, b.Bytes())
	m := rendered(t, file, 1)
	_, top, _, foot := inked(m)
	if high := float64(foot-top+1) / 10; high < 8 {
		t.Errorf("a figure is %.1f mm high", high)
	}
}
