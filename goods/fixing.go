package goods

import (
	"fmt"

	"strake/fasten"
	"strake/tape"
)

// Fixed is what boards are nailed with; zero where no boards are laid yet.
type Fixed struct {
	Known     bool
	Example   bool // lengths of boards are an example
	Use       fasten.Use
	Total     fasten.Total
	Box       int
	BoxSource string
	Splines   []tape.Length
	Rips      int // strips sawn along
	Cuts      int // of the saw, at most
}

const (
	srcNails = "common practice, no source: finish nails come in boxes of 1,000"
	srcPutty = "common practice, no source: a small tub fills some 500 heads"
	srcBlade = "common practice, no source: a sharp blade to begin with, one more for each 1,000 cuts in hardwood"
)

// fixing is what holds boards, and what hides it.
func (k *work) fixing() {
	x := k.f.Fixed
	if x.Known && x.Total.All() > 0 {
		k.nailed()
	} else {
		k.add(Line{Group: Fixing, What: "cleats or staples", From: "boards are not known yet", Do: "They are counted board by board: write lengths under boards.", Uncounted: true})
	}
	k.splines()
	if x.Cuts+x.Rips > 0 {
		k.add(Line{Group: Fixing, What: "saw blade, fine", Item: Blade, Count: 1 + x.Cuts/1000, Unit: "blade", From: fmt.Sprintf("at most %d crosscuts and rips", x.Cuts), Source: srcBlade})
		if x.Rips > 0 {
			k.add(Line{Group: Fixing, What: "saw blade for rips", Item: Blade, Count: 1, Unit: "blade", From: fmt.Sprintf("%d pieces are ripped", x.Rips), Source: srcBlade})
		}
	}
}

func (k *work) nailed() {
	x := k.f.Fixed
	t := x.Total
	note := ""
	if x.Example {
		note = "; lengths are an example, so give or take a few in a hundred"
	}
	k.add(Line{Group: Fixing, What: fmt.Sprintf("flooring %ss of %s, box of %d", x.Use.Kind, k.say(x.Use.Length), x.Box), Item: Fasteners, Count: fasten.Boxes(t.Nailer, x.Box), Unit: "box",
		From: fmt.Sprintf("%d by nailer, every %s, and 5 %% to spare%s", t.Nailer, k.say(x.Use.Spacing), note), Source: x.Use.Source + "; " + x.BoxSource})
	hand := t.Hand + t.Face
	k.add(Line{Group: Fixing, What: "finish nails, box of 1,000", Item: Nails, Count: fasten.Boxes(hand, 1000), Unit: "box",
		From: fmt.Sprintf("%d by hand in first and last rows, %d of them through the face", hand, t.Face), Source: srcNails})
	if t.Face > 0 {
		k.add(Line{Group: Fixing, What: "putty to the colour of the boards", Item: Putty, Count: (t.Face + 499) / 500, Unit: "tub", From: fmt.Sprintf("%d heads", t.Face), Source: srcPutty})
	}
}

func (k *work) splines() {
	var sum tape.Length
	n := 0
	for _, s := range k.f.Fixed.Splines {
		sum += s
		n += int((s + k.w.SplineSold - 1) / k.w.SplineSold)
	}
	if n > 0 {
		k.add(Line{Group: Fixing, What: "spline (slip tongue), " + k.say(k.w.SplineSold), Item: Spline, Count: n, Unit: "piece",
			From: fmt.Sprintf("%s in %s, each begun with a whole one", k.long(sum), stretches(len(k.f.Fixed.Splines))), Source: SrcSpline,
			Do: "It fits the groove of these boards: try one before they are all bought. Glued in."})
	}
}

func stretches(n int) string {
	if n == 1 {
		return "one stretch"
	}
	return fmt.Sprintf("%d stretches", n)
}
