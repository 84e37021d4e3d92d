package moisture

import (
	"fmt"

	"strake/ready"
	"strake/wood"
)

// Temperature is a temperature as it was written. The zero value is none.
type Temperature struct {
	Is   float64
	Unit string // "F" or "C"; "" not told
}

// Told tells whether there is one.
func (t Temperature) Told() bool { return t.Unit != "" }

// Celsius is t in °C.
func (t Temperature) Celsius() float64 {
	if t.Unit == "F" {
		return (t.Is - 32) / 1.8
	}
	return t.Is
}

// F is t in °F.
func (t Temperature) F() float64 {
	if t.Unit == "F" {
		return t.Is
	}
	return t.Is*1.8 + 32
}

// String is t as it was written: 70 °F.
func (t Temperature) String() string { return fmt.Sprintf("%g °%s", t.Is, t.Unit) }

// Air is the air of one season, or of now. Zero: not told.
type Air struct {
	Temperature Temperature
	Humidity    float64 // relative, percent
}

// like says a temperature in °F as the air's own is written.
func (a Air) like(f float64) string {
	if a.Temperature.Unit == "C" {
		return fmt.Sprintf("%.1f °C", (f-32)/1.8)
	}
	return fmt.Sprintf("%g °F", f)
}

// Told tells whether there is any.
func (a Air) Told() bool { return a.Temperature.Told() }

// String is the air as it was written.
func (a Air) String() string { return fmt.Sprintf("%s, %g %%RH", a.Temperature, a.Humidity) }

// wood is the air as the formula wants it.
func (a Air) wood() wood.Air { return wood.Air{Celsius: a.Temperature.Celsius(), Humidity: a.Humidity} }

// Climate is the air that the floor lives in.
type Climate struct {
	Winter, Summer Air // indoors, as it is usual there
	Now            Air // as a thermo-hygrometer shows it in the room today
}

// Rooms that people live in are from 5 to 45 °C: beyond that the unit is
// probably the wrong one. Common practice, no source.
const coldRoom, hotRoom = 5.0, 45.0

// suspect is what speaks against a reading of air, nil for nothing.
func (a Air) suspect(where string) *ready.Verdict {
	v := ready.Verdict{Say: ready.Fix, Rule: suspectRule, Where: where, Measured: a.String(), Source: wood.SourceEMC}
	c := a.Temperature.Celsius()
	switch {
	case a.Humidity > 100 || a.Humidity < 0:
		v.Limit, v.Do = "0 to 100 %RH", "No air has that humidity. Read the hygrometer again, and look whether humidity and temperature changed places."
	case a.Humidity <= 1:
		v.Limit, v.Do = "over 1 %RH", fmt.Sprintf("No room is that dry. If it was written as a part of one, write %.0f for it.", a.Humidity*100)
	case a.Humidity > 98:
		v.Limit, v.Do = "at most 98 %RH", "Water would run down the walls. Let the hygrometer stand for an hour, or check it against another."
	case c > hotRoom && a.Temperature.Unit == "C":
		v.Limit, v.Do = fmt.Sprintf("%g to %g °C in a room", coldRoom, hotRoom), fmt.Sprintf("This looks like Fahrenheit: write “%g F” if it is.", a.Temperature.Is)
	case c < coldRoom && a.Temperature.Unit == "F":
		v.Limit, v.Do = fmt.Sprintf("%g to %g °F in a room", coldRoom*1.8+32, hotRoom*1.8+32), fmt.Sprintf("This looks like Celsius: write “%g C” if it is.", a.Temperature.Is)
	case c > hotRoom || c < coldRoom:
		v.Limit, v.Do = fmt.Sprintf("%g to %g °C in a room", coldRoom, hotRoom), "No room that is lived in is like that. The air wanted is that of the room, not of the weather."
	default:
		return nil
	}
	v.Do += " It is left out until then."
	return &v
}

// content is the moisture content that the air has for wood; not ok where the
// air is not told or suspect.
func (a Air) content() (float64, bool) {
	if !a.Told() || a.suspect("") != nil {
		return 0, false
	}
	m, err := a.wood().Equilibrium()
	return m, err == nil
}

// Season is the moisture content of a floor through the year.
type Season struct {
	Low, High float64 // in winter and summer air, the lower first
	Aim       float64 // halfway: what boards should have when they are laid
}

// Season is what the air of winter and summer leads to; not ok where one is
// missing or suspect.
func (c Climate) Season() (Season, bool) {
	w, ok := c.Winter.content()
	s, ok2 := c.Summer.content()
	if !ok || !ok2 {
		return Season{}, false
	}
	return Season{min(w, s), max(w, s), (w + s) / 2}, true
}
