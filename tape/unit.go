package tape

// Unit is a unit that lengths are written in.
type Unit string

// The units of the two tapes.
const (
	UnitInch       Unit = "in"
	UnitFoot       Unit = "ft"
	UnitMillimetre Unit = "mm"
	UnitCentimetre Unit = "cm"
	UnitMetre      Unit = "m"
)

// Imperial tells whether u belongs to the inch tape.
func (u Unit) Imperial() bool { return u == UnitInch || u == UnitFoot }
