package order

import "strake/tape"

// Strictly is the share of the length laid that a layer loses who draws boards one
// by one, cuts the last of each run and throws away its rest unless the next run
// begins with it: for runs of one length, by renewal theory. A cut loses the blade;
// of a rest shorter than the shortest piece m all, and of a longer one all where it
// cannot begin the next run, its joint nearer than s to one there. It is an
// estimate: runs are taken for long against the boards.
//
//	kerf + E[min(L, m)^2] / 2 mu + (2 s / mu) (E[L^2] - E[min(L, m)^2]) / 2 mu    a run
func Strictly(l *Lengths, run, kerf, shortest, joint tape.Length) float64 {
	mu := l.mean
	scrap := l.square(shortest) / (2 * mu)
	refused := 2 * float64(joint) / mu * (l.square(l.Longest())/(2*mu) - scrap)
	return (float64(kerf) + scrap + refused) / float64(run)
}
