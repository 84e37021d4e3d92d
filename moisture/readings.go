package moisture

import (
	"math"
	"sort"

	"gonum.org/v1/gonum/stat"
)

// Meter is what the readings were taken with.
type Meter struct {
	Kind       string      // "pin" or "pinless"; "" not known
	Least      float64     // least that it reads, percent; 0: the usual of its kind
	Most       float64     // most that it reads, percent; 0: the usual of its kind
	Calibrated Temperature // of a pin meter; not told: 70 °F
}

// The ranges of meters: Wood Handbook (FPL-GTR-190), resistance 6 to 30 %,
// dielectric 4 to 30 %. A meter not known has the wider one.
func (m Meter) span() (least, most float64) {
	least, most = 4, 30
	if m.Kind == Pin {
		least = 6
	}
	if m.Least > 0 {
		least = m.Least
	}
	if m.Most > 0 {
		most = m.Most
	}
	return least, most
}

// The kinds of meters.
const (
	Pin     = "pin"
	Pinless = "pinless"
)

// Mark is one line of a meter's species table: what it shows, and what the wood
// holds.
type Mark struct{ Shows, Is float64 }

// Sample is readings of one thing.
type Sample struct {
	Reads   []float64   // percent, as the meter showed them
	Setting string      // what the meter was set to; "" not written down
	Table   []Mark      // the meter's table for the species; none: readings stand as they are
	Wood    Temperature // of the wood when it was read; not told: as the meter was calibrated
}

// SourceWarmth is where the correction for the wood's temperature comes from.
const SourceWarmth = "Wood Handbook (FPL-GTR-190) on resistance meters: half a point for each 10 °F (5.6 °C), added below the temperature of calibration, taken off above"

// warmth is what a pin meter's readings are put right by for the temperature of
// the wood, in points.
func (m Meter) warmth(wood Temperature) float64 {
	if m.Kind != Pin || !wood.Told() {
		return 0
	}
	calibrated := 70.0 // from memory: what most meters are calibrated at
	if m.Calibrated.Told() {
		calibrated = m.Calibrated.F()
	}
	return (calibrated - wood.F()) / 10 * 0.5
}

// sorted is the table by what the meter shows.
func sorted(table []Mark) []Mark {
	out := append([]Mark(nil), table...)
	sort.SliceStable(out, func(i, j int) bool { return out[i].Shows < out[j].Shows })
	return out
}

// look is what a reading means by a sorted table, straight between its lines
// and not ok beyond its ends.
func look(table []Mark, shows float64) (is float64, ok bool) {
	if len(table) == 0 {
		return shows, true
	}
	for i, m := range table {
		switch {
		case shows == m.Shows:
			return m.Is, true
		case shows < m.Shows && i == 0:
			return shows, false
		case shows < m.Shows:
			l := table[i-1]
			return l.Is + (m.Is-l.Is)*(shows-l.Shows)/(m.Shows-l.Shows), true
		}
	}
	return shows, false
}

// Looked is a sample as it counts: each reading put right for temperature, then
// for species, without those that cannot be.
type Looked struct {
	Contents []float64 // percent
	Shown    []float64 // the reading that each came from
	Beyond   []float64 // readings that the meter or its table does not reach
	Mean     float64
	Spread   float64 // standard deviation, 0 of one reading
	Least    float64
	Most     float64
	Far      []float64 // contents far from the others
}

// Look puts the readings right and takes their figures.
func (m Meter) Look(s Sample) Looked {
	var l Looked
	table, warmth := sorted(s.Table), m.warmth(s.Wood)
	least, most := m.span()
	for _, shows := range s.Reads {
		is, ok := look(table, shows+warmth)
		if shows < least || shows > most || !ok {
			l.Beyond = append(l.Beyond, shows)
			continue
		}
		l.Contents, l.Shown = append(l.Contents, is), append(l.Shown, shows)
	}
	l.figures()
	return l
}

func (l *Looked) figures() {
	if len(l.Contents) == 0 {
		return
	}
	l.Mean = stat.Mean(l.Contents, nil)
	if len(l.Contents) > 1 {
		l.Spread = stat.StdDev(l.Contents, nil)
	}
	in := append([]float64(nil), l.Contents...)
	sort.Float64s(in)
	l.Least, l.Most = in[0], in[len(in)-1]
	l.Far = far(l.Contents, in)
}

// apart is how many points from the middle of all readings a single one is
// pointed out at least. Common practice, no source.
const apart = 2.0

// far are readings that lie far from the middle of them: over two points, and
// over three and a half times the usual distance (the median of distances,
// scaled to a standard deviation).
func far(contents, inOrder []float64) []float64 {
	if len(contents) < 4 {
		return nil
	}
	mid := middle(inOrder)
	var off []float64
	for _, x := range inOrder {
		off = append(off, math.Abs(x-mid))
	}
	sort.Float64s(off)
	limit := math.Max(apart, 3.5*1.4826*middle(off))
	var out []float64
	for _, x := range contents {
		if math.Abs(x-mid) > limit {
			out = append(out, x)
		}
	}
	return out
}

// middle is the median of numbers in order.
func middle(in []float64) float64 {
	n := len(in)
	return (in[(n-1)/2] + in[n/2]) / 2
}

// MeanDoubt is the standard error of the mean, 0 of one reading.
func (l Looked) MeanDoubt() float64 {
	if len(l.Contents) < 2 {
		return 0
	}
	return l.Spread / math.Sqrt(float64(len(l.Contents)))
}
