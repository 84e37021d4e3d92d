package rack

import (
	"context"

	"strake/lay"
)

// Bare is the floor with its rows and no boards, for lengths that are not known.
func Bare(a Ask) lay.Lay {
	e := newEngine(context.Background(), a, nil, nil)
	var plan []filled
	for _, r := range e.oriented(a.Fields) {
		plan = append(plan, filled{run: r})
	}
	byOrder(plan)
	return e.build(a, nil, plan)
}
