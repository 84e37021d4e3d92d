// Command strake plans a plank floor: from tape readings to rows, boards, cuts
// and a drawing, held against an independent checker.
package main

import (
	"context"
	"errors"
	"io"
	"os"
	"os/signal"
	"runtime/debug"

	"github.com/alecthomas/kong"
)

// commands is what can be asked for; each has a file of its own.
type commands struct {
	JSON  bool `name:"json" help:"Print the answer as JSON, for another program, instead of text."`
	Quiet bool `short:"q" help:"Print nothing but errors; files are written all the same, and the exit code tells the rest."`

	Plan     planCmd     `cmd:"" help:"Plan a floor: write the drawing, the row list, the cut list, the whole board layout and the findings to a folder."`
	Check    checkCmd    `cmd:"" help:"Check the readings and wishes of a job without laying it, or hold a written board layout against its job."`
	Draw     drawCmd     `cmd:"" help:"Draw one sheet of a job as SVG, PDF or PNG, or the floor itself as DXF."`
	Rows     rowsCmd     `cmd:"" help:"Compare the ways the rows could lie, with what each would mean."`
	Ready    readyCmd    `cmd:"" help:"Say whether the floor may be laid yet: site, air, moisture; go, wait or fix, with the rule and its source."`
	Order    orderCmd    `cmd:"" help:"Say how many cartons to buy, with the chance of running short beside each number."`
	Schedule scheduleCmd `cmd:"" help:"Lay the steps of the job over days: hours, waits for readings, rental, what can be walked on each night; as a table and a calendar."`
	Quote    quoteCmd    `cmd:"" help:"Write a quote for a small installer: scope, hours by rate, materials with markup, what it comes to, conditions, lines to sign."`
	Handover handoverCmd `cmd:"" help:"Write the sheet for whoever lives with the floor: humidity, gaps of winter, spare boards, where pipes are, care."`
	Rack     rackCmd     `cmd:"" help:"Propose the next rows from the boards at hand and the rows as laid."`
	Measure  measureCmd  `cmd:"" help:"Work out what to measure, and print a measuring sheet to fill in."`
	New      newCmd      `cmd:"" help:"Write a commented first job to fill in."`
	Examples examplesCmd `cmd:"" help:"List the example jobs, or print one."`
}

// rim is the outside world, so that tests can stand in for it.
type rim struct {
	ctx      context.Context
	out, err io.Writer
	in       io.Reader
	dir      string  // relative paths start here; empty: the working folder
	answer   *answer // for another program to read; nil: none is wanted
	quiet    bool    // nothing but errors is told
}

const about = `Plan a solid plank floor: from tape readings to rows, boards, cuts and a drawing.

To begin: strake new writes a first job, floor.yaml, with remarks on what to write where; strake plan floor.yaml plans it.

Lengths in a job are written as people write them: 12' 7-3/8", 151.375 in, 3.84 m, 3840. A number without a unit is in the job's own unit (ft, in, mm, cm or m), and everything printed is in that system too.

Figures come with their source and can be replaced in the job. Local code and licensed trades come first, then the maker's instructions, then these figures.

Exit codes: 0 all held, 1 findings that stop the plan or break a limit, or a floor that has to wait, 2 a job or a file could not be read, 64 the command was not understood.`

// freshTimes is how much may be used anew, in hundredths of what is in use, before the
// memory is gone through for what is free: a run is over in seconds, and a whole plan
// stays under 200 MB.
const freshTimes = 300

func main() {
	if os.Getenv("GOGC") == "" { // nobody wants it otherwise
		debug.SetGCPercent(freshTimes)
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	code := run(os.Args[1:], rim{ctx: ctx, out: os.Stdout, err: os.Stderr, in: os.Stdin})
	stop()
	os.Exit(code)
}

// errHelp ends a command line that only asked for help.
var errHelp = errors.New("help")

// run is the whole command, with its exit code.
func run(args []string, r rim) int {
	var c commands
	parser, err := kong.New(&c,
		kong.Name("strake"), kong.Description(about), kong.Writers(r.out, r.err),
		kong.UsageOnError(), kong.ConfigureHelp(kong.HelpOptions{WrapUpperBound: 100}),
		kong.Vars{"drawings": drawingNames()}, kong.Exit(func(int) { panic(errHelp) }))
	if err != nil {
		return report(err, r)
	}
	parser.Model.HelpFlag.Help = "Show this help."
	ctx, err := parse(parser, args)
	out := r.out
	if err == nil {
		if c.JSON || c.Quiet {
			r.out = io.Discard
		}
		r.quiet = c.Quiet
		if c.JSON {
			r.answer = &answer{Command: ctx.Selected().Name}
		}
		err = ctx.Run(r)
	}
	code := report(err, r)
	if r.answer != nil {
		if werr := r.answer.write(out, err, code); werr != nil && code == exitOK {
			return report(werr, r)
		}
	}
	return code
}

// parse turns kong's exit for --help into an error.
func parse(p *kong.Kong, args []string) (ctx *kong.Context, err error) {
	defer func() {
		if v := recover(); v != nil {
			if v != errHelp { //nolint:errorlint // the very value thrown above
				panic(v)
			}
			err = errHelp
		}
	}()
	if len(args) == 0 {
		args = []string{"--help"}
	}
	return p.Parse(args)
}
