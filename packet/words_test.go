package packet

import (
	"regexp"
	"testing"
)

// Words that mean one thing here and another in the trade: a run is a row or a part of
// it, a lay a board layout, the pitch a row width.
var ours = regexp.MustCompile(`(?i)\bpitch\b|\d runs?\b|\bthe run\b|\ba lay\b|\bthe lay\b`)

func TestWordsOfTheTrade(t *testing.T) {
	for name, data := range shipped(t) {
		for i, s := range Sheets(made(t, name, data), A4) {
			for _, x := range texts(s) {
				if w := ours.FindString(x.Text); w != "" {
					t.Errorf("%s, page %d: %q in %q", name, i+1, w, x.Text)
				}
			}
		}
	}
	if !ours.MatchString("37 rows, 43 runs") {
		t.Error("the rule sees nothing")
	}
}
