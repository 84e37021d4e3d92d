package sheet

import "strconv"

// Pt is a place on the page in mm, y down.
type Pt struct{ X, Y float64 }

// Add is p moved by q.
func (p Pt) Add(q Pt) Pt { return Pt{p.X + q.X, p.Y + q.Y} }

// Sub is the step from q to p.
func (p Pt) Sub(q Pt) Pt { return Pt{p.X - q.X, p.Y - q.Y} }

// Times is p scaled by k.
func (p Pt) Times(k float64) Pt { return Pt{float64(p.X * k), float64(p.Y * k)} }

// Ink is a colour as six hex digits without the #; "" draws nothing.
type Ink string

// The inks of a working drawing: black, three greys and the paper.
const (
	None  Ink = ""
	Black Ink = "000000"
	Dark  Ink = "4d4d4d"
	Mid   Ink = "8c8c8c"
	Light Ink = "e4e4e4"
	White Ink = "ffffff"
)

// RGB is the ink as three parts of 255; black where it is none.
func (k Ink) RGB() (r, g, b int) {
	n, err := strconv.ParseUint(string(k), 16, 32)
	if err != nil {
		return 0, 0, 0
	}
	return int(n >> 16 & 255), int(n >> 8 & 255), int(n & 255)
}

// Pen is a line: its width in mm, its ink and its dashes in mm (on, off, on
// ...; none: a full line).
type Pen struct {
	Width float64
	Ink   Ink
	Dash  []float64
}

// Item is one thing on the page: a Polyline, a Polygon or a Text.
type Item interface{ item() }

// Polyline is an open line through its points.
type Polyline struct {
	Name   string // what it shows, for a reader of the file; may be empty
	Points []Pt
	Pen    Pen
}

// Polygon is an area; a point lies in it when a line from there to the edge of
// the page crosses its rings an odd number of times.
type Polygon struct {
	Name  string // unique on the page where not empty
	Rings [][]Pt
	Fill  Ink
	Pen   Pen
}

// Anchor says which part of a text stands at its place.
type Anchor int

// The anchors.
const (
	Start Anchor = iota
	Middle
	End
)

// Text is one line of writing on its baseline.
type Text struct {
	Text   string
	At     Pt      // on the baseline
	Size   float64 // of the font, mm
	Anchor Anchor
	Turn   float64 // degrees clockwise, as seen on the page
	Bold   bool
	Ink    Ink
}

func (Polyline) item() {}
func (Polygon) item()  {}
func (Text) item()     {}

// Sheet is a page with what is drawn on it, the first item lowest.
type Sheet struct {
	Title string
	W, H  float64 // mm
	One   float64 // 1 mm on it is so many of what it shows; 0: it is not to one scale
	Items []Item
}

// Put draws items on top of what is there.
func (s *Sheet) Put(items ...Item) { s.Items = append(s.Items, items...) }
