package room

import "testing"

// No name says doorway twice, and each says it once.
func TestDoorwaySaid(t *testing.T) {
	for name, want := range map[string]string{
		"hall": "doorway hall", "hall door": "hall door", "closet doorway": "closet doorway", "Door 7": "Door 7", "stair-door": "stair-door",
		"wide opening": "wide opening", "outdoors": "doorway outdoors", "adoration": "doorway adoration", "1": "doorway 1",
	} {
		if got := (Doorway{Name: name}).Said(); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
}
