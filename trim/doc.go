// Package trim is how high the floor comes against everything it meets: the
// floors beyond its openings, door leaves, jambs and tracks, the steps of a
// stair, appliances, and what covers the gap at walls.
//
// A 3/4 in board on 1/32 in felt lies 25/32 in over the subfloor. Tile beyond the
// hall door lies 1/2 in over it: 9/32 in apart, a reducer, and above the 1/4 in that
// a published standard lets stand upright. A dishwasher whose feet are 33-7/8 in
// below its top does not come out again under a counter 34-1/2 in over the subfloor.
// Whoever measures says whether heights are taken from the subfloor or from what
// lies there now; then what comes out is counted too.
package trim
