// Package sheet is a page to draw on, in millimetres of paper, x to the right
// and y down from the upper left corner.
//
// A board 58 in long and 5 in wide drawn at 1:24 is a Polygon 61.4 mm long and
// 5.3 mm high; its number is a Text in the middle of it, and where it is cut
// the hatch is expanded to Polylines here, so that every renderer draws the
// same lines. Text knows about how wide it will be, in the wider of the usual
// sans-serif fonts, so that a drawing can keep its labels apart.
package sheet
