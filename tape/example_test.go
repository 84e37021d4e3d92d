package tape_test

import (
	"fmt"

	"strake/tape"
)

func ExampleParse() {
	for _, s := range []string{`12' 7-3/8"`, `7⅜`, "151.375 in", "3.84 m"} {
		l, err := tape.Parse(s, tape.UnitInch)
		fmt.Println(l, err)
	}
	// Output:
	// 151-3/8" <nil>
	// 7-3/8" <nil>
	// 151-3/8" <nil>
	// 3840 mm <nil>
}

// What can be read two ways is asked back.
func ExampleQuestion() {
	_, err := tape.Parse(`12' 13"`, "")
	fmt.Println(err)
	_, err = tape.Parse("3,84 m", "")
	fmt.Println(err)
	// Output:
	// “12' 13"” reads as 12' and 13": 13" is a foot or more. Write 13' 1" if that is meant, or else the figure on the tape
	// “3,84 m”: a comma can be read two ways. Write 3.84 m if the comma is a decimal sign
}

func ExampleParseReading() {
	r, _ := tape.ParseReading(`7-3/16"`, "")
	fmt.Println(r.Value, "to", r.Step)
	r, _ = tape.ParseReading("3840", tape.UnitMillimetre)
	fmt.Println(r.Value, "to", r.Step)
	// Output:
	// 7-3/16" to 1/16"
	// 3840 mm to 1 mm
}

func ExampleStyle() {
	l := 151*tape.Inch + 25*tape.SixtyFourth
	s := tape.Style{Unit: tape.UnitFoot, Step: tape.Sixteenth}
	fmt.Println(s.Of(l), s.Up(l), s.Down(l))
	fmt.Println(tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre}.Of(l))
	// Output:
	// 12' 7-3/8" 12' 7-7/16" 12' 7-3/8"
	// 3845 mm
}
