package check

import "strake/finding"

var _ = declareLaid("end tongue",
	"An end of a row as laid that keeps its tongue leaves the least gap to the tongue.",
	holdLaidTongue)

func holdLaidTongue(r laidRule, s *laidSite) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		e, cut := s.leftEnd(n), n.CutLeft
		if n.zone.TongueRight() {
			e, cut = s.rightEnd(n), n.CutRight
		}
		// Where the face lies too far out already, that is told by itself.
		in := e.in * (e.at - e.Reach)
		if !n.CutTold || cut || s.stock.EndTongue == 0 || in >= s.stock.EndTongue || in < 0 || !e.met {
			continue
		}
		f := r.breaks(n.name + " at " + e.name())
		f.Measured = "the end tongue comes to within " + s.tape.Of(e.gap()-s.stock.EndTongue)
		f.Limit, f.Source = "at least "+s.tape.Of(e.edge.Range.Least), s.lim.GapLeast.Source
		f.Do = "Take the tongue off that end; if it is off, write that the end is cut."
		out = append(out, f)
	}
	return out
}
