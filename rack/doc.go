// Package rack chooses the boards for each run: it sets them out ahead of the
// nailer, as a careful layer does from open bundles, but with every length
// known.
//
// A run of 276 in and boards of 58, 71, 44, 63 and 40 in: together 276 in, so
// the run is filled by whole boards and nothing is cut. In which order they
// lie decides how far their joints keep from those of the row behind. Where no
// boards add up, the last one is cut, and what is left of it starts a later
// run with its cut end to the wall.
//
// The search goes run by run in the order of laying. A guide tells for every
// place along the run the least that it can cost to get from there to the end,
// were every board there as often as wanted; a dive goes along it, board by
// board, and turns back where a board is used up. It nearly always finds a
// filling without a flaw, and where it meets the guide's own figure there is
// none better. Where it finds nothing, one pass over a shuffled pool of boards
// finds the cheapest way to every place with each board used at most once (a
// 0/1 path). Offcuts are valued by what they save in the runs ahead. Then a few
// runs at a time are opened again, until nothing is left to better or the work
// allowed is spent.
//
// Cost is ordered: H-joints, then joints under the preferred distance, their
// shortfall, scrap and cuts, stair-steps, evenness; or scrap and cuts first.
package rack
