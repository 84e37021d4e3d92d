package main

import (
	"fmt"
	"io"
	"os"
	"time"

	"strake/rack"
)

// How long a person waits before being told how the work stands, and how often
// after that.
const (
	firstTold = 2 * time.Second
	nextTold  = 2 * time.Second
)

// progress tells a person at a terminal how racking stands, a line at a time,
// where it takes long; a file or another command is told nothing.
func progress(w io.Writer) func(rack.Progress) {
	f, ok := w.(*os.File)
	if !ok {
		return nil
	}
	if at, err := f.Stat(); err != nil || at.Mode()&os.ModeCharDevice == 0 {
		return nil
	}
	return progressAt(w, time.Now)
}

func progressAt(w io.Writer, now func() time.Time) func(rack.Progress) {
	next := now().Add(firstTold)
	return func(p rack.Progress) {
		if now().Before(next) {
			return
		}
		next = now().Add(nextTold)
		if p.Reached < p.Runs {
			fmt.Fprintf(w, "choosing boards: %d of %d rows; Ctrl-C keeps what there is\n", p.Reached, p.Runs)
			return
		}
		fmt.Fprintf(w, "all %d rows have boards; looking for better: %d crosscuts so far; Ctrl-C keeps the best so far\n", p.Runs, p.Crosscuts)
	}
}
