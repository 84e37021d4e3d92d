// Package sample holds small plans made by hand for the tests of drawings and
// lists. They are racked by the plainest rule there is (the next board that
// fits, the offcut of one row starts a later one) so that a test depends on
// neither the survey nor the search.
//
// Rectangle is a box room in mm. Hearth is an L-shaped room in feet and inches
// with a hearth against a wall, a slanted wall and a doorway. TwoRooms are two
// rooms in mm joined through a doorway.
package sample
