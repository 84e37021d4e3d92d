package packet

import (
	"reflect"
	"testing"
)

// The pages are the same whatever the number of those who make them: no part reads
// what another one left on its desk.
func TestWorkersMakeTheSamePages(t *testing.T) {
	for name, data := range shipped(t) {
		in := made(t, name+".yaml", data)
		in.Workers = 0
		want := Sheets(in, A4)
		for _, n := range []int{2, 7} {
			in.Workers = n
			if got := Sheets(in, A4); !reflect.DeepEqual(got, want) {
				t.Errorf("%s: %d workers make other pages", name, n)
			}
		}
		if testing.Short() {
			break
		}
	}
}
