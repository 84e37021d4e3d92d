// Command bench measures what racking is worth: the bench room against its
// targets, and small floors against solvers of integer programs.
//
//	go run ./bench rack -out docs/racking.md
//	go run ./bench solvers -out docs/solvers.md
//
// The bench room is invented, for measuring only: 383 sq ft, 40 runs of
// 276 in, boards of 5 in face and 12 to 84 in long. Everything is drawn from
// seeds, so that only the times differ from one machine to the next.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"regexp"
)

func main() {
	if err := run(os.Args[1:], os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "bench:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	if len(args) == 0 {
		return fmt.Errorf("rack or solvers?")
	}
	f := flag.NewFlagSet(args[0], flag.ContinueOnError)
	to := f.String("out", "", "write the table to this file")
	seeds := f.Int("seeds", 20, "seeds to take the mean of")
	only := f.String("only", "", "cases whose name matches this")
	highs := f.String("highs", "", "folder that has the npm package highs in node_modules")
	limit := f.Int("limit", 300, "seconds a solver may take for one floor")
	if err := f.Parse(args[1:]); err != nil {
		return err
	}
	which, err := regexp.Compile(*only)
	if err != nil {
		return err
	}
	if *to != "" {
		file, err := os.Create(*to)
		if err != nil {
			return err
		}
		defer file.Close()
		out = io.MultiWriter(out, file)
	}
	switch args[0] {
	case "rack":
		return rackTable(out, *seeds, which)
	case "solvers":
		return solverTable(out, *highs, *limit, which)
	}
	return fmt.Errorf("no bench named %s", args[0])
}
