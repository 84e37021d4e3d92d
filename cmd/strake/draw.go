package main

import (
	"bytes"
	"fmt"
	"io"
	"maps"
	"path/filepath"
	"slices"
	"strings"

	"strake/drawing"
	"strake/finding"
	"strake/paper"
	"strake/plan"
	"strake/rack"
	"strake/sheet"
	"strake/sheet/dxf"
	"strake/sheet/pdf"
	"strake/sheet/png"
	"strake/sheet/svg"
)

type drawCmd struct {
	Job  string  `arg:"" help:"The job file (YAML). strake new writes one."`
	What string  `arg:"" default:"plan" help:"Which drawing: ${drawings} (default: plan)."`
	Out  string  `short:"o" required:"" placeholder:"FILE" help:"Where to write it; the ending says how: .svg, .pdf, .png, or .dxf for the floor and its boards in real units."`
	DPI  float64 `name:"dpi" default:"150" help:"Dots an inch of a .png."`
}

// drawings are the sheets that can be drawn by themselves, and what they need.
var drawings = map[string]struct {
	boards bool
	sheets func(plan.Plan) []sheet.Sheet
}{
	"plan":        {true, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Floor(p)} }},
	"lines":       {true, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Lines(p)} }},
	"readings":    {false, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Readings(p)} }},
	"flatness":    {false, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Heights(p)} }},
	"acclimation": {false, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Acclimation(p)} }},
	"choices":     {false, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Choices(plan.Choose(p.Job))} }},
	allDrawings: {true, func(p plan.Plan) []sheet.Sheet {
		out := []sheet.Sheet{drawing.Floor(p), drawing.Lines(p), drawing.Choices(plan.Choose(p.Job)), drawing.Readings(p)}
		if marks, _ := p.Heights(); len(marks) > 0 {
			out = append(out, drawing.Heights(p))
		}
		if _, ok := p.Acclimation(); ok {
			out = append(out, drawing.Acclimation(p))
		}
		return out
	}},
}

// allDrawings is every sheet of a job, as pages of one document.
const allDrawings = "all"

func drawingNames() string {
	return strings.Join(slices.Sorted(maps.Keys(drawings)), ", ")
}

// Help says what can be drawn.
func (drawCmd) Help() string {
	return `Draws one sheet, in the form that the file's ending asks for. A .pdf and a .svg are as large as the sheet, so that scales hold where they are printed at their own size; all is every sheet of the job, as pages of one .pdf. A .dxf is not a sheet but the floor itself in real units (inches in inch jobs, else millimetres), on named layers: WALLS, FLOOR, STAYS, BOARDS, SPLINES, ROW_NAMES, NAMES.

    strake draw floor.yaml plan -o plan.pdf
    strake draw floor.yaml lines -o lines.png --dpi 200
    strake draw floor.yaml -o floor.dxf

The same job gives the same file, byte for byte. A file that is there already and that strake did not write is kept beside it.`
}

// Validate refuses what cannot be drawn.
func (c drawCmd) Validate() error {
	if _, ok := drawings[c.What]; !ok {
		return fmt.Errorf("no drawing is called %q: one of %s", c.What, drawingNames())
	}
	switch filepath.Ext(c.Out) {
	case "":
		return fmt.Errorf("where to, and how, is said by the ending of a file: -o %s.svg, .pdf, .png or .dxf", c.What)
	case ".svg", ".pdf", ".png":
	case ".dxf":
		if c.What != "plan" {
			return fmt.Errorf("a .dxf is the floor itself, not a sheet: leave %q out", c.What)
		}
	default:
		return fmt.Errorf("%s: the ending says how to draw: .svg, .pdf, .png or .dxf", c.Out)
	}
	if c.What == allDrawings && filepath.Ext(c.Out) != ".pdf" {
		return fmt.Errorf("all sheets together make a .pdf, not a %s", filepath.Ext(c.Out))
	}
	if c.DPI < 20 || c.DPI > 1200 {
		return fmt.Errorf("--dpi=%g: from 20 to 1200", c.DPI)
	}
	return nil
}

func (c *drawCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	what := drawings[c.What]
	p := plan.Rows(j)
	if what.boards && finding.Worst(p.Findings) != finding.Stop {
		told := r.progress()
		p = plan.MakeTold(r.ctx, j, rack.Polishing, told.racking())
		told.end()
	}
	p.Findings = append(fs, p.Findings...)
	if what.boards && len(p.Lay.Runs) == 0 || !p.Survey.Converged {
		r.tell(func(a *answer) { a.planned(p) })
		fmt.Fprint(r.out, paper.Findings(p))
		return errFindings
	}
	var b bytes.Buffer
	if err := c.write(&b, p, what.sheets); err != nil {
		return err
	}
	files := []file{{filepath.Base(c.Out), b.Bytes()}}
	moved, err := writeAll(filepath.Dir(r.path(c.Out)), files)
	if err != nil {
		return err
	}
	r.tell(func(a *answer) { a.Job = j.Name; a.wrote(filepath.Dir(c.Out), files) })
	fmt.Fprintf(r.out, "Written: %s\n%s", c.Out, moved)
	return nil
}

func (c *drawCmd) write(w io.Writer, p plan.Plan, sheets func(plan.Plan) []sheet.Sheet) error {
	switch filepath.Ext(c.Out) {
	case ".dxf":
		return dxf.Write(w, drawing.CAD(p))
	case ".pdf":
		return pdf.Write(w, p.Job.Name, sheets(p)...)
	case ".png":
		return png.Write(w, sheets(p)[0], c.DPI)
	}
	return svg.Write(w, sheets(p)[0])
}
