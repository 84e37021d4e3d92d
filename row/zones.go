package row

import (
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/tape"
)

// zones sets how each run is fastened. First and last rows are face-nailed
// (common practice, no source): every run with no row behind it, or none
// ahead, along half its length or more. Of the others the floor nailer takes
// those that leave it room behind the tongue edge and ahead of it along more
// than half their length; the rest is nailed by hand through the tongue.
func (l *Layout) zones(a floor.Aligned, lim limits.Limits) {
	for i := range l.Runs {
		r := &l.Runs[i]
		behind, ahead := l.beside(*r)
		switch half := r.Length() / 2; {
		case behind <= half || ahead <= half:
			r.Fasten = lay.FaceNail
		case !nailerFits(a, *r, lim):
			r.Fasten = lay.HandNail
		}
	}
}

// beside is along how much of a run there are rows behind it and ahead of it.
func (l *Layout) beside(r Run) (behind, ahead tape.Length) {
	for _, o := range l.Runs {
		both := max(0, min(r.Right.Reach, o.Right.Reach)-max(r.Left.Reach, o.Left.Reach))
		switch {
		case o.High == r.Low:
			behind += both
		case o.Low == r.High:
			ahead += both
		}
	}
	return
}

// looks is at how many places along a run the room for the nailer is measured.
const looks = 9

// nailerFits tells whether a floor nailer has room along most of a run: from
// the tongue edge back to the wall behind, and on to the wall ahead.
func nailerFits(a floor.Aligned, r Run, lim limits.Limits) bool {
	fits := 0
	for k := range tape.Length(looks) {
		x := r.Left.Reach + (2*k+1)*r.Length()/(2*looks)
		for _, s := range a.Bare.Section(x, false) {
			if s.From < r.High && r.High < s.To &&
				r.High-s.From >= lim.NailerBehind.Value && s.To-r.High >= lim.NailerAhead.Value {
				fits++
			}
		}
	}
	return 2*fits > looks
}
