package main

import (
	"context"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"time"

	"strake/rack"
)

// proof is what a floor came to: ours, and what each solver says.
type proof struct {
	small
	vars, boards int
	ours         float64
	took         float64 // seconds until ours was first reached
	said         []solved
}

// solverTable holds our search against the solvers that can be had.
func solverTable(out io.Writer, highs string, limit int, only *regexp.Regexp) error {
	dir, err := os.MkdirTemp("", "bench")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	solvers, skipped := found(highs, dir)
	var ps []proof
	for _, s := range smalls() {
		if !only.MatchString(s.name) {
			continue
		}
		p, err := s.prove(solvers, dir, limit)
		if err != nil {
			return err
		}
		ps = append(ps, p)
	}
	_, err = io.WriteString(out, solverPage(ps, skipped, limit))
	return err
}

func (s small) prove(solvers []solver, dir string, limit int) (proof, error) {
	m := newModel(s)
	p := proof{small: s, vars: len(m.arcs), boards: len(s.stock())}
	p.ours, p.took = reached(s)
	path := filepath.Join(dir, "floor.lp")
	f, err := os.Create(path)
	if err != nil {
		return p, err
	}
	if err := m.write(f); err != nil {
		return p, err
	}
	if err := f.Close(); err != nil {
		return p, err
	}
	for _, v := range solvers {
		p.said = append(p.said, v.solve(path, limit))
	}
	return p, nil
}

// reached is the best value of our search and when it was first there; the
// fastest of three, as the first may find the machine asleep.
func reached(s small) (value, seconds float64) {
	seconds = math.Inf(1)
	for range 3 {
		best, when := math.Inf(1), 0.0
		a := s.ask()
		start := time.Now()
		a.Progress = func(p rack.Progress) {
			if v := float64(p.Crosscuts) + p.Scrap.Inches(); p.Reached == p.Runs && p.Unfilled == 0 && v < best {
				best, when = v, time.Since(start).Seconds()
			}
		}
		l := rack.Lay(context.Background(), a)
		q := judge(l, s.place().need())
		if v := q.cuts + q.scrap.Inches(); q.unfilled > 0 || v != best {
			return math.Inf(1), time.Since(start).Seconds() // what it told is not what it laid
		}
		value, seconds = best, min(seconds, when)
	}
	return
}

const solverHead = `# Small floors against solvers

Written by ` + "`make bench-solvers`" + `. Twelve invented floors of 6 to 10 runs, wood
first: joints 6 in apart at least, end pieces of 8 in at least, kerf 0, exact
ends, lengths on a grid of 1, 2 or 6 in. The objective is scrap in inches and 1
for each crosscut; offcuts of 8 in and more are no scrap. The reference model is
arc flow by position (Valério de Carvalho 1999, Annals of Operations Research
86:629-659, from memory) with the joint distance as cliques: bench/model.go.

Solvers: HiGHS (npm package highs; Huangfu and Hall 2018, Mathematical
Programming Computation 10:119-142, from memory) and CBC (Debian package
coinor-cbc, COIN-OR). One thread each; "first" is when its log first has the
value that it ends with, "proved" when it had proved that none is better within
%d s. Ours is when the search first had its value. Ratio: first of the faster
solver over ours. A value of 0 needs no proof: nothing costs less.

| floor | boards | variables | ours | in | solver | value | first | proved | same | ratio |
|---|---|---|---|---|---|---|---|---|---|---|
`

func solverPage(ps []proof, skipped []string, limit int) string {
	var s strings.Builder
	fmt.Fprintf(&s, solverHead, limit)
	sum, n, least, same := 0.0, 0, math.Inf(1), 0
	for _, p := range ps {
		fast, best := p.fastest()
		if p.ours <= best {
			same++
		}
		for _, v := range p.said {
			ratio := ""
			if v.first == fast {
				ratio = fmt.Sprintf("%.3g", fast/p.took)
			}
			fmt.Fprintf(&s, "| %s | %d | %d | %g | %.1f ms | %s | %s | %s | %s | %s | %s |\n", p.name, p.boards, p.vars, p.ours, p.took*1000,
				v.name, v.valueText(), v.firstText(), v.provedText(), yes(p.ours == v.value), ratio)
		}
		if len(p.said) == 0 {
			fmt.Fprintf(&s, "| %s | %d | %d | %g | %.1f ms | none | | | | | |\n", p.name, p.boards, p.vars, p.ours, p.took*1000)
		}
		if !math.IsInf(fast, 1) {
			sum, n, least = sum+math.Log(fast/p.took), n+1, min(least, fast/p.took)
		}
	}
	for _, k := range skipped {
		fmt.Fprintf(&s, "\n**Skipped: %s.**\n", k)
	}
	if n > 0 {
		mean := math.Exp(sum / float64(n))
		fmt.Fprintf(&s, "\nValue at least as good as the best solver's: %d of %d (target: all). Ratio: geometric mean %.0f (target: at least 10, %s), least %.1f (target: 1, %s).\n",
			same, len(ps), mean, verdict(10, mean), least, verdict(1, least))
	}
	return s.String()
}

func yes(b bool) string {
	if b {
		return "yes"
	}
	return "**no**"
}

// fastest is when the faster of the solvers first had the best value.
func (p proof) fastest() (first, best float64) {
	first, best = math.Inf(1), math.Inf(1)
	for _, v := range p.said {
		if v.value < best || v.value == best && v.first < first {
			first, best = v.first, v.value
		}
	}
	return
}
