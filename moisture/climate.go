package moisture

import (
	"fmt"
	"math"

	"strake/ready"
	"strake/tape"
	"strake/wood"
)

// air looks at each air that was told: whether it can be true, and whether it
// is what a floor is made for.
func (j Job) air() []ready.Verdict {
	var out []ready.Verdict
	for _, s := range []struct {
		name string
		air  Air
	}{{"winter air", j.Climate.Winter}, {"summer air", j.Climate.Summer}, {"air now", j.Climate.Now}} {
		if !s.air.Told() {
			continue
		}
		if v := s.air.suspect(s.name); v != nil {
			out = append(out, *v)
			continue
		}
		out = append(out, j.service(s.air, s.name, s.name == "air now"))
	}
	return append(out, j.swapped()...)
}

// service holds air to the climate that floors are made for. Air now that is
// outside of it is waited for; a season outside of it is worth a look.
func (j Job) service(a Air, where string, now bool) ready.Verdict {
	hLow, _ := Guides.Rule(j.Limits, HumidityLeast)
	hHigh, _ := Guides.Rule(j.Limits, HumidityMost)
	tLow, _ := Guides.Rule(j.Limits, TemperatureLow)
	tHigh, _ := Guides.Rule(j.Limits, TemperatureHigh)
	v := ready.Verdict{Say: ready.Go, Rule: airRule, Where: where, Measured: a.String(),
		Limit: fmt.Sprintf("%s to %s and %g to %g %%RH, %s", a.like(tLow.Is), a.like(tHigh.Is), hLow.Is, hHigh.Is, hHigh.By), Source: hHigh.Source}
	const hair = 0.05 // of a degree or a percent
	f, h := a.Temperature.F(), a.Humidity
	if f >= tLow.Is-hair && f <= tHigh.Is+hair && h >= hLow.Is-hair && h <= hHigh.Is+hair {
		return v
	}
	v.Say, v.Do = ready.Look, "Ask the boards' maker whether the floor is for such air; a humidifier in winter or a dehumidifier in summer brings the two seasons nearer to each other."
	if now {
		v.Say, v.Do = ready.Wait, "Heat, cool, humidify or dry the room to what it will be when it is lived in, and hold it for five days, before boards are brought in."
	}
	return v
}

// swapped notices winter air that leads to wetter wood than summer air does.
func (j Job) swapped() []ready.Verdict {
	w, ok := j.Climate.Winter.content()
	s, ok2 := j.Climate.Summer.content()
	if !ok || !ok2 || w <= s {
		return nil
	}
	return []ready.Verdict{{Say: ready.Look, Rule: "seasons", Where: "winter and summer air", Measured: fmt.Sprintf("wood at %.1f %% in winter, %.1f %% in summer", w, s),
		Do: "Indoors, winter is the drier season where rooms are heated: look whether the two changed places. In a cooled house in a damp climate it can be so.", Source: common}}
}

// season is what the two seasons do to the boards, with the content to aim for.
func (j Job) season(f Floor) []ready.Verdict {
	s, ok := j.Climate.Season()
	if !ok {
		if j.Climate.Winter.Told() || j.Climate.Summer.Told() || len(j.Boards.Reads) > 0 || len(j.Log) > 0 {
			return []ready.Verdict{{Say: ready.Look, Rule: "moisture content through the year", Where: "air", Measured: "winter and summer air are not both known",
				Do: "Write the usual indoor temperature and humidity of winter and summer under climate: without them nobody knows what content to lay at.", Source: srcMidst}}
		}
		return nil
	}
	out := []ready.Verdict{{Say: ready.Look, Rule: "moisture content through the year", Where: "air",
		Measured: fmt.Sprintf("wood from %.1f to %.1f %%", s.Low, s.High), Limit: fmt.Sprintf("aim for %.1f %%, halfway", s.Aim),
		Do: "Lay the boards at the content halfway, whatever the days they have lain in the room.", Source: wood.SourceEMC + "; " + srcMidst}}
	out = append(out, j.now(s)...)
	return append(out, s.movement(f)...)
}

// now holds the air of today to the content aimed for: boards go where the air
// leads.
func (j Job) now(s Season) []ready.Verdict {
	m, ok := j.Climate.Now.content()
	if !ok {
		return nil
	}
	r, unit := Guides.Rule(j.Limits, AimWithin)
	v := ready.Verdict{Say: ready.Go, Rule: leadRule, Where: "air now", Measured: fmt.Sprintf("wood at %.1f %%", m),
		Limit: fmt.Sprintf("within %s, of the aim %.1f %%", r.Words(unit), s.Aim), Source: r.Source}
	if math.Abs(m-s.Aim) > r.Is {
		v.Say = ready.Wait
		v.Do = fmt.Sprintf("Boards left in this air go away from the aim.%s", j.airForAim(s))
	}
	return []ready.Verdict{v}
}

// airForAim is the air, at the temperature of today, that leads to the aim.
func (j Job) airForAim(s Season) string {
	t := j.Climate.Now.Temperature
	a, err := wood.AirFor(t.Celsius(), s.Aim)
	if err != nil {
		return ""
	}
	return fmt.Sprintf(" At %s it takes %.0f %%RH to bring them to %.1f %%.", t, a.Humidity, s.Aim)
}

// movement is what boards and floor do between the aim and the two seasons, by
// both formulas, were they free to move. Nothing is required by it.
func (s Season) movement(f Floor) []ready.Verdict {
	sp, ok := wood.Find(f.Species)
	if !ok {
		return []ready.Verdict{{Say: ready.Look, Rule: "movement", Where: theBoards, Measured: "species not known",
			Do: "Write the species under boards, such as species: white oak; movement goes by it."}}
	}
	var out []ready.Verdict
	for _, face := range f.Faces {
		out = append(out, s.boardMovement(sp, face, f))
	}
	if f.Across > 0 {
		out = append(out, s.floorMovement(sp, f))
	}
	return out
}

func (s Season) boardMovement(sp wood.Species, face tape.Length, f Floor) ready.Verdict {
	dry, by := sp.Moved(face, s.Aim, s.Low)
	wet, _ := sp.Moved(face, s.Aim, s.High)
	total, from := sp.Whole()
	other := wood.OvenDry(face, total, s.Aim, s.Low)
	return ready.Verdict{Say: ready.Look, Rule: "movement of a board", Where: "boards of " + f.width(face),
		Measured: fmt.Sprintf("laid at the aim: gaps of up to %s between boards in winter, and in summer boards wider by %s, when they press (%s); gaps of %s by the %s",
			f.fine(-dry), f.fine(wet), by, f.fine(-other), wood.ByOvenDry),
		Do:     "Tell whoever will live there: such gaps come and go with the seasons. A steadier humidity makes them smaller; quarter-sawn boards move less.",
		Source: fmt.Sprintf("%s: %.5f for each point (%s); %.1f %% from green to oven-dry (%s). In a test by the Forest Products Laboratory in 2022 neighbours did not hold boards back from shrinking", sp.Name, sp.Tangential, sp.Source, total, from)}
}

func (s Season) floorMovement(sp wood.Species, f Floor) ready.Verdict {
	wet, by := sp.Moved(f.Across, s.Aim, s.High)
	dry, _ := sp.Moved(f.Across, s.Aim, s.Low)
	v := ready.Verdict{Say: ready.Look, Rule: "movement of the whole floor", Where: "across the boards, " + f.width(f.Across),
		Measured: fmt.Sprintf("%s wider in summer and %s narrower in winter, were it free to move (%s)", f.width(wet), f.width(-dry), by),
		Do:       "Shown, not required: fasteners share the movement out over the boards, and no gap takes it all. Keep the gap rule, a steady humidity, and the subfloor dry.",
		Source:   "gaps are a rule of thumb of the trade; a flooring consultant in the Journal of Light Construction holds that fasteners and climate, not the gap, keep a nailed floor flat"}
	if f.Gap > 0 {
		v.Limit = "the gap at walls is " + f.width(f.Gap) + ", by the gap rule"
	}
	return v
}

// width says a width as it is read on a tape, fine one as it is computed.
func (f Floor) width(l tape.Length) string { return tape.Paper(f.unit()).Of(l) }

func (f Floor) fine(l tape.Length) string {
	if f.Imperial {
		return fmt.Sprintf("%.3f in", l.Inches())
	}
	return fmt.Sprintf("%.2f mm", l.Millimetres())
}

// area says the floor's area in the job's system.
func (f Floor) area() string {
	switch {
	case f.SqFt <= 0:
		return "an area that is not known"
	case f.Imperial:
		return fmt.Sprintf("%.0f sq ft", f.SqFt)
	}
	return fmt.Sprintf("%.1f m2", f.SqFt*0.09290304)
}

func (f Floor) unit() tape.Unit {
	if f.Imperial {
		return tape.UnitInch
	}
	return tape.UnitMillimetre
}
