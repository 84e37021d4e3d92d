package jobfile

import (
	"strconv"

	"strake/room"
	"strake/subfloor"
	"strake/trim"
)

// heights checks what the job says of heights against its doorways, what stays
// and the layers that come out.
func (n *names) heights() {
	t := n.j.Trim
	if !t.Told {
		return
	}
	if _, known := subfloor.ComesOut(subfloor.Fates(n.j.Subfloor.Layers, n.j.Subfloor.Built)); t.From == trim.Now && !known {
		n.d.failPath(at("heights", "measured_from"), "what lies there now comes out, and how thick it is is not told", "now", "a thickness for each of subfloor, layers that comes out, down to what stays; or heights measured from the subfloor")
	}
	for _, o := range t.Openings {
		n.opening(o)
	}
	for _, s := range t.Stairs {
		if path := at("heights", "stairs", s.Name, "risers"); len(s.Risers) < 2 && !n.d.given(at(path, "1")) && n.d.given(path) {
			n.d.failPath(path, "a flight that is compared has two risers at least", "", "all risers of the flight, from the foot up")
		}
	}
	for _, a := range t.Appliances {
		if path := at("heights", "appliances", a.Name, "stands_on"); a.Boards == trim.Under && n.d.given(path) {
			n.d.failPath(path, "boards go under it, so it stands on them", "", "boards: front, where they end in front of it; or leave stands_on out")
		}
	}
	seen := map[room.Wall]bool{}
	for i, c := range t.Covers {
		path := at("heights", "covers", strconv.Itoa(i), "wall")
		switch w := c.Wall; {
		case !n.wall(path, w):
		case seen[w] || seen[room.Wall{w[1], w[0]}]:
			n.d.failPath(path, "this wall has a cover already", w.String(), "each wall once")
		}
		seen[c.Wall] = true
	}
}

// opening checks one opening: that there is one of its name, and that what is
// said of it goes with it.
func (n *names) opening(o trim.Opening) {
	path := at("heights", "openings", o.Name)
	var doors, all []string
	var door room.Doorway
	is := false
	for _, d := range n.j.Sketch.Doorways {
		doors, all = append(doors, d.Name), append(all, d.Name)
		if d.Name == o.Name {
			door, is = d, true
		}
	}
	stays, gap := false, false
	for _, s := range n.j.Sketch.Stays {
		all = append(all, s.Name)
		if s.Name == o.Name {
			stays, gap = true, s.Meets == room.MeetsGap
		}
	}
	given := func(key string) bool { return n.d.given(at(path, key)) }
	switch {
	case !is && !stays && n.broken:
	case !is && !stays && len(all) == 0:
		n.d.failPath(path+keyOf, "this job has no doorway or thing that stays", o.Name, "a doorway under doorways, by the same name")
	case !is && !stays:
		n.d.failPath(path+keyOf, "“"+o.Name+"” is no doorway, and nothing that stays", o.Name, suggest(o.Name, all))
	}
	for _, key := range []string{"height", "layers", "covering"} {
		if !given(key) {
			continue
		}
		switch {
		case is && door.Beyond == room.BeyondRoom:
			n.d.failPath(at(path, key), "beyond this doorway lies another room of this floor, of the same height", "", "leaf, jambs or track alone; or beyond: transition at the doorway, where another floor lies there")
		case is && door.Beyond == room.BeyondStair:
			n.d.failPath(at(path, key), "beyond this doorway lies a stair, which has risers", "", "leaf, jambs or track alone; the stair with its risers under heights, stairs")
		case !is && gap:
			n.d.failPath(at(path, key), "boards end before this with a gap under a cover, so its height meets nothing", o.Name, "only what is met flush or by a transition (meets: under stays)")
		default:
			continue
		}
		break
	}
	for _, key := range []string{"leaf", "jambs", "track"} {
		if !is && stays && given(key) {
			n.d.failPath(at(path, key), "this is no doorway, so it has no "+key, o.Name, suggest("", doors))
		}
	}
	if given("height") && given("layers") {
		n.d.failPath(at(path, "layers"), "height and layers say the same thing twice", "", "one of the two")
	}
	if given("leaf") && given("track") {
		n.d.failPath(at(path, "track"), "a doorway has a leaf or a track", "", "one of the two")
	}
}
