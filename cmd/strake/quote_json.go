package main

import (
	"strake/goods"
	"strake/paper"
	"strake/plan"
	"strake/quote"
)

// jsonQuote is a quote in figures. Total is there only where nothing is open; known_so_far
// always is.
type jsonQuote struct {
	Currency string     `json:"currency,omitempty"`
	Fixed    bool       `json:"fixed"`
	Hours    float64    `json:"hours"` // of all hands
	Labour   *jsonMoney `json:"labour,omitempty"`
	Goods    *jsonMoney `json:"materials,omitempty"`
	Markup   *jsonMoney `json:"markup,omitempty"`
	Also     *jsonMoney `json:"also,omitempty"`
	Tax      *jsonMoney `json:"tax,omitempty"`
	Known    *jsonMoney `json:"known_so_far,omitempty"`
	Total    *jsonMoney `json:"total,omitempty"`
	Open     []string   `json:"open,omitempty"`
}

// jsonMoney is an amount of money with its low and high.
type jsonMoney struct {
	Low    float64 `json:"low"`
	Likely float64 `json:"likely"`
	High   float64 `json:"high"`
}

func spanOf(m goods.Money) *jsonMoney {
	if !m.Told {
		return nil
	}
	return &jsonMoney{m.Low, m.Likely, m.High}
}

func (a *answer) quoted(p plan.Plan, s quote.Sum) {
	a.Job = p.Job.Name
	q := &jsonQuote{p.Currency(), p.Job.Quote.Fixed, s.Hours, spanOf(s.Labour), spanOf(s.Cost), spanOf(s.Markup), spanOf(s.Also), spanOf(s.Tax), spanOf(s.All), nil, s.Open}
	if len(s.Open) == 0 {
		q.Total = q.Known
	}
	a.Quote = q
}

// jsonForm is a sheet to be filled in.
type jsonForm struct {
	Title string         `json:"title"`
	Lead  []string       `json:"lead"`
	Parts []jsonFormPart `json:"parts"`
}

type jsonFormPart struct {
	Head    string         `json:"head"`
	Columns []string       `json:"columns,omitempty"`
	Lines   []jsonFormLine `json:"lines"`
	Notes   []string       `json:"notes,omitempty"`
}

type jsonFormLine struct {
	What    string   `json:"what,omitempty"`
	Says    string   `json:"says,omitempty"`
	Cells   []string `json:"cells,omitempty"`
	Blanks  int      `json:"blanks,omitempty"`
	Sum     bool     `json:"sum,omitempty"`
	Sources []string `json:"sources,omitempty"`
}

func (a *answer) formed(f paper.Form) {
	out := &jsonForm{Title: f.Title, Lead: f.Lead}
	for _, p := range f.Parts {
		x := jsonFormPart{Head: p.Head, Columns: p.Columns, Notes: p.Notes}
		for _, l := range p.Lines {
			x.Lines = append(x.Lines, jsonFormLine(l))
		}
		out.Parts = append(out.Parts, x)
	}
	a.Form = out
}
