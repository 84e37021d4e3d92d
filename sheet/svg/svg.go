// Package svg writes a sheet as an SVG drawing: one page in millimetres, a
// white rectangle first, then every item in its order, with nothing taken from
// outside the file. The same sheet gives the same bytes.
//
// A board of a plan is written as
//
//	<path id="piece-7" d="M20 55.3H81.4V50H20Z" .../>
//
// with its place in mm to a thousandth, and can be read back from there.
package svg

import (
	"bufio"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"strake/sheet"
)

// Fonts are the ones asked for, all common and of like width or narrower than
// sheet.Text takes them to be.
const Fonts = "Liberation Sans, Arial, Helvetica, DejaVu Sans, sans-serif"

// Write writes s to w as SVG. It returns the first error of w.
func Write(w io.Writer, s sheet.Sheet) error {
	b := bufio.NewWriter(w)
	fmt.Fprintf(b, `<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %s %s" font-family="%s">`+"\n",
		num(s.W), num(s.H), num(s.W), num(s.H), Fonts)
	fmt.Fprintf(b, "<title>%s</title>\n", escape(s.Title))
	fmt.Fprintf(b, `<rect width="%s" height="%s" fill="#ffffff"/>`+"\n", num(s.W), num(s.H))
	used := map[string]int{}
	for _, it := range s.Items {
		write(b, it, used)
	}
	b.WriteString("</svg>\n")
	return b.Flush()
}

func write(b *bufio.Writer, it sheet.Item, used map[string]int) {
	switch it := it.(type) {
	case sheet.Polyline:
		fmt.Fprintf(b, "<path%s d=\"%s\" fill=\"none\"%s/>\n", id(it.Name, used), path(it.Points, false), pen(it.Pen))
	case sheet.Polygon:
		fmt.Fprintf(b, "<path%s d=\"%s\"%s%s/>\n", id(it.Name, used), rings(it.Rings), fill(it.Fill), pen(it.Pen))
	case sheet.Text:
		text(b, it)
	}
}

// id is the attribute of a name; of names that come again the later ones are
// counted, as no two places of a file may have one.
func id(name string, used map[string]int) string {
	if name == "" {
		return ""
	}
	used[name]++
	if n := used[name]; n > 1 {
		name += " " + strconv.Itoa(n)
	}
	return ` id="` + escape(name) + `"`
}

func rings(rs [][]sheet.Pt) string {
	var d strings.Builder
	for _, r := range rs {
		d.WriteString(path(r, true))
	}
	return d.String()
}

// path writes points as moves and lines, level and upright ones short.
func path(ps []sheet.Pt, closed bool) string {
	var d strings.Builder
	for i, p := range ps {
		x, y := num(p.X), num(p.Y)
		switch {
		case i == 0:
			d.WriteString("M" + x + " " + y)
		case y == num(ps[i-1].Y):
			d.WriteString("H" + x)
		case x == num(ps[i-1].X):
			d.WriteString("V" + y)
		default:
			d.WriteString("L" + x + " " + y)
		}
	}
	if closed && len(ps) > 0 {
		d.WriteString("Z")
	}
	return d.String()
}

func fill(ink sheet.Ink) string {
	if ink == sheet.None {
		return ` fill="none"`
	}
	return ` fill="#` + string(ink) + `" fill-rule="evenodd"`
}

func pen(p sheet.Pen) string {
	if p.Ink == sheet.None || p.Width == 0 {
		return ""
	}
	out := fmt.Sprintf(` stroke="#%s" stroke-width="%s"`, p.Ink, num(p.Width))
	if len(p.Dash) == 0 {
		return out
	}
	dash := make([]string, len(p.Dash))
	for i, d := range p.Dash {
		dash[i] = num(d)
	}
	return out + ` stroke-dasharray="` + strings.Join(dash, " ") + `"`
}

func text(b *bufio.Writer, t sheet.Text) {
	fmt.Fprintf(b, `<text x="%s" y="%s" font-size="%s"`, num(t.At.X), num(t.At.Y), num(t.Size))
	if t.Anchor != sheet.Start {
		fmt.Fprintf(b, ` text-anchor="%s"`, map[sheet.Anchor]string{sheet.Middle: "middle", sheet.End: "end"}[t.Anchor])
	}
	if t.Bold {
		b.WriteString(` font-weight="bold"`)
	}
	if t.Turn != 0 {
		fmt.Fprintf(b, ` transform="rotate(%s %s %s)"`, num(t.Turn), num(t.At.X), num(t.At.Y))
	}
	if t.Ink != sheet.None && t.Ink != sheet.Black {
		fmt.Fprintf(b, ` fill="#%s"`, t.Ink)
	}
	fmt.Fprintf(b, ">%s</text>\n", escape(t.Text))
}

func escape(s string) string {
	var b strings.Builder
	// The builder does not fail.
	_ = xml.EscapeText(&b, []byte(s))
	return b.String()
}

// num writes mm to a thousandth, without zeros at the end.
func num(v float64) string {
	n := int64(math.Round(float64(v * 1000)))
	if n%1000 == 0 {
		return strconv.FormatInt(n/1000, 10)
	}
	return strings.TrimRight(fmt.Sprintf("%s%d.%03d", minus(n), abs(n)/1000, abs(n)%1000), "0")
}

func minus(n int64) string {
	if n < 0 {
		return "-"
	}
	return ""
}

func abs(n int64) int64 {
	if n < 0 {
		return -n
	}
	return n
}
