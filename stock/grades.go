package stock

import "strake/tape"

// Grade is what a grading rule says of the lengths in a carton or bundle of
// random-length boards.
type Grade struct {
	Name              string
	Least, Most, Mean tape.Length // pieces; Mean is the rule's, or that of the most shorts that it allows
	Shorts            []Short     // by rising length; none: the rule gives an average
	Source            string
}

// Short is the largest share of pieces that a rule allows under a length.
type Short struct {
	Under tape.Length
	Share float64
}

const (
	srcNOFMA   = "NOFMA oak grading rules, old text as a floor shop reprints it: average lengths; pieces of 9 in to 8 ft 6 in from memory"
	srcNOFMA2  = "NOFMA oak grading rules, from memory"
	srcMFMA    = "MFMA grading rules for random lengths: the most shorts that each grade allows, taken as shares of the pieces; nothing under 9 in; the longest, 8 ft, by its nested bundles"
	longestOak = 102 * tape.Inch
	longestMFM = 96 * tape.Inch
)

// Grades are the rules that are known. Of those with shorts the spread is the
// worst that the rule lets pass: as many shorts as it allows, even in between.
var Grades = []Grade{
	{"oak clear", 9 * tape.Inch, longestOak, 45 * tape.Inch, nil, srcNOFMA},
	{"oak select", 9 * tape.Inch, longestOak, 39 * tape.Inch, nil, srcNOFMA},
	{"oak no 1 common", 9 * tape.Inch, longestOak, 33 * tape.Inch, nil, srcNOFMA},
	{"oak no 2 common", 9 * tape.Inch, longestOak, 27 * tape.Inch, nil, srcNOFMA2},
	maple("maple first", 0.10, 0.35, 0.55),
	maple("maple second and better", 0.15, 0.42, 0.60),
	maple("maple third and better", 0.25, 0.55, 0.70),
	maple("maple third", 0.40, 0.75, 0.85),
}

// maple is a grade by its shares under 18, 30 and 42 in.
func maple(name string, under18, under30, under42 float64) Grade {
	g := Grade{Name: name, Least: 9 * tape.Inch, Most: longestMFM, Source: srcMFMA,
		Shorts: []Short{{18 * tape.Inch, under18}, {30 * tape.Inch, under30}, {42 * tape.Inch, under42}}}
	from, done := g.Least, 0.0
	var mean float64
	for _, s := range append(append([]Short(nil), g.Shorts...), Short{g.Most, 1}) {
		mean += (s.Share - done) * float64(from+s.Under) / 2
		from, done = s.Under, s.Share
	}
	g.Mean = tape.Nearest(tape.Length(mean), tape.Sixteenth)
	return g
}

// FindGrade is the grade of a name.
func FindGrade(name string) (Grade, bool) {
	for _, g := range Grades {
		if g.Name == name {
			return g, true
		}
	}
	return Grade{}, false
}

// Quantile is the length that a share p of the pieces does not exceed, for a grade
// with shorts: straight lines between its limits.
func (g Grade) Quantile(p float64) tape.Length {
	from, done := g.Least, 0.0
	for _, s := range append(append([]Short(nil), g.Shorts...), Short{g.Most, 1}) {
		if p <= s.Share {
			return from + tape.Length((p-done)/(s.Share-done)*float64(s.Under-from))
		}
		from, done = s.Under, s.Share
	}
	return g.Most
}
