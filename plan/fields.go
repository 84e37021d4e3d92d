package plan

import "strake/row"

// FieldOf is the index of the field that a zone of the lay belongs to: zones
// follow the fields' areas.
func (p Plan) FieldOf(zone int) int {
	for i, f := range p.Fields {
		if zone -= len(f.Layout.Areas); zone < 0 {
			return i
		}
	}
	return 0
}

// Field is a field by its index; the whole floor where it is not parted.
func (p Plan) Field(i int) row.Field {
	if i < len(p.Fields) {
		return p.Fields[i]
	}
	return row.Field{Layout: p.Layout, Part: p.Aligned, Aligned: p.Aligned}
}

// AllFields are the fields, at least one.
func (p Plan) AllFields() []row.Field {
	if len(p.Fields) == 0 {
		return []row.Field{p.Field(0)}
	}
	return p.Fields
}
