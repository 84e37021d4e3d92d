// Package png writes a sheet as a picture, at so many dots an inch.
//
// A sheet of 420 by 297 mm at 150 dots an inch is 2480 by 1754 dots.
package png

import (
	"image/png"
	"io"
	"math"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"git.sr.ht/~sbinet/gg"
	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"

	"strake/sheet"
)

// Usual is the resolution in dots an inch where nothing else is asked for.
const Usual = 150

// Write writes s to w with so many dots an inch.
func Write(w io.Writer, s sheet.Sheet, dpi float64) error {
	p := picture{mm: dpi / 25.4, faces: map[face]font.Face{}}
	var err error
	if p.regular, err = opentype.Parse(liberationsansregular.TTF); err != nil {
		return err
	}
	if p.bold, err = opentype.Parse(liberationsansbold.TTF); err != nil {
		return err
	}
	p.c = gg.NewContext(int(math.Round(s.W*p.mm)), int(math.Round(s.H*p.mm)))
	p.c.SetRGB(1, 1, 1)
	p.c.Clear()
	p.c.SetFillRuleEvenOdd()
	p.c.SetLineCapButt()
	for _, it := range s.Items {
		if err := p.put(it); err != nil {
			return err
		}
	}
	return png.Encode(w, p.c.Image())
}

type picture struct {
	c             *gg.Context
	mm            float64 // dots in one
	regular, bold *opentype.Font
	faces         map[face]font.Face
}

type face struct {
	size float64
	bold bool
}

func (p *picture) put(it sheet.Item) error {
	switch it := it.(type) {
	case sheet.Polyline:
		if p.use(it.Pen) {
			p.along(it.Points)
			p.c.Stroke()
		}
	case sheet.Polygon:
		p.polygon(it)
	case sheet.Text:
		return p.text(it)
	}
	return nil
}

func (p *picture) polygon(g sheet.Polygon) {
	rings := func() {
		for _, r := range g.Rings {
			p.along(r)
			p.c.ClosePath()
		}
	}
	if g.Fill != sheet.None {
		rings()
		p.c.SetRGB255(g.Fill.RGB())
		p.c.Fill()
	}
	if p.use(g.Pen) {
		rings()
		p.c.Stroke()
	}
	p.c.ClearPath()
}

func (p *picture) along(ps []sheet.Pt) {
	p.c.NewSubPath()
	for _, q := range ps {
		p.c.LineTo(q.X*p.mm, q.Y*p.mm)
	}
}

func (p *picture) use(pen sheet.Pen) bool {
	if pen.Ink == sheet.None || pen.Width == 0 {
		return false
	}
	p.c.SetRGB255(pen.Ink.RGB())
	p.c.SetLineWidth(math.Max(1, pen.Width*p.mm))
	var dash []float64
	for _, d := range pen.Dash {
		dash = append(dash, d*p.mm)
	}
	p.c.SetDash(dash...)
	return true
}

func (p *picture) text(t sheet.Text) error {
	f, err := p.face(face{t.Size, t.Bold})
	if err != nil {
		return err
	}
	p.c.SetFontFace(f)
	ink := t.Ink
	if ink == sheet.None {
		ink = sheet.Black
	}
	p.c.SetRGB255(ink.RGB())
	part := map[sheet.Anchor]float64{sheet.Middle: 0.5, sheet.End: 1}[t.Anchor]
	x, y := t.At.X*p.mm, t.At.Y*p.mm
	p.c.Push()
	p.c.RotateAbout(t.Turn*math.Pi/180, x, y)
	wide, _ := p.c.MeasureString(t.Text)
	p.c.DrawString(t.Text, x-part*wide, y)
	p.c.Pop()
	return nil
}

// face is the font in a size, made once.
func (p *picture) face(k face) (font.Face, error) {
	if f, ok := p.faces[k]; ok {
		return f, nil
	}
	from := p.regular
	if k.bold {
		from = p.bold
	}
	f, err := opentype.NewFace(from, &opentype.FaceOptions{Size: k.size * p.mm, DPI: 72, Hinting: font.HintingNone})
	p.faces[k] = f
	return f, err
}
