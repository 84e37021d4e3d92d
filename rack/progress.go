package rack

import "strake/tape"

// Progress is how a search stands: told after each run of the first answer, then
// after the answer and after each better one.
type Progress struct {
	Work      int // units of work spent
	Runs      int // of the floor
	Reached   int // of the first answer; below Runs while it is made
	Unfilled  int // runs without boards
	Crosscuts int
	Scrap     tape.Length // lost to kerfs and to ends too short to use
}

// report tells how the floor stands.
func (e *engine) report(fs []filled) {
	if e.progress == nil {
		return
	}
	cuts, scrap := e.wood(fs)
	e.progress(Progress{Work: e.work, Runs: len(fs), Reached: len(fs), Unfilled: unfilled(fs), Crosscuts: cuts, Scrap: scrap})
}

// reached tells how far the first answer has come.
func (e *engine) reached(run, runs int) {
	if e.progress != nil {
		e.progress(Progress{Work: e.work, Runs: runs, Reached: run})
	}
}

// wood counts the crosscuts of a floor and what of its boards is lost: neither
// laid nor left for later.
func (e *engine) wood(fs []filled) (cuts int, scrap tape.Length) {
	scrap = e.stock.length() - e.left.length()
	cuts = e.left.sawn()
	for _, f := range fs {
		for _, q := range f.pieces {
			scrap -= q.length()
			cuts += q.crosscuts()
		}
	}
	return cuts, scrap
}

// crosscuts is how many ends of the piece are cut for its place.
func (q placed) crosscuts() int {
	n := 0
	if q.sawn {
		n++
	}
	if q.rough {
		n++
	}
	if q.farCut {
		n++
	}
	if q.nearCut {
		n++
	}
	return n
}
