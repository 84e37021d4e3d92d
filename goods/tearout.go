package goods

import (
	"fmt"
	"math"

	"strake/tape"
)

// TearOut is what comes out before boards are laid.
type TearOut struct {
	SqFt   float64 // of the floor
	Layers []OutLayer
}

// OutLayer is a layer that comes out.
type OutLayer struct {
	What      string
	Thickness tape.Length // 0 not known
	Test      bool        // it may hold asbestos
}

const (
	srcCarpet = "a renovation guide: carpet with pad weighs 5 to 10 lb a square yard"
	srcLoose  = "EPA conversion factors of 2016: carpet and pad, loose, 105 lb a cubic yard"
	srcTacks  = "from memory: tack strip comes in sticks of 4 ft, all around about 1/2 in from the wall"
	srcPadFix = "from memory: 1 to 3 staples a square foot hold the pad"
	srcHeap   = "common practice, no source: broken up, a layer takes twice its room"
	srcBags   = "common practice, no source: a rubble bag takes 2 cu ft of what is heavy"

	carryPounds = 50.0 // what one person carries
	perYard     = 105.0
)

// tearOut is what comes out: its weight, how it is carried, what it fills.
func (k *work) tearOut() {
	o := k.f.Out
	var yards, bagged float64
	for _, l := range o.Layers {
		switch {
		case l.Test:
			k.add(Line{Group: Tear, What: l.What, From: "it may hold asbestos", Do: "Nothing is counted and nothing touched before a laboratory has tested it; what a licensed firm takes for it goes into the money by hand."})
		case l.What == "carpet":
			yards += k.carpet(o)
		case l.Thickness > 0 && !(l.What == "foam" && hasCarpet(o)):
			feet := o.SqFt * l.Thickness.Inches() / 12
			bagged += feet
			yards += 2 * feet / 27
			k.add(Line{Group: Tear, What: l.What + " out", From: k.area(o.SqFt) + " of " + k.say(l.Thickness) + ": " + k.volume(2*feet/27) + " broken up", Source: srcHeap})
		}
	}
	if hasCarpet(o) {
		bagged += 2 // tack strip, staples and dust
	}
	if bagged > 0 {
		k.add(Line{Group: Tear, What: "rubble bags", Item: Bags, Count: int(math.Ceil(bagged / 2)), Unit: "bag", From: "what is not rolled up", Source: srcBags})
	}
	if yards > 0 {
		n, unit := math.Ceil(yards), "cubic yard"
		if !k.f.Unit.Imperial() {
			n, unit = math.Ceil(yards*cubicMetre), "cubic metre"
		}
		k.add(Line{Group: Tear, What: "disposal", Item: Disposal, Count: int(n), Unit: unit, From: k.volume(yards) + " of what comes out, loose", Do: "Ask what the tip takes, and what apart."})
	}
}

const cubicMetre = 0.764554857984

func hasCarpet(o TearOut) bool {
	for _, l := range o.Layers {
		if l.What == "carpet" && !l.Test {
			return true
		}
	}
	return false
}

// carpet is carpet with its pad and tack strip; it returns the cubic yards it fills.
func (k *work) carpet(o TearOut) float64 {
	low, high := o.SqFt/9*5, o.SqFt/9*10
	rolls := int(math.Ceil(high / carryPounds))
	k.add(Line{Group: Tear, What: "carpet and pad out", From: fmt.Sprintf("%s: %s to %s", k.area(o.SqFt), k.weight(low), k.weight(high)), Source: srcCarpet + "; " + srcLoose,
		Do: fmt.Sprintf("Cut from the back into strips and roll them up: %d rolls, so that none weighs more than %s, which one person carries.", rolls, k.weight(carryPounds))})
	var walls tape.Length
	for _, s := range k.f.Stretches {
		walls += s.Length
	}
	sticks := int((walls + 4*tape.Foot - 1) / (4 * tape.Foot))
	k.add(Line{Group: Tear, What: "tack strip out", From: fmt.Sprintf("%s of wall: about %d sticks", k.long(walls), sticks), Source: srcTacks, Do: "Pry it up a nail at a time, straight into a bucket."})
	k.add(Line{Group: Tear, What: "fixings of the pad pulled or scraped", From: fmt.Sprintf("%.0f to %.0f staples", o.SqFt, 3*o.SqFt), Source: srcPadFix, Do: "Pliers for what stands, a scraper for what is glued; a magnet and a vacuum after."})
	return high / perYard
}

func (k *work) area(sqft float64) string {
	if k.f.Unit.Imperial() {
		return fmt.Sprintf("%.0f sq ft", sqft)
	}
	return fmt.Sprintf("%.1f m2", sqft*0.09290304)
}

func (k *work) weight(lb float64) string {
	if k.f.Unit.Imperial() {
		return fmt.Sprintf("%.0f lb", lb)
	}
	return fmt.Sprintf("%.0f kg", lb*0.45359237)
}

func (k *work) volume(yards float64) string {
	if k.f.Unit.Imperial() {
		return fmt.Sprintf("%.1f cubic yards", yards)
	}
	return fmt.Sprintf("%.1f m3", yards*cubicMetre)
}
