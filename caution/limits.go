package caution

import "strake/ready"

// The keys of the limits.
const (
	PaintYear   = "paint_year"
	HearthFront = "hearth_front_least"
	HearthSide  = "hearth_side_least"
	LargeFront  = "large_hearth_front_least"
	LargeSide   = "large_hearth_side_least"
	LargeFrom   = "large_opening_from"
	FloorLoad   = "floor_load_most"
	NoiseDay    = "noise_day_most"
)

const (
	common      = "common practice, no source"
	srcPaint    = "US: houses from before 1978, EPA rules for renovation (RRP) for paid work, as two summaries have them; elsewhere local rules"
	srcHearth   = "from memory: IRC R1001.10, hearth extension; local code first"
	srcLoad     = "from memory: 40 psf live load of dwellings (IRC table R301.5); the figure for this floor is an engineer's"
	srcNoise    = "NIOSH: 85 dBA over 8 hours, half the time for each 3 dB more"
	srcGuard    = "from memory: IRC R312 asks for a guard where a floor is more than 30 in above what lies below; local code first"
	srcJoists   = "from memory: IRC R502.8 on cutting and notching of joists; local code and an engineer first"
	srcNailer   = "NIOSH and OSHA guide to nail guns, as three summaries have it: bumping with the trigger held has about double the risk of single shots"
	srcDust     = "OSHA 15 mg/m³ of wood dust, NIOSH and ACGIH 1 mg/m³; ACGIH has oak and beech as known to cause cancer"
	srcSilica   = "OSHA 29 CFR 1926.1153: 50 µg/m³ of respirable silica over 8 hours"
	srcAsbestos = "RFCI recommended work practices; from memory: OSHA 29 CFR 1926.1101 presumes asbestos in resilient floors put down up to 1980; local rules first"
)

// Guides are the limits of trade guidance and of model codes. Those of a model
// code stand with the guidance: what binds is local code, which a job can enter.
var Guides = ready.Guides{
	{Key: PaintYear, Unit: "(year)", Doc: "Paint in buildings from before this year is taken to hold lead until it was tested.", Is: 1978, Source: srcPaint},
	{Key: HearthFront, Unit: "in", Doc: "From the opening of a fireplace out to the first wood, in inches.", Is: 16, Source: srcHearth},
	{Key: HearthSide, Unit: "in", Doc: "From the side of its opening to the first wood, in inches.", Is: 8, Source: srcHearth},
	{Key: LargeFront, Unit: "in", Doc: "The same out from a large opening, in inches.", Is: 20, Source: srcHearth},
	{Key: LargeSide, Unit: "in", Doc: "The same beside a large opening, in inches.", Is: 12, Source: srcHearth},
	{Key: LargeFrom, Unit: "sq ft", Doc: "An opening counts as large from this on, in square feet.", Is: 6, Source: srcHearth},
	{Key: FloorLoad, Unit: "psf", Doc: "What the floor carries besides itself, in pounds per square foot.", Is: 40, Source: srcLoad},
	{Key: NoiseDay, Unit: "dBA", Doc: "The level that an ear without protection takes for eight hours, in dBA.", Is: 85, Source: srcNoise},
}

// rule is the limit that stands for a key, with its unit in the job's system.
func (w Work) rule(key string) (ready.Ruling, string) {
	r, unit := Guides.Rule(w.Limits, key)
	return r, unit
}
