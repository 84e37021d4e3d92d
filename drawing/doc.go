// Package drawing draws a plan: the floor as a working drawing on one sheet.
//
// The rows lie level on the sheet, seen from above, so the wall at its top is
// worked out and written down. A room of 16 by 13 ft comes at 1/2 in = 1 ft
// (1:24) on 17 by 11 in paper; a board 5 in wide is then 5.3 mm high and
// carries its number and its length. Whole boards are plain, ripped rows grey,
// sawn ends hatched: the drawing is read as well from a black and white copy.
// Words are placed by rule: what is needed first, and nothing over anything
// else; what does not fit is left out or stands in the table at the side.
package drawing
