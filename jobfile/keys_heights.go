package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/room"
	"strake/subfloor"
	"strake/tape"
	"strake/trim"
)

// The ranges of heights: a wrong unit falls out of them.
var (
	aLayer  = within{mm / 10, 150 * mm}
	aLevel  = within{-150 * mm, 300 * mm}
	aClear  = within{0, 200 * mm}
	aRiser  = within{50 * mm, 350 * mm}
	aRecess = within{200 * mm, 3000 * mm}
	aRaise  = within{0, 150 * mm}
	aShim   = within{0, 60 * mm}
)

func heightsField() field[draft] {
	tb := table[trim.Job]{fields: []field[trim.Job]{
		choice("measured_from", "What all heights below are measured from: subfloor (the one that stays and boards are laid over), or now (what lies there now: what of subfloor, layers comes out is counted to it).", []trim.From{trim.Subfloor, trim.Now}, func(t *trim.Job) *trim.From { return &t.From }).or("subfloor"),
		length("panel", "The panel laid over the subfloor, under the boards.", aLayer, func(t *trim.Job) *tape.Length { return &t.Panel }).or("none"),
		sheetThickness().or("1/32 in where site has felt or paper for a sheet, else none"),
		sub("stocked", "What could be had besides: heights.txt compares every board on every panel, and on none.", stockedTable, func(t *trim.Job) *trim.Stocked { return &t.Stocked }).or("nothing is compared"),
		each("openings", "Doorways, and what stays, where this floor meets another, a door or a jamb: each by its name.", "opening", openingTable, func(t *trim.Job, name string, o trim.Opening) {
			o.Name = name
			t.Openings = append(t.Openings, o)
		}),
		each("stairs", "Flights that this floor is the foot or the head of.", "stair", stairTable, func(t *trim.Job, name string, s trim.Stair) {
			s.Name = name
			t.Stairs = append(t.Stairs, s)
		}),
		each("appliances", "What stands under a counter or in a recess: dishwasher, refrigerator, stove, washer.", "appliance", applianceTable, func(t *trim.Job, name string, a trim.Appliance) {
			a.Name = name
			t.Appliances = append(t.Appliances, a)
		}),
		list("covers", "Walls whose gap is covered by something else than base and shoe. Rows are planned by base and shoe all the same; this is held against what they leave.", "wall", coverTable, func(_ *decoder, _ ast.Node, t *trim.Job, c trim.Cover) { t.Covers = append(t.Covers, c) }).or("base and shoe at every wall"),
		rankedLengths(trim.Guides, func(t *trim.Job) *trim.Limits { return &t.Limits }).or("trade guidance and published figures, each with its source"),
	}}
	return told(sub("heights", "How high the floor comes against what it meets: floors beyond, door leaves, jambs, stairs, appliances, and base and shoe.", tb, func(j *draft) *trim.Job { return &j.Trim }), func(j *draft) { j.Trim.Told = true })
}

// sheetThickness reads the thickness of the sheet, and that it was told.
func sheetThickness() field[trim.Job] {
	return told(length("sheet", "What is rolled out under the boards, as thick as it is pressed flat.", within{0, 10 * mm}, func(t *trim.Job) *tape.Length { return &t.Sheet }), func(t *trim.Job) { t.SheetTold = true })
}

var stockedTable = table[trim.Stocked]{fields: []field[trim.Stocked]{
	lengths("boards", "Thicknesses of boards.", "[5/8, 3/4]", within{6 * mm, 60 * mm}, func(s *trim.Stocked) *[]tape.Length { return &s.Boards }).or("the boards of the job"),
	lengths("panels", "Thicknesses of panels.", "[1/4, 1/2]", within{2 * mm, 40 * mm}, func(s *trim.Stocked) *[]tape.Length { return &s.Panels }).or("the panel of the job"),
}}

// lengths is a key whose value is a list of lengths.
func lengths[T any](key, doc, like string, w within, to func(*T) *[]tape.Length) field[T] {
	s := shape{words: "a list of lengths, such as " + like, schema: map[string]any{"type": "array", "items": lengthSchema(false)}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				if r, ok := d.reading(n, w); ok {
					*to(t) = append(*to(t), r.Value)
				}
			})
		}
	})
}

var openingTable = table[trim.Opening]{fields: []field[trim.Opening]{
	choice("covering", "What lies beyond; sill is that of a sliding or outside door.", []string{"tile", "stone", "boards", "laminate", "vinyl", "carpet", "concrete", "sill", "other"}, func(o *trim.Opening) *string { return &o.Covering }).or("other"),
	told(length("height", "How high the floor beyond lies over what heights are measured from; carpet pressed down.", aLevel, func(o *trim.Opening) *tape.Length { return &o.Height }), func(o *trim.Opening) { o.Known = true }).or("not known, or see layers"),
	list("layers", "Instead of height: the layers of the floor beyond, from the top down to the same subfloor.", "layer", beyondLayerTable, func(_ *decoder, _ ast.Node, o *trim.Opening, l trim.Layer) {
		o.Layers, o.Known = append(o.Layers, l), true
	}),
	length("shim", "What is built up under this floor at that spot.", aShim, func(o *trim.Opening) *tape.Length { return &o.Shim }).or("nothing"),
	told(sub("leaf", "The leaf of a hinged door.", leafTable, func(o *trim.Opening) *trim.Leaf { return &o.Leaf }), func(o *trim.Opening) { o.Leaf.Told = true }).or("none, or not looked at"),
	told(sub("jambs", "Its jambs and casings.", jambTable, func(o *trim.Opening) *trim.Jambs { return &o.Jambs }), func(o *trim.Opening) { o.Jambs.Told = true }).or("not looked at"),
	told(sub("track", "A bifold or sliding door instead of a leaf.", trackTable, func(o *trim.Opening) *trim.Track { return &o.Track }), func(o *trim.Opening) { o.Track.Told = true }).or("none"),
}}

var beyondLayerTable = table[trim.Layer]{fields: []field[trim.Layer]{
	choice("what", "What it is.", materialWords(), func(l *trim.Layer) *string { return &l.What }).must(),
	length("thickness", "How thick it is.", aLayer, func(l *trim.Layer) *tape.Length { return &l.Thickness }).must(),
}}

func materialWords() []string {
	var out []string
	for _, m := range subfloor.Materials() {
		out = append(out, string(m))
	}
	return out
}

var leafTable = table[trim.Leaf]{fields: []field[trim.Leaf]{
	choice("of", "What it is made of.", []string{"solid wood", "hollow-core", "steel", "glass"}, func(l *trim.Leaf) *string { return &l.Of }).must(),
	length("clear", "From its bottom down to what heights are measured from, where that is highest under its swing.", aClear, func(l *trim.Leaf) *tape.Length { return &l.Clear }).must(),
	yes("opens_beyond", "It opens over the floor beyond, not over this one.", func(l *trim.Leaf) *bool { return &l.Beyond }).or("no"),
	length("strip", "How far a strip or saddle under it stands up over the higher of the two floors.", aClear, func(l *trim.Leaf) *tape.Length { return &l.Strip }).or("nothing stands up"),
	length("cut_most", "How much its maker lets be cut off its bottom.", aClear, func(l *trim.Leaf) *tape.Length { return &l.CutMost }).or("not known"),
	yes("fire_rated", "It is fire-rated: there is a label on its edge.", func(l *trim.Leaf) *bool { return &l.Rated }).or("no"),
	yes("exterior", "It leads outside.", func(l *trim.Leaf) *bool { return &l.Exterior }).or("no"),
}}

var jambTable = table[trim.Jambs]{fields: []field[trim.Jambs]{
	choice("of", "What they are made of.", []string{"wood", "steel", "masonry"}, func(j *trim.Jambs) *string { return &j.Of }).must(),
	yes("fire_rated", "The frame is fire-rated.", func(j *trim.Jambs) *bool { return &j.Rated }).or("no"),
	yes("exterior", "The frame is that of an outside door.", func(j *trim.Jambs) *bool { return &j.Exterior }).or("no"),
}}

var trackTable = table[trim.Track]{fields: []field[trim.Track]{
	choice("of", "What it is.", []string{"bifold", "sliding"}, func(t *trim.Track) *string { return &t.Of }).must(),
	length("clear", "From the bottom of its leaves down to what heights are measured from.", aClear, func(t *trim.Track) *tape.Length { return &t.Clear }).must(),
	length("guide", "How high its floor guide or pivot bracket is, screwed to the new floor.", aClear, func(t *trim.Track) *tape.Length { return &t.Guide }).or("none"),
	length("lifts", "How far its hangers or pivots still turn up.", aClear, func(t *trim.Track) *tape.Length { return &t.Lifts }).or("not at all"),
}}

var stairTable = table[trim.Stair]{fields: []field[trim.Stair]{
	yes("head", "This floor is at its head; else at its foot.", func(s *trim.Stair) *bool { return &s.Head }).or("no"),
	lengths("risers", "Its risers as they are now, one by one from the foot up, from tread to tread; the one at this floor to what heights are measured from.", "[7-1/2, 7-9/16, 7-1/2]", aRiser, func(s *trim.Stair) *[]tape.Length { return &s.Risers }).must(),
	length("treads_raised", "How much higher each tread will be, where the treads are covered too.", aRaise, func(s *trim.Stair) *tape.Length { return &s.Treads }).or("they stay as they are"),
	length("other_end_raised", "How much higher the floor at its other end will be.", aRaise, func(s *trim.Stair) *tape.Length { return &s.Other }).or("it stays as it is"),
	length("shim", "What is built up under this floor at that spot.", aShim, func(s *trim.Stair) *tape.Length { return &s.Shim }).or("nothing"),
}}

var applianceTable = table[trim.Appliance]{fields: []field[trim.Appliance]{
	length("opening", "From what heights are measured from up to the underside above it, where that is lowest.", aRecess, func(a *trim.Appliance) *tape.Length { return &a.Opening }).must(),
	length("height", "Its own height with its feet turned in.", aRecess, func(a *trim.Appliance) *tape.Length { return &a.Height }).must(),
	length("feet", "How far its feet turn out.", aClear, func(a *trim.Appliance) *tape.Length { return &a.Feet }).or("not known"),
	choice("boards", "under (the boards go under it) or front (they end in front of it).", []trim.Where{trim.Under, trim.Front}, func(a *trim.Appliance) *trim.Where { return &a.Boards }).must(),
	length("stands_on", "Where boards end in front of it: what it stands on, over the subfloor.", aRaise, func(a *trim.Appliance) *tape.Length { return &a.StandsOn }).or("the subfloor"),
}}

var coverTable = table[trim.Cover]{fields: []field[trim.Cover]{
	wall("wall", "The wall.", func(c *trim.Cover) *room.Wall { return &c.Wall }).must(),
	length("thickness", "What covers the gap there, off the wall.", within{0, 120 * mm}, func(c *trim.Cover) *tape.Length { return &c.Thickness }).must(),
}}
