package caution

import (
	"fmt"
	"math"
	"time"

	"strake/ready"
)

// Ears is how long an ear without protection takes a level in a day, where it
// takes the limit for eight hours and half the time for each 3 dB more (NIOSH).
func Ears(level, limit float64) time.Duration {
	return time.Duration(480 / math.Pow(2, (level-limit)/3) * float64(time.Minute))
}

// noise says how long a day each tool is borne without protection.
func (w Work) noise() []ready.Verdict {
	var out []ready.Verdict
	r, unit := w.rule(NoiseDay)
	for _, n := range w.Noises {
		v := ready.Verdict{Say: ready.Go, Rule: "noise", Where: n.Tool, Measured: fmt.Sprintf("%g dBA", n.Level), Limit: r.Words(unit) + " over eight hours", Source: r.Source}
		if n.Level > r.Is {
			v.Say = ready.Look
			v.Do = fmt.Sprintf("Hearing protection whenever it runs: a bare ear takes %s of it in a day, everything loud together.", lasting(Ears(n.Level, r.Is)))
		}
		out = append(out, v)
	}
	return out
}

// lasting is a time as it is said.
func lasting(d time.Duration) string {
	if d >= 2*time.Hour {
		return fmt.Sprintf("%.0f hours", d.Hours())
	}
	if d < time.Minute {
		return "less than a minute"
	}
	return fmt.Sprintf("%.0f minutes", d.Minutes())
}
