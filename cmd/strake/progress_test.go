package main

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"strake/rack"
)

// Nothing is told of work that is soon done, and of long work no more than a
// line every two seconds.
func TestProgressIsToldNowAndThen(t *testing.T) {
	var b bytes.Buffer
	at := time.Unix(0, 0)
	tell := progressAt(&b, func() time.Time { return at })
	for i := range 60 {
		at = time.Unix(0, 0).Add(time.Duration(i) * 100 * time.Millisecond)
		tell(rack.Progress{Runs: 50, Reached: min(i, 50), Crosscuts: 3})
	}
	got := strings.Split(strings.TrimSpace(b.String()), "\n")
	if len(got) != 2 || !strings.Contains(got[0], "20 of 50 rows") || !strings.Contains(got[1], "40 of 50 rows") {
		t.Errorf("told %q", got)
	}
	at = at.Add(time.Hour)
	if tell(rack.Progress{Runs: 50, Reached: 50, Crosscuts: 3}); !strings.Contains(b.String(), "all 50 rows have boards; looking for better: 3 crosscuts") {
		t.Errorf("told %q", b.String())
	}
}
