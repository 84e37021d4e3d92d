package packet

import (
	"strings"
	"testing"

	"strake/internal/sample"
	"strake/paper"
)

// The page names the fastener, every row that is not nailed with the nailer all along,
// and where each part to be kept free lies along the rows; all in the packet's own pages:
// no page sends anyone to a file that is not there.
func TestFastenersPage(t *testing.T) {
	in := made(t, "keepers-kitchen", shipped(t)["keepers-kitchen"])
	d := newDesk(in, Letter)
	d.fasteners()
	said := map[string]int{}
	all := ""
	for _, l := range d.pages {
		for _, x := range texts(l.Sheet) {
			said[x.Text]++
			all += x.Text + " "
		}
	}
	rows := paper.FastenedRows(in.Plan)
	for _, r := range rows {
		if !r.Plain && said[r.Row.Name] == 0 {
			t.Errorf("row %s, %s, is not named", r.Row.Name, r.Row.Fasten)
		}
	}
	if len(rows) < 20 {
		t.Errorf("%d rows", len(rows))
	}
	for _, want := range []string{`2" cleats`, `every 6" at most`, "water pipe (pipe)", `20: 106-1/2" to 112-1/2"`, "[1]"} {
		if !strings.Contains(all, want) {
			t.Errorf("%q is not said in %s", want, all)
		}
	}
	in = of(sample.Hearth())
	in.Plan.Job.Boards.Thickness = 0
	d = newDesk(in, A4)
	d.fasteners()
	if got := written(Sheets(in, A4)); !strings.Contains(got, "No schedule speaks of such boards") {
		t.Error("boards of no schedule are told one")
	}
}

// Lists that are files beside the packet are named by its pages here.
func TestNoFilesOnSite(t *testing.T) {
	for name, data := range shipped(t) {
		for i, s := range Sheets(made(t, name, data), A4) {
			for _, x := range texts(s) {
				for _, file := range []string{"rows.txt", "fasteners.txt", "lines.txt", "cuts.txt"} {
					if strings.Contains(x.Text, file) {
						t.Errorf("%s, page %d: %q", name, i+1, x.Text)
					}
				}
			}
		}
	}
}
