// Package subfloor says whether what lies under the boards is flat, thick
// enough and holds a nail, and what to do where it does not.
//
// Flat is not level: a floor may slope. Under a 10 ft straightedge that lies on
// two high points 8 ft apart the floor is 1/4 in below it: a dip of 1/4 in, over
// the 3/16 in that one trade figure allows and within the 1/4 in that another
// does. Heights read on a grid say the same for every place a straightedge could
// lie, and what to take off or build up at each mark to have it flat.
//
// Nothing here judges structure: a floor that sags, bounces or has cut joists is
// for an engineer.
package subfloor
