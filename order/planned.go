package order

import (
	"context"
	"math/rand/v2"

	"strake/tape"
)

// PlannedLays is how many planned lays stand for all that there are.
const PlannedLays = 300

// PlannedNeeds are the needs of floors laid by a plan: how much cutting loses is
// one of the losses given, each a share of the floor that some planned lay of it
// lost, in turn; what lots and slips cost is drawn as for the other layers. Every
// part of a cull that is long enough is laid, as first piece or whole.
func PlannedNeeds(ctx context.Context, m Model, losses []float64, lays int, seed uint64, workers int) ([]Need, error) {
	floor := m.Floor()
	lots := newHand(m, Planned).lots
	cuts := float64(len(m.Runs))
	return Each(ctx, lays, workers, func(_, i int) Need {
		r := rand.New(rand.NewPCG(seed, uint64(i)+1))
		culls := lots[r.Uint32()%lotParts]
		n := Need{Floor: floor, Cut: tape.Length(losses[i%len(losses)] * float64(floor))}
		if m.Spoiled > 0 {
			for range int(cuts) {
				if r.Float64() < m.Spoiled {
					n.Mistakes += m.Lengths.Draw(r) / 2
				}
			}
		}
		want := n.Floor + n.Cut + n.Mistakes
		for have := tape.Length(0); have < want; {
			l := m.Lengths.Draw(r)
			if culls > 0 && r.Float64() < culls {
				good := tape.Length(r.Float64() * m.Salvaged * float64(l))
				if good < m.Shortest {
					good = 0
				}
				n.Culls += l - good
				l = good
			}
			have += l
		}
		n.Taken = want + n.Culls
		return n
	})
}
