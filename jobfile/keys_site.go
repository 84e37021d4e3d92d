package jobfile

import (
	"github.com/goccy/go-yaml/ast"

	"strake/moisture"
	"strake/site"
	"strake/tape"
)

// answer is a key whose value is yes or no, and may be left open.
func answer[T any](key, doc string, to func(*T) *site.Answer) field[T] {
	f := yes(key, doc, func(*T) *bool { return new(bool) })
	f.read = func(d *decoder, n ast.Node, t *T) {
		said, before := false, len(d.errs)
		yes(key, doc, func(*T) *bool { return &said }).read(d, n, t)
		if len(d.errs) > before {
			return
		}
		*to(t) = site.No
		if said {
			*to(t) = site.Yes
		}
	}
	return f.or("not answered")
}

var crawlTable = table[site.Crawl]{fields: []field[site.Crawl]{
	answer("cover", "All of its ground is covered by a sheet.", func(c *site.Crawl) *site.Answer { return &c.Cover }),
	answer("water", "Water stands in it, now or after rain.", func(c *site.Crawl) *site.Answer { return &c.Water }),
	length("height", "From the ground to the joists.", within{0, 25_000 * mm}, func(c *site.Crawl) *tape.Length { return &c.Height }).or("not known"),
	area("vents", "Its openings to the outside, all together.", func(c *site.Crawl) *tape.Area { return &c.Vents }).or("not known"),
	answer("closed", "It is closed and conditioned, without vents on purpose.", func(c *site.Crawl) *site.Answer { return &c.Closed }),
}}

// sheetKinds are the sheets that are told apart: only polyethylene matters by
// its name.
var sheetKinds = []string{"felt", "paper", "polyethylene", "foam", "other"}

var sheetTable = table[site.Sheet]{fields: []field[site.Sheet]{
	choice("kind", "What it is.", sheetKinds, func(s *site.Sheet) *string { return &s.Kind }).must(),
	figure("perm", "Its permeance, in perm (ASTM E96).", 0, 1000, func(s *site.Sheet) *float64 { return &s.Perm }).or("not known"),
}}

func siteField() field[draft] {
	tb := table[site.Site]{fields: []field[site.Site]{
		choice("level", "Where the floor lies against the ground outside: above, on or below.", []site.Level{site.Above, site.On, site.Below}, func(s *site.Site) *site.Level { return &s.Level }).or("not answered"),
		choice("subfloor", "What the boards are fastened to.", []site.Base{site.Wood, site.Concrete, site.OnSlab, site.SleepersToo}, func(s *site.Site) *site.Base { return &s.Base }).or("not answered"),
		whole("slab_days", "The age of the concrete, in days.", 0, 100_000, func(s *site.Site) *int { return &s.SlabDays }).or("not known"),
		answer("heated", "There is heating in the floor.", func(s *site.Site) *site.Answer { return &s.Heated }),
		surfaceField().or("not known"),
		choice("room", "What the room is, where water is to be thought of: bath (a full one), laundry, or dry.", []string{"dry", "bath", "laundry"}, func(s *site.Site) *string { return &s.Room }).or("dry"),
		told(sub("crawl", "The crawl space below the floor.", crawlTable, func(s *site.Site) *site.Crawl { return &s.Crawl }), func(s *site.Site) { s.Crawl.Told = true }).or("there is none"),
		answer("flat", "It is a flat, or a house under rules of an association.", func(s *site.Site) *site.Answer { return &s.Flat }),
		answer("allowed", "Its rules were asked and allow the floor.", func(s *site.Site) *site.Answer { return &s.Allowed }),
		sub("sheet", "What is rolled out between subfloor and boards.", sheetTable, func(s *site.Site) *site.Sheet { return &s.Sheet }).or("nothing, or not chosen"),
		answer("glue", "The boards are glued as well as nailed.", func(s *site.Site) *site.Answer { return &s.Glue }),
		answer("glue_over_sheet", "The adhesive's maker allows it over that sheet.", func(s *site.Site) *site.Answer { return &s.GlueOver }),
		rankedField(site.Guides, func(s *site.Site) *site.Limits { return &s.Limits }).or("trade guidance, each with its source"),
	}}
	return told(sub("site", "Whether the floor belongs here: strake ready asks it first.", tb, func(j *draft) *site.Site { return &j.Site }), func(j *draft) { j.Site.Told = true })
}

// told is f, which also notes that it was there at all.
func told[T any](f field[T], note func(*T)) field[T] {
	read := f.read
	f.read = func(d *decoder, n ast.Node, t *T) {
		note(t)
		read(d, n, t)
	}
	return f
}

// surfaceField reads the highest surface temperature of a heated floor.
func surfaceField() field[site.Site] {
	f := temperature("surface", "The highest temperature at the surface of a heated floor.", func(*site.Site) *moisture.Temperature { return new(moisture.Temperature) })
	f.read = func(d *decoder, n ast.Node, s *site.Site) {
		var t moisture.Temperature
		before := len(d.errs)
		temperature("surface", "", func(*site.Site) *moisture.Temperature { return &t }).read(d, n, s)
		if len(d.errs) == before {
			s.Surface = t.F()
		}
	}
	return f
}
