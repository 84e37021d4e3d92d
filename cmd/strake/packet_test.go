package main

import (
	"testing"

	"strake/job"
	"strake/packet"
	"strake/tape"
)

// What is asked for goes before what the job says, that before what its unit suggests.
func TestPaperOf(t *testing.T) {
	for _, c := range []struct {
		unit       tape.Unit
		job, asked string
		want       packet.Paper
	}{
		{tape.UnitFoot, "", "", packet.Letter},
		{tape.UnitInch, "", "", packet.Letter},
		{tape.UnitMetre, "", "", packet.A4},
		{tape.UnitFoot, "a4", "", packet.A4},
		{tape.UnitMillimetre, "letter", "", packet.Letter},
		{tape.UnitFoot, "a4", "letter", packet.Letter},
		{tape.UnitMetre, "letter", "a4", packet.A4},
	} {
		if got := paperOf(job.Job{Unit: c.unit, Paper: c.job}, c.asked); got != c.want {
			t.Errorf("%v, the job says %q, asked for %q: %s, want %s", c.unit, c.job, c.asked, got.Name, c.want.Name)
		}
	}
	for _, name := range job.Papers {
		if _, ok := packet.Papers[name]; !ok {
			t.Errorf("a job may say %s, and there is no such paper", name)
		}
	}
}
