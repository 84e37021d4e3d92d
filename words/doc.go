// Package words is how a plan is said on paper: lengths to the step that a
// saw and a tape can keep, rows and boards by their names, edges by what they
// meet, and the working line by its distance from a wall.
//
// The run {Row: 12, Part: 1} is "12a" on every sheet and list; a floor edge at
// a wall with a gap range of 3/4 to 1 in is "gap 3/4" to 1""; a rip of 95.27 mm
// is set at 3-3/4", to the nearest 1/32 in.
package words
