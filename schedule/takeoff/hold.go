package takeoff

import (
	"math"

	"strake/moisture"
	"strake/plan"
	"strake/ready"
	"strake/schedule"
)

// hold is what keeps the first row from being laid. Where verdicts on moisture
// hold, nothing is laid before what they wait for.
func hold(p plan.Plan) schedule.Hold {
	h := schedule.Hold{Why: held(p.MoistureVerdicts())}
	for _, v := range h.Why {
		kind := schedule.Unread
		switch moisture.SettledBy(v) {
		case moisture.ByRest:
			kind = schedule.Until
		case moisture.ByNobody:
			kind = schedule.Open
		}
		h.Kind = max(h.Kind, kind)
	}
	if h.Kind == schedule.Until {
		h = until(h, p)
	}
	h.Other = others(p, h.Why)
	return h
}

func held(vs []ready.Verdict) []ready.Verdict {
	var out []ready.Verdict
	for _, v := range vs {
		if v.Held() {
			out = append(out, v)
		}
	}
	return out
}

// others are verdicts on other things while which nothing may be laid.
func others(p plan.Plan, moist []ready.Verdict) []ready.Verdict {
	var out []ready.Verdict
	for _, v := range held(p.Ready()) {
		mine := false
		for _, m := range moist {
			mine = mine || m == v
		}
		if !mine && (v.Holds || v.Say == ready.Other) {
			out = append(out, v)
		}
	}
	return out
}

// until is a hold with the day that the log tells; where it tells none, nobody
// does.
func until(h schedule.Hold, p plan.Plan) schedule.Hold {
	c, ok := p.Acclimation()
	if !ok || !c.Reaches {
		h.Kind = schedule.Open
		return h
	}
	last := c.Days[len(c.Days)-1].Day
	day := func(x float64) schedule.Day { return schedule.Day(math.Ceil(x)) }
	h.Day, h.Early = day(c.Within.Day), day(max(c.Within.Early, last))
	if !math.IsInf(c.Within.Late, 1) {
		h.Late = day(c.Within.Late)
	}
	return h
}
