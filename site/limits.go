package site

import (
	"strings"

	"strake/ready"
)

// Limits are limits that replace the guidance, by their keys.
type Limits map[string][]ready.Limit

// The keys of the limits.
const (
	SlabDays    = "slab_days_least"
	Surface     = "surface_most"
	CrawlHeight = "crawl_height_least"
	PermLeast   = "perm_least"
	PermMost    = "perm_most"
)

const (
	common   = "common practice, no source"
	srcGrade = "from memory: trade guidance and makers' instructions for solid boards"
	srcBase  = "common practice, no source; vapour retarder on slabs: Hardwood Floors magazine, June 2017"
	srcAge   = "from memory: concrete is left 60 days before wood goes over it"
	srcHeat  = "Hardwood Floors magazine, January 2020 (NWFA 2019): 80 °F at the surface; older and other texts 85 °F; changed by no more than 5 °F a day"
	srcWet   = "from memory: makers' instructions exclude full baths and laundries"
	srcFlat  = "common practice, no source: rules of flats on sound and permission"
	srcPerm  = "Hardwood Floors magazine, February 2017: 0.7 to 10 perm (ASTM E96) over wood, laps of at least 4 in, never an impermeable sheet there"
	srcCrawl = "NWFA 2007 as two installers reprint it: 18 in of height, all ground covered by 6 mil polyethylene, laps 6 in, 6 in up the walls"
	srcVents = "IRC R408 as a study guide has it (second hand): 1 sq ft for 150, or for 1,500 with a ground cover; local code first"
)

// Guide is a limit of trade guidance with its key, unit and words.
type Guide struct {
	Key, Unit, Doc string
	Is             float64
	Source         string
}

// Guides are the limits of trade guidance.
var Guides = []Guide{
	{SlabDays, "days", "Concrete is at least so many days old.", 60, srcAge},
	{Surface, "°F", "The surface of a heated floor comes to this at most, in °F.", 80, srcHeat},
	{CrawlHeight, "in", "A crawl space is at least so high, in inches.", 18, srcCrawl},
	{PermLeast, "perm", "The sheet under nailed boards over wood lets at least so much vapour through, in perm.", 0.7, srcPerm},
	{PermMost, "perm", "The sheet under nailed boards over wood lets at most so much vapour through, in perm.", 10, srcPerm},
}

// rule is the limit that stands for a key, and its unit.
func (l Limits) rule(key string) (ready.Ruling, string) {
	for _, g := range Guides {
		if g.Key == key {
			return ready.Rule(ready.Limit{Is: g.Is, Source: g.Source}, l[key]...), g.Unit
		}
	}
	panic("site: no limit " + key)
}

// join is two sentences, either of which may be missing.
func join(a, b string) string { return strings.TrimSpace(a + " " + b) }
