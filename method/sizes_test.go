package method

import (
	"fmt"
	"strings"
	"testing"

	"strake/floor"
	"strake/tape"
)

// Boards, gaps, covers and pipes of every size that jobs come in: each card still
// fits its page and no texts meet.
func TestSizes(t *testing.T) {
	for _, from := range []string{"kitchen", "metric"} {
		for _, face := range []tape.Length{38, 57, 127, 178, 300} {
			for _, thick := range []tape.Length{8, 13, 19, 25, 32} {
				for i, gap := range []tape.Length{6, 19, 38} {
					p := plans(t)[from]
					mm := tape.Millimetre
					p.Job.Boards.Face, p.Job.Boards.Thickness, p.Job.Boards.TenBoards = face*mm, thick*mm, 0
					p.Job.Limits.GapLeast.Value = gap * mm
					p.Job.Base, p.Job.Shoe = tape.Length(10*i)*mm, tape.Length(12*i)*mm
					p.Floor.Edges = append([]floor.Edge{{Kind: floor.Wall, Sides: floor.Range{Least: gap * mm, Greatest: (gap + 4) * mm}}}, p.Floor.Edges...)
					p.Job.Sketch.Stays = append(p.Job.Sketch.Stays[:0:0], p.Job.Sketch.Stays...)
					for k := range p.Job.Sketch.Stays {
						p.Job.Sketch.Stays[k].Width, p.Job.Sketch.Stays[k].Depth = tape.Length(12+60*i)*mm, tape.Length(12+60*i)*mm
					}
					name := fmt.Sprintf("%s, face %d, thick %d, gap %d", from, face, thick, gap)
					for _, k := range Cards(p) {
						for _, a := range areas {
							items, fits := k.On(a[0], a[1])
							if !fits {
								t.Errorf("%s: %s is longer than a page of %v by %v", name, k.Name, a[0], a[1])
								continue
							}
							apartOn(t, name+", "+k.Name, items, a[0], a[1])
						}
						for _, f := range k.Figures {
							if f.W > Widest {
								t.Errorf("%s, %s: %s is %.0f mm wide", name, k.Name, f.Title, f.W)
							}
						}
					}
				}
			}
		}
	}
}

// A pipe whose size nobody wrote down is measured; nothing is made up for it.
func TestPipeNotMeasured(t *testing.T) {
	p := plans(t)["metric"]
	p.Job.Sketch.Stays = append(p.Job.Sketch.Stays[:0:0], p.Job.Sketch.Stays...)
	p.Job.Sketch.Stays[0].Width, p.Job.Sketch.Stays[0].Depth = 0, 0
	k := card(p, "hole-and-plug")
	if !strings.Contains(k.Why, "cold main: measure it") || strings.Contains(said(k), "hole 8") {
		t.Errorf("%q", k.Why)
	}
}

// Boards that joints move by a fixed shift of are told that shift, and not to shun
// stairs, which they make.
func TestFixedShift(t *testing.T) {
	k := card(plans(t)["shifted"], "rack-ahead")
	if s := said(k); !strings.Contains(s, `Joints move by 15-3/4" from row to row`) || strings.Contains(s, "stairs") {
		t.Error(s)
	}
	if s := said(card(plans(t)["ticket-office.yaml"], "rack-ahead")); !strings.Contains(s, "no stairs") {
		t.Error(s)
	}
}

// A panel under the boards is counted into the height of the cut, which is told
// from the subfloor.
func TestPanelUnderJamb(t *testing.T) {
	if s := said(card(plans(t)["panel"], "undercut-a-jamb")); !strings.Contains(s, `cellar door, 1-5/16" over the subfloor`) || !strings.Contains(s, "panel, shim, sheet") {
		t.Error(s)
	}
}
