package floor

import (
	"math"

	"strake/finding"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// New is the floor of a place as built: rooms and doorways together, less
// what stays. Findings name walls that cross, doorways that do not fit and
// covers too thin for the gap. A floor without rings could not be made.
func New(b room.Built, trim Trim, lim limits.Limits, style tape.Style) (Floor, []finding.Finding) {
	fs := lookOver(b, style)
	if finding.Worst(fs) == finding.Stop {
		return Floor{}, fs
	}
	p := gather(b, trim)
	s, err := join(p.add, p.less)
	if err != nil || s.area() < speck {
		return Floor{}, append(fs, finding.Finding{
			Level: finding.Stop, Rule: "shape of the floor", Measured: "no area is left to board",
			Do: "Check the readings: walls may cross, or what stays may cover the room.",
		})
	}
	f := Floor{Rooms: p.rooms, Stays: p.stays}
	for _, o := range s {
		f.ring(p, o, lim)
	}
	return f, append(fs, coverFindings(f, b, trim, lim, style)...)
}

// ring adds one closed line, its corners cleaned of those the union made on a
// straight edge.
func (f *Floor) ring(p parts, o outline, lim limits.Limits) {
	var r Ring
	for i, a := range o {
		at := p.faces(a, o[(i+1)%len(o)])
		for k, c := range at[:len(at)-1] {
			r.Corners = append(r.Corners, c)
			r.Edges = append(r.Edges, len(f.Edges))
			f.Edges = append(f.Edges, p.meet(c, at[k+1], lim))
		}
	}
	f.Rings = append(f.Rings, f.merge(r))
}

// straight is how far (mm) a corner may lie off the line through its
// neighbours and still be one the union put there.
const straight = 0.002

// merge drops corners on a straight line between two edges that meet the same
// thing.
func (f *Floor) merge(r Ring) Ring {
	for changed := true; changed && len(r.Corners) > 3; {
		changed = false
		for i := range r.Corners {
			n := len(r.Corners)
			h, j := (i+n-1)%n, (i+1)%n
			a, b := &f.Edges[r.Edges[h]], f.Edges[r.Edges[i]]
			if !sameMeeting(*a, b) || offLine(r.Corners[h], r.Corners[j], r.Corners[i]) > straight {
				continue
			}
			a.To = b.To
			r.Corners = append(r.Corners[:i:i], r.Corners[i+1:]...)
			r.Edges = append(r.Edges[:i:i], r.Edges[i+1:]...)
			changed = true
			break
		}
	}
	return r
}

func sameMeeting(a, b Edge) bool {
	return a.Name == b.Name && a.Kind == b.Kind && a.Ends == b.Ends && a.Sides == b.Sides
}

// offLine is how far p lies from the segment a to b.
func offLine(a, b, p plane.XY) float64 {
	d := b.Sub(a)
	if d.Len() == 0 {
		return p.Sub(a).Len()
	}
	u := d.Unit()
	if t := u.Dot(p.Sub(a)); t < 0 || t > d.Len() {
		return math.Inf(1)
	}
	return math.Abs(u.Cross(p.Sub(a)))
}

func coverFindings(f Floor, b room.Built, trim Trim, lim limits.Limits, style tape.Style) []finding.Finding {
	out := coverFinding("base and shoe", trim.Base+trim.Shoe, lim, style)
	for _, s := range b.Stays {
		if stayKind(s) == Stays && s.Cover > 0 {
			out = append(out, coverFinding(s.Name, s.Cover, lim, style)...)
		}
	}
	return out
}
