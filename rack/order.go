package rack

import (
	"strake/lay"
	"strake/row"
)

// Place is a run by its field and its place among the field's runs.
type Place struct{ Field, Run int }

// Order is the order in which the runs of all fields are racked: each field in
// the order of laying, headers and frames last, since they take whole boards,
// and what is cut off is of another width.
func Order(fields []row.Field) []Place {
	var out []Place
	for _, alone := range []bool{false, true} {
		for k, f := range fields {
			for i := range f.Layout.Runs {
				if (f.Kind != lay.Field) == alone {
					out = append(out, Place{k, i})
				}
			}
		}
	}
	return out
}
