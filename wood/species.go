package wood

import "strings"

// Species is a wood with its change coefficients: the part of its width that a
// board changes by for each point of moisture content, from 6 to 14 %.
type Species struct {
	Name       string
	Tangential float64 // plain-sawn boards, C_T
	Radial     float64 // quarter-sawn boards, C_R; 0 not known
	Shrinkage  float64 // green to oven-dry, tangential, percent; 0 not known or a group of species
	Source     string
}

const (
	handbook = "Wood Handbook (FPL-GTR-190), table 13-5"
	trade    = "NWFA A200 coefficients, as reprinted by a trade magazine"
	memory   = "Wood Handbook, table 13-5, from memory"
	identity = "by C = S/(3000 - 20 S) from the shrinkage of Wood Handbook table 4-3"
)

// table is by the words of the name; the longest match counts.
var table = []Species{
	{"ash", 0.00274, 0.00169, 7.8, handbook + ", white ash"},
	{"beech", 0.00431, 0.00190, 11.9, handbook},
	{"birch", 0.00338, 0.00256, 9.5, handbook + ", yellow birch"},
	{"sweet birch", 0.00338, 0.00256, 9.0, handbook + ", one row with yellow birch"},
	{"cherry", 0.00248, 0.00126, 7.1, handbook + ", black cherry"},
	{"hickory", 0.00411, 0.00259, 0, trade + ", true hickory; radial from memory"},
	{"pecan", 0.00315, 0.00169, 8.9, handbook},
	{"maple", 0.00353, 0.00165, 9.9, handbook + ", sugar maple"},
	{"red maple", 0.00289, 0.00137, 8.2, handbook},
	{"red oak", 0.00369, 0.00158, 0, handbook + ", commercial red oak"},
	{"white oak", 0.00365, 0.00180, 0, handbook + ", commercial white oak"},
	{"oak", 0.00369, 0.00158, 0, handbook + ", commercial red oak"},
	{"walnut", 0.00274, 0.00190, 7.8, handbook},
	{"black locust", 0.00252, 0.00158, 7.2, handbook},
	{"locust", 0.00252, 0.00158, 7.2, handbook + ", black locust"},
	{"douglas fir", 0.00267, 0.00165, 7.6, trade + ", coast; radial from memory"},
	{"interior douglas fir", 0.00241, 0.00130, 6.9, identity + ", interior north"},
	{"white fir", 0.00245, 0.00112, 7.0, memory},
	{"eastern white pine", 0.00212, 0.00071, 6.1, memory},
	{"white pine", 0.00212, 0.00071, 6.1, memory + ", eastern white pine"},
	{"heart pine", 0.00263, 0.00176, 7.5, trade + ", longleaf; radial from memory"},
	{"longleaf pine", 0.00263, 0.00176, 7.5, trade + "; radial from memory"},
	{"loblolly pine", 0.00259, 0.00165, 7.4, memory},
	{"shortleaf pine", 0.00271, 0.00158, 7.7, memory},
	{"slash pine", 0.00267, 0.00187, 7.6, memory},
	{"southern yellow pine", 0.00265, 0, 0, trade},
	{"pine", 0.00265, 0, 0, trade + ", southern yellow pine"},
	{"teak", 0.00186, 0.00101, 0, trade + "; radial from memory"}, // a remembered shrinkage of 5.8 % does not fit it
	{"jatoba", 0.00300, 0.00155, 8.5, trade + "; radial " + identity + ", from memory"},
	{"brazilian cherry", 0.00300, 0.00155, 8.5, trade + "; radial " + identity + ", from memory"},
	{"merbau", 0.00158, 0.00092, 4.6, trade + "; radial " + identity + ", from memory"},
	{"mesquite", 0.00129, 0, 0, trade},
	{"australian cypress", 0.00162, 0, 0, trade},
	{"padauk", 0.00180, 0, 0, trade},
	{"wenge", 0.00201, 0, 0, trade},
	{"purpleheart", 0.00212, 0, 0, trade},
	{"santos mahogany", 0.00238, 0, 0, trade},
	{"jarrah", 0.00396, 0, 0, trade},
}

// Find is the species that a name speaks of: "white oak, select" is white oak.
func Find(name string) (Species, bool) {
	return spokenOf(name, table, func(s Species) string { return s.Name })
}

// spokenOf is the entry of a table whose name stands in what is said as whole words;
// of several the one with the longest name.
func spokenOf[T any](said string, table []T, name func(T) string) (best T, ok bool) {
	words := " " + strings.NewReplacer("-", " ", ",", " ").Replace(strings.ToLower(said)) + " "
	for _, x := range table {
		if strings.Contains(words, " "+name(x)+" ") && (!ok || len(name(x)) > len(name(best))) {
			best, ok = x, true
		}
	}
	return best, ok
}

// Coefficient is the change coefficient that a shrinkage from green to oven-dry
// (percent) comes to: the formula of Between at 10 % moisture content. It gives
// the published coefficients of single species to all five decimals; those of
// groups, such as red oak, are mixtures.
func Coefficient(shrinkage float64) float64 { return shrinkage / (3000 - 20*shrinkage) }

// wholes are shrinkages of one species that stands for a group, percent: what is
// taken where the whole shrinkage is asked for. They give other coefficients than
// the group's, which is a mixture.
var wholes = map[string]struct {
	percent float64
	source  string
}{
	"red oak":   {8.6, "northern red oak, Wood Handbook table 4-3, from memory"},
	"oak":       {8.6, "northern red oak, Wood Handbook table 4-3, from memory"},
	"white oak": {10.5, "white oak, Wood Handbook table 4-3"},
	"hickory":   {11.0, "mockernut hickory, Wood Handbook table 4-3"},
}

// Whole is the shrinkage of a species from green to oven-dry (percent,
// tangential) with where it comes from; where none is known, what its coefficient
// comes from.
func (s Species) Whole() (percent float64, source string) {
	if w, ok := wholes[s.Name]; ok {
		return w.percent, w.source
	}
	if s.Shrinkage > 0 {
		return s.Shrinkage, s.Source
	}
	return EffectiveShrinkage(s.Tangential), "from the coefficient, by C = S/(3000 - 20 S)"
}

// EffectiveShrinkage is the shrinkage (percent) that a coefficient comes from,
// Coefficient turned round: what stands in for the shrinkage of a group.
func EffectiveShrinkage(coefficient float64) float64 {
	return 3000 * coefficient / (1 + 20*coefficient)
}
