package check

import "strake/finding"

var _ = declare("cut from the board",
	"Every piece has on the floor the shape it has in its board, turned by half a turn where the tongues face the other way and never mirrored, and a factory edge it keeps lies on its row line.",
	holdPlace)

func holdPlace(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, p := range s.pieces {
		if p.fault == "" {
			continue
		}
		f := r.stop(p.label(), p.ID)
		f.Measured, f.Do = p.fault, "Put the piece back into its board and take its place from there."
		out = append(out, f)
	}
	return out
}

// placeFault is why p cannot lie on the floor as it lies in its board; empty
// when it can.
func (p *piece) placeFault() string {
	if p.Turned != (p.zone.Ahead < 0) {
		return "turned the wrong way for the tongue direction of its zone"
	}
	r := p.InBoard.Move(p.box.lo.Sub(p.cut.lo))
	if p.Turned {
		r = p.InBoard.Turn(0, 0)
		r = r.Move(p.box.lo.Sub(boxOf(r).lo))
	}
	switch {
	case !sameShape(r, p.Outline):
		return "its shape on the floor is not its shape in the board"
	case !p.onLine():
		return "it keeps a factory edge that does not lie on its row line"
	}
	return ""
}

// onLine tells whether the factory edges that p keeps lie on the lines of its
// strip.
func (p *piece) onLine() bool {
	groove, tongue := reachesEdge(p.InBoard, 0), reachesEdge(p.InBoard, p.board.Width)
	if p.Turned {
		groove, tongue = tongue, groove
	}
	return (!groove || p.box.lo.Y == p.run.Low) && (!tongue || p.box.hi.Y == p.run.High)
}
