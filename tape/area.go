package tape

import (
	"fmt"
	"math"
	"math/big"
	"strings"
)

// Largest is the largest area that is read: 200 m by 200 m.
const Largest = Area(Longest) * Area(Longest)

// areaUnits are the words for a unit of area, in lower case, without spaces.
var areaUnits = map[string]Unit{
	"sqft": UnitFoot, "ft2": UnitFoot, "sf": UnitFoot, "squarefeet": UnitFoot, "squarefoot": UnitFoot,
	"sqm": UnitMetre, "m2": UnitMetre, "squaremetres": UnitMetre, "squaremeters": UnitMetre, "squaremetre": UnitMetre, "squaremeter": UnitMetre,
}

const areaForms = "an area such as 20 sq ft, 20 ft2, 1.86 m2 or 1.86 sq m"

// ParseArea reads an area: 20 sq ft, 20 ft², 1.86 m2. It is rounded to the
// nearest square tick. The error is a *Question.
func ParseArea(s string) (Area, error) {
	if len(s) > maxText {
		return 0, ask(s, "", "that is too long for an area", areaForms)
	}
	toks := scan(s)
	if len(toks) < 2 || toks[0].kind != number {
		return 0, ask(s, "", "an area is a number and a square unit", areaForms)
	}
	var w strings.Builder
	for _, t := range toks[1:] {
		if t.kind != word && !(t.kind == number && t.text == "2") && t.text != "." {
			return 0, ask(s, "", "“"+t.text+"” has no meaning in an area", areaForms)
		}
		w.WriteString(strings.ToLower(strings.TrimSuffix(t.text, ".")))
	}
	u, ok := areaUnits[w.String()]
	if !ok {
		return 0, ask(s, "", "“"+w.String()+"” is no unit of area", areaForms)
	}
	v, _ := new(big.Rat).SetString(zeroed(toks[0].text))
	one := new(big.Rat).SetInt64(int64(u.One()))
	v.Mul(v, one.Mul(one, one))
	if v.Cmp(new(big.Rat).SetInt64(int64(Largest))) > 0 {
		return 0, ask(s, "", "that is larger than any floor: the most is 40000 m2", "a smaller area")
	}
	return Area(nearest(v)), nil
}

// Area prints a in the square unit that goes with the style: square feet to a
// tenth, or square metres to a hundredth.
func (s Style) Area(a Area) string {
	if s.Unit.Imperial() {
		return fmt.Sprintf("%.1f sq ft", a.SquareFeet())
	}
	return fmt.Sprintf("%.2f m2", a.SquareMetres())
}

// SquareFeet is an area of so many square feet, to the nearest square tick.
func SquareFeet(x float64) Area { return Area(math.Round(x * float64(Foot) * float64(Foot))) }
