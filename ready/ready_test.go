package ready

import (
	"testing"

	"strake/finding"
)

func TestFindingLevels(t *testing.T) {
	for _, c := range []struct {
		v    Verdict
		want finding.Level
		held bool
	}{
		{Verdict{Say: Go, Holds: true}, finding.Note, false},
		{Verdict{Say: Look}, finding.Note, false},
		{Verdict{Say: Wait}, finding.Warn, true},
		{Verdict{Say: Wait, Holds: true}, finding.Stop, true},
		{Verdict{Say: Fix}, finding.Warn, true},
		{Verdict{Say: Other, Holds: true}, finding.Stop, true},
	} {
		if got := c.v.Finding().Level; got != c.want || c.v.Held() != c.held {
			t.Errorf("%+v: %s, held %v", c.v, got, c.v.Held())
		}
	}
}

func TestWorst(t *testing.T) {
	vs := []Verdict{{Say: Go}, {Say: Fix}, {Say: Wait}, {Say: Look}}
	if got := Worst(vs); got != Fix {
		t.Errorf("worst is %s", got)
	}
	if got := Worst(nil); got != Go {
		t.Errorf("worst of nothing is %s", got)
	}
	if got := len(Findings(vs)); got != 3 {
		t.Errorf("%d findings, want 3: go is none", got)
	}
}

// Local code outranks the maker, and the maker trade guidance, in whatever
// order they were written.
func TestRule(t *testing.T) {
	guide := Limit{12, Guidance, "guide"}
	maker, code := Limit{10, Maker, "leaflet"}, Limit{11, Code, "by-law"}
	for _, c := range []struct {
		given []Limit
		want  Limit
		words string
	}{
		{nil, guide, "12 %, trade guidance"},
		{[]Limit{maker}, maker, "10 %, the maker's, before 12 % of trade guidance"},
		{[]Limit{code, maker}, code, "11 %, local code, before 12 % of trade guidance and 10 % of the maker's"},
		{[]Limit{maker, code}, code, "11 %, local code, before 12 % of trade guidance and 10 % of the maker's"},
		{[]Limit{maker, {9, Maker, "newer leaflet"}}, Limit{9, Maker, "newer leaflet"}, "9 %, the maker's, before 12 % of trade guidance and 10 % of the maker's"},
	} {
		r := Rule(guide, c.given...)
		if r.Limit != c.want || r.Words("%") != c.words {
			t.Errorf("%v: %v, %q", c.given, r.Limit, r.Words("%"))
		}
	}
	if got := Rule(guide, maker, code).Stricter(true, "%"); got != "10 % of the maker's is stricter (leaflet): ask before you go by less." {
		t.Errorf("stricter: %q", got)
	}
	if got := Rule(guide, maker).Stricter(true, "%"); got != "" {
		t.Errorf("nothing is stricter, but %q", got)
	}
}
