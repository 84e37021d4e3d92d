package ready

import "testing"

func TestMetricRuling(t *testing.T) {
	r := Rule(Limit{Is: 80, Source: "guide"}, Limit{Is: 85, By: Maker, Source: "leaflet"})
	got, unit := r.In(false, "°F")
	if want := "29.4 °C, the maker's, before 26.7 °C of trade guidance"; got.Words(unit) != want {
		t.Errorf("%q, want %q", got.Words(unit), want)
	}
	if got, unit := r.In(true, "°F"); got.Words(unit) != r.Words("°F") {
		t.Errorf("inch jobs keep %q, not %q", r.Words("°F"), got.Words(unit))
	}
	for _, c := range []struct {
		is   float64
		unit string
		want string
	}{{18, "in", "457 mm"}, {100, "sq ft", "9.29 m2"}, {32, "°F", "0 °C"}, {40, "psf", "195 kg/m2"}, {60, "days", "60 days"}} {
		got, unit := Ruling{Limit: Limit{Is: c.is}}.In(false, c.unit)
		if amount(got.Is, unit) != c.want {
			t.Errorf("%g %s: %s, want %s", c.is, c.unit, amount(got.Is, unit), c.want)
		}
	}
}
