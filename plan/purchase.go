package plan

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"

	"strake/lay"
	"strake/order"
	"strake/plane"
	"strake/rack"
	"strake/stock"
	"strake/tape"
)

// Purchase is what boards of one face width have to be bought: how many cartons,
// at what risk.
type Purchase struct {
	Boards  stock.Boards
	Wants   order.Wants // with the defaults filled in
	Model   order.Model
	Carton  tape.Length // length of board in one, 0 where its area is not known
	Layers  []Laying    // one for each way to lay, in the order of order.Layers
	Fewest  int         // cartons that hold the floor itself
	Ten     int         // by the rule of ten per cent
	Advised int         // by the layer of the job, with spares; 0 none of the choices does
	Unknown bool        // nothing is known of the lengths
}

// Laying is what the floor takes when one lays it so.
type Laying struct {
	Layer   order.Layer
	Lays    int
	Racked  int        // by a plan: lays racked in earnest, whose losses stand for all
	Parts   order.Need // averages
	Forced  float64    // joints of a lay that are nearer to each other than they should be, on average
	Choices []order.Choice
	Costs   []float64 // of each choice on average, running short included; none without a price
	Best    int       // cartons of the most sparing lay
	Advised int       // without spares; 0: none of the choices does
	Cut     error
}

// Of is the laying of a layer.
func (p Purchase) Of(l order.Layer) Laying {
	for _, x := range p.Layers {
		if x.Layer == l {
			return x
		}
	}
	return Laying{}
}

// Counted tells whether any lay was made before the work was stopped.
func (p Purchase) Counted() bool {
	return slices.ContainsFunc(p.Layers, func(l Laying) bool { return l.Lays > 0 })
}

// Area is a length of board as area of floor, by the face.
func (p Purchase) Area(l tape.Length) tape.Area { return tape.Area(l) * tape.Area(p.Boards.Face) }

// Effort is how much is simulated: lays by the hand layers, lays by a plan, and by
// how many workers. Tell is told how many lays by a plan are given out, nil nobody.
type Effort struct {
	Lays, Planned, Workers int
	Tell                   func(given, of int)
}

// Usual is the effort of a command.
var Usual = Effort{Lays: 10_000, Planned: order.PlannedLays}

// Purchases are what has to be bought of each face width, for the rows of p. When
// ctx ends what was simulated till then counts.
func (p Plan) Purchases(ctx context.Context, e Effort) []Purchase {
	var out []Purchase
	for _, b := range p.Job.Boards.Each() {
		out = append(out, p.purchase(ctx, b, e))
	}
	return out
}

func (p Plan) purchase(ctx context.Context, b stock.Boards, e Effort) Purchase {
	w := p.Job.Order.Filled()
	out := Purchase{Boards: b, Wants: w, Model: p.model(b, w)}
	if out.Model.Lengths == nil {
		out.Unknown = true
		return out
	}
	if a := b.Carton.FaceArea(b.Face); a > 0 && b.Face > 0 {
		out.Carton = tape.Length(math.Round(float64(a) / float64(b.Face)))
		out.Fewest, out.Ten = order.Fewest(out.Model.Floor(), out.Carton), order.TenPercent(out.Model.Floor(), out.Carton)
	}
	for _, layer := range order.Layers {
		var ns []order.Need
		var err error
		racked := 0
		if layer == order.Planned {
			losses, cut := p.losses(ctx, b, out.Model, e)
			if racked = len(losses); racked == 0 {
				continue
			}
			if ns, err = order.PlannedNeeds(ctx, out.Model, losses, e.Lays, p.Job.Seed, e.Workers); err == nil {
				err = cut
			}
		} else {
			ns, err = order.Simulate(ctx, out.Model, layer, e.Lays, p.Job.Seed, e.Workers)
		}
		l := out.laying(layer, ns, err)
		l.Racked = racked
		out.Layers = append(out.Layers, l)
	}
	if l := out.Of(w.Layer); l.Advised > 0 {
		out.Advised = l.Advised + w.Spares
	}
	return out
}

// laying is what needs come to in cartons.
func (p Purchase) laying(layer order.Layer, ns []order.Need, err error) Laying {
	l := Laying{Layer: layer, Lays: len(ns), Parts: order.Parts(ns), Forced: order.Forced(ns), Cut: err}
	if p.Carton <= 0 || len(ns) == 0 {
		return l
	}
	most := p.Fewest
	for _, n := range ns {
		most = max(most, int((n.Taken+p.Carton-1)/p.Carton))
	}
	l.Choices = order.Choices(ns, p.Carton, p.Fewest, most)
	l.Best = bestOf(ns, p.Carton)
	for _, c := range l.Choices {
		if t := p.terms(); t.Price > 0 {
			l.Costs = append(l.Costs, order.Cost(ns, p.Carton, c.Cartons, t))
		}
	}
	l.Advised = order.Advise(l.Choices, p.Wants.Risk)
	return l
}

// model is the floor as it is laid over and over with boards of one width.
func (p Plan) model(b stock.Boards, w order.Wants) order.Model {
	l := p.Job.Limits
	m := order.Model{
		Lengths: p.lengthsOf(b), Kerf: l.Kerf.Value, Shortest: l.ShortestPiece.Value, Joint: l.JointMin.Value,
		Lot: p.lot(w), Salvaged: order.Salvaged, Spoiled: w.Spoiled, Hand: order.InHand,
	}
	var all []strip
	for zone, f := range p.Fields {
		for _, r := range f.Layout.Runs {
			if r.High-r.Low == b.Pitch() {
				all = append(all, strip{zone, r.Low, r.High, plane.Span{From: r.Left.Reach, To: r.Right.Reach}, r.Order})
			}
		}
	}
	m.Runs = runsOf(all)
	return m
}

// strip is a run where it lies.
type strip struct {
	zone      int
	low, high tape.Length
	x         plane.Span
	order     int
}

// runsOf are runs in the order of laying, each with those before it that it lies
// beside.
func runsOf(all []strip) []order.Run {
	slices.SortStableFunc(all, func(a, b strip) int { return a.order - b.order })
	var out []order.Run
	for i, a := range all {
		r := order.Run{From: a.x.From, To: max(a.x.From+1, a.x.To)}
		for k, b := range all[:i] {
			if a.zone == b.zone && (a.low == b.high || a.high == b.low) && a.x.From < b.x.To && b.x.From < a.x.To {
				r.Beside = append(r.Beside, k)
			}
		}
		out = append(out, r)
	}
	return out
}

// lot is what is known of culls, with what was counted in the cartons opened.
func (p Plan) lot(w order.Wants) order.Lot {
	boards, culls := p.Job.Received.Counted()
	return order.Lot{Mean: w.Culls, Varies: w.Varies}.Seen(boards, culls)
}

// lengthsOf is the spread of lengths to draw from, refined by the cartons that were
// measured; nil where nothing is known.
func (p Plan) lengthsOf(b stock.Boards) *order.Lengths {
	switch b.Known {
	case stock.Tallied:
		return order.Tallied(b.Tally)
	case stock.OneSize:
		return order.Fixed(b.One)
	case stock.MixOnly:
		if len(p.Job.Boards.Widths) > 0 {
			return order.FromMix(b.Mix)
		}
		return order.FromMix(b.Mix).Refined(p.Job.Received.Lengths())
	}
	return nil
}

// coarse is the step that boards of a planned lay are drawn to.
const coarse = tape.Inch

// losses are the shares of the floor that planned lays of it lost in cutting, each
// with boards of its own.
func (p Plan) losses(ctx context.Context, b stock.Boards, m order.Model, e Effort) ([]float64, error) {
	floor := m.Floor()
	if len(p.Job.Boards.Widths) > 0 || floor <= 0 {
		return nil, nil
	}
	n := plannedLays(b, e.Planned, floor)
	from := 0
	some := func(count int) ([]tried, error) {
		tell := func(given int) {
			if e.Tell != nil {
				e.Tell(from+given, n)
			}
		}
		return order.EachTold(ctx, count, e.Workers, tell, func(_, i int) tried {
			one := drawn(b, m, floor, p.Job.Seed, from+i)
			l, w := rack.Racked(ctx, rack.Ask{Fields: p.Fields, Boards: one, Limits: p.Job.Limits, Seed: p.Job.Seed + uint64(from+i), Plain: true, Style: tape.Paper(p.Job.Unit)})
			return tried{lost(l, b.Pitch(), floor), w.Work}
		})
	}
	out, err := some(min(n, sounding))
	if from = len(out); err == nil && n > from {
		n = affordable(out, n)
		var more []tried
		more, err = some(n - from)
		out = append(out, more...)
	}
	var kept []float64
	for _, x := range out {
		if x.lost >= 0 {
			kept = append(kept, x.lost)
		}
	}
	return kept, err
}

// tried is a lay by a plan: what it lost, and the work that it took.
type tried struct {
	lost float64
	work int
}

// sounding is how many lays show what one takes. Where boards are so short that joints
// hardly keep apart, one takes as long as hundreds of others: mostWork is for how much
// work lays are added to those, some 3 s on two cores. Work is counted and not timed, so
// that the answer is the same everywhere.
const sounding, mostWork = 16, 4_000_000_000

// affordable is how many lays of n there are, by the work of the first.
func affordable(first []tried, n int) int {
	sum := 1
	for _, x := range first {
		sum += x.work
	}
	return max(len(first), min(n, int(int64(mostWork)*int64(len(first))/int64(sum))))
}

// ampleFloor is the length of runs up to which as many lays are planned as were
// asked for: about 1,000 sq ft of 5 in boards. The larger a floor, the less its
// lays differ.
const ampleFloor = 2400 * tape.Foot

func plannedLays(b stock.Boards, asked int, floor tape.Length) int {
	if b.Known == stock.OneSize { // all its lays are alike
		return min(asked, 1)
	}
	if floor <= ampleFloor {
		return asked
	}
	return max(min(asked, 12), int(float64(asked)*float64(ampleFloor)/float64(floor)))
}

// drawn is boards enough for one lay, drawn from the spread, to the inch.
func drawn(b stock.Boards, m order.Model, floor tape.Length, seed uint64, i int) stock.Boards {
	r := rand.New(rand.NewPCG(seed, 1<<32+uint64(i)))
	count := map[tape.Length]int{}
	goal := floor + floor/10 + 4*m.Lengths.Longest()
	for sum := tape.Length(0); sum < goal; {
		l := max(coarse, tape.Nearest(m.Lengths.Draw(r), coarse))
		count[l]++
		sum += l
	}
	b.Known, b.Tally, b.ReadTo, b.Slip, b.Doubted = stock.Tallied, nil, 0, 0, false
	for l := coarse; l <= m.Lengths.Longest()+coarse; l += coarse {
		if count[l] > 0 {
			b.Tally = append(b.Tally, stock.Class{Length: l, Count: count[l]})
		}
	}
	return b
}

// lost is the share of the floor that a lay took beyond it, rests at the end
// included; under 0 where it was not filled.
func lost(l lay.Lay, pitch, floor tape.Length) float64 {
	for _, r := range l.Runs {
		if r.Unfilled {
			return -1
		}
	}
	var sum tape.Length
	for _, b := range l.Boards {
		if b.Width == pitch {
			sum += b.Length
		}
	}
	return max(0, float64(sum-floor)/float64(floor))
}
