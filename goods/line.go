package goods

// Group is where a line stands in the list: by the order of the work.
type Group string

// The groups.
const (
	Boards  Group = "boards"
	Tear    Group = "tear-out"
	Under   Group = "under the boards"
	Fixing  Group = "fixing"
	Strips  Group = "transitions and nosings"
	Mould   Group = "base and shoe"
	Tools   Group = "tools"
	Gear    Group = "protection"
	Besides Group = "what may come besides"
)

// Groups are all of them, in order.
var Groups = []Group{Boards, Tear, Under, Fixing, Strips, Mould, Tools, Gear, Besides}

// Line is one thing to have on site.
type Line struct {
	Group Group
	Item  Item   // what its price is entered under; "" it has none
	What  string // base, 12 ft
	Count int    // how many of Unit; 0: none is bought (Do says what instead)
	Unit  string // bar, roll, box
	From  string // what it is counted from
	Do    string // what to do about it, "" nothing
	Notes []string
	// Source is where figures come from that the plan does not give, "" none.
	Source string
	Each   Money // price of one Unit
	// Made is had for this job alone, so that no price is entered for it.
	Made bool
	// Uncounted is needed, and how many is not known yet.
	Uncounted bool
}

// Bought tells whether a line costs something, be its price known or not.
func (l Line) Bought() bool {
	return l.Count > 0 && (l.Each.Told || l.Item != "" || l.Unit == "day" || l.Made)
}

// Total is what a line costs.
func (l Line) Total() Money { return l.Each.Times(float64(l.Count)) }

// Money is a price with the least and the most that it may come to.
type Money struct {
	Told              bool
	Low, Likely, High float64
}

// Times is m for so many.
func (m Money) Times(n float64) Money {
	return Money{m.Told, m.Low * n, m.Likely * n, m.High * n}
}

// Plus is the sum of two; what is not told counts nothing.
func (m Money) Plus(n Money) Money {
	return Money{m.Told || n.Told, m.Low + n.Low, m.Likely + n.Likely, m.High + n.High}
}

// Exactly is a price that is known.
func Exactly(x float64) Money { return Money{true, x, x, x} }
