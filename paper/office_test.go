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

// LibreOffice opens the workbook and works its totals out by itself.
func TestWorkbookInLibreOffice(t *testing.T) {
	soffice, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("SKIPPED: soffice (LibreOffice) is not installed, so the workbook was not opened in it")
	}
	var p plan.Plan
	p.Job.Goods.Prices = goods.Prices{Currency: "USD", Tax: 0.0825}
	var b bytes.Buffer
	if err := paper.Workbook(&b, p, nil, priced()); err != nil {
		t.Fatal(err)
	}
	d := t.TempDir()
	file := filepath.Join(d, "order.xlsx")
	if err := os.WriteFile(file, bare(t, b.Bytes()), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(soffice, "-env:UserInstallation=file://"+d+"/profile", "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false", "--outdir", d, file).CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	f, err := os.Open(filepath.Join(d, "order.csv"))
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
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
