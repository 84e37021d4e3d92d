package jobfile_test

import (
	"fmt"

	"strake/jobfile"
)

const small = `strake: 1
unit: ft
rooms:
  parlour: {corners: [A, B, C, D], walk: clockwise}
readings:
  A-B: 12' 7-3/8"
  B-C: 9' 4"
boards:
  face: 3-1/4"
  thickness: 3/4"
  lengths: {mix: {least: 9", most: 84", mean: 40"}}
`

func ExampleReadJob() {
	j, found, err := jobfile.ReadJob("parlour.yaml", []byte(small))
	fmt.Println(j.Readings[0].Value, j.Boards.Known, j.Limits.JointMin.Value, found, err)
	// Output:
	// 151-3/8" carton mix 6" [] <nil>
}

// Everything that is wrong is told at once.
func ExampleErrors() {
	_, _, err := jobfile.ReadJob("parlour.yaml", []byte(`strake: 1
rooms:
  parlour: {corners: [A, B, C, D]}
readings:
  A-B: 12' 13"
  B-Z: 9' 4"
boards:
  fase: 3-1/4"
  thickness: 3/4"
  lengths: {one: 48}
`))
	fmt.Println(err)
	// Output:
	// parlour.yaml:5:8: 13" is a foot or more
	//     5 |   A-B: 12' 13"
	//       |        ^
	//       read: 12' and 13"
	//       accepted: 13' 1" if that is meant, or else the figure on the tape
	// parlour.yaml:6:3: “Z” is not a corner or point of this job
	//     6 |   B-Z: 9' 4"
	//       |   ^
	//       read: Z
	//       accepted: one of A, B, C, D
	// parlour.yaml:8:3: “fase” is not a key here
	//     8 |   fase: 3-1/4"
	//       |   ^
	//       read: fase
	//       accepted: did you mean “face”? Known here: name, species, face, ten_boards, thickness, side_tongue, end_tongue, hand, lengths, widths, pattern, carton, cartons, lot, currency
	// 3 errors
}
