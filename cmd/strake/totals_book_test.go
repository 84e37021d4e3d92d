package main

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"regexp"
	"strings"
	"testing"
)

// A sheetFile is a worksheet as its file has it.
type sheetFile struct {
	Rows []struct {
		Cells []struct {
			Ref     string `xml:"r,attr"`
			Text    string `xml:"is>t"`
			Formula string `xml:"f"`
			Value   string `xml:"v"`
		} `xml:"c"`
	} `xml:"sheetData>row"`
}

// bookOf are the sheets of a workbook by their names: cells by their places, formulas
// with "=" before them and their values under the place and "!".
func bookOf(t *testing.T, data []byte) map[string]map[string]string {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	read := func(name string, into any) {
		f, err := z.Open(name)
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		all, err := io.ReadAll(f)
		if err != nil {
			t.Fatal(err)
		}
		if err := xml.Unmarshal(all, into); err != nil {
			t.Fatal(err)
		}
	}
	var book struct {
		Sheets []struct {
			Name string `xml:"name,attr"`
		} `xml:"sheets>sheet"`
	}
	read("xl/workbook.xml", &book)
	out := map[string]map[string]string{}
	for i, s := range book.Sheets {
		var f sheetFile
		read(fmt.Sprintf("xl/worksheets/sheet%d.xml", i+1), &f)
		cells := map[string]string{}
		for _, r := range f.Rows {
			for _, c := range r.Cells {
				switch {
				case c.Formula != "":
					cells[c.Ref], cells[c.Ref+"!"] = "="+c.Formula, c.Value
				case c.Value != "":
					cells[c.Ref] = c.Value
				default:
					cells[c.Ref] = c.Text
				}
			}
		}
		out[s.Name] = cells
	}
	return out
}

// tableIn is a sheet's column by its head, from under the head to over the total.
func tableIn(cells map[string]string, head string) (col string, values []string) {
	for c := 'A'; c <= 'Z'; c++ {
		if cells[fmt.Sprintf("%c1", c)] == head {
			col = string(c)
		}
	}
	for i := 2; ; i++ {
		if name := cells[fmt.Sprintf("A%d", i)]; name == "" || strings.HasPrefix(name, "all ") {
			return col, values
		}
		values = append(values, cells[fmt.Sprintf("%s%d", col, i)])
	}
}

// Each sheet of lists.xlsx has as many lines, and comes to as much, as plan.json says;
// its total sums all of its lines.
func TestListsBookFromPlanJSON(t *testing.T) {
	for _, p := range shipped(t) {
		t.Run(p.name, func(t *testing.T) {
			book := bookOf(t, p.files["lists.xlsx"])
			var pieces, rows, boards float64
			for _, q := range p.lay.Pieces {
				if !p.cornersOff(q) {
					pieces += float64(span(q.Outline)) * p.tick
				}
			}
			for _, r := range p.lay.Runs {
				rows += float64(span(r.Outline)) * p.tick
			}
			for _, b := range p.lay.Boards {
				boards += float64(b.Length) * p.tick
			}
			cuts := 0
			for _, q := range p.lay.Pieces {
				for kind, n := range sawnOf(q, p.lay.Boards[q.Board].Length, p.unit == "in").lines() {
					if kind != "crosscut" && kind != "mitre" {
						cuts += n
					}
				}
			}
			skewed := 0.0
			for _, q := range p.lay.Pieces {
				if p.cornersOff(q) {
					for _, l := range p.csv(t, "rows.csv") {
						if keyOf(l) == p.key(q) {
							skewed += number(t, l["length, "+p.unit])
						}
					}
				}
			}
			for _, c := range []struct {
				sheet, column string
				lines         int
				sum           float64
			}{
				{"Pieces", "length, " + p.unit, len(p.lay.Pieces), pieces + skewed},
				{"Rows", "length, " + p.unit, len(p.lay.Runs), rows},
				{"Rows", "pieces", len(p.lay.Runs), float64(len(p.lay.Pieces))},
				{"Cuts", "passes", len(p.csv(t, "cuts.csv")), float64(cuts + p.passes())},
				{"Boards", "length, " + p.unit, len(p.lay.Boards), boards},
			} {
				cells := book[c.sheet]
				col, values := tableIn(cells, c.column)
				sum := 0.0
				for _, v := range values {
					sum += number(t, v)
				}
				if len(values) != c.lines || math.Abs(sum-c.sum) > 0.002*float64(c.lines) {
					t.Errorf("%s, %s: %d lines come to %.3f; by plan.json %d, %.3f", c.sheet, c.column, len(values), sum, c.lines, c.sum)
				}
				at := fmt.Sprintf("%s%d", col, len(values)+2)
				if want := fmt.Sprintf("=SUM(%s2:%s%d)", col, col, len(values)+1); cells[at] != want {
					t.Errorf("%s: the total at %s is %q, want %q", c.sheet, at, cells[at], want)
				} else if got := number(t, cells[at+"!"]); math.Abs(got-sum) > 1e-6 {
					t.Errorf("%s, %s: the total shows %.4f, its lines come to %.4f", c.sheet, c.column, got, sum)
				}
			}
		})
	}
}

// What is bought is counted from the same boards as the plan's: nails by nailer and by
// hand, pieces ripped, notches.
func TestGoodsFromThePlan(t *testing.T) {
	seen := map[string]int{}
	for _, p := range shipped(t) {
		t.Run(p.name, func(t *testing.T) {
			var out bytes.Buffer
			job := "../../examples/" + p.name + ".yaml"
			if !isFile(job) {
				job = "../../examples/cases/" + p.name + ".yaml"
			}
			dir := t.TempDir()
			if code := run([]string{"order", job, "-o", dir}, quietRim(&out)); code != exitOK {
				t.Fatalf("%d: %s", code, out.String())
			}
			nailer, hand, face := 0, 0, 0
			for _, l := range p.csv(t, "fasteners.csv") {
				nailer += int(number(t, l["by nailer"]))
				hand += int(number(t, l["by hand through the tongue"]))
				face += int(number(t, l["through the face"]))
			}
			rips, notches := 0, 0
			for _, q := range p.lay.Pieces {
				c := sawnOf(q, p.lay.Boards[q.Board].Length, p.unit == "in")
				rips, notches = rips+c.rips, notches+c.notches
			}
			goods := fileOf(t, dir, "goods.csv")
			text := strings.Join(strings.Fields(fileOf(t, dir, "order.txt")), " ")
			book := bookOf(t, []byte(fileOf(t, dir, "order.xlsx")))
			all := ""
			for _, cells := range book {
				for _, s := range cells {
					all += s + "\n"
				}
			}
			for _, c := range []struct {
				what, pattern string
				want          int
			}{
				{"nails by nailer", `(\d+) by nailer`, nailer},
				{"nails by hand", `(\d+) by hand in first and last rows`, hand + face},
				{"nails through the face", `(\d+) of them through the face`, face},
				{"pieces ripped", `(\d+) pieces (?:are )?ripped`, rips},
				{"notches", `(\d+) notch(?:es)?\b`, notches},
			} {
				for where, s := range map[string]string{"goods.csv": goods, "order.txt": text, "order.xlsx": all} {
					for _, m := range regexp.MustCompile(c.pattern).FindAllStringSubmatch(s, -1) {
						seen[c.what]++
						if int(number(t, m[1])) != c.want {
							t.Errorf("%s tells %s %s, the plan has %d", where, m[1], c.what, c.want)
						}
					}
				}
			}
		})
	}
	for _, what := range []string{"nails by nailer", "nails by hand", "pieces ripped", "notches"} {
		if seen[what] < 9 {
			t.Errorf("%s are told %d times in all orders", what, seen[what])
		}
	}
}
