package paper

import (
	"fmt"

	"strake/lay"
	"strake/tape"
)

// playUsed is how much of the play at the ends of rows the layout uses: how far
// they stay behind the farthest place that boards may reach.
type playUsed struct {
	Ends             int // ends that have play
	Sum, Most, Given tape.Length
}

// playOf adds up all ends that are neither mitred nor cut in place.
func playOf(l lay.Lay) (u playUsed) {
	for _, r := range l.Runs {
		if len(r.Pieces) == 0 {
			continue
		}
		lo, hi := r.Outline.Box()
		for _, e := range []struct {
			end  lay.EndRange
			used tape.Length
		}{{r.LeftEnd, lo.X - r.LeftEnd.Reach}, {r.RightEnd, r.RightEnd.Reach - hi.X}} {
			given := (e.end.Need - e.end.Reach).Abs()
			if given == 0 || e.end.Mitred || e.end.InPlace {
				continue
			}
			u.Ends++
			u.Sum, u.Most, u.Given = u.Sum+max(0, e.used), max(u.Most, e.used), u.Given+given
		}
	}
	return u
}

// playText says it; nothing where no end has play.
func playText(u playUsed, style tape.Style) []string {
	if u.Ends == 0 {
		return nil
	}
	n := tape.Length(u.Ends)
	return []string{fmt.Sprintf("%d row ends have play, %s on average; the layout uses %s of it on average and %s at the most", u.Ends, style.Of(u.Given/n), style.Of(u.Sum/n), style.Of(u.Most))}
}
