package order

import "strake/tape"

// Layer is how the floor is laid.
type Layer string

// The layers.
const (
	Strict  Layer = "strict"  // takes boards as they come; a rest begins the next run or is thrown away; culls are thrown away
	Careful Layer = "careful" // keeps a pile of rests, has boards in hand to choose from, begins runs with what is good of culls
	Planned Layer = "planned" // lays by a plan of the boards that are there
)

// Layers are the layers from the one who needs most.
var Layers = []Layer{Strict, Careful, Planned}

// Run is one run to be laid, in the order of laying: from one end to the other
// along its row, and the runs laid before it that it lies beside.
type Run struct {
	From, To tape.Length
	Beside   []int
}

// Len is how long it is.
func (r Run) Len() tape.Length { return r.To - r.From }

// Lot is what is known of the share of culls before a lot is opened: its mean, and
// how far lots differ (standard deviation over mean; 0: all lots are alike).
type Lot struct{ Mean, Varies float64 }

// Model is a floor to be laid over and over.
type Model struct {
	Runs     []Run
	Lengths  *Lengths
	Kerf     tape.Length
	Shortest tape.Length // first and last piece of a run at the least
	Joint    tape.Length // between joints of runs side by side at the least
	Lot      Lot
	Salvaged float64 // of a cull, the share that may be good at the most, as a first piece (careful)
	Spoiled  float64 // of the cuts, the share that goes wrong
	Hand     int     // boards to choose from (careful)
}

// The figures of the model that a job may change. Common practice, no source.
const (
	LotVaries = 0.6
	Salvaged  = 0.8
	Spoiled   = 0.01
	InHand    = 8
)

// Floor is the length that the runs measure.
func (m Model) Floor() tape.Length {
	var sum tape.Length
	for _, r := range m.Runs {
		sum += r.Len()
	}
	return sum
}

// Need is the length of board that one lay took, and what for. Cut is what cutting
// lost: blade and rests that nothing could be begun with, and what was over at the
// end; the parts sum to Taken.
type Need struct {
	Taken, Floor, Cut, Culls, Mistakes tape.Length
	Forced                             int // joints nearer to one beside than they should be: no board in hand kept off
}
