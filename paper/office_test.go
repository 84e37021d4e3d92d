//go:build office

package paper_test

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/goods"
	"strake/internal/sample"
	"strake/paper"
	"strake/plan"
)

var stored = regexp.MustCompile(`(</f>)<v>[^<]*</v>`)

// bare is a workbook without the values beside its formulas, so that whoever opens
// it has to work them out.
func bare(t *testing.T, data []byte) []byte {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	w := zip.NewWriter(&out)
	taken := 0
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		all, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		taken += len(stored.FindAll(all, -1))
		to, err := w.Create(f.Name)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := to.Write(stored.ReplaceAll(all, []byte("$1"))); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil || taken == 0 {
		t.Fatalf("%d values taken out, %v", taken, err)
	}
	return out.Bytes()
}

// reckoned is the first sheet of a workbook as LibreOffice works it out by itself: the
// values beside its formulas are taken out first.
func reckoned(t *testing.T, data []byte) [][]string {
	t.Helper()
	soffice, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("SKIPPED: soffice (LibreOffice) is not installed, so the workbook was not opened in it")
	}
	d := t.TempDir()
	file := filepath.Join(d, "book.xlsx")
	if err := os.WriteFile(file, bare(t, data), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(soffice, "-env:UserInstallation=file://"+d+"/profile", "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false", "--outdir", d, file).CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	f, err := os.Open(filepath.Join(d, "book.csv"))
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// The lengths of all pieces add up, worked out by LibreOffice, to those of the plan.
func TestListsInLibreOffice(t *testing.T) {
	p := sample.Hearth()
	var b bytes.Buffer
	if err := paper.ListBook(&b, p); err != nil {
		t.Fatal(err)
	}
	rows := reckoned(t, b.Bytes())
	want := 0.0
	for _, q := range p.Lay.Pieces {
		lo, hi := q.Outline.Box()
		want += (hi.X - lo.X).Millimetres()
	}
	if p.Job.Unit.Imperial() {
		want /= 25.4
	}
	last := rows[len(rows)-1]
	number, part, _ := strings.Cut(last[4], " ") // 5067 14/16: shown to 1/16 in
	got, err := strconv.ParseFloat(number, 64)
	if over, of, ok := strings.Cut(strings.TrimSpace(part), "/"); ok && err == nil {
		var n, d float64
		n, err = strconv.ParseFloat(over, 64)
		d, _ = strconv.ParseFloat(of, 64)
		got += n / d
	}
	if err != nil || len(rows) != len(p.Lay.Pieces)+2 || math.Abs(got-want) > 1.0/32+1e-6 {
		t.Errorf("%d rows, the last %q; %d pieces, %.4f in all", len(rows), last, len(p.Lay.Pieces), want)
	}
}

// Prices add up, with tax, as the program has them.
func TestWorkbookInLibreOffice(t *testing.T) {
	var p plan.Plan
	p.Job.Goods.Prices = goods.Prices{Currency: "USD", Tax: 0.0825}
	var b bytes.Buffer
	if err := paper.Workbook(&b, p, nil, priced()); err != nil {
		t.Fatal(err)
	}
	rows := reckoned(t, b.Bytes())
	if len(rows) != 10 {
		t.Fatalf("%d rows: %v", len(rows), rows)
	}
	for i, net := range []float64{57.6 + 895.5 + 56 - 80, 57.6 + 895.5 + 64 - 70, 57.6 + 895.5 + 72 + 12} {
		for k, want := range []float64{net, net * 0.0825, net * 1.0825} {
			got, err := strconv.ParseFloat(strings.ReplaceAll(rows[7+k][7+i], ",", ""), 64)
			if err != nil || math.Abs(got-want) > 0.006 {
				t.Errorf("%s, column %d: %q, want %.4f", rows[7+k][0], i, rows[7+k][7+i], want)
			}
		}
	}
}
