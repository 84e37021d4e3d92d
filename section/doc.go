// Package section draws a floor cut across or seen from the side, in real
// millimetres, y up, at a scale, onto items of a sheet.
//
// A board 127 mm wide and 19 mm thick on a canvas at 1:2 is 63.5 mm wide on
// paper, its tongue 3.2 mm. What the cut passes through is hatched by its
// material and has a heavy outline; what is seen beyond has a lighter one;
// dimensions, leaders and hatches have thin lines (the ideas of ISO 128 and 129,
// from memory). All of it is black on white: nothing is told by a colour or a
// grey.
//
// Words never lie on each other: dimensions are stacked outside the drawing,
// each on the nearest line that is free, and notes stand in a column beside it,
// in an order in which their leaders do not cross.
package section
