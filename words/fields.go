package words

import (
	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/row"
	"strake/tape"
)

// FieldText says what a field is and why it lies so: "room study: rows turn in
// doorway study, along wall N-K; left is the end toward wall K-L".
func FieldText(p plan.Plan, i int) string {
	f := p.Field(i)
	if f.Name == "" || f.Kind != lay.Field {
		return f.Name
	}
	out := f.Name
	if f.Layout.Why != "" && f.Layout.Why != f.Name {
		out += ": " + f.Layout.Why
	}
	if w := leftOf(f); w != "" && f.Layout.Dir != p.Aligned.Dir {
		out += "; its left is the end toward " + w
	}
	return out
}

// leftOf is the longest wall that the rows of a field end at on their left.
func leftOf(f row.Field) string {
	best, name := tape.Length(0), ""
	for _, e := range f.Part.Edges {
		if l := e.From.Y - e.To.Y; !e.Beside && e.Kind != floor.Meeting && l > best { // the floor lies on its left: to the right of it on the sheet
			best, name = l, e.Name
		}
	}
	return name
}
