package wood

import (
	"strake/tape"
)

// gravity is a species with its specific gravity at 12 % moisture content.
type gravity struct {
	Name string
	G    float64
}

// gravities are from the strength tables of the Wood Handbook (chapter 5), as two
// woodworkers' pages copy them.
var gravities = []gravity{
	{"red oak", 0.63}, {"white oak", 0.68}, {"oak", 0.63},
	{"maple", 0.63}, {"sugar maple", 0.63},
	{"hickory", 0.72}, {"walnut", 0.55}, {"cherry", 0.50}, {"ash", 0.60},
	{"douglas fir", 0.48},
}

// PoundsPerSqFt is the weight of boards of a species, at 12 % moisture content,
// for each square foot of face: 62.4 lb for a cubic foot of water, times the
// specific gravity, times 1.12 for the water in the wood. The name is looked up
// as Find does.
func PoundsPerSqFt(name string, thickness tape.Length) (float64, bool) {
	g, ok := spokenOf(name, gravities, func(g gravity) string { return g.Name })
	return 62.4 * g.G * 1.12 * thickness.Inches() / 12, ok
}
