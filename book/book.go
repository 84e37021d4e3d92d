package book

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"
)

// Style is how a cell looks.
type Style int

// The styles.
const (
	Plain Style = iota
	Head        // bold
	Money       // two decimals
	Sum         // bold, two decimals
	Share       // percent
	// Lengths: inches as whole and fraction, and mm.
	Sixteenths
	ThirtySeconds
	Whole
	Tenths
)

// Cell is text, a number, or a formula with the value that it has now.
type Cell struct {
	Text    string
	Number  float64
	Formula string // without the equals sign
	kind    kind
	Style   Style
}

type kind int

const (
	empty kind = iota
	isText
	isNumber
	isFormula
)

// T is a cell of text, N one of a number, F one of a formula and its value.
func T(s string, st Style) Cell { return Cell{Text: s, kind: isText, Style: st} }

// N is a cell with a number.
func N(x float64, st Style) Cell { return Cell{Number: x, kind: isNumber, Style: st} }

// F is a cell with a formula and the value that it has now.
func F(formula string, is float64, st Style) Cell {
	return Cell{Formula: formula, Number: is, kind: isFormula, Style: st}
}

// Sheet is a table with its name and the widths of its columns in characters. Its
// first row is its head.
type Sheet struct {
	Name   string
	Widths []float64
	Rows   [][]Cell
}

// Ref names a cell: column and row counted from 0, such as B3.
func Ref(col, row int) string { return Column(col) + strconv.Itoa(row+1) }

// Column names a column counted from 0: A, Z, AA.
func Column(col int) string {
	s := ""
	for col++; col > 0; col = (col - 1) / 26 {
		s = string(rune('A'+(col-1)%26)) + s
	}
	return s
}

// written is the date of every part: a workbook has no other.
var written = time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)

// Write writes a workbook.
func Write(w io.Writer, sheets []Sheet) error {
	z := zip.NewWriter(w)
	for _, p := range parts(sheets) {
		f, err := z.CreateHeader(&zip.FileHeader{Name: p.name, Method: zip.Deflate, Modified: written})
		if err != nil {
			return err
		}
		if _, err := io.WriteString(f, xml.Header+p.text); err != nil {
			return err
		}
	}
	return z.Close()
}

// part is a file of the package.
type part struct{ name, text string }

func parts(sheets []Sheet) []part {
	const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
	const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
	const packed = "http://schemas.openxmlformats.org/package/2006/"
	const kind = "application/vnd.openxmlformats-officedocument.spreadsheetml."
	var types, list, rels strings.Builder
	var out []part
	for i, s := range sheets {
		n := strconv.Itoa(i + 1)
		fmt.Fprintf(&types, `<Override PartName="/xl/worksheets/sheet%s.xml" ContentType="%sworksheet+xml"/>`, n, kind)
		fmt.Fprintf(&list, `<sheet name="%s" sheetId="%s" r:id="rId%s"/>`, escaped(s.Name), n, n)
		fmt.Fprintf(&rels, `<Relationship Id="rId%s" Type="%s/worksheet" Target="worksheets/sheet%s.xml"/>`, n, office, n)
		out = append(out, part{"xl/worksheets/sheet" + n + ".xml", `<worksheet xmlns="` + main + `">` + view + s.columns() + s.cells() + page + `</worksheet>`})
	}
	styles := strconv.Itoa(len(sheets) + 1)
	fmt.Fprintf(&rels, `<Relationship Id="rId%s" Type="%s/styles" Target="styles.xml"/>`, styles, office)
	return append([]part{
		{"[Content_Types].xml", `<Types xmlns="` + packed + `content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="` + kind + `sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="` + kind + `styles+xml"/>` + types.String() + `</Types>`},
		{"_rels/.rels", `<Relationships xmlns="` + packed + `relationships"><Relationship Id="rId1" Type="` + office + `/officeDocument" Target="xl/workbook.xml"/></Relationships>`},
		{"xl/workbook.xml", `<workbook xmlns="` + main + `" xmlns:r="` + office + `"><bookViews><workbookView/></bookViews><sheets>` + list.String() + `</sheets>` + titles(sheets) + `<calcPr calcId="0" fullCalcOnLoad="1"/></workbook>`},
		{"xl/_rels/workbook.xml.rels", `<Relationships xmlns="` + packed + `relationships">` + rels.String() + `</Relationships>`},
		{"xl/styles.xml", `<styleSheet xmlns="` + main + `"><numFmts count="3"><numFmt numFmtId="164" formatCode="# ??/16"/><numFmt numFmtId="165" formatCode="# ??/32"/><numFmt numFmtId="166" formatCode="0.0"/></numFmts><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="10">` + looks() + `</cellXfs></styleSheet>`},
	}, out...)
}

// looks are the styles in their order: format 1 is 1234, 4 is 1,234.00, 10 is 0.00 %,
// those from 164 on are our own. The last is of plain text, off the figures on its left.
func looks() string {
	var b strings.Builder
	for i, x := range [][2]int{{0, 0}, {0, 1}, {4, 0}, {4, 1}, {10, 0}, {164, 0}, {165, 0}, {1, 0}, {166, 0}, {0, 0}} {
		off := ""
		if i == plainText || Style(i) == Head {
			off = ` horizontal="left" indent="1"`
		}
		fmt.Fprintf(&b, `<xf numFmtId="%d" fontId="%d" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyAlignment="1"><alignment vertical="top" wrapText="1"%s/></xf>`, x[0], x[1], off)
	}
	return b.String()
}

// plainText is the style of plain text.
const plainText = int(Tenths) + 1

func (s Sheet) columns() string {
	if len(s.Widths) == 0 {
		return ""
	}
	var b strings.Builder
	for i, w := range s.Widths {
		fmt.Fprintf(&b, `<col min="%d" max="%d" width="%g" customWidth="1"/>`, i+1, i+1, w)
	}
	return "<cols>" + b.String() + "</cols>"
}

func (s Sheet) cells() string {
	var b strings.Builder
	b.WriteString("<sheetData>")
	for r, row := range s.Rows {
		fmt.Fprintf(&b, `<row r="%d"%s>`, r+1, s.height(row))
		for c, x := range row {
			b.WriteString(x.xml(Ref(c, r)))
		}
		b.WriteString("</row>")
	}
	b.WriteString("</sheetData>")
	return b.String()
}

func (c Cell) xml(ref string) string {
	x := strconv.FormatFloat(c.Number, 'g', -1, 64)
	switch c.kind {
	case isText: // text is text, whatever it begins with
		st := int(c.Style)
		if c.Style == Plain {
			st = plainText
		}
		return fmt.Sprintf(`<c r="%s" s="%d" t="inlineStr"><is><t xml:space="preserve">%s</t></is></c>`, ref, st, escaped(c.Text))
	case isNumber:
		return fmt.Sprintf(`<c r="%s" s="%d"><v>%s</v></c>`, ref, c.Style, x)
	case isFormula:
		return fmt.Sprintf(`<c r="%s" s="%d"><f>%s</f><v>%s</v></c>`, ref, c.Style, escaped(c.Formula), x)
	}
	return ""
}

func escaped(s string) string {
	var b bytes.Buffer
	_ = xml.EscapeText(&b, []byte(s)) // a buffer takes all
	return b.String()
}
