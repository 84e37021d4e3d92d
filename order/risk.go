package order

import (
	"math"

	"strake/tape"
)

// Choice is a number of cartons and what it comes to.
type Choice struct {
	Cartons int
	Short   float64     // chance that they do not do
	Doubt   float64     // of that: nine times in ten the true chance of the model lies within so much of it
	Left    tape.Length // length of board left over on average, where they do
	Lacks   tape.Length // length that lacks on average, where they do not
}

// Choices are the chances of running short with from cartons up to most, each
// holding so much length of board. The same lays serve for every number, so that
// one carton more is never worse.
func Choices(ns []Need, carton tape.Length, from, most int) []Choice {
	var out []Choice
	for c := from; c <= most; c++ {
		out = append(out, choice(ns, c, tape.Length(c)*carton))
	}
	return out
}

func choice(ns []Need, cartons int, has tape.Length) Choice {
	c := Choice{Cartons: cartons}
	short := 0
	var left, lacks float64
	for _, n := range ns {
		if n.Taken > has {
			short++
			lacks += float64(n.Taken - has)
		} else {
			left += float64(has - n.Taken)
		}
	}
	if len(ns) == 0 {
		return c
	}
	c.Short = float64(short) / float64(len(ns))
	c.Doubt = doubt(c.Short, len(ns))
	if short > 0 {
		c.Lacks = tape.Length(lacks / float64(short))
	}
	if short < len(ns) {
		c.Left = tape.Length(left / float64(len(ns)-short))
	}
	return c
}

// doubt is half the width of the range that holds a share nine times in ten, after
// so many draws (Wilson's score interval: never 0, also where none fell short).
func doubt(share float64, n int) float64 {
	const z = 1.6448536269514722 // the 95 % point of the normal curve
	k := float64(n)
	return z / (1 + z*z/k) * math.Sqrt(share*(1-share)/k+z*z/(4*k*k))
}

// Advise is the least number of cartons whose chance of running short is at most
// the risk, its doubt included; 0 where none of the choices does.
func Advise(cs []Choice, risk float64) int {
	for _, c := range cs {
		if c.Short+c.Doubt <= risk {
			return c.Cartons
		}
	}
	return 0
}

// Fewest is the least number of cartons that holds the floor itself.
func Fewest(floor, carton tape.Length) int {
	return int((floor + carton - 1) / carton)
}

// TenPercent is the number of cartons by the rule of ten per cent over the floor.
func TenPercent(floor, carton tape.Length) int {
	return int(math.Ceil(float64(floor)*1.1/float64(carton) - 1e-9))
}

// Forced is how many joints a lay forced, on average.
func Forced(ns []Need) float64 {
	sum := 0
	for _, n := range ns {
		sum += n.Forced
	}
	return float64(sum) / float64(max(1, len(ns)))
}

// Parts are the averages of what is needed, part by part.
func Parts(ns []Need) Need {
	var sum [5]float64
	for _, n := range ns {
		for i, l := range []tape.Length{n.Taken, n.Floor, n.Cut, n.Culls, n.Mistakes} {
			sum[i] += float64(l)
		}
	}
	var out Need
	if len(ns) == 0 {
		return out
	}
	for i, to := range []*tape.Length{&out.Taken, &out.Floor, &out.Cut, &out.Culls, &out.Mistakes} {
		*to = tape.Length(math.Round(sum[i] / float64(len(ns))))
	}
	return out
}
