package moisture

import (
	"strake/ready"
	"strake/tape"
)

// Limits are limits that replace the guidance, by their keys.
type Limits = ready.Limits

// The keys of the limits.
const (
	SubfloorMost    = "subfloor_most"
	BoardsMost      = "boards_most"
	DifferenceMost  = "difference_most"
	AimWithin       = "aim_within"
	SlabHumidity    = "slab_humidity_most"
	SlabEmission    = "slab_emission_most"
	HumidityLeast   = "humidity_least"
	HumidityMost    = "humidity_most"
	TemperatureLow  = "temperature_least"
	TemperatureHigh = "temperature_most"
)

const (
	srcSubfloor = "two makers' instructions: 12 % in most regions; others say 13 to 14 %"
	srcApart    = "NWFA guidelines, as reprinted in Hardwood Floors magazine, August 2017: 4 points for strip under 3 in, 2 points from 3 in on"
	srcCount    = "Hardwood Floors magazine, August 2017 and September 2019: 20 readings of the subfloor and 40 of boards for 1,000 sq ft; a maker's leaflet: not fewer than 10 and 20 up to 500 sq ft"
	srcClimate  = "Wood Floor Business and Hardwood Floors magazine 2024: 60 to 80 °F and 30 to 50 % (some makers 35 to 55 %); held for 5 days before boards are delivered"
	srcMidst    = "NWFA on acclimation, as a mill reprints it: the middle of the low and high of the region"
	srcSlab     = "Hardwood Floors magazine, June 2017: above 3 lb (ASTM F1869) or 75 %RH (ASTM F2170) a vapour retarder has to be there; it is advised always"
	srcTests    = "a meter maker's manual quoting ASTM F2170-09: 3 tests for the first 1,000 sq ft and one for each further 1,000"
	common      = "common practice, no source"
)

// Guides are the limits of trade guidance. That for the difference is of strip
// under 3 in; see DifferenceOf.
var Guides = ready.Guides{
	{Key: SubfloorMost, Unit: "%", Doc: "The mean of the subfloor's readings, in percent, is at most this.", Is: 12, Source: srcSubfloor},
	{Key: BoardsMost, Unit: "%", Doc: "The mean of the boards' readings, in percent, is at most this.", Is: 11, Source: common},
	{Key: DifferenceMost, Unit: "points", Doc: "Boards and wood subfloor are at most this many points apart, by their means (guidance: 4 for boards under 3 in, 2 for wider ones).", Is: 4, Source: srcApart},
	{Key: AimWithin, Unit: "points", Doc: "Boards are laid within so many points of the mid-season content.", Is: 2, Source: common},
	{Key: SlabHumidity, Unit: "%RH", Doc: "Above this relative humidity in the slab it has to have a vapour retarder (ASTM F2170).", Is: 75, Source: srcSlab},
	{Key: SlabEmission, Unit: "lb", Doc: "Above this emission, in lb per 1,000 sq ft in 24 h, the slab has to have a vapour retarder (ASTM F1869).", Is: 3, Source: srcSlab},
	{Key: HumidityLeast, Unit: "%RH", Doc: "The driest air in service.", Is: 30, Source: srcClimate},
	{Key: HumidityMost, Unit: "%RH", Doc: "The most humid air in service.", Is: 50, Source: srcClimate},
	{Key: TemperatureLow, Unit: "°F", Doc: "The coldest room in service, in °F.", Is: 60, Source: srcClimate},
	{Key: TemperatureHigh, Unit: "°F", Doc: "The warmest room in service, in °F.", Is: 80, Source: srcClimate},
}

// DifferenceOf is how far boards of this face width may be from the subfloor, with
// its unit.
func DifferenceOf(l Limits, face tape.Length) (ready.Ruling, string) {
	is := 4.0
	if face >= 3*tape.Inch {
		is = 2
	}
	return ready.Rule(ready.Limit{Is: is, Source: srcApart}, l[DifferenceMost]...), "points"
}
