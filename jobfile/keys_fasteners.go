package jobfile

import (
	"strconv"

	"strake/fasten"
	"strake/job"
	"strake/room"
	"strake/site"
	"strake/subfloor"
	"strake/tape"
)

var fastenersTable = table[job.Fasteners]{fields: []field[job.Fasteners]{
	choice("kind", "What the nailer drives. Do not mix the two in one floor.", []fasten.Kind{fasten.Cleat, fasten.Staple}, func(f *job.Fasteners) *fasten.Kind { return &f.Kind }).or("cleat"),
	length("length", "How long they are.", within{15 * mm, 100 * mm}, func(f *job.Fasteners) *tape.Length { return &f.Length }).or("2 in for 3/4 in boards, the schedule's least for thinner ones"),
	length("spacing", "From one to the next along a board, at most.", within{20 * mm, 600 * mm}, func(f *job.Fasteners) *tape.Length { return &f.Spacing }).or("the widest of the schedule"),
	length("ends", "From each end of a board to the first.", within{10 * mm, 200 * mm}, func(f *job.Fasteners) *tape.Length { return &f.End }).or("the middle of the schedule's range"),
	whole("box", "How many are in a box.", 1, 100000, func(f *job.Fasteners) *int { return &f.Box }).or("1,000 cleats or 5,000 staples, from memory"),
	choice("by", "Whose figures these are: local code goes before the maker's.", []string{"maker", "code"}, func(f *job.Fasteners) *string { return &f.By }).or("maker"),
	text("source", "Where they come from.", func(f *job.Fasteners) *string { return &f.From }).or("the job file"),
}}

var keepFreeTable = table[job.KeepFree]{fields: []field[job.KeepFree]{
	choice("what", "What lies there.", []string{"pipe", "heating", "cable", "duct"}, func(k *job.KeepFree) *string { return &k.What }).must(),
	wall("wall", "The wall it is set out from, into the room of that wall.", func(k *job.KeepFree) *room.Wall { return &k.Wall }).must(),
	corner("from", "The corner of that wall it is measured from.", func(k *job.KeepFree) *string { return &k.From }).must(),
	length("at", "From that corner along the wall to its near side.", anywhere, func(k *job.KeepFree) *tape.Length { return &k.At }).must(),
	length("off", "From the wall to its near edge.", anywhere, func(k *job.KeepFree) *tape.Length { return &k.Off }).or("it begins at the wall"),
	length("width", "Along the wall.", within{mm, tape.Longest}, func(k *job.KeepFree) *tape.Length { return &k.Width }).must(),
	length("depth", "Square to the wall.", within{mm, tape.Longest}, func(k *job.KeepFree) *tape.Length { return &k.Depth }).must(),
	length("below", "How deep its top lies below the top of the subfloor.", within{0, 600 * mm}, func(k *job.KeepFree) *tape.Length { return &k.Below }).or("not known: any fastener is taken to reach it"),
	length("margin", "How far fasteners keep away from it.", within{0, 300 * mm}, func(k *job.KeepFree) *tape.Length { return &k.Margin }).or("1 in"),
}}

func addKeepFree(j *draft, name string, k job.KeepFree) {
	k.Name = name
	j.KeepFree = append(j.KeepFree, k)
}

// keepFree checks where parts to be kept free lie, and fills in what was left out.
func (n *names) keepFree() {
	for i := range n.j.KeepFree {
		k := &n.j.KeepFree[i]
		path := at("keep_free", k.Name)
		if n.wall(at(path, "wall"), k.Wall) {
			n.end(at(path, "from"), k.From, k.Wall)
			n.reach(at(path, "width"), "the part to keep free", k.Wall, k.At+k.Width)
		}
		k.Known = n.d.given(at(path, "below"))
		if !n.d.given(at(path, "margin")) {
			k.Margin = in
		}
	}
	n.j.Nails.Told = n.d.given("fasteners")
}

// joists checks that what says where joists lie says all of it.
func (n *names) joists() {
	j := &n.j.Joists
	if j.Placed = n.d.given(at("joists", "first")); !j.Placed {
		return
	}
	for _, key := range []string{"along", "spacing"} {
		if !n.d.given(at("joists", key)) {
			n.d.failPath(at("joists", "first"), "where joists lie is told by first together with "+key, "", key+" as well, or leave first out")
		}
	}
}

// subfloor checks that figures of flatness rise and that the grid is one.
func (n *names) subfloor() {
	if base := n.j.Site.Base; base != "" && n.j.Subfloor.On != "" && (base == site.Wood) != (n.j.Subfloor.On == subfloor.OnWood) {
		n.d.failPath(at("subfloor", "on"), "under site the subfloor is another one: "+string(base), string(n.j.Subfloor.On), "the same in both")
	}
	own := n.j.Subfloor.Own
	s := tape.Paper(n.j.Unit)
	for i := 1; i < len(own); i++ {
		path := at("subfloor", "flat_limits", strconv.Itoa(i))
		switch a, b := own[i-1], own[i]; {
		case b.Length <= a.Length:
			n.d.failPath(path, "straightedges are told from the shortest to the longest", s.Of(b.Length)+" after "+s.Of(a.Length), "the figures by rising length, each once")
		case b.Gap < a.Gap:
			n.d.failPath(path, "a longer straightedge never shows less than a shorter one", s.Of(b.Gap)+" under "+s.Of(b.Length), "at least the "+s.Of(a.Gap)+" of "+s.Of(a.Length))
		}
	}
	for _, key := range []string{"flat_limits_by", "flat_limits_from"} {
		if path := at("subfloor", key); n.d.given(path) && !n.d.given(at("subfloor", "flat_limits")) {
			n.d.failPath(path, key+" goes with flat_limits", "", "flat_limits: [{under: 6', gap: 3/16\"}], or leave it out")
		}
	}
	h := n.j.Subfloor.Heights
	path := at("subfloor", "heights")
	if !n.d.given(path) {
		return
	}
	if n.wall(at(path, "wall"), h.Wall) {
		n.end(at(path, "from"), h.From, h.Wall)
		if h.Cols > 0 {
			n.reach(at(path, "lines"), "the grid", h.Wall, h.At+tape.Length(h.Cols-1)*h.Step)
		}
	}
	if h.Cols > 0 && max(h.Cols, h.Rows) < 3 {
		n.d.failPath(at(path, "lines"), "this grid is too small to lay a straightedge on", "", "three marks in a row at least")
	}
}
