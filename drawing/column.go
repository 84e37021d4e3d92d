package drawing

import (
	"fmt"
	"strings"

	"strake/finding"
	"strake/lay"
	"strake/sheet"
	"strake/stock"
	"strake/words"
)

func (s *side) titleBlock() {
	for _, l := range sheet.Wrap(s.d.p.Job.Name, title*1.1, s.w) {
		s.line(l, title, 0, true)
	}
	s.line("Floor plan and board layout", middling, 0, false)
	s.line("Scale "+s.d.scale.String(), middling, 0, false)
}

// boards says what is laid, with a board drawn as it lies.
func (s *side) boards() {
	b := s.d.p.Job.Boards
	s.heading("Boards")
	text := strings.TrimSpace(b.Name)
	if text != "" {
		text += ", "
	}
	for i, w := range b.Each() {
		if i > 0 {
			text += "; "
		}
		text += "face " + s.d.say.Rip(w.Face) + ", row width " + s.d.say.Rip(w.Pitch())
		if w.TenBoards > 0 {
			text += " (ten boards " + s.d.say.Rip(w.TenBoards) + ")"
		}
	}
	s.para(text, small, 0)
	if t := words.PatternText(s.d.p, s.d.say); t != "" {
		s.para(t+".", small, 0)
	}
	if z, ok := s.d.zone(); ok && s.y+12 < s.foot {
		s.drawBoard(z)
	}
}

// drawBoard draws one board with its tongues as the boards lie on the sheet.
func (s *side) drawBoard(z lay.Zone) {
	body := box{sheet.Pt{X: s.x + 5, Y: s.y + 2.5}, sheet.Pt{X: s.x + 35, Y: s.y + 8.5}}
	pen := sheet.Pen{Width: 0.3, Ink: sheet.Black}
	side := box{sheet.Pt{X: body.a.X, Y: body.a.Y - 1.2}, sheet.Pt{X: body.b.X, Y: body.a.Y}}
	if z.Ahead < 0 {
		side = box{sheet.Pt{X: body.a.X, Y: body.b.Y}, sheet.Pt{X: body.b.X, Y: body.b.Y + 1.2}}
	}
	parts := []box{body, side}
	words := "side tongue"
	if s.d.p.Job.Boards.EndTongue > 0 {
		x := body.b.X
		if !z.TongueRight() {
			x = body.a.X - 1.2
		}
		parts = append(parts, box{sheet.Pt{X: x, Y: body.a.Y}, sheet.Pt{X: x + 1.2, Y: body.b.Y}})
		words = "side and end tongues"
	}
	for i, p := range parts {
		fill := sheet.Mid
		if i == 0 {
			fill = sheet.White
		}
		s.d.lines = append(s.d.lines, sheet.Polygon{Rings: [][]sheet.Pt{p.corners()}, Fill: fill, Pen: pen})
	}
	s.d.put(sheet.Text{Text: words + " (dark)", At: sheet.Pt{X: s.x + 40, Y: s.y + 6.3}, Size: small})
	s.y += 10.5
}

// toLay says where the first row goes and which way the rows run.
func (s *side) toLay() {
	s.heading("To lay it")
	if l, ok := words.Line(s.d.p); ok {
		s.para(words.LineText(l, s.d.say), small, 0)
	}
	if f := s.d.frames(); len(f) > 0 {
		s.para("Fit and fasten the frame first: rows "+strings.Join(f, ", ")+".", small, 0)
	}
	if r, ok := s.d.first(); ok {
		s.para("Start with row "+words.Row(r)+", "+words.Fasten(r.Nailing[0].By)+"; the rows are numbered up the sheet.", small, 0)
	}
	if t := words.SplineText(s.d.p, s.d.say); t != "" {
		s.para(t+".", small, 0)
	}
	if why := s.d.p.Layout.Why; why != "" {
		s.para(strings.ToUpper(why[:1])+why[1:]+".", small, 0)
	}
}

// first is the run laid first of those in fields.
func (d *draw) first() (first lay.Run, ok bool) {
	for _, r := range d.p.Lay.Runs {
		if d.kind(r) == lay.Field && (!ok || r.Order < first.Order) {
			first, ok = r, true
		}
	}
	return
}

// frames are the boards of frames, by the names that they have.
func (d *draw) frames() (out []string) {
	for _, r := range d.p.Lay.Runs {
		if d.kind(r) == lay.Frame {
			out = append(out, words.Row(r))
		}
	}
	return
}

func (d *draw) kind(r lay.Run) lay.ZoneKind {
	for _, z := range d.p.Lay.Zones {
		if z.ID == r.Zone {
			return z.Kind
		}
	}
	return lay.Field
}

// legend shows what the lines and tints mean.
func (s *side) legend() {
	s.heading("How to read it")
	z := func(b box) [][]sheet.Pt { return [][]sheet.Pt{b.corners()} }
	cut := func(b box) []sheet.Item {
		end := box{sheet.Pt{X: b.b.X - bandWidth, Y: b.a.Y}, b.b}
		return append([]sheet.Item{sheet.Polygon{Rings: z(b), Fill: sheet.White, Pen: thin}}, sheet.Hatch(z(end), 45, 0.7, hair)...)
	}
	plain := func(fill sheet.Ink) func(box) []sheet.Item {
		return func(b box) []sheet.Item {
			return []sheet.Item{sheet.Polygon{Rings: z(b), Fill: fill, Pen: thin}}
		}
	}
	s.swatch("whole board; heavy lines are end joints", func(b box) []sheet.Item {
		m := (b.a.X + b.b.X) / 2
		return append(plain(sheet.White)(b), sheet.Polyline{Points: []sheet.Pt{{X: m, Y: b.a.Y}, {X: m, Y: b.b.Y}}, Pen: joint})
	})
	s.swatch("ripped along the board", plain(sheet.Light))
	s.swatch("crosscut end", cut)
	s.swatch("working line: front edge of the first row", func(b box) []sheet.Item {
		y := (b.a.Y + b.b.Y) / 2
		return []sheet.Item{sheet.Polyline{Points: []sheet.Pt{{X: b.a.X, Y: y}, {X: b.b.X, Y: y}}, Pen: chain}}
	})
	if len(s.d.p.Layout.Splines) > 0 {
		s.swatch("spline; beyond it laid backwards", func(b box) []sheet.Item {
			y := (b.a.Y + b.b.Y) / 2
			return []sheet.Item{sheet.Polyline{Points: []sheet.Pt{{X: b.a.X, Y: y}, {X: b.b.X, Y: y}}, Pen: splinePen}}
		})
	}
	s.swatch("stays; the floor goes round it", func(b box) []sheet.Item {
		return append(plain(sheet.White)(b), sheet.Hatch(z(b), -45, 2, hair)...)
	})
	if s.d.hasFree() {
		s.swatch("keep free of fasteners, margin included", func(b box) []sheet.Item {
			c := b.corners()
			return append(plain(sheet.White)(b), sheet.Polyline{Points: append(c, c[0]), Pen: freePen})
		})
	}
	if s.d.unfilled() {
		s.swatch("no boards left for this row", func(b box) []sheet.Item {
			return append(append(plain(sheet.White)(b), sheet.Hatch(z(b), 45, 1.6, hair)...), sheet.Hatch(z(b), -45, 1.6, hair)...)
		})
	}
	s.para(`In a piece: the board's number, then the length to cut. A number that stands twice is one board cut in two; "rest of row" names where its other part lies. Figures with "rip" are widths on the floor at that end; what the saw is set to stands in the lists.`, tiny, 0)
}

func (d *draw) unfilled() bool {
	for _, r := range d.p.Lay.Runs {
		if r.Unfilled && d.p.Job.Boards.Known != stock.Unknown {
			return true
		}
	}
	return len(d.p.Lay.Runs) == 0
}

// swatch draws a small sample and writes what it means.
func (s *side) swatch(text string, draw func(box) []sheet.Item) {
	if s.y+4.6 > s.foot {
		s.full = true
		return
	}
	s.d.areas = append(s.d.areas, draw(box{sheet.Pt{X: s.x, Y: s.y + 0.4}, sheet.Pt{X: s.x + 14, Y: s.y + 4}})...)
	s.d.put(sheet.Text{Text: text, At: sheet.Pt{X: s.x + 16.5, Y: s.y + 3.1}, Size: small})
	s.y += 4.8
}

// edges lists what the floor meets, with the number it has on the drawing.
func (s *side) edges() {
	s.heading("Edges")
	for _, k := range s.d.keys {
		no := ""
		if k.no > 0 {
			no = fmt.Sprintf("(%d) ", k.no)
		}
		s.para(no+k.name+": "+k.meets, tiny, 0)
	}
}

// rips lists the widths of the rows along the closing edges.
func (s *side) rips() {
	if len(s.d.p.Layout.Rips) == 0 {
		return
	}
	s.heading("Rips on the floor")
	for _, r := range words.Rips(s.d.p, s.d.say) {
		s.para(fmt.Sprintf("%s: row %d, %s", r.Edge, r.Row, r.Widths), tiny, 0)
	}
}

// notes counts what is on the sheet and what was found.
func (s *side) notes() {
	s.heading("Counts")
	l := s.d.p.Lay
	s.para(fmt.Sprintf("%d rows, %d pieces from %d boards.", rowCount(l), len(l.Pieces), len(l.Boards)), small, 0)
	levels := map[finding.Level]int{}
	for _, f := range s.d.p.Findings {
		levels[f.Level]++
	}
	s.para(fmt.Sprintf("Findings: %d stop, %d warn, %d note.", levels[finding.Stop], levels[finding.Warn], levels[finding.Note]), small, 0)
}

// rowCount counts rows, however many runs each is.
func rowCount(l lay.Lay) int {
	seen := map[[2]int]bool{}
	for _, r := range l.Runs {
		seen[[2]int{r.Zone, r.Row}] = true
	}
	return len(seen)
}
