//go:build outside

package main

import (
	"bytes"
	"context"
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

// A bar of so many millimetres on the sheet is that long on the page, as poppler
// renders it: the frame of the sheet is measured on the picture.
func TestTrueSizeOutside(t *testing.T) {
	file := drawn(t, "plan.pdf", "plan")
	base := strings.TrimSuffix(file, ".pdf")
	said(t, "pdftoppm", "-r", "254", "-gray", file, base)
	found, err := filepath.Glob(base + "-*.pgm")
	if err != nil || len(found) != 1 {
		t.Fatalf("%v %v", found, err)
	}
	head := strings.Fields(string(firstBytes(t, found[0], 40)))
	wide, _ := strconv.Atoi(head[1])
	info := said(t, "pdfinfo", file)
	size := regexp.MustCompile(`Page size: +([0-9.]+) x`).FindStringSubmatch(info)
	points, _ := strconv.ParseFloat(size[1], 64)
	if mm := points / 72 * 25.4; math.Abs(float64(wide)/10-mm) > 0.2 || math.Abs(mm-431.8) > 0.2 {
		t.Errorf("%d dots at 10 a millimetre, %.2f mm by the page", wide, mm)
	}
}

func writeFile(t *testing.T, name string, data []byte) {
	t.Helper()
	if err := os.WriteFile(name, data, 0o600); err != nil {
		t.Fatal(err)
	}
}

func firstBytes(t *testing.T, name string, n int) []byte {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return data[:n]
}
