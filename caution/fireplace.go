package caution

import (
	"fmt"

	"strake/ready"
	"strake/tape"
)

// fireplaces holds what does not burn before each opening to the model code.
func (w Work) fireplaces() []ready.Verdict {
	var out []ready.Verdict
	for _, f := range w.Fireplaces {
		front, side := HearthFront, HearthSide
		if large, _ := w.rule(LargeFrom); f.opening() >= large.Is {
			front, side = LargeFront, LargeSide
		}
		out = append(out, w.clear(f, "before the opening", f.Front, front), w.clear(f, "beside the opening", f.Side, side))
	}
	return out
}

// opening is its area in square feet.
func (f Fireplace) opening() float64 {
	return f.Width.Inches() * f.Height.Inches() / 144
}

// clear is the verdict on one distance from an opening to the first wood.
func (w Work) clear(f Fireplace, where string, is tape.Length, key string) ready.Verdict {
	r, unit := w.rule(key)
	least, of := r.In(w.imperial(), unit)
	v := ready.Verdict{Say: ready.Go, Rule: "wood near a fire", Where: f.Name + ", " + where, Measured: w.Style.Of(is), Source: r.Source,
		Limit: fmt.Sprintf("at least %s, for an opening of %s", least.Words(of), w.Style.Area(tape.Area(f.Width)*tape.Area(f.Height)))}
	if is.Inches() < r.Is {
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Keep wood out of there: a larger hearth of stone or tile, or the boards end further off. Local code and a licensed professional decide, above all where a surround or a stove stands there."
	}
	return v
}
