package paper_test

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/goods"
	"strake/paper"
	"strake/plan"
)

// wire is a sheet as read back.
type wire struct {
	Rows []struct {
		Cells []struct {
			Ref     string `xml:"r,attr"`
			Formula string `xml:"f"`
			Value   string `xml:"v"`
			Text    string `xml:"is>t"`
		} `xml:"c"`
	} `xml:"sheetData>row"`
}

// readSheet are the cells of a sheet: formulas, and values of the rest.
func readSheet(t *testing.T, data []byte, name string) (formulas, values map[string]string) {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	f, err := z.Open("xl/worksheets/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var w wire
	if err := xml.NewDecoder(f).Decode(&w); err != nil {
		t.Fatal(err)
	}
	formulas, values = map[string]string{}, map[string]string{}
	for _, r := range w.Rows {
		for _, c := range r.Cells {
			if c.Formula != "" {
				formulas[c.Ref] = c.Formula
			}
			values[c.Ref] = c.Value + c.Text
		}
	}
	return formulas, values
}

var sumOf = regexp.MustCompile(`^SUM\(([A-Z]+)(\d+):[A-Z]+(\d+)\)$`)

// computed is a cell worked out from numbers and formulas alone, not from the values
// that stand beside formulas.
func computed(t *testing.T, ref string, formulas, values map[string]string) float64 {
	ref = strings.ReplaceAll(ref, "$", "")
	f, ok := formulas[ref]
	if !ok {
		x, err := strconv.ParseFloat(values[ref], 64)
		if err != nil && values[ref] != "" {
			t.Fatalf("%s is no number: %q", ref, values[ref])
		}
		return x
	}
	of := func(ref string) float64 { return computed(t, ref, formulas, values) }
	if m := sumOf.FindStringSubmatch(f); m != nil {
		from, _ := strconv.Atoi(m[2])
		to, _ := strconv.Atoi(m[3])
		sum := 0.0
		for r := from; r <= to; r++ {
			sum += of(m[1] + strconv.Itoa(r))
		}
		return sum
	}
	if a, b, ok := strings.Cut(f, "*"); ok {
		return of(a) * of(b)
	}
	if a, b, ok := strings.Cut(f, "+"); ok {
		return of(a) + of(b)
	}
	t.Fatalf("%s: %s", ref, f)
	return 0
}

// priced is a list with a price, a range, something that goes back and a thing
// without a price.
func priced() goods.List {
	return goods.List{Lines: []goods.Line{
		{Group: goods.Mould, Item: goods.BaseItem, What: "base", Count: 3, Unit: "bar", Each: goods.Exactly(19.2)},
		{Group: goods.Boards, Item: goods.Carton, What: "boards", Count: 9, Unit: "carton", Each: goods.Exactly(99.5)},
		{Group: goods.Under, Item: goods.SheetItem, What: "felt", Count: 2, Unit: "roll", Each: goods.Money{Told: true, Low: 28, Likely: 32, High: 36}},
		{Group: goods.Fixing, Item: goods.Nails, What: "nails", Count: 1, Unit: "box"},
		{Group: goods.Gear, What: "glasses"},
		{Group: goods.Besides, What: "going back", Count: 1, Unit: "chance", Each: goods.Money{Told: true, Low: -80, Likely: -70, High: 12}},
	}}
}

func TestWorkbookRecomputes(t *testing.T) {
	var p plan.Plan
	p.Job.Goods.Prices = goods.Prices{Currency: "USD", Tax: 0.0825}
	var b bytes.Buffer
	if err := paper.Workbook(&b, p, nil, priced()); err != nil {
		t.Fatal(err)
	}
	formulas, values := readSheet(t, b.Bytes(), "sheet1.xml")
	// by hand: 3 x 19.20 + 9 x 99.50 + 2 x 28, 32 or 36, and -80, -70 or 12, with 8.25 %
	for col, net := range map[string]float64{"H": 57.6 + 895.5 + 56 - 80, "I": 57.6 + 895.5 + 64 - 70, "J": 57.6 + 895.5 + 72 + 12} {
		for row, want := range map[string]float64{"8": net, "9": net * 0.0825, "10": net * 1.0825} {
			if got := computed(t, col+row, formulas, values); math.Abs(got-want) > 1e-9 {
				t.Errorf("%s%s is %g, want %g", col, row, got, want)
			}
			if got, err := strconv.ParseFloat(values[col+row], 64); err != nil || math.Abs(got-want) > 1e-9 {
				t.Errorf("%s%s is stored as %s, want %g", col, row, values[col+row], want)
			}
		}
	}
	if len(formulas) < 9+3*5 {
		t.Errorf("only %d formulas", len(formulas))
	}
	// A price filled in counts.
	row := ""
	for ref, v := range values {
		if v == "nails" {
			row = ref[1:]
		}
	}
	values["F"+row] = "10"
	if got, want := computed(t, "I8", formulas, values), 57.6+895.5+64-70+10; math.Abs(got-want) > 1e-9 {
		t.Errorf("with nails at 10: %g, want %g", got, want)
	}
}
