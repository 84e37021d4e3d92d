// Package detail draws the places of one job that a plan cannot show: cut
// across, at full or half size, with the figures of this job.
//
// Wall A-B wants 3/4 in of gap at least and hides 1 in at most under 1/2 in of
// base and 3/4 in of shoe: the detail has the edge of the boards 19 mm from the
// wall, a dashed line where they may end at the farthest, base and shoe over
// both, and the walls that it holds for. A doorway to tile that lies 9/32 in lower
// has a reducer between two floors of their true heights.
//
// What a job does not know is drawn in a usual shape, and said beside it: "not
// told in the job". No figure stands at it. A detail is there only where the job
// has such a place; places that are alike share one.
package detail
