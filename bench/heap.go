package main

import (
	"runtime"
	"runtime/debug"
	"runtime/metrics"
	"time"
)

// peakHeap is the most heap in use while f runs, in MB, beyond what was in use
// before, looked at every 2 ms. Garbage is let grow by a fifth only, so that
// what f needs is told rather than what the collector leaves.
func peakHeap(f func()) float64 {
	defer debug.SetGCPercent(debug.SetGCPercent(20))
	runtime.GC()
	before := heapNow()
	stop, top := make(chan bool), make(chan uint64)
	go func() {
		most := before
		tick := time.NewTicker(2 * time.Millisecond)
		defer tick.Stop()
		for {
			select {
			case <-stop:
				top <- most
				return
			case <-tick.C:
				most = max(most, heapNow())
			}
		}
	}()
	f()
	close(stop)
	return float64(<-top-before) / (1 << 20)
}

func heapNow() uint64 {
	s := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	metrics.Read(s)
	return s[0].Value.Uint64()
}
