package trim

import (
	"fmt"

	"strake/ready"
	"strake/tape"
)

// Fit is an appliance in its place once the floor is down.
type Fit struct {
	Appliance
	Room tape.Length // from the new floor to the underside above
	Left tape.Length // over it with its feet in, on its way in and out
	Pass bool
}

func (w work) fits() []Fit {
	var out []Fit
	for _, a := range w.job.Appliances {
		out = append(out, w.fit(w.chosen(), a))
	}
	return out
}

// fit is an appliance at a build-up. It stands on the new floor, or on what
// it stands on behind it: either way it goes in and out over the higher of the two.
func (w work) fit(b Build, a Appliance) Fit {
	f := Fit{Appliance: a}
	high := w.stack(b, 0).Height()
	f.Room = w.over(a.Opening) - high
	if a.Boards == Front {
		high = max(high, a.StandsOn)
	}
	f.Left = w.over(a.Opening) - high - a.Height
	f.Pass = f.Left >= w.rule(ApplianceClear).Is
	return f
}

func (w work) applianceVerdicts() []ready.Verdict {
	var out []ready.Verdict
	for _, f := range w.fits() {
		out = append(out, w.appliance(f))
		if v, ok := w.feet(f); ok {
			out = append(out, v)
		}
	}
	return out
}

func (w work) appliance(f Fit) ready.Verdict {
	r := w.rule(ApplianceClear)
	where := "the floor goes under it"
	if f.Boards == Front {
		where = "the floor ends in front of it"
	}
	v := ready.Verdict{Say: ready.Go, Rule: "appliance in its opening", Where: f.Name, Limit: "at least " + r.words, Source: r.Source,
		Measured: fmt.Sprintf("%s; %s from the new floor to the underside above, %s high with its feet in: %s left", where, w.say(f.Room), w.say(f.Height), w.say(f.Left))}
	if f.Left < 0 {
		v.Measured = fmt.Sprintf("%s; %s from the new floor to the underside above, %s high with its feet in: %s too high", where, w.say(f.Room), w.say(f.Height), w.say(-f.Left))
	}
	if f.Pass {
		v.Do = r.stricter
		return v
	}
	v.Say, v.Holds = ready.Fix, true
	v.Do = "Before anything is ordered: "
	if f.Boards == Front {
		v.Do += "it would be locked in behind the floor, and come out only with the counter off. "
	} else {
		v.Do += "it does not go back in. "
	}
	v.Do += "A lower build-up, a counter raised on packing, or a lower appliance; measure all of the opening, its lowest spot counts. Water, gas and wires are disconnected by who may."
	return v
}

// feet looks whether feet turned out bring it up to what is above it: nothing to
// say where their travel is not told.
func (w work) feet(f Fit) (ready.Verdict, bool) {
	stands := w.stack(w.chosen(), 0).Height()
	if f.Boards == Front {
		stands = f.StandsOn
	}
	short := w.over(f.Opening) - stands - f.Height - f.Feet
	r := w.rule(ApplianceClear)
	if f.Feet == 0 || !f.Pass || short <= r.Is {
		return ready.Verdict{}, false
	}
	return ready.Verdict{Say: ready.Look, Rule: "feet of an appliance", Where: f.Name, Measured: fmt.Sprintf("with its feet out by %s it stays %s below the underside above", w.say(f.Feet), w.say(short)),
		Limit: "at most " + r.words, Source: r.Source, Do: "Where it is fastened to the counter it has to come up to it: stand it on a panel, best of the floor's height, or run the floor under it."}, true
}
