package moisture

import (
	"fmt"

	"strake/ready"
	"strake/tape"
	"strake/wood"
)

// Service is the air that a floor is lived on in, by the limits that stand.
type Service struct{ Dry, Humid, Cold, Warm ready.Ruling }

// Service is the air that the boards of a job are for.
func (j Job) Service() Service {
	of := func(key string) ready.Ruling { r, _ := Guides.Rule(j.Limits, key); return r }
	return Service{of(HumidityLeast), of(HumidityMost), of(TemperatureLow), of(TemperatureHigh)}
}

// Whose is whose limits of humidity these are, and where they come from.
func (s Service) Whose() (by string, sources []string) {
	by, sources = s.Dry.By.String(), []string{s.Dry.Source}
	if s.Humid.By != s.Dry.By {
		by += " and " + s.Humid.By.String()
	}
	if s.Humid.Source != s.Dry.Source {
		sources = append(sources, s.Humid.Source)
	}
	return by, sources
}

// Like says a temperature in °F as the climate of the job is written.
func (j Job) Like(f float64) string {
	for _, a := range []Air{j.Climate.Winter, j.Climate.Summer, j.Climate.Now} {
		if a.Told() {
			return a.like(f)
		}
	}
	return fmt.Sprintf("%g °F", f)
}

// Yearly is what boards do through the year from the content they were laid at.
type Yearly struct {
	Laid   float64 // percent
	Read   bool    // by readings of the boards; else halfway between the seasons
	Season Season
	Moves  []Move
	Source string
}

// Move is what one board of a face width does.
type Move struct {
	Face  tape.Length
	Gap   tape.Length // open beside it at the driest
	Press tape.Length // wider by so much at the most humid
	By    string
}

// Yearly is for the boards of a floor; not ok where the air of a season or the
// species is not known. Boards that lie drier than a season makes them open no gap
// then, and ones that lie more humid do not press.
func (j Job) Yearly(f Floor) (Yearly, bool) {
	s, ok := j.Climate.Season()
	sp, known := wood.Find(f.Species)
	if !ok || !known {
		return Yearly{}, false
	}
	y := Yearly{Laid: s.Aim, Season: s, Source: fmt.Sprintf("%s: %.5f for each point (%s)", sp.Name, sp.Tangential, sp.Source)}
	if l := j.Meter.Look(j.Boards); len(l.Contents) > 0 {
		y.Laid, y.Read = l.Mean, true
	}
	for _, face := range f.Faces {
		dry, by := sp.Moved(face, y.Laid, s.Low)
		wet, _ := sp.Moved(face, y.Laid, s.High)
		y.Moves = append(y.Moves, Move{face, max(0, -dry), max(0, wet), by})
	}
	return y, true
}

// APoint is what a board moves by for each point of moisture content; not ok where
// the species is not known.
func (f Floor) APoint(face tape.Length) (tape.Length, bool) {
	sp, ok := wood.Find(f.Species)
	return sp.Change(face, 1), ok
}
