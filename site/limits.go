package site

import (
	"strings"

	"strake/ready"
)

// Limits are limits that replace the guidance, by their keys.
type Limits = ready.Limits

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

// Guides are the limits of trade guidance.
var Guides = ready.Guides{
	{Key: SlabDays, Unit: "days", Doc: "Concrete is at least so many days old.", Is: 60, Source: srcAge},
	{Key: Surface, Unit: "°F", Doc: "The surface of a heated floor comes to this at most, in °F.", Is: 80, Source: srcHeat},
	{Key: CrawlHeight, Unit: "in", Doc: "A crawl space is at least so high, in inches.", Is: 18, Source: srcCrawl},
	{Key: PermLeast, Unit: "perm", Doc: "The sheet under nailed boards over wood lets at least so much vapour through, in perm.", Is: 0.7, Source: srcPerm},
	{Key: PermMost, Unit: "perm", Doc: "The sheet under nailed boards over wood lets at most so much vapour through, in perm.", Is: 10, Source: srcPerm},
}

// join is two sentences, either of which may be missing.
func join(a, b string) string { return strings.TrimSpace(a + " " + b) }
