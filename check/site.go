package check

import (
	"fmt"

	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// site is a lay with its look-ups, ready to be walked over.
type site struct {
	lay      lay.Lay
	lim      limits.Limits
	stock    stock.Boards
	zones    []*zone
	runs     []*run   // in the order of lay.Runs
	pieces   []*piece // by Piece.ID
	runOf    map[int]*run
	contacts []contact         // where long edges or ends of two pieces touch
	touching map[int][]contact // the same by Piece.ID
	pins     []lay.Pin         // of the job
	tape     tape.Style
}

// zone is a zone with the floor in its frame and what lies in it.
type zone struct {
	lay.Zone
	at     floor.Aligned
	name   string
	bound  plane.Region // what the zone may fill; nil: all of the floor
	need   plane.Region // what its boards must cover, where stepped rows may stay farther off a wall; nil: at.Need
	runs   []*run
	pieces []*piece
}

// run is a run with its pieces from left to right.
type run struct {
	lay.Run
	zone   *zone
	name   string // row 12a
	pieces []*piece
	fault  string // why its outline cannot be measured; see the rule "outline of a run"
}

// piece is a piece with the run it lies in and the board it is cut from.
type piece struct {
	lay.Piece
	run   *run
	zone  *zone
	board *lay.Board
	box   box    // of the outline, in the zone's frame
	cut   box    // of the outline, in the board's frame
	fault string // why it cannot lie so in its board; see the rule "cut from the board"
}

// survey sets up the look-ups of a lay that is readable.
func survey(l lay.Lay, at map[int]floor.Aligned, lim limits.Limits, b stock.Boards) *site {
	s := &site{lay: l, lim: lim, stock: b, runOf: map[int]*run{}, tape: styleFor(b)}
	byID := map[int]*zone{}
	for i, z := range l.Zones {
		zn := &zone{Zone: z, at: at[z.ID], name: zoneName(l, i)}
		zn.bound = boundOf(zn)
		byID[z.ID] = zn
		s.zones = append(s.zones, zn)
	}
	for _, r := range l.Runs {
		rn := &run{Run: r, zone: byID[r.Zone], fault: outlineFault(r)}
		rn.name = rowName(r, rn.zone.name)
		rn.zone.runs = append(rn.zone.runs, rn)
		s.runs = append(s.runs, rn)
		s.runOf[r.ID] = rn
	}
	s.placePieces()
	s.contacts, s.touching = s.findContacts(), map[int][]contact{}
	for _, c := range s.contacts {
		s.touching[c.a.ID] = append(s.touching[c.a.ID], c)
		s.touching[c.b.ID] = append(s.touching[c.b.ID], c)
	}
	return s
}

func (s *site) placePieces() {
	for _, p := range s.lay.Pieces {
		r := s.runOf[p.Run]
		s.pieces = append(s.pieces, &piece{Piece: p, run: r, zone: r.zone, board: &s.lay.Boards[p.Board],
			box: boxOf(p.Outline), cut: boxOf(p.InBoard)})
	}
	for _, p := range s.pieces {
		p.fault = p.placeFault()
	}
	for _, r := range s.runs {
		for _, id := range r.Pieces {
			r.pieces = append(r.pieces, s.pieces[id])
			r.zone.pieces = append(r.zone.pieces, s.pieces[id])
		}
	}
}

// zoneName is empty while there is only one zone, and for a field where the
// rows of all zones are numbered through.
func zoneName(l lay.Lay, i int) string {
	zs := l.Zones
	if len(zs) < 2 || zs[i].Kind == lay.Field && numberedThrough(l.Runs) {
		return ""
	}
	n, of := 0, 0
	for j, z := range zs {
		if z.Kind == zs[i].Kind {
			of++
			if j <= i {
				n++
			}
		}
	}
	if of == 1 {
		return string(zs[i].Kind)
	}
	return fmt.Sprintf("%s %d", zs[i].Kind, n)
}

// numberedThrough tells whether no two runs have one number.
func numberedThrough(runs []lay.Run) bool {
	seen := map[[2]int]bool{}
	for _, r := range runs {
		k := [2]int{r.Row, r.Part}
		if seen[k] {
			return false
		}
		seen[k] = true
	}
	return true
}

// rowName is "row 12a", with its zone where there are several.
func rowName(r lay.Run, zone string) string {
	name := fmt.Sprintf("row %d%s", r.Row, letters(r.Part))
	if zone != "" {
		name += " of the " + zone
	}
	return name
}

// letters counts a, b, ... z, aa, ab ...; nothing for 0.
func letters(n int) string {
	out := ""
	for ; n > 0; n = (n - 1) / 26 {
		out = string(rune('a'+(n-1)%26)) + out
	}
	return out
}

// label names a piece on paper: by its run and its place in it.
func (p *piece) label() string {
	for i, q := range p.run.pieces {
		if q == p {
			return fmt.Sprintf("%s, piece %d", p.run.name, i+1)
		}
	}
	return fmt.Sprintf("%s, piece id %d", p.run.name, p.ID)
}

func (z *zone) nameOrKind() string {
	if z.name != "" {
		return z.name
	}
	return string(z.Kind)
}

// handOf is the hand of a zone's boards; right when nothing is said.
func (z *zone) handOf() stock.Hand { return handOf(z.Hand) }

func handOf(h stock.Hand) stock.Hand {
	if h == stock.LeftHand {
		return h
	}
	return stock.RightHand
}
