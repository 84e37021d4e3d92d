// Package method is how the hand work of a floor is done: cards, one a sheet,
// each with drawings, to kneel beside.
//
// A floor of 3/4 in boards with 2 in cleats gets a card that says to try the
// nailer on scrap, with three heads drawn: sunk, right and proud; its figures
// are those of the job. A job in which no pipe stands has no card for a pipe,
// one that is laid one way only none for a spline. What the job does not tell is
// never made up: the card then says whose figure it is.
package method
