package subfloor

import "strake/tape"

// Limit is the largest gap under a straightedge of a length, or between two
// high points so far apart.
type Limit struct{ Length, Gap tape.Length }

// Rule is one way to say flat.
type Rule struct {
	Name   string
	At     []Limit // by rising length; all of them hold
	Apart  bool    // a gap is held to the distance of the two points it lies between, limits in between interpolated
	Source string
}

// Where the figures come from.
const (
	srcWood    = "NWFA guidelines as quoted by Floor Trends and Hardwood Floors (Feb 2018): wood subfloor, fasteners of 1-1/2 in and longer; the maker's figure first"
	srcStrict  = "NWFA guidelines as quoted by Floor Trends: glue-down, or fasteners under 1-1/2 in; also quoted for nailed floors and for concrete; the maker's figure first"
	srcDIN     = "DIN 18202 table 3, as printed in the handbook of Zentralverband Deutsches Baugewerbe; between its distances interpolated, to whole mm"
	srcBS      = "BS 8204, surface regularity under a 2 m straightedge, as quoted by the Concrete Society"
	srcInPlace = "the job's own figure"
)

// The figures published in the US contradict each other: which of the two holds
// is a setting, and the maker's figure comes before both.
var (
	USWood   = Rule{Name: "us", At: []Limit{{6 * tape.Foot, 3 * tape.Sixteenth}, {10 * tape.Foot, tape.Inch / 4}}, Source: srcWood}
	USStrict = Rule{Name: "us strict", At: []Limit{{6 * tape.Foot, tape.Eighth}, {10 * tape.Foot, 3 * tape.Sixteenth}}, Source: srcStrict}
)

// din are the rows of the table at the distances that the standard gives: 0.1,
// 1, 4, 10 and 15 m, in mm.
var din = [4][5]tape.Length{{10, 15, 20, 25, 30}, {5, 8, 12, 15, 20}, {2, 4, 10, 12, 15}, {1, 3, 9, 12, 15}}

// DIN is a row of DIN 18202 table 3: 1 and 2 for unfinished tops, 3 for screeds
// and floors that take a covering, 4 for the same with raised demands.
func DIN(row int) Rule {
	r := Rule{Name: "din row " + string(rune('0'+row)), Apart: true, Source: srcDIN}
	for i, at := range []tape.Length{100, 1000, 4000, 10000, 15000} {
		r.At = append(r.At, Limit{at * tape.Millimetre, din[row-1][i] * tape.Millimetre})
	}
	return r
}

// BS is a class of BS 8204: SR1 3 mm, SR2 5 mm, SR3 10 mm under a 2 m straightedge.
func BS(class int) Rule {
	gap := [3]tape.Length{3, 5, 10}[class-1]
	return Rule{Name: "bs sr" + string(rune('0'+class)), At: []Limit{{2 * tape.Metre, gap * tape.Millimetre}}, Source: srcBS}
}

// Own is a rule of the job's own: the maker's figures, by rising length.
func Own(at []Limit, source string) Rule {
	if source == "" {
		source = srcInPlace
	}
	return Rule{Name: "own", At: at, Source: source}
}

// Rules are the published rules by the names that jobs use.
func Rules() []Rule {
	return []Rule{USWood, USStrict, DIN(1), DIN(2), DIN(3), DIN(4), BS(1), BS(2), BS(3)}
}

// Find is the rule of a name.
func Find(name string) (Rule, bool) {
	for _, r := range Rules() {
		if r.Name == name {
			return r, true
		}
	}
	return Rule{}, false
}

// Default is the rule that is held where the job names none: by the length of
// the fasteners, which is what the US figures turn on.
func Default(fastener tape.Length) Rule {
	if fastener > 0 && fastener < 3*tape.Inch/2 {
		return USStrict
	}
	return USWood
}

// Longest is the longest straightedge that the rule speaks of.
func (r Rule) Longest() tape.Length { return r.At[len(r.At)-1].Length }

// Between is the limit for two points so far apart of a rule that goes by that:
// below its first distance that one's, beyond its last none.
func (r Rule) Between(apart tape.Length) (gap tape.Length, ok bool) {
	for i, a := range r.At {
		switch {
		case apart > a.Length:
			continue
		case i == 0 || apart == a.Length:
			return a.Gap, true
		}
		b := r.At[i-1]
		gap = b.Gap + tape.Length(float64(a.Gap-b.Gap)*(float64(apart-b.Length)/float64(a.Length-b.Length)))
		return tape.Nearest(gap, tape.Millimetre), true
	}
	return 0, false
}

// For are the limits that a gap between two points so far apart is held to; the
// least of them counts.
func (r Rule) For(apart tape.Length) (Limit, bool) {
	if r.Apart {
		gap, ok := r.Between(apart)
		return Limit{apart, gap}, ok
	}
	for _, a := range r.At { // a longer straightedge is let have more
		if apart <= a.Length {
			return a, true
		}
	}
	return Limit{}, false
}
