package jobfile

import "strake/room"

// mark checks that a name is that of a corner or point, or of a doorway beyond
// which an old floor's rows end with a row edge that the job gives.
func (n *names) mark(path, s string) {
	if s == "" || n.known(s) || n.broken {
		return
	}
	for _, w := range n.j.Sketch.Doorways {
		if w.Name == s {
			n.oldEdge(path, w)
			return
		}
	}
	n.place(path, s)
}

func (n *names) oldEdge(path string, w room.Doorway) {
	old := at("doorways", w.Name, "old_floor")
	switch {
	case w.Old.RowWidth == 0:
		n.d.failPath(path, "the job tells of no old floor beyond “"+w.Name+"” whose row edge could be met", w.Name, "a corner or point, or old_floor with row_edge_at under this doorway")
	case w.Old.Along:
		n.d.failPath(path, "the old floor's rows lie along “"+w.Name+"”, so none of its row edges runs on", w.Name, "a corner or point")
	case !n.d.given(at(old, "row_edge_at")):
		n.d.failPath(path, "nothing says where a row edge of the old floor beyond “"+w.Name+"” comes to the wall", w.Name, "row_edge_at under its old_floor")
	}
}
