//go:build outside

package main

import (
	"bytes"
	"context"
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
// boards, added up there, is that of the plan.
func TestDXFOutside(t *testing.T) {
	file := drawn(t, "floor.dxf")
	const script = `
import sys, ezdxf
from ezdxf.math import area
doc = ezdxf.readfile(sys.argv[1])
a = doc.audit()
assert not a.errors and not a.fixes, (a.errors, a.fixes)
print(doc.units, sum(area([v.dxf.location for v in e.vertices]) for e in doc.modelspace().query('POLYLINE[layer=="BOARDS"]')))
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
	var want float64
	for _, q := range plan.Make(context.Background(), j).Lay.Pieces {
		want += tape.Area(q.Outline.Area2()/2).SquareFeet() * 144
	}
	if f[0] != "1" || math.Abs(math.Abs(got)-want) > 1e-6*want {
		t.Errorf("units %s, %.2f sq in of boards, the plan has %.2f", f[0], got, want)
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
	base := filepath.Join(t.TempDir(), "bar")
	writeFile(t, base+".pdf", b.Bytes())
	said(t, "pdftoppm", "-r", "254", "-png", "-singlefile", base+".pdf", base)
	data, err := os.ReadFile(base + ".png")
	if err != nil {
		t.Fatal(err)
	}
	m, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	first, last := -1, -1
	for x := range m.Bounds().Dx() {
		if r, _, _, _ := m.At(x, 500).RGBA(); r < 0x8000 {
			if first < 0 {
				first = x
			}
			last = x
		}
	}
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
