package main

import (
	"bytes"
	"cmp"
	"fmt"
	"io"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"strake/drawing"
	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/packet"
	"strake/paper"
	"strake/plan"
	"strake/rack"
	"strake/sheet/svg"
)

type planCmd struct {
	Job   string `arg:"" help:"The job file (YAML). strake new writes one."`
	Out   string `short:"o" placeholder:"FOLDER" help:"Folder to write to (default: beside the job; bedroom.yaml goes to bedroom-plan)."`
	Seed  uint64 `placeholder:"NUMBER" help:"Another seed gives another board layout of the same boards (default: the job's seed)."`
	Paper string `placeholder:"SIZE" help:"Paper of packet.pdf: a4 or letter, or none for no packet (default: the job's key paper, else letter for jobs in feet and inches, a4 for others)."`
}

// Help says what is written where.
func (planCmd) Help() string {
	return `Writes to the folder:
  packet.pdf    all of it to print and take along, A4 or Letter: the room as measured, the rows to scale, lines to snap,
                row cards, cut lists, story stick, what to buy, days, forms to write in, cautions
  plan.svg      the room to scale: rows, boards, joints, rips and what each edge meets
  rows.txt      each row with its pieces in order, lengths to 1/16 in or 1 mm
  rows.csv      the same for a spreadsheet
  lines.txt     lines to snap, taped from corners and through doorways, the order of rooms, and the story stick
  lines.svg     the lines to snap, drawn in the rooms
  cuts.txt      the cut list: crosscuts, rips, mitres, notches, tongues to take off
  cuts.csv      the same for a spreadsheet
  lists.xlsx    pieces, rows, cuts and boards as a workbook, lengths as numbers
  fasteners.txt with what boards are nailed, how many each row takes, how deep they go, what to keep out of
  fasteners.csv the same counts for a spreadsheet
  cautions.txt  what to mind with each task of the job, with the official source where there is one
  heights.txt   the floor against what it meets: openings, strips, door leaves, jambs, stairs, appliances, base and shoe
  flatness.svg  what makes the subfloor flat, mark by mark, where heights were read
  acclimation.svg  how the boards come to rest, day by day, where a log is kept
  plan.json     the whole board layout, exact, for strake check --lay
  readings.txt  each reading against the fitted room, and corners to check on site
  readings.csv  the same for a spreadsheet
  readings.svg  the room with what the readings miss by, drawn large
  findings.txt  what was noticed, with measured value, limit and what to do

Lengths are in the job's system: feet and inches or inches to 1/16 in, rips to 1/32 in; or millimetres. The same job gives the same files, byte for byte.

A file that you changed is never overwritten: it is kept as rows.kept-1.txt and so on, and the summary says so. What strake wrote itself is replaced; ` + ledgerName + ` in the folder says what that was. To keep two plans beside each other, give each a folder with -o. Where no boards could be laid, only findings.txt and the readings are written, and papers of the plan before are set aside as NAME.before until there is a plan again.`
}

// Validate refuses paper that there is not.
func (c planCmd) Validate() error {
	if _, ok := packet.Papers[c.Paper]; !ok && c.Paper != "" && c.Paper != noPacket {
		return fmt.Errorf("--paper=%s: a4 or letter, or none for no packet", c.Paper)
	}
	return nil
}

func (c *planCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	if c.Seed != 0 {
		j.Seed = c.Seed
	}
	told := r.progress()
	choices := c.choose(j)
	p := plan.MakeTold(r.ctx, j, rack.Polishing, told.racking())
	p.Findings = append(fs, p.Findings...)
	told.at("writing the papers", 0, 0)
	files, err := c.files(r, p, choices)
	told.end()
	if err != nil {
		return err
	}
	out := c.Out
	if out == "" {
		out = folder(c.Job)
	}
	moved, err := writeAll(r.path(out), files, slices.Concat(writers, readingWriters, []writer{flatnessWriter, trimWriter, logWriter, packetWriter})...)
	if err != nil {
		return err
	}
	r.tell(func(a *answer) { a.planned(p); a.wrote(out, files) })
	fmt.Fprint(r.out, paper.Summary(p))
	tell(r, p.Findings)
	fmt.Fprintf(r.out, "\nWritten to %s: %s\n%s", out, strings.Join(names(files), ", "), moved)
	if finding.Worst(p.Findings) == finding.Stop {
		fmt.Fprintln(r.out, "The plan does not hold yet; see findings.txt.")
		return errFindings
	}
	return nil
}

// files are the papers of a plan with its packet first. They are made side by side.
func (c *planCmd) files(r rim, p plan.Plan, choices <-chan plan.Choices) ([]file, error) {
	var pk, files []file
	var packetErr, err error
	var beside sync.WaitGroup
	beside.Go(func() { pk, packetErr = c.packet(r, p, choices) })
	files, err = papers(p)
	beside.Wait()
	return append(pk, files...), cmp.Or(err, packetErr)
}

// alike is how many findings of one rule are told on the terminal; the rest
// stand in findings.txt.
const alike = 3

// tell prints what stops the plan, in full, and each warning in a line.
func tell(r rim, fs []finding.Finding) {
	count := map[string]int{}
	for _, level := range []finding.Level{finding.Stop, finding.Warn} {
		for _, f := range fs {
			if f.Level != level {
				continue
			}
			if count[f.Rule]++; count[f.Rule] > alike {
				continue
			}
			if level == finding.Warn {
				f.Do, f.Source = "", ""
			}
			fmt.Fprintln(r.out, f)
		}
	}
	for _, rule := range slices.Sorted(maps.Keys(count)) {
		if n := count[rule] - alike; n > 0 {
			fmt.Fprintf(r.out, "%d more of “%s”: see findings.txt\n", n, rule)
		}
	}
}

// folder is where the plan of a job goes unless asked otherwise.
func folder(jobFile string) string {
	return strings.TrimSuffix(jobFile, filepath.Ext(jobFile)) + "-plan"
}

// file is one paper of a plan.
type file struct {
	name string
	data []byte
}

func names(fs []file) []string {
	var out []string
	for _, f := range fs {
		out = append(out, f.name)
	}
	return out
}

// writer writes one paper of a plan.
type writer struct {
	name  string
	write func(io.Writer, plan.Plan) error
}

// writers are the papers that show a layout.
var writers = []writer{
	{"plan.svg", func(w io.Writer, p plan.Plan) error { return svg.Write(w, drawing.Floor(p)) }},
	{"rows.txt", paper.RowsText},
	{"rows.csv", paper.RowsCSV},
	{"lines.txt", paper.Lines},
	{"lines.svg", func(w io.Writer, p plan.Plan) error { return svg.Write(w, drawing.Lines(p)) }},
	{"cuts.txt", paper.CutsText},
	{"cuts.csv", paper.CutsCSV},
	{"lists.xlsx", paper.ListBook},
	{"fasteners.txt", paper.Fasteners},
	{"fasteners.csv", paper.FastenersCSV},
	{"cautions.txt", paper.Cautions},
	{"plan.json", func(w io.Writer, p plan.Plan) error { return jobfile.WriteLay(w, p.Lay) }},
}

// readingWriters are the papers that show readings and the fitted room.
var readingWriters = []writer{
	{"readings.txt", paper.Readings},
	{"readings.csv", paper.ReadingsCSV},
	{"readings.svg", func(w io.Writer, p plan.Plan) error { return svg.Write(w, drawing.Readings(p)) }},
}

// flatnessWriter is the sheet of a subfloor whose heights were read.
var flatnessWriter = writer{"flatness.svg", func(w io.Writer, p plan.Plan) error { return svg.Write(w, drawing.Heights(p)) }}

// trimWriter is the list of heights that were measured.
var trimWriter = writer{"heights.txt", paper.Heights}

// logWriter is the chart of the boards' acclimation log.
var logWriter = writer{"acclimation.svg", func(w io.Writer, p plan.Plan) error { return svg.Write(w, drawing.Acclimation(p)) }}

// papers are all files of a plan. Without a layout there are only findings and
// what the readings said.
func papers(p plan.Plan) ([]file, error) {
	var all []writer
	if len(p.Lay.Runs) > 0 {
		all = append(all, writers...)
	}
	if p.Survey.Converged {
		all = append(all, readingWriters...)
	}
	if marks, _ := p.Heights(); len(marks) > 0 {
		all = append(all, flatnessWriter)
	}
	if p.Job.Trim.Told {
		all = append(all, trimWriter)
	}
	if _, ok := p.Acclimation(); ok {
		all = append(all, logWriter)
	}
	out := []file{}
	for _, w := range all {
		var b bytes.Buffer
		if err := w.write(&b, p); err != nil {
			return nil, fmt.Errorf("%s: %w", w.name, err)
		}
		out = append(out, file{w.name, b.Bytes()})
	}
	return append(out, file{"findings.txt", []byte(paper.Findings(p))}), nil
}

func (r rim) path(p string) string {
	if r.dir == "" || filepath.IsAbs(p) {
		return p
	}
	return filepath.Join(r.dir, p)
}

// readJob reads a job file and says what is odd about it.
func readJob(r rim, name string) (job.Job, []finding.Finding, error) {
	data, err := os.ReadFile(r.path(name))
	if err != nil {
		return job.Job{}, nil, err
	}
	return jobfile.ReadJob(name, data)
}
