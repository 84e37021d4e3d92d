package ready

import (
	"fmt"
	"strings"
)

// Rank is whose limit it is. The higher one outranks the others.
type Rank int

// The ranks: trade guidance, the maker's instructions, local code and the
// licensed practice that goes with it.
const (
	Guidance Rank = iota
	Maker
	Code
)

// Ranks are the ranks by the words they are written with.
var Ranks = map[string]Rank{"guidance": Guidance, "maker": Maker, "code": Code}

// String is the rank as it is said.
func (r Rank) String() string {
	switch r {
	case Maker:
		return "the maker's"
	case Code:
		return "local code"
	}
	return "trade guidance"
}

// Limit is a figure with whose it is and where it comes from. The unit is the
// rule's own and is not written here.
type Limit struct {
	Is     float64
	By     Rank
	Source string
}

// Ruling is the limit that stands, and what it outranks.
type Ruling struct {
	Limit
	Outranked []Limit // in the order given
}

// Rule is the limit that stands among those given: the one of the highest
// rank, and the later of two of one rank.
func Rule(guidance Limit, given ...Limit) Ruling {
	all := append([]Limit{guidance}, given...)
	best := 0
	for i, l := range all {
		if l.By >= all[best].By {
			best = i
		}
	}
	r := Ruling{Limit: all[best]}
	for i, l := range all {
		if i != best {
			r.Outranked = append(r.Outranked, l)
		}
	}
	return r
}

// Words is the limit with its unit, whose it is, and what it outranks: "10 %,
// the maker's, before 12 % of trade guidance".
func (r Ruling) Words(unit string) string {
	return r.Said(func(x float64) string { return amount(x, unit) })
}

// Said is Words with figures that are printed by say.
func (r Ruling) Said(say func(float64) string) string {
	out := fmt.Sprintf("%s, %s", say(r.Is), r.By)
	var less []string
	for _, l := range r.Outranked {
		less = append(less, say(l.Is)+" of "+l.By.String())
	}
	if len(less) > 0 {
		out += ", before " + strings.Join(less, " and ")
	}
	return out
}

func amount(x float64, unit string) string {
	if unit == "" {
		return fmt.Sprintf("%g", x)
	}
	return fmt.Sprintf("%g %s", x, unit)
}

// Stricter is what an outranked limit asks beyond the one that stands, where
// less is allowed by it (most tells that limits are upper ones); "" when none
// does. What outranks it decides, and still it is worth knowing.
func (r Ruling) Stricter(most bool, unit string) string {
	return r.StricterSaid(most, func(x float64) string { return amount(x, unit) })
}

// StricterSaid is Stricter with figures that are printed by say.
func (r Ruling) StricterSaid(most bool, say func(float64) string) string {
	for _, l := range r.Outranked {
		if l.Is != r.Is && (l.Is < r.Is) == most {
			return fmt.Sprintf("%s of %s is stricter (%s): ask before you go by less.", say(l.Is), l.By, l.Source)
		}
	}
	return ""
}
