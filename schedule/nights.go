package schedule

import "strings"

// Night is what can be walked on in some rooms after a day's work.
type Night struct {
	Rooms []string
	Say   string
}

// What can be walked on.
const (
	asItWas  = "as it was"
	strips   = "keep off: tack strips and staples"
	bare     = "bare subfloor: walk on it in shoes"
	loose    = "boards laid dry: step between them, not on them"
	lies     = "laid: walk on it"
	glueSets = "laid in glue: not before tomorrow"
	wet      = "keep off: the finish sets"
)

// nights says after each day what can be walked on, room by room in the order of
// laying.
func (c *Calendar) nights() {
	n := nights{c: c, left: map[string]int{}, part: map[string]string{}}
	for _, s := range c.Steps {
		for _, r := range s.rows {
			for _, room := range r.Rooms {
				n.left[room]++
			}
		}
	}
	for i := range c.Days {
		n.today = map[string]bool{}
		for _, s := range c.Days[i].Slots {
			n.slot(s)
		}
		c.Days[i].Night = n.say(n.done(i))
	}
}

type nights struct {
	c       *Calendar
	stripe  string // what is bare or not: the last of asItWas, strips, bare, loose
	left    map[string]int
	part    map[string]string // rooms begun: the last row that lies
	today   map[string]bool   // rooms that rows were laid in
	counted map[int]int       // rows of each step counted
	finish  bool
}

// slot takes a part of a step in.
func (n *nights) slot(s Slot) {
	st := n.c.Steps[s.Step]
	switch st.Key {
	case "base off", "tear out":
		n.stripe = strips
		if st.Key == "base off" {
			n.stripe = asItWas
		}
	case "clean", "look", "overlay", "sheet":
		n.stripe = bare
	case "rack":
		n.stripe = loose
	case "finish":
		n.finish = true
	}
	if n.counted == nil {
		n.counted = map[int]int{}
	}
	for _, r := range st.rows[n.counted[s.Step]:max(n.counted[s.Step], s.rows)] {
		for _, room := range r.Rooms {
			n.left[room]--
			n.part[room], n.today[room] = r.Name, true
		}
	}
	n.counted[s.Step] = max(n.counted[s.Step], s.rows)
}

// done tells whether day i is the last of finishing: then the finish sets.
func (n *nights) done(i int) bool {
	if !n.finish {
		return false
	}
	d := n.c.Days[i]
	for _, s := range d.Slots {
		if n.c.Steps[s.Step].Key == "finish" {
			return true
		}
	}
	return false
}

func (n *nights) say(wetNow bool) []Night {
	var out []Night
	for _, room := range n.c.Work.Rooms {
		say := n.room(room, wetNow)
		if k := len(out); k > 0 && out[k-1].Say == say {
			out[k-1].Rooms = append(out[k-1].Rooms, room)
			continue
		}
		out = append(out, Night{[]string{room}, say})
	}
	return out
}

func (n *nights) room(room string, wetNow bool) string {
	last, begun := n.part[room]
	stripe := n.stripe
	if stripe == "" {
		stripe = asItWas
		if len(n.c.Job.Done) > 0 {
			stripe = bare
		}
	}
	switch {
	case wetNow:
		return wet
	case begun && n.left[room] <= 0 && n.c.Work.Glued && n.today[room]:
		return glueSets
	case begun && n.left[room] <= 0:
		return lies
	case begun:
		return strings.Join([]string{"laid up to row ", last, ": walk on it, off its open tongue; ", rest(n.stripe)}, "")
	}
	return stripe
}

func rest(stripe string) string {
	if stripe == loose {
		return "beyond, " + loose
	}
	return "beyond, " + bare
}
