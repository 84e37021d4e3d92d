// Package plane is the floor as a flat drawing: places, outlines and areas in
// whole ticks, and the cuts made through them by straight lines along and
// across the rows.
//
// A row is a strip between two lines across the room. Cut through a room with
// a chimney breast, the strip falls apart into two runs: Region.Below and
// Region.Above cut it, and Region.Parts tells the runs apart. A corner that a
// cut makes on a slanted wall is rounded to a tick along the cutting line, so
// two pieces cut by the same line always share it exactly.
package plane
