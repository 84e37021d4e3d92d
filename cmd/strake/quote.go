package main

import (
	"bytes"
	"fmt"
	"strings"
	"time"

	"strake/finding"
	"strake/paper"
	"strake/plan"
	"strake/quote"
	"strake/schedule"
)

type quoteCmd struct {
	Job string `arg:"" help:"The job file (YAML). strake new writes one."`
	Out string `short:"o" placeholder:"FOLDER" help:"Also write quote.txt and quote.csv to this folder."`
}

// Help says what goes in.
func (quoteCmd) Help() string {
	return `Writes what a small installer asks for a floor: what is done (rooms, boards, openings, each step of strake schedule), what is not, hours at a rate, materials of strake order at cost with a markup, tax, what it comes to with a low and a high, conditions (readings of moisture, a subfloor found bad, old coverings and paint, hidden damage), and lines for both to sign.

    quote:
      for: Ada Pell, 3 Quay Lane
      by: Sandlin Floors
      date: 2027-02-01
      valid_days: 30
      rate: 52                  # an hour of one person; or a range, [48, 56]
      markup: 15                # percent on materials
      not_included: [moving the piano]
      payment: [a third when boards are ordered, the rest when it is done]
    prices: {currency: USD, tax: 8.25}
    schedule: {start: 2027-03-01, who: experienced}

Hours are reckoned by rates that strake schedule prints with their sources; put your own there. A price, rate, markup or tax that nobody wrote stays blank, the sheet then has no total and lists what is open. Local law on contracts, licences and taxes comes first: read every line before it is signed.`
}

func (c *quoteCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	b, err := buy(r, j, fs)
	if err != nil {
		return err
	}
	form := paper.Quote(b.full, b.boards, b.list, b.days)
	sum := b.full.Quote(b.list, b.days)
	today, err := schedule.ParseDay(time.Now().Format(time.DateOnly))
	if err != nil {
		return err
	}
	fs = append(fs, expired(j.Quote, today)...)
	r.tell(func(a *answer) { a.quoted(b.full, sum); a.formed(form); a.found(fs) })
	if err := c.write(r, form); err != nil {
		return err
	}
	tell(r, fs)
	return nil
}

// expired is said of a quote that is valid no more. Only here is a clock read.
func expired(t quote.Terms, today schedule.Day) []finding.Finding {
	if u := t.Until(); u > 0 && u < today {
		return []finding.Finding{{Level: finding.Warn, Rule: "date in the past", Where: "quote", Measured: "valid until " + u.String(), Limit: "today is " + today.String(), Do: "Look at the year, or write the day of the quote anew."}}
	}
	return nil
}

func (c *quoteCmd) write(r rim, form paper.Form) error {
	var text, sheet bytes.Buffer
	if err := paper.FormText(&text, form); err != nil {
		return err
	}
	if err := paper.FormCSV(&sheet, form); err != nil {
		return err
	}
	return formFiles(r, c.Out, text.String(), []file{{"quote.txt", text.Bytes()}, {"quote.csv", sheet.Bytes()}})
}

// formFiles prints a sheet, and writes its files where that was asked for.
func formFiles(r rim, out, text string, files []file) error {
	fmt.Fprint(r.out, text)
	if out == "" {
		return nil
	}
	moved, err := writeAll(r.path(out), files)
	if err != nil {
		return err
	}
	r.tell(func(a *answer) { a.wrote(out, files) })
	fmt.Fprintf(r.out, "\nWritten to %s: %s\n%s", out, strings.Join(names(files), ", "), moved)
	return nil
}

type handoverCmd struct {
	Job string `arg:"" help:"The job file (YAML). strake new writes one."`
	Out string `short:"o" placeholder:"FOLDER" help:"Also write handover.txt to this folder."`
}

// Help says what goes in.
func (handoverCmd) Help() string {
	return `Writes the sheet for whoever lives with the floor: the air that the boards are made for and what they do outside of it, the gaps to expect in winter, spare boards and their lot, where pipes, cables and heating are, how the floor is held, care, and lines for what the job does not know.

    handover:
      laid: 2027-03-17
      finish: hardwax oil, Sandlin No. 4
      spares_at: loft, over the landing
    climate:
      winter: {temperature: 68 F, humidity: 34}
      summer: {temperature: 76 F, humidity: 50}

Gaps go by the air of winter and summer, the kind of wood, and readings of the boards where there are any. A maker's band of humidity goes in as humidity_least and humidity_most under moisture, limits.`
}

func (c *handoverCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	p := plan.Rows(j)
	p.Findings = append(fs, p.Findings...)
	if finding.Worst(p.Findings) == finding.Stop {
		r.tell(func(a *answer) { a.planned(p) })
		fmt.Fprint(r.out, paper.Findings(p))
		return errFindings
	}
	form := paper.Handover(p, nil)
	r.tell(func(a *answer) { a.Job = j.Name; a.formed(form) })
	var text bytes.Buffer
	if err := paper.FormText(&text, form); err != nil {
		return err
	}
	return formFiles(r, c.Out, text.String(), []file{{"handover.txt", text.Bytes()}})
}
