// Package dxf writes a drawing in real units as a DXF file of release 12, which
// nearly every drawing program opens: polylines and text on named layers.
//
// A board of 1219.2 by 127 mm is a closed POLYLINE of four vertices on the layer
// BOARDS, in the units of the drawing.
package dxf

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
)

// Units are what one unit of the drawing is, by the numbers of $INSUNITS.
type Units int

// The units.
const (
	Inches      Units = 1
	Millimetres Units = 4
)

// Layer is a layer with its colour (1 to 255 by the index of the format; 7 is black
// or white).
type Layer struct {
	Name   string // capitals, digits and _
	Colour int
}

// Pt is a place in the units of the drawing, y up.
type Pt struct{ X, Y float64 }

// Line is an open or closed line through its points.
type Line struct {
	Layer  string
	Points []Pt
	Closed bool
}

// Text is a line of text from its lower left corner, or centred there.
type Text struct {
	Layer   string
	At      Pt
	Height  float64
	Turn    float64 // degrees counter-clockwise
	Centred bool
	Anchor  int // along its baseline, where it is not centred: 0 its start stands there, 1 its middle, 2 its end
	Text    string
}

// Drawing is what is written.
type Drawing struct {
	Units  Units
	Layers []Layer
	Lines  []Line
	Texts  []Text
}

// Write writes d to w.
func Write(w io.Writer, d Drawing) error {
	b := &file{Writer: bufio.NewWriter(w)}
	lo, hi := d.box()
	b.head(d, lo, hi)
	b.tables(d)
	b.put(0, "SECTION")
	b.put(2, "ENTITIES")
	for _, l := range d.Lines {
		b.line(l)
	}
	for _, t := range d.Texts {
		b.text(t)
	}
	b.put(0, "ENDSEC")
	b.put(0, "EOF")
	return b.Flush()
}

type file struct{ *bufio.Writer }

// put writes a group: its code and its value, a line each.
func (b *file) put(code int, value string) { fmt.Fprintf(b, "%3d\n%s\n", code, value) }

func (b *file) num(code int, v float64) {
	s := strconv.FormatFloat(math.Round(v*1e6)/1e6+0, 'f', -1, 64)
	if !strings.Contains(s, ".") {
		s += ".0"
	}
	b.put(code, s)
}

func (b *file) at(code int, p Pt) {
	b.num(code, p.X)
	b.num(code+10, p.Y)
	b.num(code+20, 0)
}

func (b *file) head(d Drawing, lo, hi Pt) {
	b.put(0, "SECTION")
	b.put(2, "HEADER")
	b.put(9, "$ACADVER")
	b.put(1, "AC1009")
	b.put(9, "$INSUNITS")
	b.put(70, strconv.Itoa(int(d.Units)))
	b.put(9, "$EXTMIN")
	b.at(10, lo)
	b.put(9, "$EXTMAX")
	b.at(10, hi)
	b.put(0, "ENDSEC")
}

func (b *file) tables(d Drawing) {
	b.put(0, "SECTION")
	b.put(2, "TABLES")
	b.put(0, "TABLE")
	b.put(2, "LTYPE")
	b.put(70, "1")
	b.put(0, "LTYPE")
	b.put(2, "CONTINUOUS")
	b.put(70, "0")
	b.put(3, "full line")
	b.put(72, "65")
	b.put(73, "0")
	b.num(40, 0)
	b.put(0, "ENDTAB")
	b.put(0, "TABLE")
	b.put(2, "LAYER")
	b.put(70, strconv.Itoa(len(d.Layers)+1))
	for _, l := range append([]Layer{{"0", 7}}, d.Layers...) {
		b.put(0, "LAYER")
		b.put(2, l.Name)
		b.put(70, "0")
		b.put(62, strconv.Itoa(l.Colour))
		b.put(6, "CONTINUOUS")
	}
	b.put(0, "ENDTAB")
	b.put(0, "TABLE")
	b.put(2, "STYLE")
	b.put(70, "1")
	b.put(0, "STYLE")
	b.put(2, "STANDARD")
	b.put(70, "0")
	b.num(40, 0)
	b.num(41, 1)
	b.num(50, 0)
	b.put(71, "0")
	b.num(42, 1)
	b.put(3, "txt")
	b.put(4, "")
	b.put(0, "ENDTAB")
	b.put(0, "ENDSEC")
}

func (b *file) line(l Line) {
	b.put(0, "POLYLINE")
	b.put(8, l.Layer)
	b.put(66, "1")
	b.at(10, Pt{})
	closed := "0"
	if l.Closed {
		closed = "1"
	}
	b.put(70, closed)
	for _, p := range l.Points {
		b.put(0, "VERTEX")
		b.put(8, l.Layer)
		b.at(10, p)
	}
	b.put(0, "SEQEND")
	b.put(8, l.Layer)
}

func (b *file) text(t Text) {
	b.put(0, "TEXT")
	b.put(8, t.Layer)
	b.at(10, t.At)
	b.num(40, t.Height)
	b.put(1, escaped(t.Text))
	if t.Turn != 0 {
		b.num(50, t.Turn)
	}
	switch {
	case t.Centred:
		b.put(72, "1")
		b.put(73, "2")
		b.at(11, t.At)
	case t.Anchor > 0:
		b.put(72, strconv.Itoa(t.Anchor))
		b.at(11, t.At)
	}
}

// escaped writes letters outside ASCII by their numbers, and nothing that ends a
// line.
func escaped(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r < ' ':
			b.WriteByte(' ')
		case r < 127:
			b.WriteRune(r)
		case r <= 0xffff:
			fmt.Fprintf(&b, `\U+%04X`, r)
		default:
			b.WriteByte('?')
		}
	}
	return b.String()
}

// box is around all that is drawn.
func (d Drawing) box() (lo, hi Pt) {
	lo, hi = Pt{math.Inf(1), math.Inf(1)}, Pt{math.Inf(-1), math.Inf(-1)}
	for _, l := range d.Lines {
		for _, p := range l.Points {
			lo, hi = Pt{math.Min(lo.X, p.X), math.Min(lo.Y, p.Y)}, Pt{math.Max(hi.X, p.X), math.Max(hi.Y, p.Y)}
		}
	}
	if lo.X > hi.X {
		return Pt{}, Pt{}
	}
	return lo, hi
}
