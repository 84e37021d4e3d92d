// Package tape is the tape measure: lengths as written on site, exact in both
// systems, and readings of them with the doubt they carry.
//
// A carpenter writes 12' 7-3/8" or 3.84 m. Both are whole numbers of ticks of
// 125 nm, so nothing is lost by mixing them: 12' 7-3/8" is 151-3/8 in, 3,844.9
// mm, 30,759,400 ticks, and prints again as it was read.
package tape
