package main

import (
	"errors"
	"fmt"
	"os"

	"github.com/alecthomas/kong"

	"strake/jobfile"
)

// The exit codes, all of them.
const (
	exitOK       = 0
	exitFindings = 1  // the plan does not hold, or could not be made
	exitFile     = 2  // a job or a file could not be read or written
	exitUsage    = 64 // the command line was not understood
)

// errFindings says that findings were printed that stop the plan.
var errFindings = errors.New("findings that stop the plan")

// report says what went wrong and chooses the exit code.
func report(err error, r rim) int {
	var parse *kong.ParseError
	var job jobfile.Errors
	switch {
	case err == nil, errors.Is(err, errHelp):
		return exitOK
	case errors.Is(err, errFindings):
		return exitFindings
	case errors.As(err, &parse):
		fmt.Fprintf(r.err, "strake: %v\nSee %s --help.\n", err, asked(parse))
		return exitUsage
	case errors.As(err, &job):
		fmt.Fprintln(r.err, job.Error())
		return exitFile
	case errors.Is(err, os.ErrNotExist):
		fmt.Fprintf(r.err, "strake: %v\nCheck the name; strake examples lists jobs to start from.\n", err)
		return exitFile
	}
	fmt.Fprintf(r.err, "strake: %v\n", err)
	return exitFile
}

// asked is the command as far as it was understood.
func asked(err *kong.ParseError) string {
	if n := err.Context.Selected(); n != nil {
		return "strake " + n.Name
	}
	return "strake"
}
