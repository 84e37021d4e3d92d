package schedule

// Unit is what a rate is for.
type Unit int

// The units: one thing, an area of 100 sq ft or 10 m2, a length of 100 ft or 10 m.
const (
	Each Unit = iota
	ByArea
	ByLength
)

// Said is the unit as a job in feet and inches or in metres says it.
func (u Unit) Said(imperial bool) string {
	switch {
	case u == ByArea && imperial:
		return "100 sq ft"
	case u == ByArea:
		return "10 m2"
	case u == ByLength && imperial:
		return "100 ft"
	case u == ByLength:
		return "10 m"
	}
	return "each"
}

// Of is how many of the unit a quantity has: square feet, feet, or pieces.
func (u Unit) Of(q float64, imperial bool) float64 {
	switch {
	case u == ByArea && imperial, u == ByLength && imperial:
		return q / 100
	case u == ByArea:
		return q * 0.09290304 / 10
	case u == ByLength:
		return q * 0.3048 / 10
	}
	return q
}

// Rate is how many hours a task takes for each of its unit, in feet: a job in
// metres has it converted.
type Rate struct {
	Key   string
	Doc   string
	Unit  Unit
	Alone float64 // hours of one person for the first time
	// What the hours of the other two crews are of that, clock hours and not hours
	// of all hands.
	Helped, Experienced float64
	Source              string
}

const (
	common     = "common practice, no source"
	srcCarpet  = "from memory: 100 to 200 sq ft of carpet an hour, tack strips and staples with it"
	srcLayer   = common + ": a hall of some 120 sq ft of carpet and particleboard cleared in 6 h"
	srcField   = common + ": 20 to 30 sq ft an hour; whoever lays for a living has told of 60"
	srcFirst   = common + ": a first row took hours; several times the field's for its area"
	srcLast    = common + ": the last five rows took as long as the rest of a room"
	srcRacking = common + ": a hall of 3,000 sq ft racked in 4 h by whoever does it daily"
	srcFinish  = common + ": 300 sq ft a day sanded and finished against 500 that come finished, twice that for a first time"
)

// Rates are the rates by the order of the work.
var Rates = []Rate{
	{"sample", "To take a sample of a covering or of paint and send it off.", Each, 0.5, 1, 1, common},
	{"empty", "To empty a room.", Each, 1, 0.5, 1, common},
	{"doors_off", "To take a door off its hinges.", Each, 0.25, 0.6, 0.6, common},
	{"appliances_out", "To take an appliance out; a licensed trade parts gas, water and current.", Each, 0.75, 0.5, 0.8, common},
	{"base_off", "To take base and shoe off, numbered wall by wall.", ByLength, 1.25, 0.6, 0.6, common},
	{"carpet_out", "To take carpet out with its pad, strips and staples.", ByArea, 0.67, 0.6, 0.6, srcCarpet},
	{"loose_out", "To take out a covering that lies loose.", ByArea, 0.75, 0.6, 0.7, common},
	{"layer_out", "To take out a layer that is nailed, screwed or glued.", ByArea, 4, 0.6, 0.6, srcLayer},
	{"clean", "To pull or scrape what holds still, sweep and vacuum.", ByArea, 0.3, 0.6, 0.7, common},
	{"look", "To look at layers and services of a room.", Each, 0.5, 1, 0.7, common},
	{"screws", "To drive a screw where it squeaks.", Each, 0.02, 0.7, 0.7, common},
	{"flatten", "To sand down or build up a place.", Each, 1, 0.7, 0.6, common},
	{"panel", "To screw down panels over the subfloor.", ByArea, 2, 0.55, 0.6, common},
	{"read", "To take a moisture reading and write it down.", Each, 0.02, 1, 0.8, common},
	{"carry", "To carry a carton in and open or cross-stack it.", Each, 0.05, 0.6, 0.9, common},
	{"undercut", "To undercut a jamb with its casing.", Each, 0.25, 1, 0.6, common},
	{"sheet", "To roll out and staple the sheet under the boards.", ByArea, 0.25, 0.6, 0.7, common},
	{"set_out", "To set out a room: lines snapped and checked, joists carried up the wall.", Each, 1, 0.7, 0.6, common},
	{"rack", "To rack: boards chosen and laid dry in their rows.", ByArea, 0.5, 0.6, 0.4, srcRacking},
	{"first_rows", "To lay first rows, nailed by hand.", ByArea, 8, 0.7, 0.6, srcFirst},
	{"field", "To lay rows that the floor nailer reaches.", ByArea, 3.3, 0.6, 0.5, srcField},
	{"last_rows", "To lay last rows, where the nailer does not fit: ripped, drawn up, nailed by hand or through the face.", ByArea, 16, 0.7, 0.6, srcLast},
	{"transitions", "To fit a transition or nosing at an opening.", Each, 0.75, 1, 0.6, common},
	{"base_on", "To put the base back by its numbers.", ByLength, 2, 0.7, 0.6, common},
	{"shoe_on", "To fit the shoe.", ByLength, 1, 0.7, 0.6, common},
	{"doors_on", "To cut a door where it has to be, and hang it.", Each, 0.5, 0.6, 0.6, common},
	{"appliances_in", "To put an appliance back.", Each, 0.75, 0.5, 0.8, common},
	{"finish", "To sand and finish, all coats.", ByArea, 2.1, 0.7, 0.5, srcFinish},
}

// RateOf is the rate of a key; not ok where there is none.
func RateOf(key string) (Rate, bool) {
	for _, r := range Rates {
		if r.Key == key {
			return r, true
		}
	}
	return Rate{}, false
}

// Used is a rate as it is used on a job.
type Used struct {
	Rate
	Hours  float64 // for each of its unit, as the job measures
	Source string
	Own    bool
}

// Hours are the rate's hours for each of its unit for a crew, as a job in feet
// and inches or in metres measures.
func (r Rate) Hours(c Crew, imperial bool) float64 {
	h := r.Alone
	switch c {
	case Helped:
		h *= r.Helped
	case Experienced:
		h *= r.Experienced
	}
	if r.Unit == Each || imperial {
		return h
	}
	return h * r.Unit.Of(1, true) / r.Unit.Of(1, false)
}

// used is a rate as a job has it: its own, else that of the crew.
func (j Job) used(key string, imperial bool) Used {
	r, _ := RateOf(key)
	u := Used{Rate: r, Hours: r.Hours(j.Crew, imperial), Source: r.Source}
	if o, ok := j.Own[key]; ok {
		u.Hours, u.Source, u.Own = o.Hours, o.Source, true
	}
	return u
}
