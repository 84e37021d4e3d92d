package main

import (
	"fmt"
	"io"
	"time"

	"strake/rack"
)

// How long a person waits before being told how the work stands, and how often
// after that.
const (
	firstTold = 2 * time.Second
	nextTold  = 2 * time.Second
)

// progress tells how racking stands, a line at a time, where it takes long.
func progress(w io.Writer) func(rack.Progress) { return progressAt(w, time.Now) }

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
