package order

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

const everyone = "everyone"

// policy is policy.txt as read: every map is by room or package.
type policy struct {
	may     map[string]map[string]bool // room: rooms it may import, the long way round too
	never   map[string][]string        // room: rooms it must not come to
	outside map[string][]string        // package: rooms that may use it
	rim     map[string]bool
	uses    map[string]use
}

// use is which names of a package may be used below the rim.
type use struct {
	only  bool // the names are those allowed, else those refused
	names []string
}

func (u use) allows(name string) bool { return slices.Contains(u.names, name) == u.only }

// parse reads the rules; every line it cannot read is in the error.
func parse(text string) (policy, error) {
	p := policy{map[string]map[string]bool{}, map[string][]string{}, map[string][]string{}, map[string]bool{}, map[string]use{}}
	var wrong []string
	for i, line := range strings.Split(text, "\n") {
		line, _, _ = strings.Cut(line, "#")
		if line = strings.TrimSpace(line); line != "" && !p.rule(line) {
			wrong = append(wrong, fmt.Sprintf("line %d: %s", i+1, line))
		}
	}
	wrong = append(wrong, p.close()...)
	if len(wrong) > 0 {
		return p, fmt.Errorf("policy: %s", strings.Join(wrong, "; "))
	}
	return p, nil
}

// rule takes up one line.
func (p policy) rule(line string) bool {
	for _, sign := range []string{" !< ", " < ", " in ", ": "} {
		left, right, ok := strings.Cut(line, sign)
		if !ok {
			continue
		}
		if sign == ": " {
			return p.word(left, strings.Fields(right))
		}
		for _, b := range list(right) {
			for _, a := range list(left) {
				p.pair(a, sign, b)
			}
		}
		return true
	}
	return false
}

func list(s string) []string {
	out := strings.Split(s, ",")
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
	}
	return out
}

func (p policy) pair(a, sign, b string) {
	switch sign {
	case " !< ":
		p.never[b] = append(p.never[b], a)
	case " in ":
		p.outside[a] = append(p.outside[a], b)
	default:
		p.room(b)
		if a != "NONE" {
			p.room(a)
			p.may[b][a] = true
		}
	}
}

func (p policy) room(name string) {
	if p.may[name] == nil {
		p.may[name] = map[string]bool{}
	}
}

// word takes up the lines that begin with a name and a colon.
func (p policy) word(name string, words []string) bool {
	switch {
	case name == "rim":
		for _, w := range words {
			p.rim[w] = true
		}
		return len(words) > 0
	case len(words) > 1 && (words[0] == "only" || words[0] == "never"):
		p.uses[name] = use{words[0] == "only", words[1:]}
		return true
	}
	return false
}

// close gives each room what the rooms it may import may import. It says which
// room may come back to itself, and which rule another one breaks.
func (p policy) close() []string {
	for grown := true; grown; {
		grown = false
		for _, all := range p.may {
			before := len(all)
			for a := range maps.Clone(all) {
				maps.Copy(all, p.may[a])
			}
			grown = grown || len(all) > before
		}
	}
	var wrong []string
	for r, all := range p.may {
		if all[r] {
			wrong = append(wrong, r+" may come back to itself")
		}
		for _, n := range p.never[r] {
			if all[n] {
				wrong = append(wrong, fmt.Sprintf("%s may come to %s, and must not", r, n))
			}
		}
	}
	slices.Sort(wrong)
	return wrong
}

// allows tells whether a room may import a package from outside the tree. The
// rim may also use any package of Go's own library that no line keeps for
// other rooms.
func (p policy) allows(room, pkg string) bool {
	for name := pkg; name != "."; name = parent(name) {
		if who, ok := p.outside[name]; ok {
			return slices.Contains(who, room) || slices.Contains(who, everyone)
		}
	}
	first, _, _ := strings.Cut(pkg, "/")
	return p.rim[room] && !strings.Contains(first, ".")
}

func parent(pkg string) string {
	i := strings.LastIndexByte(pkg, '/')
	if i < 0 {
		return "."
	}
	return pkg[:i]
}
