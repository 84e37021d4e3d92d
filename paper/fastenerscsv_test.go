package paper

import (
	"bytes"
	"encoding/csv"
	"strconv"
	"testing"

	"strake/fasten"
)

// The columns of fasteners.csv sum to what the floor takes.
func TestFastenersSum(t *testing.T) {
	for name, p := range plans() {
		var b bytes.Buffer
		if err := FastenersCSV(&b, p); err != nil {
			t.Fatal(err)
		}
		lines, err := csv.NewReader(&b).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		sum := make([]int, 5)
		for _, l := range lines[1:] {
			for i, s := range l[1:] {
				n, err := strconv.Atoi(s)
				if err != nil {
					t.Fatal(err)
				}
				sum[i] += n
			}
		}
		_, u, ok := p.Nailing().Use()
		want := fasten.Sum(fasten.Places(p.Lay, u))
		if !ok {
			want = fasten.Total{}
		}
		if got := (fasten.Total{Pieces: sum[0], Nailer: sum[1], Hand: sum[2], Face: sum[3], Pilots: sum[4]}); got != want {
			t.Errorf("%s: %+v, want %+v", name, got, want)
		}
	}
}
