package order

import (
	"context"
	"math/rand/v2"
	"sync"
)

// block is how many lays a worker takes at a time.
const block = 64

// Simulate lays the floor so many times, by so many workers. Lay i draws from a
// source of its own, made of seed and i: the answer is the same for any number of
// workers. What was done when ctx ends is returned, with its error. By a plan
// nothing is lost in cutting here: see PlannedNeeds.
func Simulate(ctx context.Context, m Model, layer Layer, lays int, seed uint64, workers int) ([]Need, error) {
	hands := make([]*hand, max(1, workers))
	for i := range hands {
		hands[i] = newHand(m, layer)
	}
	return Each(ctx, lays, workers, func(w, i int) Need {
		return hands[w].lay(rand.New(rand.NewPCG(seed, uint64(i)+1)))
	})
}

// Each calls f for every i below n, by workers that each write to memory of their
// own, and copies what they made a block at a time. What was made, from the first
// on, when ctx ends is returned, with its error.
func Each[T any](ctx context.Context, n, workers int, f func(worker, i int) T) ([]T, error) {
	return EachTold(ctx, n, workers, func(int) {}, f)
}

// EachTold is Each with somebody to be told how many are given out: from the
// goroutine that calls, more and more, none twice.
func EachTold[T any](ctx context.Context, n, workers int, tell func(given int), f func(worker, i int) T) ([]T, error) {
	block := max(1, min(block, n/(4*max(1, workers))))
	out := make([]T, n)
	next := make(chan int)
	done := make([]bool, (n+block-1)/block)
	var wg sync.WaitGroup
	for w := range max(1, workers) {
		wg.Go(func() {
			local := make([]T, block)
			for b := range next {
				lo, hi := b*block, min(n, (b+1)*block)
				for i := lo; i < hi; i++ {
					local[i-lo] = f(w, i)
				}
				copy(out[lo:hi], local)
				done[b] = true
			}
		})
	}
	var err error
feed:
	for b := range done {
		select {
		case <-ctx.Done():
			err = ctx.Err()
			break feed
		case next <- b:
			tell(min(n, (b+1)*block))
		}
	}
	close(next)
	wg.Wait()
	for b, ok := range done {
		if !ok {
			return out[:b*block], err
		}
	}
	return out, err
}
