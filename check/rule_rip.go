package check

import (
	"math/big"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// ripRule is the name that exemptions from the narrowest rip carry.
const ripRule = "narrowest rip"

var _ = declare(ripRule,
	"The row that closes against an edge beside the rows is not narrower than the limit, but for an edge that the lay exempts by name and one shorter than the shortest piece, which is passed with a notch.",
	holdRip)

// rip is the narrowest that a row is against an edge.
type rip struct {
	p     *piece
	width *big.Rat
	slant bool        // a corner of it was rounded to a tick
	limit tape.Length // the narrowest that the boards of its row may be ripped to
}

func holdRip(r Rule, s *site) []finding.Finding {
	var out, bare []finding.Finding
	told := map[string]bool{}
	for _, z := range s.zones {
		done := map[string]bool{}
		for _, e := range z.at.Edges {
			if !e.Beside || done[e.Name] {
				continue
			}
			done[e.Name] = true
			for _, f := range append(s.holdEdge(r, z, e.Name, true), s.holdEdge(r, z, e.Name, false)...) {
				if len(f.Pieces) == 0 {
					bare = append(bare, f)
					continue
				}
				if told[e.Name] = true; f.Rule != "" {
					out = append(out, f)
				}
			}
		}
	}
	for _, f := range bare { // the row lies in another zone, or there is none
		if !told[f.Where] {
			told[f.Where] = true
			out = append(out, f)
		}
	}
	return out
}

// holdEdge holds the row along all stretches of a named edge that close the
// rows, or along those too slanted to.
func (s *site) holdEdge(r Rule, z *zone, name string, closing bool) []finding.Finding {
	limit := s.lim.NarrowestRip
	n, any := rip{}, false
	for _, e := range z.at.Edges {
		if e.Beside && e.Name == name && !s.notches(e) && isClosing(e, z.Width, s.lim.RipFrom(z.Width)) == closing {
			any = true
			n = narrower(n, s.ripAt(z, e))
		}
	}
	if !any {
		return nil
	}
	x, exempt := s.exemptAs(name, closing)
	f := r.note(name)
	f.Measured, f.Limit, f.Source, f.Do = "no row closes against it", s.say(limit.Value), limit.Source, x.Why
	if n.p != nil {
		f.Limit = s.say(n.limit)
		f.Where, f.Pieces = n.p.run.name+" at "+name, []int{n.p.ID}
		f.Measured = s.say(floorOf(n.width)) + " wide"
	}
	switch {
	case exempt && closing && n.p != nil && !n.under(n.limit):
		return []finding.Finding{{Pieces: f.Pieces}} // not needed: nothing to be told
	case exempt && closing:
		return []finding.Finding{s.holdExempt(z, f, n, x)}
	case exempt:
		return []finding.Finding{f}
	case n.p == nil || !n.under(n.limit):
		return nil
	}
	f.Level, f.Do = finding.Stop, "Shift the rows, or start from another wall."
	if !closing {
		f.Do = "This edge is too slanted for one rip: name it as exempt, so that its points are known of."
	}
	return []finding.Finding{f}
}

// holdExempt holds an exemption of a closing edge: the rip is no narrower than
// the figure written, and no start line would have kept the limit everywhere.
func (s *site) holdExempt(z *zone, f finding.Finding, n rip, x lay.Exemption) finding.Finding {
	switch {
	case n.p == nil:
		return f
	case n.under(x.To):
		f.Level, f.Limit, f.Do = finding.Stop, s.say(x.To)+", as the exemption has it", "The exemption does not hold: the rip is narrower than it says."
	case x.Pin != "" && !s.isPinned(x.Pin):
		f.Level, f.Do = finding.Stop, "The exemption does not hold: the job has no pin \""+x.Pin+"\"."
	case x.Pin == "" && s.startExists(z):
		f.Level, f.Do = finding.Stop, "The exemption does not hold: some start line keeps every rip. Shift the rows."
	}
	return f
}

// isClosing tells whether an edge beside the rows is straight enough along
// them for one rip its whole length: slant less play under pitch less
// narrowest rip, of several widths for the widest.
func isClosing(e floor.AlignedEdge, pitch, narrowest tape.Length) bool {
	slant := (e.To.Y - e.From.Y).Abs()
	return slant-e.Range.Play() < pitch-narrowest
}

// notches tells whether an edge is shorter than the shortest piece: the row
// passes it with a notch and closes against nothing.
func (s *site) notches(e floor.AlignedEdge) bool {
	return (e.To.X - e.From.X).Abs() < s.lim.ShortestPiece.Value
}

// exemptAs is the exemption of an edge by name: that of its closing stretches
// gives the figure they are held to, that of slanted ones none. One that there
// is but once stands for both.
func (s *site) exemptAs(name string, closing bool) (lay.Exemption, bool) {
	for _, x := range s.lay.Exempt {
		if x.Rule == ripRule && x.Edge == name && (x.To > 0) == closing {
			return x, true
		}
	}
	return s.exemptEdge(name)
}

func (s *site) exemptEdge(name string) (lay.Exemption, bool) {
	for _, x := range s.lay.Exempt {
		if x.Rule == ripRule && x.Edge == name {
			return x, true
		}
	}
	return lay.Exemption{}, false
}

// narrower is the narrower of two rips; of boards of two widths, the one that
// is under the limit of its board where the other is not.
func narrower(a, b rip) rip {
	switch {
	case a.p == nil:
		return b
	case b.p == nil:
		return a
	}
	if x, y := a.under(a.limit), b.under(b.limit); a.limit != b.limit && x != y {
		if y {
			return b
		}
		return a
	}
	if b.width.Cmp(a.width) < 0 {
		return b
	}
	return a
}

// under tells whether the rip is narrower than the limit. A corner on a
// slanted edge was rounded to a tick: that tick is not held against it.
func (n rip) under(limit tape.Length) bool {
	if n.slant {
		limit--
	}
	return n.width.Cmp(rat(limit)) < 0
}

// ripAt is the narrowest stretch of the pieces whose long edge lies in the gap
// range of e. Width is taken square to the rows, up to the long edge on the
// other side, along the stretch where the piece has both. Where that other
// edge runs along one of the floor's that is exempt or no closing edge, the
// width is of that edge's making: it is held, or named, there.
func (s *site) ripAt(z *zone, e floor.AlignedEdge) rip {
	out, line := rip{}, edge{e.From, e.To}
	for _, p := range z.pieces {
		if !p.box.near(boxOf(plane.Ring{e.From, e.To}), max(e.Range.Greatest, -e.Range.Least)+slack) {
			continue
		}
		for _, n := range sides(p.Outline) {
			if n.long() && n.faces() == line.faces() && closes(line, n, e.Range) {
				out = narrower(out, s.widthFrom(p, line, n))
			}
		}
	}
	return out
}

// heldThere tells whether a long edge of a piece runs along an edge of the
// floor that is exempt by name or no closing edge.
func (s *site) heldThere(z *zone, f edge) bool {
	for _, e := range z.at.Edges {
		line := edge{e.From, e.To}
		if !e.Beside || s.notches(e) || line.faces() != f.faces() || !closes(line, f, e.Range) {
			continue
		}
		if _, exempt := s.exemptEdge(e.Name); exempt || !isClosing(e, z.Width, s.lim.RipFrom(z.Width)) {
			return true
		}
	}
	return false
}

// closes tells whether n, over the stretch it shares with the line of an edge,
// lies in the edge's gap range, to two ticks for the corners rounded.
func closes(line, n edge, r floor.Range) bool {
	x := line.x().Meet(n.x())
	if x.Empty() {
		return false
	}
	for _, at := range []*big.Rat{rat(x.From), rat(x.To)} {
		rise := new(big.Rat).Sub(n.at(at), line.at(at))
		if line.faces() == highEdge {
			rise.Neg(rise)
		}
		if line.compare(rise, r.Least-slack) < 0 || line.compare(rise, r.Greatest+slack) > 0 {
			return false
		}
	}
	return true
}

// compare holds a distance against d where it was taken across the rows and
// e slants: square to e it is rise * |dx| / length.
func (e edge) compare(rise *big.Rat, d tape.Length) int {
	a := new(big.Rat).Mul(rise, rat(e.step().X.Abs()))
	b := rat(d)
	if s := a.Sign() - b.Sign(); s != 0 || a.Sign() == 0 {
		return s
	}
	sign := a.Sign()
	a.Mul(a, a)
	b.Mul(b, b)
	return sign * a.Cmp(b.Mul(b, new(big.Rat).SetInt(square2(e.step()))))
}

// widthFrom is how wide p is from its long edge n, beside the given line, to
// the long edges across from it.
func (s *site) widthFrom(p *piece, line, n edge) rip {
	out := rip{}
	for _, f := range sides(p.Outline) {
		x := line.x().Meet(n.x()).Meet(f.x())
		if !f.long() || f.faces() != n.faces().opposite() || x.Empty() || s.heldThere(p.zone, f) {
			continue
		}
		low, high := n, f
		if n.faces() == highEdge {
			low, high = f, n
		}
		for _, at := range []*big.Rat{rat(x.From), rat(x.To)} {
			w := new(big.Rat).Sub(high.at(at), low.at(at))
			if w.Sign() >= 0 { // below 0: a hole lies between
				out = narrower(out, rip{p, w, !n.flat() || !f.flat(), s.ripLimit(p.run)})
			}
		}
	}
	return out
}
