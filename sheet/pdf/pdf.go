// Package pdf writes sheets as the pages of one PDF document, each page as large as
// its sheet, so that a millimetre on the sheet is one on paper. The fonts are in the
// file, as far as their letters are used. The same sheets give the same bytes.
//
// A bar of 100 mm on a sheet comes out 100 mm long where the document is printed at
// its own size.
package pdf

import (
	"io"
	"time"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"codeberg.org/go-pdf/fpdf"

	"strake/sheet"
)

const family = "LiberationSans"

// written is the date of every document: a document has to have one, and the same
// plan gives the same bytes.
var written = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// Write writes sheets to w as one document with a title.
func Write(w io.Writer, title string, sheets ...sheet.Sheet) error {
	d := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: 210, Ht: 297}})
	d.SetCreationDate(written)
	d.SetModificationDate(written)
	d.SetCatalogSort(true)
	d.SetTitle(title, true)
	d.SetCreator("strake", true)
	d.SetAutoPageBreak(false, 0)
	d.SetMargins(0, 0, 0)
	d.AddUTF8FontFromBytes(family, "", liberationsansregular.TTF)
	d.AddUTF8FontFromBytes(family, "B", liberationsansbold.TTF)
	for _, s := range sheets {
		d.AddPageFormat("P", fpdf.SizeType{Wd: s.W, Ht: s.H})
		for _, it := range s.Items {
			put(d, it)
		}
	}
	return d.Output(w)
}

func put(d *fpdf.Fpdf, it sheet.Item) {
	switch it := it.(type) {
	case sheet.Polyline:
		if usePen(d, it.Pen) {
			along(d, it.Points)
			d.DrawPath("D")
			d.SetDashPattern(nil, 0)
		}
	case sheet.Polygon:
		polygon(d, it)
	case sheet.Text:
		text(d, it)
	}
}

// polygon fills by the even-odd rule and draws the edge.
func polygon(d *fpdf.Fpdf, p sheet.Polygon) {
	how := ""
	if p.Fill != sheet.None {
		d.SetFillColor(p.Fill.RGB())
		how = "F*"
	}
	if usePen(d, p.Pen) {
		how = map[string]string{"": "D", "F*": "DF*"}[how]
	}
	if how == "" {
		return
	}
	for _, r := range p.Rings {
		along(d, r)
		d.ClosePath()
	}
	d.DrawPath(how)
	d.SetDashPattern(nil, 0)
}

func along(d *fpdf.Fpdf, ps []sheet.Pt) {
	for i, p := range ps {
		if i == 0 {
			d.MoveTo(p.X, p.Y)
		} else {
			d.LineTo(p.X, p.Y)
		}
	}
}

// usePen sets the pen; not ok where it draws nothing.
func usePen(d *fpdf.Fpdf, p sheet.Pen) bool {
	if p.Ink == sheet.None || p.Width == 0 {
		return false
	}
	d.SetDrawColor(p.Ink.RGB())
	d.SetLineWidth(p.Width)
	d.SetDashPattern(p.Dash, 0)
	return true
}

// text writes a line of text from where its anchor puts it.
func text(d *fpdf.Fpdf, t sheet.Text) {
	style := ""
	if t.Bold {
		style = "B"
	}
	d.SetFont(family, style, 10)
	d.SetFontUnitSize(t.Size)
	ink := t.Ink
	if ink == sheet.None {
		ink = sheet.Black
	}
	d.SetTextColor(ink.RGB())
	x := t.At.X
	switch t.Anchor {
	case sheet.Middle:
		x -= d.GetStringWidth(t.Text) / 2
	case sheet.End:
		x -= d.GetStringWidth(t.Text)
	}
	if t.Turn == 0 {
		d.Text(x, t.At.Y, t.Text)
		return
	}
	d.TransformBegin()
	d.TransformRotate(-t.Turn, t.At.X, t.At.Y) // counter-clockwise there
	d.Text(x, t.At.Y, t.Text)
	d.TransformEnd()
}
