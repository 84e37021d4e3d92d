// Package paper is a plan as lists: the rows to lay, the cuts to make, a short
// summary for the terminal, and the findings.
//
// Row 12a is 8 ft long, from the wall to the hearth: board 34 whole, 4' 10",
// then 3' 2" of board 71, whose other 2' 6" starts row 14. A last row that
// keeps its groove edge at 3-3/4" on the floor is ripped at 3-3/4"; a starter
// row that keeps its tongue is ripped at 3-3/4" less the joint's air of 1/32".
package paper
