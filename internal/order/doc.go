// Package order holds the house rules of this tree and the test that proves
// them: which room may import which, what no room below the rim may use, and
// who knows how a job is written down.
//
// The rules are in policy.txt, in lines such as
//
//	row, board < rack
//	rack, row !< check
//
// Rack may import row and board and all that these may; check comes to neither
// rack nor row, by whatever way. The test reads the source of every room, so
// an import that no line allows fails it, and so does a room no line names.
package order
