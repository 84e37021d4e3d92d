// Package survey turns tape readings into corners: the distances that were
// written down, and the walls taken for square where nothing says otherwise,
// are fitted together by least squares.
//
// Four walls and both diagonals of a room are six readings where five fix the
// shape: the sixth checks the others. Length and width alone are two, and the
// square corners are then an assumption, which is said.
package survey
