package check

import (
	"fmt"
	"slices"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

var _ = declare("profile",
	"What a piece carries at its ends and edges follows from its place in the board: a factory profile only where it reaches that end in full or that edge at some stretch, else a cut or a rip.",
	holdProfile)

func holdProfile(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, z := range s.zones {
		if z.handOf() != handOf(s.stock.Hand) {
			f := r.stop("boards of the " + z.nameOrKind())
			f.Measured, f.Limit = string(z.handOf())+"-hand boards", string(handOf(s.stock.Hand))+"-hand, as bought"
			f.Do = "Plan with the hand of the boards on the pallet."
			out = append(out, f)
		}
	}
	for _, p := range s.pieces {
		for sd := leftEnd; sd <= highEdge; sd++ {
			want := s.may(p, sd)
			if p.fault != "" || want == nil || slices.Contains(want, p.claim(sd)) {
				continue
			}
			f := r.stop(p.label()+", "+sd.String(), p.ID)
			f.Measured, f.Limit = string(p.claim(sd)), "by its place in the board: "+orList(want)
			f.Do = "Say what the piece carries there, and see that it still fits its neighbour."
			out = append(out, f)
		}
	}
	return append(out, s.holdRouted(r)...)
}

// holdRouted holds what is grooved on the job to the sawn sides of its piece.
func (s *site) holdRouted(r Rule) []finding.Finding {
	var out []finding.Finding
	for _, p := range s.pieces {
		for _, t := range p.Routed {
			ok := false
			for _, e := range sides(p.Outline) {
				as := p.profile(e)
				ok = ok || (as == lay.Ripped || as == lay.Cut) && e.holds(t.From) && e.holds(t.To)
			}
			if !ok {
				f := r.stop(p.label(), p.ID)
				f.Measured, f.Limit = "grooved on the job where no sawn side lies", "a sawn side of the piece"
				f.Do = "Groove what the saw left, to meet the boards of another zone."
				out = append(out, f)
			}
		}
	}
	return out
}

func (s side) String() string {
	return [...]string{"left end", "right end", "edge behind", "edge ahead"}[s]
}

func orList(ps []lay.Profile) string {
	out := string(ps[0])
	for _, p := range ps[1:] {
		out += fmt.Sprintf(" or %s", p)
	}
	return out
}

// may are the profiles that p can carry on a side; nil when the stock does not
// tell.
func (s *site) may(p *piece, on side) []lay.Profile {
	high := on == rightEnd || on == highEdge
	if p.Turned {
		high = !high
	}
	if on == leftEnd || on == rightEnd {
		return s.mayEnd(p, on, high)
	}
	return s.mayEdge(p, high)
}

// mayEnd is about the end towards +X in the board, or the one at X 0.
func (s *site) mayEnd(p *piece, on side, high bool) []lay.Profile {
	tongue := high == (p.zone.handOf() == stock.RightHand)
	switch {
	case !inFull(p.InBoard, p.board, high) && (len(s.zones) > 1 || p.meetsOld(on)):
		return []lay.Profile{lay.Cut, lay.Spline, lay.Groove} // grooved on the job, to meet a header or an old floor
	case !inFull(p.InBoard, p.board, high):
		return []lay.Profile{lay.Cut}
	case s.stock.EndTongue == 0:
		return []lay.Profile{lay.Plain}
	case tongue:
		return []lay.Profile{lay.Tongue, lay.TongueOff}
	}
	return []lay.Profile{lay.Groove, lay.Spline}
}

// mayEdge is about the edge at the board's width, or the one at Y 0.
func (s *site) mayEdge(p *piece, high bool) []lay.Profile {
	switch {
	case s.stock.SideTongue == 0:
		return nil
	case high && reachesEdge(p.InBoard, p.board.Width):
		return []lay.Profile{lay.Tongue, lay.TongueOff}
	case !high && reachesEdge(p.InBoard, 0):
		return []lay.Profile{lay.Groove, lay.Spline}
	}
	return []lay.Profile{lay.Ripped}
}

// reachesEdge tells whether r has some stretch of the board's long edge at
// this height; a corner alone is none.
func reachesEdge(r plane.Ring, y tape.Length) bool {
	for i, p := range r {
		if q := r[(i+1)%len(r)]; p.Y == y && q.Y == y && p.X != q.X {
			return true
		}
	}
	return false
}

// inFull tells whether r has the end of its board, at X 0 or at its length, as
// the mill left it: a square side there, with a long edge to either hand of it
// and no mitre taken off.
func inFull(r plane.Ring, b *lay.Board, high bool) bool {
	at := b.Length
	if !high {
		at = 0
	}
	es := sides(normal(r))
	for i, e := range es {
		before, after := es[(i+len(es)-1)%len(es)], es[(i+1)%len(es)]
		if e.upright() && e.a.X == at && (e.faces() == rightEnd) == high && before.long() && after.long() {
			return true
		}
	}
	return false
}
