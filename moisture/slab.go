package moisture

import (
	"fmt"
	"math"
	"slices"

	"strake/ready"
)

// slabTests is how many tests a slab of this many square feet asks for.
func slabTests(sqft float64) int { return 3 + max(0, int(math.Ceil(sqft/1000-1e-9))-1) }

// slab holds each test of the slab to its limit: the worst counts, not the mean.
func (j Job) slab(f Floor) []ready.Verdict {
	var out []ready.Verdict
	for _, k := range []struct {
		name, key, how string
		reads          []float64
	}{
		{"humidity in the slab (ASTM F2170)", SlabHumidity, "; probes at 40 % of the thickness where the slab dries from one side, 20 % from two", j.Slab.Humidity},
		{"emission of the slab (ASTM F1869)", SlabEmission, "; each dish stands 60 to 72 hours", j.Slab.Emission},
	} {
		if len(k.reads) == 0 {
			continue
		}
		r, unit := Guides.Rule(j.Limits, k.key)
		worst := slices.Max(k.reads)
		v := ready.Verdict{Say: ready.Go, Rule: k.name, Where: "slab", Measured: fmt.Sprintf("%.4g %s, the worst of %d", worst, unit, len(k.reads)), Limit: "at most " + r.Words(unit) + ", without a vapour retarder",
			Source: r.Source, Do: "A vapour retarder is advised all the same."}
		switch {
		case k.key == SlabHumidity && worst > 100:
			v.Say, v.Rule, v.Do = ready.Fix, suspectRule, "No air has over 100 %RH: read that probe again."
		case worst > r.Is:
			v.Say = ready.Fix
			v.Do = "Put a vapour retarder of at most 0.15 perm (such as 6 mil polyethylene) on the slab, below what is nailed to, or let the slab dry and test again. The adhesive's and the boards' makers have limits of their own."
		}
		v.Do = join(v.Do, r.Stricter(true, unit))
		out = append(out, v)
		if want := slabTests(f.SqFt); len(k.reads) < want {
			out = append(out, ready.Verdict{Say: ready.Wait, Rule: slabCountRule, Where: k.name, Measured: fmt.Sprint(len(k.reads)), Limit: fmt.Sprintf("at least %d for %s, trade guidance", want, f.area()),
				Do: "Take more, with house and slab at service conditions for 48 hours before" + k.how + ".", Source: srcTests})
		}
	}
	return out
}
