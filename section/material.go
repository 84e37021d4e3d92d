package section

import (
	"math"

	"strake/sheet"
)

// Material says how a cut face is hatched. The hatches are this project's own
// after drawing practice (ISO 128-3 and carpenters' drawings, from memory).
type Material int

// The materials.
const (
	Plain    Material = iota // nothing: what it is made of is told beside it
	EndGrain                 // a board cut across: growth rings
	Grain                    // a board cut or seen along its length: long lines
	Plywood                  // plies, every other one hatched
	Strands                  // OSB and other chips: short strokes
	Framing                  // a joist or stud cut across: a cross
	Concrete                 // stones and sand
	Masonry                  // brick or stone: pairs of slanting lines
	Tile                     // tile: close slanting lines, the other way
	Plaster                  // plaster or drywall: sand
	Trim                     // base, shoe, strips: close slanting lines
	Soft                     // cork, sealant: crossed lines
	Carpet                   // upright strokes
	Spline                   // a slip tongue: crossed close lines
	Solid                    // too thin to hatch: black
)

// hatch is the hatch of a material in a ring, both in paper mm; the scale sizes
// what is part of the material itself.
func hatch(m Material, ring []sheet.Pt, scale float64) []sheet.Item {
	rings := [][]sheet.Pt{ring}
	b := noBox()
	b.take(ring...)
	switch m {
	case EndGrain:
		return growth(ring, b)
	case Grain:
		return grain(ring, b)
	case Plywood:
		return plies(ring, b, scale)
	case Strands:
		return strands(ring, b)
	case Framing:
		return crossed(ring, b)
	case Concrete:
		return append(specks(ring, b, 2.2), stones(ring, b)...)
	case Masonry:
		return append(sheet.Hatch(rings, 45, 3.2, Hatching), pairs(ring)...)
	case Tile:
		return sheet.Hatch(rings, -45, 1.3, Hatching)
	case Plaster:
		return specks(ring, b, 1.7)
	case Trim:
		return sheet.Hatch(rings, 45, 1.5, Hatching)
	case Soft:
		return append(sheet.Hatch(rings, 45, 1, Hatching), sheet.Hatch(rings, -45, 1, Hatching)...)
	case Carpet:
		return sheet.Hatch(rings, 90, 0.7, Hatching)
	case Spline:
		return append(sheet.Hatch(rings, 0, 0.6, Hatching), sheet.Hatch(rings, 90, 0.6, Hatching)...)
	}
	return nil
}

// pairs are the second lines of pairs, beside those of the hatch itself.
func pairs(ring []sheet.Pt) []sheet.Item {
	by := sheet.Pt{X: 0.9}
	return Move(sheet.Hatch([][]sheet.Pt{moved(ring, by)}, 45, 3.2, Hatching), sheet.Pt{X: -by.X})
}

// clipped are the parts of a line that lie in a ring: a step counts where its
// middle does.
func clipped(line, ring []sheet.Pt) []sheet.Item {
	var out []sheet.Item
	var run []sheet.Pt
	flush := func() {
		if len(run) > 1 {
			out = append(out, sheet.Polyline{Points: run, Pen: Hatching})
		}
		run = nil
	}
	for i := 1; i < len(line); i++ {
		if !inside(ring, line[i-1].Add(line[i]).Times(0.5)) {
			flush()
			continue
		}
		if len(run) == 0 {
			run = append(run, line[i-1])
		}
		run = append(run, line[i])
	}
	flush()
	return out
}

// step is how fine bent lines are drawn, mm.
const step = 0.35

// growth are growth rings about a pith well below the board.
func growth(ring []sheet.Pt, b box) []sheet.Item {
	c := sheet.Pt{X: b.x0 + 0.45*(b.x1-b.x0), Y: b.y1 + 1.2*(b.y1-b.y0)}
	far := max(length(sheet.Pt{X: b.x0, Y: b.y0}.Sub(c)), length(sheet.Pt{X: b.x1, Y: b.y0}.Sub(c)))
	var out []sheet.Item
	for r := 2.0; r < far; r += 2.0 {
		var arc []sheet.Pt
		n := int(math.Ceil(math.Pi * r / step))
		for i := range n + 1 {
			s, co := math.Sincos(math.Pi * float64(i) / float64(n))
			arc = append(arc, sheet.Pt{X: c.X + float64(r*co), Y: c.Y - float64(r*s)})
		}
		out = append(out, clipped(arc, ring)...)
	}
	return out
}

// grain are long lines that waver a little.
func grain(ring []sheet.Pt, b box) []sheet.Item {
	var out []sheet.Item
	k := 0
	for y := b.y0 + 0.8; y < b.y1; y += 1.5 {
		var line []sheet.Pt
		for x := b.x0; x <= b.x1; x += 1 {
			line = append(line, sheet.Pt{X: x, Y: y + float64(0.25*math.Sin(x/9+float64(1.7*float64(k))))})
		}
		out = append(out, clipped(line, ring)...)
		k++
	}
	return out
}

// ply is how thick a ply is, real mm (plywood of 18 mm has five to seven, from
// memory).
const ply = 3.0

// plies are lines between plies, every other one with a hatch.
func plies(ring []sheet.Pt, b box, scale float64) []sheet.Item {
	n := int(math.Round((b.y1 - b.y0) / scale / ply))
	n = max(3, n|1)
	var out []sheet.Item
	one := (b.y1 - b.y0) / float64(n)
	for i := range n {
		y := b.y0 + float64(one*float64(i))
		if i > 0 {
			out = append(out, clipped(fine(sheet.Pt{X: b.x0, Y: y}, sheet.Pt{X: b.x1, Y: y}), ring)...)
		}
		if i%2 == 1 {
			for x := b.x0 - one; x < b.x1; x += 1.6 {
				out = append(out, clipped(fine(sheet.Pt{X: x, Y: y + one}, sheet.Pt{X: x + one, Y: y}), ring)...)
			}
		}
	}
	return out
}

// fine is a straight line in short steps, to be clipped.
func fine(a, b sheet.Pt) []sheet.Pt {
	n := max(1, int(math.Ceil(length(b.Sub(a))/step)))
	out := make([]sheet.Pt, n+1)
	for i := range out {
		out[i] = a.Add(b.Sub(a).Times(float64(i) / float64(n)))
	}
	return out
}

// strands are short strokes, mostly level.
func strands(ring []sheet.Pt, b box) []sheet.Item {
	var out []sheet.Item
	for i := range scattered(b, 2.2) {
		p := spot(b, i)
		s, co := math.Sincos(0.5 * (halton(i, 5) - 0.5))
		d := sheet.Pt{X: co, Y: s}.Times(1 + 1.2*halton(i, 7))
		if a, e := p.Sub(d), p.Add(d); inside(ring, a) && inside(ring, e) {
			out = append(out, sheet.Polyline{Points: []sheet.Pt{a, e}, Pen: Hatching})
		}
	}
	return out
}

// crossed is a cross from corner to corner, clipped: timber of a frame.
func crossed(ring []sheet.Pt, b box) []sheet.Item {
	return append(clipped(fine(sheet.Pt{X: b.x0, Y: b.y0}, sheet.Pt{X: b.x1, Y: b.y1}), ring),
		clipped(fine(sheet.Pt{X: b.x0, Y: b.y1}, sheet.Pt{X: b.x1, Y: b.y0}), ring)...)
}

// specks are grains of sand, one to so many square mm.
func specks(ring []sheet.Pt, b box, per float64) []sheet.Item {
	var out []sheet.Item
	for i := range scattered(b, per) {
		p := spot(b, i)
		r := 0.1 + 0.06*halton(i, 5)
		dot := diamond(p, r)
		if inside(ring, p) {
			out = append(out, sheet.Polygon{Rings: [][]sheet.Pt{dot}, Fill: sheet.Black})
		}
	}
	return out
}

// stones are small three-cornered outlines.
func stones(ring []sheet.Pt, b box) []sheet.Item {
	var out []sheet.Item
	for i := range scattered(b, 22) {
		p, turn := spot(b, i+3), 6*halton(i, 5)
		var tri []sheet.Pt
		ok := true
		for k := range 3 {
			s, co := math.Sincos(turn + float64(k)*2.1)
			tri = append(tri, p.Add(sheet.Pt{X: co, Y: s}.Times(0.7+0.5*halton(i+k, 7))))
			ok = ok && inside(ring, tri[k])
		}
		if ok {
			out = append(out, sheet.Polygon{Rings: [][]sheet.Pt{tri}, Pen: Hatching})
		}
	}
	return out
}

func diamond(p sheet.Pt, r float64) []sheet.Pt {
	return []sheet.Pt{{X: p.X - r, Y: p.Y}, {X: p.X, Y: p.Y - r}, {X: p.X + r, Y: p.Y}, {X: p.X, Y: p.Y + r}}
}

// scattered is how many spots a box takes, one to so many square mm.
func scattered(b box, per float64) int { return int((b.x1 - b.x0) * (b.y1 - b.y0) / per) }

// spot is the i-th of evenly strewn places in a box.
func spot(b box, i int) sheet.Pt {
	return sheet.Pt{X: b.x0 + float64((b.x1-b.x0)*halton(i, 2)), Y: b.y0 + float64((b.y1-b.y0)*halton(i, 3))}
}

// halton is the i-th number of the Halton sequence to a base: between 0 and 1,
// strewn evenly, always the same.
func halton(i, base int) float64 {
	out, f := 0.0, 1.0
	for i++; i > 0; i /= base {
		f /= float64(base)
		out += float64(f * float64(i%base))
	}
	return out
}
