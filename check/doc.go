// Package check holds a lay against its floor, its stock and its limits, and
// knows nothing of how the lay was found.
//
// It takes the lay as a carpenter takes a drawing made by somebody else: adds
// the pieces up by area, puts every piece back into the board it is said to
// come from, and walks the rows in the order of laying. A piece of 38 in cut
// from a board of 68 in leaves 30 in less the saw's 1/8 in: if the lay says
// that 30 in start row 14, the finding is
//
//	stop: kerf (board 71, piece id 41, piece id 57): 0" between; limit 1/8", square to the cut
//
// Arithmetic is exact: whole ticks, and fractions from math/big where a
// slanted edge is crossed. One rule stands in one file named rule_*.go with
// its name and its text; Rules lists them all.
package check
