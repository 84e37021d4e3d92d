package main

import (
	"encoding/json"
	"errors"
	"io"

	"strake/finding"
	"strake/goods"
	"strake/jobfile"
	"strake/measure"
	"strake/paper"
	"strake/plan"
	"strake/rack"
	"strake/ready"
	"strake/tape"
	"strake/words"
)

// answer is what a command says, for another program to read. Lengths are numbers
// in millimetres, their names end in _mm; what is meant for people stands as text in
// the job's own unit.
type answer struct {
	Command  string        `json:"command"`
	ExitCode int           `json:"exit_code"`
	Job      string        `json:"job,omitempty"`
	Errors   []jsonError   `json:"errors,omitempty"`
	Findings []jsonFinding `json:"findings,omitempty"`
	Verdicts []jsonVerdict `json:"verdicts,omitempty"`
	Floor    *jsonFloor    `json:"floor,omitempty"`
	Ways     []jsonWay     `json:"ways,omitempty"`
	NextRows []jsonRow     `json:"next_rows,omitempty"`
	ToRead   []jsonReading `json:"to_read,omitempty"`
	Cartons  []jsonCartons `json:"cartons,omitempty"`
	Schedule *jsonSchedule `json:"schedule,omitempty"`
	Goods    []jsonGoods   `json:"goods,omitempty"`
	Costs    *jsonCosts    `json:"costs,omitempty"`
	Quote    *jsonQuote    `json:"quote,omitempty"`
	Form     *jsonForm     `json:"sheet,omitempty"`
	Examples []jsonExample `json:"examples,omitempty"`
	Text     string        `json:"text,omitempty"`
	Folder   string        `json:"folder,omitempty"`
	Files    []string      `json:"files,omitempty"`
}

type jsonError struct {
	File    string `json:"file,omitempty"`
	Line    int    `json:"line,omitempty"`
	Column  int    `json:"column,omitempty"`
	What    string `json:"what"`
	Read    string `json:"read,omitempty"`
	Accepts string `json:"accepts,omitempty"`
}

type jsonFinding struct {
	Level    string `json:"level"`
	Rule     string `json:"rule"`
	Where    string `json:"where,omitempty"`
	Measured string `json:"measured,omitempty"`
	Limit    string `json:"limit,omitempty"`
	Do       string `json:"do,omitempty"`
	Source   string `json:"source,omitempty"`
	Pieces   []int  `json:"pieces,omitempty"`
}

type jsonVerdict struct {
	Says     string `json:"says"`
	Holds    bool   `json:"nothing_laid_before"`
	Rule     string `json:"rule"`
	Where    string `json:"where,omitempty"`
	Measured string `json:"measured,omitempty"`
	Limit    string `json:"limit,omitempty"`
	Do       string `json:"do,omitempty"`
	Source   string `json:"source,omitempty"`
}

// jsonFloor is a floor with its boards, in figures.
type jsonFloor struct {
	Rows      int     `json:"rows"`
	Unfilled  int     `json:"rows_without_boards"`
	Boards    int     `json:"boards"`
	Pieces    int     `json:"pieces"`
	Crosscuts int     `json:"crosscuts"`
	Rips      int     `json:"rips"`
	Mitres    int     `json:"mitres"`
	Notches   int     `json:"notches"`
	Tongues   int     `json:"tongues_off"`
	Covers    float64 `json:"covers_m2"`
	Scrap     float64 `json:"scrap_and_kerf_m2"`
	Over      float64 `json:"left_over_m2"`
}

type jsonWay struct {
	Name      string   `json:"name"`
	Rows      int      `json:"rows"`
	Narrowest float64  `json:"narrowest_rip_mm"`
	At        string   `json:"narrowest_rip_at,omitempty"`
	Ripped    float64  `json:"ripped_mm"`
	Notched   int      `json:"notched_rows"`
	Through   []string `json:"through_doorways,omitempty"`
	Spline    float64  `json:"spline_mm"`
	ByHand    int      `json:"fastened_by_hand"`
	Joists    string   `json:"joists,omitempty"`
}

type jsonRow struct {
	Row    string      `json:"row"`
	Filled bool        `json:"filled"`
	Pieces []jsonPiece `json:"pieces,omitempty"`
}

type jsonPiece struct {
	Length float64 `json:"length_mm"`
	Board  float64 `json:"board_mm"`
	Cut    string  `json:"cut,omitempty"`
}

type jsonCartons struct {
	Face    float64      `json:"face_mm"`
	Floor   float64      `json:"floor_m2"`
	Carton  float64      `json:"carton_m2,omitempty"`
	Advised int          `json:"advised,omitempty"`
	Ten     int          `json:"ten_per_cent,omitempty"`
	Risk    float64      `json:"risk"`
	Layers  []jsonLaying `json:"laid"`
}

type jsonLaying struct {
	Layer   string       `json:"layer"`
	Lays    int          `json:"lays"`
	Cut     float64      `json:"cutting"` // of the floor
	Culls   float64      `json:"culls"`
	Slips   float64      `json:"slips"`
	Advised int          `json:"advised_without_spares,omitempty"`
	Choices []jsonChoice `json:"choices,omitempty"`
}

type jsonChoice struct {
	Cartons int     `json:"cartons"`
	Short   float64 `json:"short"`
	Doubt   float64 `json:"doubt"`
	Left    float64 `json:"left_m2"`
}

// jsonGoods is one thing to have on site.
type jsonGoods struct {
	Group  string   `json:"group"`
	What   string   `json:"what"`
	Count  int      `json:"count,omitempty"`
	Unit   string   `json:"unit,omitempty"`
	Each   *float64 `json:"price_each,omitempty"`
	From   string   `json:"counted_from,omitempty"`
	Do     string   `json:"do,omitempty"`
	Source string   `json:"source,omitempty"`
}

// jsonCosts is what the goods cost, tax included, as far as they are priced.
type jsonCosts struct {
	Currency string   `json:"currency,omitempty"`
	Low      float64  `json:"low"`
	Likely   float64  `json:"likely"`
	High     float64  `json:"high"`
	Tax      float64  `json:"tax"` // of likely
	Unpriced []string `json:"without_a_price,omitempty"`
}

// listed are the goods with what they cost.
func (a *answer) listed(p plan.Plan, l goods.List) {
	for _, x := range l.Lines {
		g := jsonGoods{Group: string(x.Group), What: x.What, Count: x.Count, Unit: x.Unit, From: x.From, Do: x.Do, Source: x.Source}
		if x.Each.Told {
			g.Each = &x.Each.Likely
		}
		a.Goods = append(a.Goods, g)
	}
	if s := goods.Cost(l.Lines, p.Job.Goods.Prices.Tax); s.Net.Told {
		a.Costs = &jsonCosts{p.Currency(), s.All.Low, s.All.Likely, s.All.High, s.Tax.Likely, s.Unpriced}
	}
}

// jsonReading is a line of a measuring sheet.
type jsonReading struct {
	What string `json:"what"`
	Why  string `json:"why,omitempty"`
	Hook string `json:"hook,omitempty"`
}

type jsonExample struct {
	Name string `json:"name"`
	Says string `json:"says"`
}

// tell fills in the answer where one is wanted.
func (r rim) tell(fill func(*answer)) {
	if r.answer != nil {
		fill(r.answer)
	}
}

// write prints the answer with the errors of a command and its exit code.
func (a *answer) write(w io.Writer, err error, code int) error {
	a.ExitCode = code
	var job jobfile.Errors
	switch {
	case errors.As(err, &job):
		for _, e := range job {
			a.Errors = append(a.Errors, jsonError{e.File, e.Line, e.Column, e.What, e.Read, e.Accept})
		}
	case err != nil && !errors.Is(err, errFindings):
		a.Errors = append(a.Errors, jsonError{What: err.Error()})
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(a)
}

func (a *answer) found(fs []finding.Finding) {
	for _, f := range fs {
		a.Findings = append(a.Findings, jsonFinding{string(f.Level), f.Rule, f.Where, f.Measured, f.Limit, f.Do, f.Source, f.Pieces})
	}
}

func (a *answer) verdicts(vs []ready.Verdict) {
	for _, v := range vs {
		a.Verdicts = append(a.Verdicts, jsonVerdict{string(v.Say), v.Holds, v.Rule, v.Where, v.Measured, v.Limit, v.Do, v.Source})
	}
}

func (a *answer) wrote(folder string, fs []file) {
	a.Folder, a.Files = folder, names(fs)
}

// planned is a floor with its boards.
func (a *answer) planned(p plan.Plan) {
	a.Job = p.Job.Name
	a.found(p.Findings)
	if len(p.Lay.Runs) == 0 {
		return
	}
	n := paper.Count(p)
	a.Floor = &jsonFloor{n.Rows, n.Unfilled, n.Boards, n.Pieces, n.Crosscuts, n.Rips, n.Mitres, n.Notches, n.TonguesOff,
		n.Need.SquareMetres(), (n.Scrap + n.Kerf).SquareMetres(), n.Over.SquareMetres()}
}

func (a *answer) choices(c plan.Choices) {
	a.Job = c.Job.Name
	a.found(c.Findings)
	for _, k := range c.Candidates {
		s := k.Score
		a.Ways = append(a.Ways, jsonWay{k.Name, s.Rows, s.Narrowest.Millimetres(), s.At, s.Ripped.Millimetres(), s.Notched, s.Through, s.Spline.Millimetres(), s.ByHand, string(s.Joists)})
	}
}

func (a *answer) bought(p plan.Plan, ps []plan.Purchase) {
	a.Job = p.Job.Name
	for _, x := range ps {
		c := jsonCartons{Face: x.Boards.Face.Millimetres(), Floor: x.Area(x.Model.Floor()).SquareMetres(), Carton: x.Area(x.Carton).SquareMetres(), Advised: x.Advised, Ten: x.Ten, Risk: x.Wants.Risk}
		for _, l := range x.Layers {
			of := func(part tape.Length) float64 { return float64(part) / float64(max(1, l.Parts.Floor)) }
			y := jsonLaying{Layer: string(l.Layer), Lays: l.Lays, Cut: of(l.Parts.Cut), Culls: of(l.Parts.Culls), Slips: of(l.Parts.Mistakes), Advised: l.Advised}
			for _, k := range l.Choices {
				y.Choices = append(y.Choices, jsonChoice{k.Cartons, k.Short, k.Doubt, x.Area(k.Left).SquareMetres()})
			}
			c.Layers = append(c.Layers, y)
		}
		a.Cartons = append(a.Cartons, c)
	}
}

func (a *answer) toRead(s measure.Sheet) {
	for _, part := range s.Sections {
		for _, l := range part.Lines {
			a.ToRead = append(a.ToRead, jsonReading(l))
		}
	}
}

// rowOf is a proposed row in figures.
func rowOf(p plan.Plan, next rack.Proposal, boards []plan.AtHand) jsonRow {
	at := rack.Order(p.AllFields())[next.Run]
	run := p.Field(at.Field).Layout.Runs[at.Run]
	out := jsonRow{Row: words.RowPart(run.Row, run.Part), Filled: next.Filled}
	for _, q := range next.Pieces {
		cut := ""
		switch {
		case q.CutLeft && q.CutRight:
			cut = "both"
		case q.CutLeft:
			cut = "left"
		case q.CutRight:
			cut = "right"
		}
		out.Pieces = append(out.Pieces, jsonPiece{q.Length.Millimetres(), boards[q.Board].Length.Millimetres(), cut})
	}
	return out
}
