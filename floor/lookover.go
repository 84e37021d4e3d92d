package floor

import (
	"fmt"
	"strings"

	"strake/finding"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// lookOver says what of a place cannot be: crossing walls, a doorway that does
// not fit its wall, something that stays outside every room.
func lookOver(b room.Built, style tape.Style) []finding.Finding {
	var out []finding.Finding
	for _, r := range b.Rooms {
		out = append(out, crossingWalls(b, r)...)
	}
	for _, d := range b.Doorways {
		out = append(out, doorwayFits(b, d.Name, d.Wall, d.From, d.At, d.Width, style)...)
		if d.Beyond == room.BeyondRoom {
			out = append(out, doorwayFits(b, d.Name, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width, style)...)
		}
	}
	for _, s := range b.Stays {
		out = append(out, stayInside(b, s)...)
	}
	return append(out, overEachOther(b)...)
}

func crossingWalls(b room.Built, r room.Room) []finding.Finding {
	ring := r.Ring()
	n := len(ring)
	at := func(i int) plane.XY { return b.At[ring[i%n]] }
	for i := range n {
		for j := i + 2; j < n && j-i != n-1; j++ {
			if crosses(at(i), at(i+1), at(j), at(j+1)) {
				return []finding.Finding{{
					Level: finding.Stop, Rule: "walls cross", Where: r.Name,
					Measured: fmt.Sprintf("wall %s-%s meets wall %s-%s", ring[i], ring[i+1], ring[j], ring[(j+1)%n]),
					Do:       "Check the order of the corners, which of them stand into the room, and the readings of these two walls.",
				}}
			}
		}
	}
	var o outline
	for i := range n {
		o = append(o, at(i))
	}
	if len(o) < 3 || o.area() < speck {
		return []finding.Finding{{
			Level: finding.Stop, Rule: "shape of the room", Where: r.Name,
			Measured: "the corners enclose no area, or run the wrong way round",
			Do:       "Check the order of the corners and the readings.",
		}}
	}
	return nil
}

// crosses tells whether two walls share a place. Two on one line, as on both
// sides of a closet's mouth, do only where they lie over each other.
func crosses(a, b, c, d plane.XY) bool {
	side := func(p, q, r plane.XY) float64 { return q.Sub(p).Cross(r.Sub(p)) }
	if side(a, b, c) == 0 && side(a, b, d) == 0 {
		u := b.Sub(a)
		from, to := u.Dot(c.Sub(a)), u.Dot(d.Sub(a))
		return max(from, to) >= 0 && min(from, to) <= u.Dot(u)
	}
	return side(a, b, c)*side(a, b, d) <= 0 && side(c, d, a)*side(c, d, b) <= 0
}

func doorwayFits(b room.Built, name string, w room.Wall, from string, at, width tape.Length, style tape.Style) []finding.Finding {
	_, ccw, ok := b.FindWall(w)
	if !ok {
		return []finding.Finding{{Level: finding.Stop, Rule: "doorway", Where: room.DoorwaySaid(name),
			Measured: "no room has a wall " + w.String(), Do: "Name two neighbouring corners of a room."}}
	}
	length := b.At[ccw[1]].Sub(b.At[ccw[0]]).Len()
	if end := (at + width).Millimetres(); at < 0 || width <= 0 || end > length+0.5 {
		return []finding.Finding{{Level: finding.Stop, Rule: "doorway fits its wall", Where: room.DoorwaySaid(name) + " in wall " + w.String(),
			Measured: fmt.Sprintf("%s from corner %s and %s wide", style.Of(at), from, style.Of(width)),
			Limit:    fmt.Sprintf("wall of %s", style.Of(tape.Length(length*float64(tape.Millimetre)))),
			Do:       "Measure the doorway's distance, its width and the wall again."}}
	}
	return nil
}

func stayInside(b room.Built, s room.Stay) []finding.Finding {
	o, _ := stayOutline(b, s)
	if len(o) < 3 {
		return []finding.Finding{{Level: finding.Stop, Rule: "what stays", Where: s.Name,
			Measured: "no outline", Do: "Give its corners, or a wall, a distance, a width and a depth."}}
	}
	var rooms []outline
	for _, r := range b.Rooms {
		ro, _ := b.Outline(r)
		rooms = append(rooms, ro)
	}
	rest, err := join([]outline{o}, rooms)
	if err == nil && rest.area() < o.area()*0.5 {
		return nil
	}
	return []finding.Finding{{Level: finding.Stop, Rule: "what stays lies in a room", Where: s.Name,
		Measured: "more than half of it lies outside every room",
		Do:       setOutAgain(s)}}
}

// setOutAgain says what to measure again of something that stays.
func setOutAgain(s room.Stay) string {
	if len(s.Corners) > 0 {
		return "Measure " + strings.Join(s.Corners, ", ") + " again, each from two corners of the room, and check the names of these corners."
	}
	return "Measure along wall " + s.Wall.String() + " from " + s.From + " to its near side again, then its width and depth, check from which corner it was measured, and name a wall of the room that it stands in: it is set out into that room."
}
