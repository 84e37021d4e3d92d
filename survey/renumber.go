package survey

import "strake/room"

// renumber names the marks of a sheet from P1 in the order of the walk, one
// number a place, past names that are taken.
func renumber(s Sheet, n *net) {
	names := map[room.Point]string{}
	next := 0
	for _, i := range s.Walk {
		it := &s.Items[i]
		old := map[string]string{}
		for k, p := range it.Ask.Marks {
			place := p
			place.Name = ""
			for names[place] == "" {
				if next++; !n.known(markName(next)) {
					names[place] = markName(next)
				}
			}
			old[p.Name] = names[place]
			it.Ask.Marks[k].Name = names[place]
		}
		for _, name := range []*string{&it.Ask.Reading.From, &it.Ask.Reading.To, &it.Hook} {
			if to, ok := old[*name]; ok {
				*name = to
			}
		}
	}
}
