// Package finding is what the trade would say aloud while looking a job over:
// this wall is out by half an inch, that rip is a sliver, these two joints are
// too close.
//
// A finding is data: a rule, a place, what was measured, the limit it was held
// to, and what to do. The sentence is made at the end. "Joints of rows 12a and
// 13 are 4 in apart; at least 6 in" is the finding {Rule: "joint distance",
// Where: "row 12a, row 13", Measured: "4 in", Limit: "6 in"}.
package finding

import "strings"

// Level says how much a finding weighs.
type Level string

// The three weights of a finding.
const (
	Note Level = "note" // worth knowing; the plan holds
	Warn Level = "warn" // look at this before going on
	Stop Level = "stop" // the plan does not hold, or cannot be made
)

// Finding is one thing noticed about a job, a room or a lay.
type Finding struct {
	Level    Level
	Rule     string // short name of the rule, in the trade's words
	Where    string // named place: a wall, row 12a, reading A-C
	Measured string // what was found, with its unit
	Limit    string // what it was held to, with its unit
	Do       string // what to do about it
	Source   string // where the limit comes from
	Pieces   []int  // pieces of the lay it is about
}

// String is the finding as one line.
func (f Finding) String() string {
	var b strings.Builder
	b.WriteString(string(f.Level) + ": " + f.Rule)
	if f.Where != "" {
		b.WriteString(" (" + f.Where + ")")
	}
	if f.Measured != "" {
		b.WriteString(": " + f.Measured)
	}
	if f.Limit != "" {
		b.WriteString("; limit " + f.Limit)
	}
	if f.Do != "" {
		b.WriteString(". " + f.Do)
	}
	if f.Source != "" {
		b.WriteString(" [" + f.Source + "]")
	}
	return b.String()
}

// Worst is the heaviest level among fs, Note when there are none.
func Worst(fs []Finding) Level {
	w := Note
	for _, f := range fs {
		switch {
		case f.Level == Stop:
			return Stop
		case f.Level == Warn:
			w = Warn
		}
	}
	return w
}
