package order

import (
	"math/rand/v2"
	"slices"

	"gonum.org/v1/gonum/stat/distuv"

	"strake/stock"
	"strake/tape"
)

// parts is how many equal parts a spread of lengths is cut into. A draw takes the
// middle of one of them.
const parts = 4096

// Lengths is a spread of board lengths to draw from.
type Lengths struct {
	at   [parts]tape.Length // rising
	mean float64            // in ticks
}

// spread makes lengths of a quantile function.
func spread(quantile func(p float64) tape.Length) *Lengths {
	var l Lengths
	for i := range l.at {
		l.at[i] = quantile((float64(i) + 0.5) / parts)
		l.mean += float64(l.at[i]) / parts
	}
	return &l
}

// shapes is what the two shapes of the Beta curve of a carton mix add up to, where
// only its mean is known: as wide as carton tallies look (from memory).
const shapes = 4

// FromMix is the spread of a carton mix: a Beta curve from its least to its most
// with its mean, on its step.
//
// Of a grade whose rule limits the shorts it is the worst spread that the rule lets
// pass.
func FromMix(m stock.Mix) *Lengths {
	if g, ok := stock.FindGrade(m.Grade); ok && len(g.Shorts) > 0 {
		return spread(func(p float64) tape.Length { return max(tape.Sixteenth, tape.Nearest(g.Quantile(p), tape.Sixteenth)) })
	}
	if m.Most <= m.Least {
		return Fixed(m.Most)
	}
	mu := min(0.95, max(0.05, float64(m.Mean-m.Least)/float64(m.Most-m.Least)))
	return Beta(m.Least, m.Most, m.Step, shapes*mu, shapes*(1-mu))
}

// Beta is a spread from least to most by a Beta curve of two shapes, to the
// nearest step; a step of 0 is 1/16 in.
func Beta(least, most, step tape.Length, a, b float64) *Lengths {
	if step <= 0 {
		step = tape.Sixteenth
	}
	d := distuv.Beta{Alpha: a, Beta: b}
	return spread(func(p float64) tape.Length {
		return max(step, tape.Nearest(least+tape.Length(d.Quantile(p)*float64(most-least)), step))
	})
}

// Fixed is boards of one length.
func Fixed(l tape.Length) *Lengths { return spread(func(float64) tape.Length { return l }) }

// Tallied is the spread of boards that were measured, each as likely as it is
// frequent; nil for none.
func Tallied(cs []stock.Class) *Lengths {
	cs = slices.Clone(cs)
	slices.SortFunc(cs, func(a, b stock.Class) int { return int(a.Length - b.Length) })
	total := 0
	for _, c := range cs {
		total += c.Count
	}
	if total == 0 {
		return nil
	}
	i, sum := 0, cs[0].Count
	return spread(func(p float64) tape.Length {
		for p*float64(total) > float64(sum) && i+1 < len(cs) {
			i++
			sum += cs[i].Count
		}
		return cs[i].Length
	})
}

// Believed is how many boards the spread that was assumed counts for beside those
// that were measured. Common practice, no source.
const Believed = 25

// Refined is a spread after boards of it were measured: the mean of what is believed
// of it, when at first any spread was thought possible and the assumed one was
// trusted like so many boards (a Dirichlet process: the assumed spread and that of
// the boards, mixed by their numbers). Without boards it is l.
func (l *Lengths) Refined(cs []stock.Class) *Lengths {
	seen := Tallied(cs)
	if seen == nil {
		return l
	}
	n := 0
	for _, c := range cs {
		n += c.Count
	}
	share := float64(n) / float64(n+Believed)
	type part struct {
		long   tape.Length
		weight float64
	}
	var all []part
	for i := range parts {
		all = append(all, part{l.at[i], (1 - share) / parts}, part{seen.at[i], share / parts})
	}
	slices.SortStableFunc(all, func(a, b part) int { return int(a.long - b.long) })
	i, sum := 0, all[0].weight
	return spread(func(p float64) tape.Length {
		for sum < p && i+1 < len(all) {
			i++
			sum += all[i].weight
		}
		return all[i].long
	})
}

// Mean is the average length of a board.
func (l *Lengths) Mean() tape.Length { return tape.Length(l.mean) }

// Longest is the longest board there is.
func (l *Lengths) Longest() tape.Length { return l.at[parts-1] }

// square is the mean of the square of the lesser of a board and most, in square
// ticks.
func (l *Lengths) square(most tape.Length) float64 {
	var sum float64
	for _, x := range l.at {
		y := float64(min(x, most))
		sum += y * y / parts
	}
	return sum
}

// Draw is one board.
func (l *Lengths) Draw(r *rand.Rand) tape.Length { return l.at[r.Uint32()%parts] }
