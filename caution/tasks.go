package caution

// Caution is something to mind during a task.
type Caution struct {
	Task   string
	Do     string
	Source string
}

// rule is a caution and when it applies; nil: always.
type rule struct {
	task, do, source string
	when             func(Work) bool
}

// rules are by the order of the work; those of one task stand together.
var rules = []rule{
	{"tear out", "Nothing old and resilient (sheet, tile, felt, black adhesive) is sanded, scraped dry, drilled, sawn, broken or swept before a laboratory has tested it. A licensed firm decides what comes next.", srcAsbestos,
		func(w Work) bool { return w.Tested || w.TearOut && (w.Built == 0 || w.Built < 1981) }},
	{"tear out", "Gloves, safety glasses, shoes with a sole that nails do not pass; a dust mask at least. Tack strip and staples go into a bucket as they come out. Rolls and strips no larger than one person carries.", common,
		func(w Work) bool { return w.TearOut }},
	{"tear out", "Gas, water and current to anything that is moved are shut off and parted by a licensed trade where local code wants one.", common, nil},
	{"crawl space", "Somebody knows that you are down there. Coverall, respirator, light without a live cable in the wet. Visible mould, droppings, bare wires or standing water: out, and a specialist.", common,
		func(w Work) bool { return w.Crawl }},
	{"make the subfloor flat", "Sanding wood: a sander with extraction, a respirator, no flame nearby, and only after old coverings, adhesive and paint were tested. No joist is cut, notched or planed.", srcDust,
		func(w Work) bool { return w.Sanded }},
	{"make the subfloor flat", "Grinding a slab, breaking tile or cement board makes silica dust: wet, or with a shroud and a HEPA vacuum, and a respirator. Never with a bare grinder indoors.", srcSilica,
		func(w Work) bool { return w.Mineral }},
	{"undercut", "Look for alarm wires, cables and hidden nails first. A fire-rated or exterior door or frame is not cut; steel and masonry jambs are scribed round. Masonry dust holds silica.", common,
		func(w Work) bool { return len(w.Undercut) > 0 }},
	{"saw", "Blade guard and riving knife on; a push block for rips under 6 in, and no rip without a fence or a guide. A strip under 1 in is ripped off a wide board, never the other way round. Unplugged for each change of blade.", common, nil},
	{"saw", "The board is supported along its whole length; no saw balanced on a knee or held in the air.", common, nil},
	{"saw", "Extraction and a respirator: the dust of hardwood is more than dirt. Hearing protection.", srcDust, nil},
	{"nail", "Single shots, not bumping. Never over the hand that holds the board, never towards a leg; the hose off before a jam is cleared. Safety glasses and hearing protection, also for who helps.", srcNailer, nil},
	{"nail", "Keep out of the parts to be kept free, also with face nails and screws: see the list of fasteners. A hiss, a drip or a tripped fuse: stop, shut off, open up.", common,
		func(w Work) bool { return !w.Slab }},
	{"nail", "Knees and back: pads, and a change of task every hour. Two people for full sheets, a refrigerator or a drum sander.", common, nil},
	{"glue and finish", "Windows open, pilot lights and other flames out, sparks away; the label goes before all. Rags with oil heat up by themselves and burn: lay them flat outside, or in water in a metal can with a lid.", common,
		func(w Work) bool { return w.Glued || w.Finish != Factory }},
	{"glue and finish", "Sanding dust can burn and, in the air, explode: empty the bag outside, into metal, and often.", common,
		func(w Work) bool { return w.Finish != Factory }},
	{"carry and stack", "A carton weighs about 50 to 60 lb (23 to 27 kg): lift with the legs, take the stairs by two. Spread the stacks over the rooms where they go, across the joists.", "common practice, no source; weights of cartons as consumer pages have them", nil},
	{"stairs", "An open edge is fenced before the rail comes off, and stays fenced overnight. A step of another height than its neighbours makes people fall: the risers are held to local code before the landing is raised.", srcGuard,
		func(w Work) bool { return len(w.Stairs) > 0 || w.Guard != "" }},
	{"fireplace", "No wood over or against what must not burn, and none under a stove: the distances are local code's and the maker's.", srcHearth,
		func(w Work) bool { return len(w.Fireplaces) > 0 }},
	{"heating", "It is off while boards are glued and nailed only if its maker and the boards' maker say so; it is brought up by steps.", common,
		func(w Work) bool { return w.Heated }},
}

// Cautions are those that go with the work, by the order of its tasks.
func Cautions(w Work) []Caution {
	var out []Caution
	for _, r := range rules {
		if r.when == nil || r.when(w) {
			out = append(out, Caution{r.task, r.do, r.source})
		}
	}
	return out
}
