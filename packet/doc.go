// Package packet is the paper that goes to site: everything of a plan on sheets of
// A4 or Letter, to be printed at their own size, kneeled on and written on.
//
// A room 16 ft by 13 ft comes as a cover with its figures, the room as measured, the
// floor plan tiled at 1/2 in = 1 ft, lines to snap, row cards with figures that are
// read from standing height, cut lists for one walk to the saw each, a drift table and
// a story stick to tape to the wall, and forms to write down what is read. What has to
// be measured before it is cut says so and has a box beside the planned figure.
package packet
