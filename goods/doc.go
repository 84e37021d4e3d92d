// Package goods is everything that has to be on site besides the boards: how much
// of it, counted from the plan and not from the area, what it is counted from, and
// what it costs.
//
// A wall of 12 ft with a doorway of 32 in has two stretches of base; each is a
// piece, longer by the thickness of the base at an outside corner, and the pieces
// of all walls are cut out of bars of 8, 12 and 16 ft. Sheets from a roll of 36 in
// lie across the rows, each 4 in over the one before. A doorway takes its strip in
// one piece.
package goods
