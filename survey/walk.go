package survey

import (
	"math"

	"strake/plane"
)

// A person alone hooks the tape at one end of a reading and walks to the other
// to read it; the next reading starts there, or a walk away. pulled is a reading
// as walked: from its hook to where it is read.
type pulled struct {
	item int
	flip bool // hooked at To
}

// walk finds an order of the readings, and the end to hook each, that saves
// steps: the nearest next, then improved by moving one at a time. What fixes
// the shape comes before the rest, so that one may stop there.
func (r Result) walk(net *net, items []Item) ([]int, float64) {
	if len(items) == 0 {
		return nil, 0
	}
	ends := make([][2]plane.XY, len(items))
	for i, it := range items {
		ends[i] = endsOf(net, it.Ask.Reading, r.x)
	}
	stage := stages(items)
	order := improve(nearest(ends, stage), ends, stage)
	out := make([]int, len(order))
	for i, l := range order {
		out[i] = l.item
		a := items[l.item].Ask.Reading
		items[l.item].Hook = a.From
		if l.flip && a.Kind == Between {
			items[l.item].Hook = a.To
		}
	}
	return out, paces(order, ends)
}

// endsOf are the two ends of a reading.
func endsOf(net *net, a Reading, x []float64) [2]plane.XY {
	p := net.at(a.From, x)
	if a.Kind == Between {
		return [2]plane.XY{p, net.at(a.To, x)}
	}
	return [2]plane.XY{p, net.at(a.Wall[0], x).Add(net.at(a.Wall[1], x)).Times(0.5)}
}

func (l pulled) hook(ends [][2]plane.XY) plane.XY {
	if l.flip {
		return ends[l.item][1]
	}
	return ends[l.item][0]
}

func (l pulled) read(ends [][2]plane.XY) plane.XY {
	return pulled{l.item, !l.flip}.hook(ends)
}

// paces is how far an order makes one walk: along each reading, and from where
// it is read to the next hook.
func paces(order []pulled, ends [][2]plane.XY) float64 {
	sum := 0.0
	for i, l := range order {
		sum += ends[l.item][1].Sub(ends[l.item][0]).Len()
		if i > 0 {
			sum += l.hook(ends).Sub(order[i-1].read(ends)).Len()
		}
	}
	return sum
}

// stages are 0 for what fixes the shape or ties rooms, 1 for the rest.
func stages(items []Item) []int {
	out := make([]int, len(items))
	for i, it := range items {
		if it.Purpose != Fixes && it.Purpose != Ties {
			out[i] = 1
		}
	}
	return out
}

// nearest takes the nearest hook next, all of one stage before the next.
func nearest(ends [][2]plane.XY, stage []int) []pulled {
	done := make([]bool, len(ends))
	at := ends[0][0]
	var out []pulled
	for range ends {
		best, low, now := pulled{item: -1}, math.Inf(1), math.MaxInt
		for i, s := range stage {
			if !done[i] {
				now = min(now, s)
			}
		}
		for i := range ends {
			if stage[i] != now {
				continue
			}
			for _, flip := range []bool{false, true} {
				l := pulled{i, flip}
				if d := l.hook(ends).Sub(at).Len(); !done[i] && d < low-1e-6 {
					best, low = l, d
				}
			}
		}
		if best.item < 0 { // places that are not numbers
			return inOrder(len(ends))
		}
		done[best.item] = true
		out = append(out, best)
		at = best.read(ends)
	}
	return out
}

func inOrder(n int) []pulled {
	out := make([]pulled, n)
	for i := range out {
		out[i].item = i
	}
	return out
}

// improve turns stretches of the order round while that shortens the walk: a
// stretch turned round is read backwards, each tape hooked at its other end. No
// stretch reaches over two stages.
func improve(order []pulled, ends [][2]plane.XY, stage []int) []pulled {
	best := paces(order, ends)
	for round := 0; round < 60; round++ {
		better := false
		for i := range order {
			for j := i; j < len(order) && stage[order[j].item] == stage[order[i].item]; j++ {
				for _, next := range [][]pulled{turned(order, i, j), moved(order, i, j), moved(order, j, i)} {
					if s := paces(next, ends); s < best-1e-6 {
						order, best, better = next, s, true
					}
				}
			}
		}
		if !better {
			break
		}
	}
	return order
}

func turned(order []pulled, i, j int) []pulled {
	out := append([]pulled(nil), order...)
	for k := i; k <= j; k++ {
		l := order[i+j-k]
		out[k] = pulled{l.item, !l.flip}
	}
	return out
}

// moved takes the reading at i out and puts it in at j.
func moved(order []pulled, i, j int) []pulled {
	out := append([]pulled(nil), order[:i]...)
	out = append(out, order[i+1:]...)
	out = append(out[:j], append([]pulled{order[i]}, out[j:]...)...)
	return out
}
