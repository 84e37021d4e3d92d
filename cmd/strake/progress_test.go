package main

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"strake/rack"
)

// clocked is a progress with a clock of the test's own.
func clocked(terminal bool) (p *progress, b *bytes.Buffer, after func(time.Duration)) {
	b = &bytes.Buffer{}
	at := time.Unix(0, 0)
	p = newProgress(b, terminal, func() time.Time { return at })
	return p, b, func(d time.Duration) { at = at.Add(d); p.show() }
}

// screen is what a terminal shows once all was written: a carriage return goes back to
// the first column, and signs stand where they were put last.
func screen(t *testing.T, s string) string {
	t.Helper()
	if strings.Contains(s, "\n") {
		t.Errorf("a bar goes on to another line: %q", s)
	}
	var line []rune
	col := 0
	for _, r := range s {
		if r == '\r' {
			col = 0
			continue
		}
		for len(line) <= col {
			line = append(line, ' ')
		}
		line[col] = r
		if col++; col > barWide {
			t.Errorf("wider than a terminal: %q", s)
		}
	}
	return strings.TrimRight(string(line), " ")
}

// A terminal sees nothing of work that is soon done, then a bar that grows in its
// place, whatever stood there before, and nothing any more at the end.
func TestBar(t *testing.T) {
	p, b, after := clocked(true)
	p.at("laying the floor by a plan", 10, 300)
	after(time.Second)
	if b.Len() > 0 {
		t.Errorf("told after a second: %q", b)
	}
	after(time.Second)
	if got := screen(t, b.String()); got != "[........................]   3 %  laying the floor by a plan" && !strings.HasPrefix(got, "[........................]   3 %  laying the floor by a plan; Ctrl-C") {
		t.Errorf("shown %q", got)
	}
	p.at("laying the floor by a plan", 150, 300)
	after(barNext)
	if got := screen(t, b.String()); !strings.HasPrefix(got, "[############............]  50 %  laying") {
		t.Errorf("shown %q", got)
	}
	n := b.Len()
	after(barNext / 2)
	if b.Len() > n {
		t.Error("drawn sooner than it is due")
	}
	p.at("short", 0, 0)
	after(barNext)
	if got := screen(t, b.String()); got != "short; "+stopKeeps {
		t.Errorf("shown %q: what stood there before stays", got)
	}
	p.at(strings.Repeat("long ", 40), 1, 3)
	after(barNext)
	screen(t, b.String())
	p.end()
	if got := screen(t, b.String()); got != "" {
		t.Errorf("%q is left on the terminal", got)
	}
}

// More than there is to do, or less than none, is no bar out of its frame.
func TestBarWithinItsFrame(t *testing.T) {
	p, _, _ := clocked(true)
	for _, x := range []struct {
		done int
		want string
	}{{-3, "[........................]   0 %"}, {300, "[########################] 100 %"}, {900, "[########################] 100 %"}} {
		if p.at("x", x.done, 300); !strings.HasPrefix(p.bar(), x.want) {
			t.Errorf("%d of 300: %q", x.done, p.bar())
		}
	}
}

// A file or another program gets a few plain lines of work that takes long, further
// and further apart, and none of what is soon done.
func TestPlainLines(t *testing.T) {
	p, b, after := clocked(false)
	tell := p.racking()
	for i := range 3600 {
		tell(rack.Progress{Runs: 400, Reached: min(i, 400), Crosscuts: 3})
		if after(time.Second); i == 8 && b.Len() > 0 {
			t.Errorf("told within %d seconds: %q", i+1, b)
		}
	}
	got := strings.Split(strings.TrimSpace(b.String()), "\n")
	if len(got) != lineMost || strings.Contains(b.String(), "\r") {
		t.Fatalf("told %q", got)
	}
	if got[0] != "choosing boards for rows: 9 of 400; "+stopKeeps || got[1] != "choosing boards for rows: 29 of 400; "+stopKeeps {
		t.Errorf("told %q", got)
	}
	p.at("x", 400, 400)
	if tell(rack.Progress{Runs: 400, Reached: 400, Crosscuts: 3}); p.line() != "all 400 rows have boards; looking for better: 3 crosscuts; "+stopKeeps {
		t.Errorf("told %q", p.line())
	}
	p.end()
	if b.Len() != len(strings.Join(got, "\n"))+1 {
		t.Error("told after the end")
	}
}

// Quiet, nobody is told anything, and nothing has to be looked after.
func TestQuietTellsNothing(t *testing.T) {
	var b bytes.Buffer
	p := rim{err: &b, quiet: true}.progress()
	p.at("x", 1, 2)
	if p.racking() != nil {
		t.Error("racking is asked to tell")
	}
	p.end()
	q := rim{err: &b}.progress()
	q.at("x", 1, 2)
	q.end()
	if b.Len() > 0 {
		t.Errorf("told %q", b.String())
	}
}
