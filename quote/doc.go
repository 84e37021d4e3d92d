// Package quote is what a small installer asks for a floor: hours at a rate, goods
// at cost with a markup, tax, and a total with a low and a high.
//
// 36 hours at 48 an hour are 1,728; if hours may be a quarter off, 1,296 to 2,160.
// Goods for 1,400 with a markup of 15 % are 1,610. A rate or a price that nobody has
// written makes no total: the sum says what is open instead.
package quote
