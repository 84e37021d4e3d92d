package book

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"io"
	"strings"
	"testing"
)

func TestColumns(t *testing.T) {
	for n, want := range map[int]string{0: "A", 25: "Z", 26: "AA", 51: "AZ", 52: "BA", 701: "ZZ", 702: "AAA"} {
		if got := Column(n); got != want {
			t.Errorf("%d is %s, want %s", n, got, want)
		}
	}
	if Ref(1, 2) != "B3" {
		t.Error(Ref(1, 2))
	}
}

func some() []Sheet {
	return []Sheet{
		{"Goods & more", []float64{20}, [][]Cell{{T("a <b>", Head), N(2.5, Money), {}, F("B1*2", 5, Sum)}, {T("=not a formula", Plain)}}},
		{"Second", nil, nil},
	}
}

func TestSameBytes(t *testing.T) {
	var a, b bytes.Buffer
	if err := Write(&a, some()); err != nil {
		t.Fatal(err)
	}
	if err := Write(&b, some()); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Error("the same sheets give other bytes")
	}
}

// Every part is well-formed, each that one names is there, and text stays text.
func TestParts(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, some()); err != nil {
		t.Fatal(err)
	}
	z, err := zip.NewReader(bytes.NewReader(b.Bytes()), int64(b.Len()))
	if err != nil {
		t.Fatal(err)
	}
	text := map[string]string{}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		all, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		text[f.Name] = string(all)
		d := xml.NewDecoder(bytes.NewReader(all))
		for {
			tok, err := d.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatalf("%s: %v", f.Name, err)
			}
			if e, ok := tok.(xml.StartElement); ok && e.Name.Local == "Override" && !has(z, strings.TrimPrefix(e.Attr[0].Value, "/")) {
				t.Errorf("no part %s", e.Attr[0].Value)
			}
		}
	}
	one := text["xl/worksheets/sheet1.xml"]
	for _, want := range []string{`<c r="B1" s="2"><v>2.5</v></c>`, `<c r="D1" s="3"><f>B1*2</f><v>5</v></c>`, `a &lt;b&gt;`, `t="inlineStr"><is><t xml:space="preserve">=not a formula<`} {
		if !strings.Contains(one, want) {
			t.Errorf("no %s in %s", want, one)
		}
	}
	if !strings.Contains(text["xl/workbook.xml"], "Goods &amp; more") {
		t.Error(text["xl/workbook.xml"])
	}
}

func has(z *zip.Reader, name string) bool {
	f, err := z.Open(name)
	if err == nil {
		f.Close()
	}
	return err == nil
}

// Rows are as high as their text is long, the head stays and is printed on each page,
// and a page is as wide as its sheet.
func TestPages(t *testing.T) {
	for _, c := range []struct {
		text string
		wide int
		want int
	}{{"", 10, 1}, {"one two", 7, 1}, {"one two", 6, 2}, {"a b c d", 3, 2}, {"incomprehensible", 8, 2}, {"an incomprehensible", 8, 3}, {"x", 0, 1}} {
		if got := linesOf(c.text, c.wide); got != c.want {
			t.Errorf("%q in %d signs: %d lines, want %d", c.text, c.wide, got, c.want)
		}
	}
	s := Sheet{Name: "Joe's", Widths: []float64{12}, Rows: [][]Cell{{T("what", Head)}, {T("a board of some length", Plain)}, {N(1e20, Plain)}}}
	var b bytes.Buffer
	if err := Write(&b, []Sheet{s}); err != nil {
		t.Fatal(err)
	}
	one, list := partOf(t, b.Bytes(), "xl/worksheets/sheet1.xml"), partOf(t, b.Bytes(), "xl/workbook.xml")
	for _, want := range []string{`<row r="1">`, `<row r="2" ht="45" customHeight="1">`, `<row r="3">`, `orientation="landscape" fitToWidth="1" fitToHeight="0"`, `fitToPage="1"`, `state="frozen"`} {
		if !strings.Contains(one, want) {
			t.Errorf("no %s in %s", want, one)
		}
	}
	if want := `localSheetId="0">&#39;Joe&#39;&#39;s&#39;!$1:$1<`; !strings.Contains(list, want) {
		t.Errorf("no %s in %s", want, list)
	}
}

// partOf is the text of one part of a workbook.
func partOf(t *testing.T, data []byte, name string) string {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	f, err := z.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := io.ReadAll(f)
	if err != nil {
		t.Fatal(err)
	}
	return string(all)
}
