package main

import (
	"fmt"
	"slices"

	"strake/finding"
	"strake/paper"
	"strake/plan"
	"strake/ready"
)

type readyCmd struct {
	Job string `arg:"" help:"The job file (YAML). strake new writes one."`
}

// Help says what is looked at.
func (readyCmd) Help() string {
	return `Says whether the floor may be laid yet: go, look, wait, fix or another product, each with what was read, the limit, whose limit it is and where it comes from.

Asked first is whether a nailed floor of solid boards belongs there (section site of the job) and what could hurt somebody (section hazards: structure, old paint, fireplace, guard rail, pipes and cables, stacks of cartons, noise); then whether air, subfloor and boards are of one mind (sections climate and moisture); then whether what lies under the boards is flat and holds a nail, and what the nails could meet (sections subfloor, fasteners and keep_free); then how high the floor comes against floors beyond, doors, stairs and appliances (section heights). What nobody has read is asked for, with how many readings the area wants:

    climate:
      winter: {temperature: 68 F, humidity: 30}
      summer: {temperature: 78 F, humidity: 55}
      now:    {temperature: 70 F, humidity: 42}
    moisture:
      subfloor: [9.8, 10.1, 9.6, 10.4, 9.9, 10.0, 9.7, 10.2, 10.1, 9.8]
      boards: {setting: red oak, readings: [8.1, 7.9, 8.4]}
      log: {2026-03-01: [9.4, 9.1], 2026-03-03: [9.0, 8.8]}
      limits:
        subfloor_most: {is: 11, by: maker, source: the leaflet in the carton}

A limit of the maker's outranks trade guidance, and local code outranks both. The exit code is 1 where something says wait, fix or another product. Nothing is written to disk; strake plan lists the same among its findings.`
}

func (c *readyCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	p := plan.Rows(j)
	vs := p.Ready()
	r.tell(func(a *answer) { a.Job = j.Name; a.verdicts(vs) })
	fmt.Fprint(r.out, paper.Ready(j.Name, vs))
	if finding.Worst(slices.Concat(fs, p.Findings)) == finding.Stop {
		fmt.Fprintln(r.out, "\nThe rows cannot be set out yet, so area and width may be missing above: see strake check.")
	}
	if slices.ContainsFunc(vs, ready.Verdict.Held) {
		return errFindings
	}
	return nil
}
