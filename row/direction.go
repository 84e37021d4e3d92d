package row

import (
	"fmt"
	"math"
	"strings"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/room"
)

// Wishes is what a person asked of the rows.
type Wishes struct {
	Direction  room.Wall         // rows run along this wall; empty: no wish
	Across     bool              // rows run square to Direction (or to the longest wall)
	Angle      float64           // degrees that rows are turned from that, counter-clockwise
	Between    [2]room.Wall      // rows run halfway between these two walls
	StartWall  room.Wall         // the first row lies along this wall
	RunThrough string            // rows run through this doorway
	EdgeOn     string            // a row edge on this corner
	FullAt     string            // a full board along this edge of the floor, by its name
	Seen       []room.Wall       // walls where a taper would be seen: lit from the side, along a hall
	Middle     bool              // the first rows lie in the middle, and go both ways from a spline
	Turning    Turning           // which pockets behind the start are laid backwards
	Doorways   map[string]Change // what happens where the floor goes through them; left out: Through
	Line       *plane.XY         // a row line runs through this place: where a field begins at another
	Continuous Continuous        // rows go on through a doorway
	TaperAt    room.Wall         // this wall takes the taper: rows run along the one that faces it
	TaperSoft  bool              // that is a wish, and gives way where it leaves a sliver
	Pins       []lay.Pin         // kept even where they break a limit
}

// basis is what a direction was taken from.
type basis struct {
	wall   room.Wall
	across bool
	why    string
}

// direction is which way the rows run, turned so that the first row lies at
// the low side, with what it was taken from.
func direction(b room.Built, w Wishes) (plane.Dir, basis, []finding.Finding) {
	from, fs := along(b, w)
	d, _ := wallDir(b, from.wall)
	if w.Between != ([2]room.Wall{}) && !w.Continuous.Pinned {
		if e, ok := between(b, w.Between[0], w.Between[1]); ok {
			d, from = e, halfway(w.Between[0], w.Between[1])
		} else {
			fs = append(fs, noHalf(w.Between))
		}
	}
	if w.Across && !w.Continuous.Pinned {
		from.across, from.why = !from.across, "square to that: "+from.why
	}
	if from.across {
		d = plane.Dir(plane.XY(d).Left())
	}
	if w.TaperAt != (room.Wall{}) && !w.Continuous.Pinned {
		if v, ok := facing(b, w.TaperAt); ok {
			d, _ = wallDir(b, v)
			from = basis{wall: v, why: fmt.Sprintf("rows along wall %s, so that wall %s takes the taper", v, w.TaperAt)}
		} else {
			fs = append(fs, noFacing(w.TaperAt))
		}
	}
	if w.Angle != 0 {
		s, c := math.Sincos(w.Angle * math.Pi / 180)
		u := plane.XY(d)
		d = plane.Dir(plane.XY{X: u.X*c - u.Y*s, Y: u.X*s + u.Y*c}.Unit())
		from = basis{why: from.turned(w.Angle)}
	}
	d = toward(d, b, w.Pins)
	if w.StartWall == (room.Wall{}) {
		return d, from, fs
	}
	s, ok := wallDir(b, w.StartWall)
	if !ok {
		return d, from, append(fs, noWall("start wall", w.StartWall))
	}
	dot := plane.XY(d).Dot(plane.XY(s))
	if dot < 0 {
		d = d.Flip()
	}
	if math.Abs(dot) < math.Sqrt2/2 {
		fs = append(fs, finding.Finding{Level: finding.Warn, Rule: "start wall", Where: "wall " + w.StartWall.String(),
			Measured: "the rows end at this wall instead of lying along it",
			Do:       "Choose a start wall that runs with the rows, or the other direction."})
		return d, from, fs
	}
	from.why += fmt.Sprintf("; first row along wall %s", w.StartWall)
	return d, from, fs
}

// turned says how rows lie that are turned by degrees, against the wall that they were
// taken from: by the lesser angle between the two.
func (b basis) turned(degrees float64) string {
	off := math.Mod(math.Abs(degrees), 180)
	off = min(off, 180-off)
	if b.across {
		off = 90 - off
	}
	if b.wall == (room.Wall{}) {
		return fmt.Sprintf("rows at %g degrees to a line %s", off, strings.TrimPrefix(strings.TrimPrefix(b.why, "square to that: "), "rows "))
	}
	out := fmt.Sprintf("rows at %g degrees to wall %s", off, b.wall)
	if why, ok := strings.CutPrefix(b.why, "rows along wall "+b.wall.String()); ok {
		return out + why
	}
	return out
}

// along is the wall that the direction is taken from: the one wished for, the
// one with the doorway that rows are to run through, else the longest.
func along(b room.Built, w Wishes) (basis, []finding.Finding) {
	var fs []finding.Finding
	if from, ok := continuousBasis(b, w); ok {
		return from, nil
	}
	if w.Direction != (room.Wall{}) {
		if _, ok := wallDir(b, w.Direction); ok {
			return basis{wall: w.Direction, why: fmt.Sprintf("rows along wall %s, as wished", w.Direction)}, nil
		}
		fs = append(fs, noWall("direction", w.Direction))
	}
	for _, dw := range b.Doorways {
		if _, ok := wallDir(b, dw.Wall); ok && dw.Name == w.RunThrough && w.RunThrough != "" {
			return basis{wall: dw.Wall, across: true, why: fmt.Sprintf("rows run through %s, as wished", dw.Said())}, fs
		}
	}
	best, length := room.Wall{}, -1.0
	for _, r := range b.Rooms {
		ring := r.Ring()
		for i, a := range ring {
			c := ring[(i+1)%len(ring)]
			if l := b.At[c].Sub(b.At[a]).Len(); l > length+0.5 { // half a millimetre decides nothing
				best, length = room.Wall{a, c}, l
			}
		}
	}
	return basis{wall: best, why: fmt.Sprintf("rows along wall %s, the longest", best)}, fs
}

// facing is the wall of the same room within 2 degrees of parallel to a wall,
// on the other side of the room; the longest of them.
func facing(b room.Built, w room.Wall) (room.Wall, bool) {
	i, _, ok := b.FindWall(w)
	d, ok2 := wallDir(b, w)
	if !ok || !ok2 {
		return w, false
	}
	best, long := w, 0.0
	ring := b.Rooms[i].Ring()
	for k, c := range ring {
		v := room.Wall{c, ring[(k+1)%len(ring)]}
		e, ok := wallDir(b, v)
		if l := b.At[v[1]].Sub(b.At[v[0]]).Len(); ok && plane.XY(d).Dot(plane.XY(e)) < -math.Cos(2*math.Pi/180) && l > long {
			best, long = v, l
		}
	}
	return best, long > 0
}

func noFacing(w room.Wall) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: "taper at a wall", Where: "wall " + w.String(),
		Measured: "no wall of its room faces it within 2 degrees of parallel", Do: "Name a wall that has one across the room, or give the direction of the rows."}
}

// halfway is the basis of rows between two walls.
func halfway(u, v room.Wall) basis {
	return basis{why: fmt.Sprintf("rows halfway between walls %s and %s", u, v)}
}

func noHalf(ws [2]room.Wall) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: "direction", Where: fmt.Sprintf("walls %s and %s", ws[0], ws[1]),
		Measured: "they are not within 2 degrees of parallel, or no room has them", Do: "Name two walls that face each other."}
}

// wallDir is the direction of a wall with its room on the left.
func wallDir(b room.Built, w room.Wall) (plane.Dir, bool) {
	_, ccw, ok := b.FindWall(w)
	if !ok || b.At[ccw[0]] == b.At[ccw[1]] {
		return plane.Dir{X: 1}, false
	}
	return plane.DirOf(b.At[ccw[0]], b.At[ccw[1]]), true
}

func noWall(rule string, w room.Wall) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: rule, Where: "wall " + w.String(),
		Measured: "no room has this wall", Do: "Name two neighbouring corners of a room."}
}
