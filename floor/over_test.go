package floor

import (
	"strings"
	"testing"

	"strake/finding"
	"strake/limits"
	"strake/plane"
	"strake/room"
)

// A column set out over a hearth and a cabinet before a doorway are told of;
// a hearth beside a column is not.
func TestWhatStaysOverEachOther(t *testing.T) {
	b := room.Built{At: map[string]plane.XY{"A": {}, "B": {X: 5000}, "C": {X: 5000, Y: 4000}, "D": {Y: 4000}}}
	b.Rooms = []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D"}}}
	b.Doorways = []room.Doorway{{Name: "hall", Wall: room.Wall{"A", "B"}, From: "B", At: in(20), Width: in(32), Thickness: in(4), Ends: in(2), Beyond: room.BeyondTransition}}
	stay := func(name string, at, off float64) room.Stay {
		return room.Stay{Name: name, Kind: room.Column, Meets: room.MeetsGap, Wall: room.Wall{"A", "B"}, From: "A", At: in(at), Off: in(off), Width: in(20), Depth: in(20)}
	}
	b.Stays = []room.Stay{stay("hearth", 20, 0), stay("column", 30, 12), stay("beside", 60, 0), stay("cabinet", 150, 0)}
	_, fs := New(b, Trim{Base: in(1.5)}, limits.Default(in(5), in(0.75)), style)
	var told []string
	for _, f := range fs {
		if f.Rule == "what stays" && f.Level == finding.Warn {
			told = append(told, f.Where)
		}
	}
	if got := strings.Join(told, "; "); got != "hearth and column; cabinet and doorway hall" {
		t.Errorf("told of %q", got)
	}
}

// Walls on one line on both sides of a closet's mouth do not cross.
func TestWallsOnOneLine(t *testing.T) {
	p := func(x, y float64) plane.XY { return plane.XY{X: x, Y: y} }
	for _, tt := range []struct {
		a, b, c, d plane.XY
		want       bool
	}{
		{p(0, 0), p(1, 0), p(2, 0), p(3, 0), false},
		{p(0, 0), p(1, 0), p(3, 0), p(2, 0), false},
		{p(0, 0), p(2, 0), p(1, 0), p(3, 0), true},
		{p(0, 0), p(2, 0), p(1, -1), p(1, 1), true},
		{p(0, 0), p(2, 0), p(3, -1), p(3, 1), false},
	} {
		if got := crosses(tt.a, tt.b, tt.c, tt.d); got != tt.want {
			t.Errorf("%v-%v and %v-%v: %v", tt.a, tt.b, tt.c, tt.d, got)
		}
	}
}
