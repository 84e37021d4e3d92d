package row

import (
	"slices"

	"strake/room"
)

// groups are the rooms of a floor that rows go through as one.
type groups struct{ rooms [][]int }

func groupsOf(b room.Built, changes map[string]Change) groups {
	of := make([]int, len(b.Rooms))
	for i := range of {
		of[i] = i
	}
	for _, d := range b.Doorways {
		i, j, ok := sides(b, d)
		if !ok || changes[d.Name] != Through {
			continue
		}
		was, now := of[j], of[i]
		for k := range of {
			if of[k] == was {
				of[k] = now
			}
		}
	}
	var g groups
	for i := range of {
		var one []int
		for k := range of {
			if of[k] == i {
				one = append(one, k)
			}
		}
		if len(one) > 0 {
			g.rooms = append(g.rooms, one)
		}
	}
	return g
}

// sides are the rooms on the two sides of a doorway inside the floor.
func sides(b room.Built, d room.Doorway) (near, far int, ok bool) {
	near, _, ok = b.FindWall(d.Wall)
	far, _, ok2 := b.FindWall(d.OtherWall)
	return near, far, ok && ok2 && d.Beyond == room.BeyondRoom
}

// of is the group with a wall; the first when none has it.
func (g groups) of(b room.Built, w room.Wall) int {
	i, _, ok := b.FindWall(w)
	return max(0, slices.IndexFunc(g.rooms, func(rs []int) bool { return ok && slices.Contains(rs, i) }))
}
