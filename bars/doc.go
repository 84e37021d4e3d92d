// Package bars cuts pieces out of bars of the lengths that are sold: base, shoe,
// strips and nosings.
//
// Pieces of 70, 50, 45 and 20 in with a kerf of 1/8 in out of bars of 96 in: 70
// and 20 from the one, 50 and 45 from the other. Bars are few first, then short:
// of bars of 96 and 144 in the fewest are taken, and of as many the shorter ones.
package bars
