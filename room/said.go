package room

import (
	"slices"
	"strings"
	"unicode"
)

// DoorwaySaid names a doorway in a sentence: "doorway study", but "hall door" and "closet
// doorway", whose own names say already what they are. It is what edges beside the
// doorway are called by, too.
func DoorwaySaid(name string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !unicode.IsLetter(r) })
	for _, w := range []string{"door", "doors", "doorway", "doorways", "opening", "archway"} {
		if slices.Contains(words, w) {
			return name
		}
	}
	return "doorway " + name
}

// Said is DoorwaySaid of its name.
func (d Doorway) Said() string { return DoorwaySaid(d.Name) }
