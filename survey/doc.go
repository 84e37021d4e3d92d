// Package survey turns tape readings into corners: distances, offsets, widths
// and given angles, and the corners taken for square where nothing says
// otherwise, are fitted together by least squares (Adjust). It finds the reading
// that is probably wrong and the readings that nothing checks (Result.Report),
// carries the doubt to any figure made from corners (Result.Doubt), and works
// out what to measure (Suggest).
//
// Four walls and both diagonals of a room are six readings where five fix the
// shape: the sixth checks the others, and a slip of 1 in shows, but not where
// it is. Length and width alone are two, and the square corners are then an
// assumption, which is said.
//
// Redundancy and the search for a wrong reading count what was measured:
// readings, given angles, doorways. Corners taken for square keep the shape
// where no reading does, and check nothing: in the search they are trusted to
// 10 degrees, in the fit to half a degree.
package survey
