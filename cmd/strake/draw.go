package main

import (
	"bytes"
	"fmt"
	"io"
	"maps"
	"path/filepath"
	"slices"
	"strings"

	"strake/detail"
	"strake/drawing"
	"strake/finding"
	"strake/packet"
	"strake/paper"
	"strake/plan"
	"strake/rack"
	"strake/sheet"
	"strake/sheet/dxf"
	"strake/sheet/pdf"
	"strake/sheet/png"
	"strake/sheet/svg"
	"strake/tape"
)

type drawCmd struct {
	Job  string  `arg:"" help:"The job file (YAML). strake new writes one."`
	What string  `arg:"" default:"plan" help:"Which drawing: ${drawings} (default: plan)."`
	Out  string  `short:"o" required:"" placeholder:"FILE" help:"Where to write it; the ending says how: .svg, .pdf, .png, or .dxf in real units."`
	DPI  float64 `name:"dpi" default:"150" help:"Dots an inch of a .png."`
}

// drawings are the sheets that can be drawn by themselves, and what they need.
var drawings = map[string]struct {
	boards bool
	sheets func(plan.Plan) []sheet.Sheet
}{
	"plan":        {true, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Floor(p)} }},
	"lines":       {true, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Lines(p)} }},
	"measured":    {false, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Measured(p, onePage)} }},
	"tongues":     {true, func(p plan.Plan) []sheet.Sheet { return []sheet.Sheet{drawing.Tongues(p, onePage)} }},
	"details":     {true, detailSheets},
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

// onePage is what drawings without a sheet of their own are made for: A4 across, less
// its margins.
var onePage = drawing.Page{Name: "A4 paper", W: 297, H: 210}

// detailSheets are the details of a job, each on a sheet of its own size.
func detailSheets(p plan.Plan) []sheet.Sheet {
	var out []sheet.Sheet
	for _, d := range detail.Of(p) {
		out = append(out, sheetOf(p, d))
	}
	return out
}

// sheetOf is a detail with a margin round it.
func sheetOf(p plan.Plan, d detail.Detail) sheet.Sheet {
	const edge, head = 10, 12
	s := sheet.Sheet{Title: p.Job.Name + ": " + d.Title, W: d.W + 2*edge, H: d.H + 2*edge + head}
	fmt.Sscanf(d.Scale, "1:%g", &s.One) // else it is not to scale
	name := sheet.Text{Text: d.Title + ", " + d.Scale, At: sheet.Pt{X: edge, Y: edge + 5}, Size: 4.2, Bold: true, Ink: sheet.Black}
	name.Size *= min(1, d.W/name.Width())
	s.Put(name)
	s.Put(sheet.Moved(d.Items, sheet.Pt{X: edge, Y: edge + head}, 1)...)
	return s
}

// detailPrefix begins the name of one detail.
const detailPrefix = "detail-"

// sheetsOf finds what is to be drawn: one of the drawings, or one detail by its name.
func (c drawCmd) sheetsOf(p plan.Plan) ([]sheet.Sheet, error) {
	if slices.Contains(packet.Names(), c.What) {
		return packet.Part(packet.In{Plan: p}, paperOf(p.Job, ""), c.What), nil
	}
	name, one := strings.CutPrefix(c.What, detailPrefix)
	if !one {
		return drawings[c.What].sheets(p), nil
	}
	var names []string
	for _, d := range detail.Of(p) {
		if d.Name == name {
			return []sheet.Sheet{sheetOf(p, d)}, nil
		}
		names = append(names, detailPrefix+d.Name)
	}
	return nil, fmt.Errorf("this job has no %s: it has %s", c.What, strings.Join(names, ", "))
}

// allDrawings is every sheet of a job, as pages of one document.
const allDrawings = "all"

func drawingNames() string {
	return strings.Join(slices.Sorted(slices.Values(slices.Concat(slices.Collect(maps.Keys(drawings)), packet.Names()))), ", ")
}

// Help says what can be drawn.
func (drawCmd) Help() string {
	return `Draws one sheet, in the form that the file's ending asks for. A .pdf and a .svg are as large as the sheet, so that scales hold where they are printed at their own size; all is every sheet of the job, details are the drawings of edges, openings and turns, and drift, forms, methods, row-cards, row-plan and story-stick are those parts of packet.pdf, as pages of one .pdf; one detail alone goes by its name, such as detail-start-line. A .dxf is in real units, inches in inch jobs, else millimetres. That of the plan is not a sheet but the floor itself, on layers WALLS, OPENINGS, FLOOR, STAYS, BOARDS, SPLINES, LINES (to snap), DIMENSIONS, ROW_NAMES and NAMES; those of other drawings are their sheets at the size of what they show, on layers OUTLINES, EDGES, FINE, AREAS and WRITING, and what is not to one scale keeps its size on paper.

    strake draw floor.yaml plan -o plan.pdf
    strake draw floor.yaml lines -o lines.png --dpi 200
    strake draw floor.yaml details -o details.pdf
    strake draw floor.yaml -o floor.dxf
    strake draw floor.yaml lines -o lines.dxf

The same job gives the same file, byte for byte. A file that is there already and that strake did not write is kept beside it.`
}

// Validate refuses what cannot be drawn.
func (c drawCmd) Validate() error {
	if _, ok := drawings[c.What]; !ok && !slices.Contains(packet.Names(), c.What) && !strings.HasPrefix(c.What, detailPrefix) {
		return fmt.Errorf("no drawing is called %q: one of %s, or one detail by its name (%sNAME)", c.What, drawingNames(), detailPrefix)
	}
	switch filepath.Ext(c.Out) {
	case "":
		return fmt.Errorf("where to, and how, is said by the ending of a file: -o %s.svg, .pdf, .png or .dxf", c.What)
	case ".svg", ".pdf", ".png", ".dxf":
	default:
		return fmt.Errorf("%s: the ending says how to draw: .svg, .pdf, .png or .dxf", c.Out)
	}
	if (c.What == allDrawings || c.What == "details" || slices.Contains(packet.Names(), c.What)) && filepath.Ext(c.Out) != ".pdf" {
		return fmt.Errorf("%s: several sheets make a .pdf, not a %s", c.What, filepath.Ext(c.Out))
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
	boards := drawings[c.What].boards || strings.HasPrefix(c.What, detailPrefix) || packet.OfBoards(c.What)
	p := plan.Rows(j)
	if boards && finding.Worst(p.Findings) != finding.Stop {
		told := r.progress()
		p = plan.MakeTold(r.ctx, j, rack.Polishing, told.racking())
		told.end()
	}
	p.Findings = append(fs, p.Findings...)
	if boards && len(p.Lay.Runs) == 0 || !p.Survey.Converged {
		r.tell(func(a *answer) { a.planned(p) })
		fmt.Fprint(r.out, paper.Findings(p))
		return errFindings
	}
	var b bytes.Buffer
	if err := c.write(&b, p); err != nil {
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

func (c *drawCmd) write(w io.Writer, p plan.Plan) error {
	if c.What == "plan" && filepath.Ext(c.Out) == ".dxf" {
		return dxf.Write(w, drawing.CAD(p))
	}
	sheets, err := c.sheetsOf(p)
	if err != nil {
		return err
	}
	return c.renderer(p.Job.Unit).Render(w, p.Job.Name, sheets...)
}

// renderer is the form that the file's ending asks for.
func (c *drawCmd) renderer(u tape.Unit) sheet.Renderer {
	units := dxf.Millimetres
	if u.Imperial() {
		units = dxf.Inches
	}
	return map[string]sheet.Renderer{".svg": svg.Renderer{}, ".png": png.Renderer{DPI: c.DPI}, ".pdf": pdf.Renderer{}, ".dxf": dxf.Renderer{Units: units}}[filepath.Ext(c.Out)]
}
