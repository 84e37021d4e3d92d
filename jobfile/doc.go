// Package jobfile is the job as written down: the one room that knows what a
// job file's keys are called and how a lay is stored.
//
// A job is a YAML text such as
//
//	strake: 1
//	unit: ft
//	rooms:
//	  parlour: {corners: [A, B, C, D]}
//	readings:
//	  A-B: 12' 7-3/8"
//	  B-C: 9' 4"
//	boards:
//	  face: 3-1/4"
//	  thickness: 3/4"
//	  lengths: {mix: {least: 9", most: 84", mean: 40"}}
//
// ReadJob reads it and says everything that is wrong with it at once, each
// with its line and column, what was read and what would be accepted. One
// table of keys drives the reader, the schema for editors (Schema) and the
// list of keys for people (Keys).
//
// WriteLay and ReadLay keep a lay exactly, as JSON with lengths in whole ticks.
package jobfile
