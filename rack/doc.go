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
// The search goes run by run in the order of laying. For each run one pass
// over a shuffled pool of boards finds, for every place along the run, the
// cheapest way there with each board used at most once (a 0/1 path). Cost is
// ordered: H-joints, then joints under the preferred distance, their
// shortfall, scrap and cuts, stair-steps, evenness.
package rack
