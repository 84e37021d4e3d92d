package paper

import (
	"fmt"
	"strings"
)

// barMost is how long a bar of certainty is, in characters.
const barMost = 50

// curve draws the chance of running short by the layer of the job, a bar for each
// number of cartons.
func (o orderText) curve() {
	l := o.x.Of(o.x.Wants.Layer)
	if len(l.Choices) == 0 {
		return
	}
	fmt.Fprintf(o.b, "\nChance of running short, %s; a full bar is every lay\n", l.Layer)
	for c := o.x.Fewest; c <= o.last(); c++ {
		short := 0.0
		if i := c - o.x.Fewest; i < len(l.Choices) {
			short = l.Choices[i].Short
		}
		fmt.Fprintln(o.b, strings.TrimRight(fmt.Sprintf("  %7d  %s", c, strings.Repeat("#", int(short*barMost+0.5))), " "))
	}
}
