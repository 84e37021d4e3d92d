package main

import (
	"fmt"
	"io"
	"os"
	"strings"
	"sync"
	"time"

	"strake/rack"
)

// How long a person at a terminal waits before a bar is drawn, and how often it is
// drawn after that. Elsewhere a line is written after lineFirst, the next after twice
// that time, and so on, lineMost at the most.
const (
	barFirst  = 2 * time.Second
	barNext   = 200 * time.Millisecond
	lineFirst = 10 * time.Second
	lineMost  = 4
)

// stop is said beside all that takes long.
const stopKeeps = "Ctrl-C keeps what there is"

// progress tells a person how long work stands: a bar on a terminal, plain lines
// elsewhere. nil tells nobody anything.
type progress struct {
	w        io.Writer
	terminal bool
	now      func() time.Time
	quit     chan struct{}
	ended    sync.WaitGroup

	mu       sync.Mutex
	next     time.Time
	wait     time.Duration // between lines
	lines    int
	what     string
	done, of int // of: 0 where nobody knows how much there is
	shown    int // signs of the bar that stands on the terminal
}

// progress begins to tell; whoever asks for it has to end it.
func (r rim) progress() *progress {
	if r.quiet {
		return nil
	}
	p := newProgress(r.err, onTerminal(r.err), time.Now)
	p.ended.Go(p.run)
	return p
}

func newProgress(w io.Writer, terminal bool, now func() time.Time) *progress {
	p := &progress{w: w, terminal: terminal, now: now, quit: make(chan struct{}), wait: lineFirst}
	p.next = now().Add(lineFirst)
	if terminal {
		p.next = now().Add(barFirst)
	}
	return p
}

// onTerminal tells whether somebody sees what is written there at once.
func onTerminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok {
		return false
	}
	at, err := f.Stat()
	return err == nil && at.Mode()&os.ModeCharDevice != 0
}

// run looks now and then whether something is due, also while work says nothing.
func (p *progress) run() {
	t := time.NewTicker(barNext)
	defer t.Stop()
	for {
		select {
		case <-p.quit:
			return
		case <-t.C:
			p.show()
		}
	}
}

// at says how the work stands: so much done of so much, of 0 where that is not known.
func (p *progress) at(what string, done, of int) {
	if p == nil {
		return
	}
	p.mu.Lock()
	p.what, p.done, p.of = what, done, of
	p.mu.Unlock()
}

// show tells how the work stands, if it is time to.
func (p *progress) show() {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.what == "" || p.now().Before(p.next) {
		return
	}
	if p.terminal {
		p.next = p.now().Add(barNext)
		p.draw(p.bar())
		return
	}
	if p.lines++; p.lines > lineMost {
		return
	}
	p.wait *= 2
	p.next = p.now().Add(p.wait)
	fmt.Fprintln(p.w, p.line())
}

// barSigns is how long the bar itself is; with its words it stays within 79 columns.
const barSigns, barWide = 24, 79

// bar is how the work stands, in a line of a terminal.
func (p *progress) bar() string {
	s := p.what
	if p.of > 0 {
		full := min(barSigns, barSigns*max(0, p.done)/p.of)
		s = fmt.Sprintf("[%s%s] %3d %%  %s", strings.Repeat("#", full), strings.Repeat(".", barSigns-full), min(100, 100*max(0, p.done)/p.of), s)
	}
	if r := []rune(s); len(r)+len(stopKeeps)+2 <= barWide {
		s += "; " + stopKeeps
	} else if len(r) > barWide {
		s = string(r[:barWide])
	}
	return s
}

// line is the same where lines stay.
func (p *progress) line() string {
	s := p.what
	if p.of > 0 {
		s += fmt.Sprintf(": %d of %d", p.done, p.of)
	}
	return s + "; " + stopKeeps
}

// draw puts a line over the one that stands there.
func (p *progress) draw(s string) {
	n := len([]rune(s))
	fmt.Fprintf(p.w, "\r%s%s", s, strings.Repeat(" ", max(0, p.shown-n)))
	p.shown = n
}

// end takes the bar away. Nothing is told after it.
func (p *progress) end() {
	if p == nil {
		return
	}
	close(p.quit)
	p.ended.Wait()
	if p.shown > 0 {
		p.draw("")
		fmt.Fprint(p.w, "\r")
	}
}

// racking is told how a search for boards stands.
func (p *progress) racking() func(rack.Progress) {
	if p == nil {
		return nil
	}
	return func(x rack.Progress) {
		if x.Reached < x.Runs {
			p.at("choosing boards for rows", x.Reached, x.Runs)
			return
		}
		p.at(fmt.Sprintf("all %d rows have boards; looking for better: %d crosscuts", x.Runs, x.Crosscuts), 0, 0)
	}
}
