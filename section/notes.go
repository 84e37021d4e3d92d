package section

import (
	"math"
	"slices"
	"strings"

	"strake/sheet"
)

// note is a text in the column with a leader to a place.
type note struct {
	at    sheet.Pt // paper mm from the real origin
	text  string
	arrow bool // the leader ends at a line, else in an area
}

// capital is a text with a capital first letter: each note is a sentence.
func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// Note writes beside the drawing what a place is: its leader ends in a dot.
func (c *Canvas) Note(at XY, text string) {
	c.notes = append(c.notes, note{c.paper(at), capital(text), false})
}

// NoteLine writes beside the drawing what a line is: its leader ends in an arrow
// on it.
func (c *Canvas) NoteLine(at XY, text string) {
	c.notes = append(c.notes, note{c.paper(at), capital(text), true})
}

const (
	column   = 5.0 // of the notes from the drawing
	shoulder = 2.5 // of a leader before its text
	between  = 1.6 // of notes
)

// near is how many heights are tried for the column of notes at first.
const near = 41

// block is a note in the column.
type block struct {
	note
	lines  []string
	height float64
	top    float64
}

// from is where the leader leaves the text: at the middle of its first line.
func (k block) from(x float64) sheet.Pt { return sheet.Pt{X: x, Y: k.top + 0.62*Small} }

// placeNotes puts the notes in a column right of the box. Of the heights that the
// column may begin at, and four distances of notes, the one is taken at which leaders
// meet the least: each other or writing.
func (c *Canvas) placeNotes(b box, words []sheet.Item, width float64) []sheet.Item {
	if len(c.notes) == 0 {
		return nil
	}
	var best []block
	x, least := 0.0, math.Inf(1)
	// Farther from the middle, and with a narrower column farther from the drawing, only
	// where leaders still meet.
	for _, in := range []float64{0, 7, 14} {
		at := b.x1 + column + in
		blocks, all := c.blocks(width - in)
		mid := (b.y0+b.y1)/2 - all/2
		for _, far := range []int{0, near, 2 * near} {
			for _, gap := range []float64{between, 3 * between, 6 * between, between / 2} { // close together is better
				for k := far; k < far+near; k++ { // the nearer to the middle, the better
					off := float64((k+1)/2) * 3
					if k%2 == 1 {
						off = -off
					}
					ks := ordered(blocks, at, mid+off, gap)
					if n := meeting(ks, at, words) + 0.02*math.Abs(off) + 0.1*math.Abs(gap-between); n < least-1e-9 {
						best, x, least = ks, at, n
					}
				}
			}
			if meeting(best, x, words) < 1 {
				return written(best, x)
			}
		}
	}
	return written(best, x)
}

// blocks are the notes broken to a width, and how high they stand on each other.
func (c *Canvas) blocks(width float64) (out []block, all float64) {
	for _, n := range c.notes {
		k := block{note: n, lines: sheet.Wrap(n.text, Small, width)}
		k.height = float64(len(k.lines)) * Small * leading
		all += k.height + between
		out = append(out, k)
	}
	return out, all
}

func written(best []block, x float64) []sheet.Item {
	var out []sheet.Item
	for _, k := range best {
		out = append(out, k.draw(x)...)
	}
	return out
}

// ordered stacks the notes from the top in an order in which no two leaders
// cross: by height, then pairs that cross change places until none does.
func ordered(in []block, x, top, gap float64) []block {
	ks := slices.Clone(in)
	slices.SortStableFunc(ks, func(a, b block) int {
		switch {
		case a.at.Y < b.at.Y:
			return -1
		case a.at.Y > b.at.Y:
			return 1
		}
		return 0
	})
	for range 60 {
		stack(ks, top, gap)
		i, k, some := crossed2(ks, x)
		if !some {
			break
		}
		ks[i], ks[k] = ks[k], ks[i]
	}
	stack(ks, top, gap)
	return ks
}

func stack(ks []block, top, gap float64) {
	for i := range ks {
		ks[i].top = top
		top += ks[i].height + gap
	}
}

// crossed2 is the first pair of notes whose leaders cross.
func crossed2(ks []block, x float64) (int, int, bool) {
	for i, a := range ks {
		for k := i + 1; k < len(ks); k++ {
			if crossing(elbow(a, x), a.at, elbow(ks[k], x), ks[k].at) {
				return i, k, true
			}
		}
	}
	return 0, 0, false
}

// elbow is where a leader turns from its text to its place.
func elbow(k block, x float64) sheet.Pt { return k.from(x - 0.8 - shoulder) }

// meeting counts where leaders cross each other or pass over writing.
func meeting(ks []block, x float64, words []sheet.Item) float64 {
	n := 0.0
	for i, a := range ks {
		e := elbow(a, x)
		for _, b := range ks[i+1:] {
			if crossing(e, a.at, elbow(b, x), b.at) {
				n += 3
			}
		}
		for _, w := range words {
			if t, ok := w.(sheet.Text); ok && passes(e, a.at, t) {
				n += 2
			}
		}
	}
	return n
}

// passes tells whether a line passes over a text.
func passes(a, b sheet.Pt, t sheet.Text) bool {
	q := t.Box()
	for i, p := range q {
		if crossing(a, b, p, q[(i+1)%4]) {
			return true
		}
	}
	return inside(q[:], a) || inside(q[:], b)
}

func (k block) draw(x float64) []sheet.Item {
	from := k.from(x - 0.8)
	e := elbow(k, x)
	out := []sheet.Item{sheet.Polyline{Name: leaderName, Points: []sheet.Pt{from, e, k.at}, Pen: Thin}}
	if k.arrow {
		out = append(out, head(k.at, unit(k.at.Sub(e)), 1.8))
	} else {
		out = append(out, sheet.Polygon{Rings: [][]sheet.Pt{disc(k.at, 0.45)}, Fill: sheet.Black})
	}
	y := k.top
	for _, l := range k.lines {
		out = append(out, sheet.Text{Text: l, Size: Small, Ink: sheet.Black, At: sheet.Pt{X: x, Y: y + Small}})
		y += float64(Small * leading)
	}
	return out
}

// leaderName marks leaders, for tests and readers of a file.
const leaderName = "leader"

// disc is a small round area.
func disc(p sheet.Pt, r float64) []sheet.Pt {
	var out []sheet.Pt
	for i := range 12 {
		s, c := math.Sincos(math.Pi * float64(i) / 6)
		out = append(out, sheet.Pt{X: p.X + float64(r*c), Y: p.Y + float64(r*s)})
	}
	return out
}

// head is a filled arrow head with its tip at p, pointing along u.
func head(p, u sheet.Pt, size float64) sheet.Polygon {
	v := sheet.Pt{X: -u.Y, Y: u.X}
	back := p.Sub(u.Times(size))
	return sheet.Polygon{Fill: sheet.Black, Rings: [][]sheet.Pt{{p, back.Add(v.Times(size * 0.3)), back.Sub(v.Times(size * 0.3))}}}
}
