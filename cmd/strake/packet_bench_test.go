package main

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"

	"strake/examples"
	"strake/job"
	"strake/jobfile"
	"strake/plan"
	"strake/rack"
)

// BenchmarkPacket is what the packet adds to strake plan, beside the plan and its other
// papers without it, in the same run: both are timed in turn, so that a busy machine
// slows both. Files are made but not written.
func BenchmarkPacket(b *testing.B) {
	for _, x := range []struct {
		name string
		job  []byte
	}{
		{"ferry-parlour", example(b, "ferry-parlour.yaml")},
		{"hall of 60 by 40 ft", wideHall},
		{"twelve rooms", twelveRooms()},
	} {
		b.Run(x.name, func(b *testing.B) {
			j, _, err := jobfile.ReadJob(x.name, x.job)
			if err != nil {
				b.Fatal(err)
			}
			var without, with time.Duration
			for b.Loop() {
				without += timeOf(b, j, &planCmd{Paper: noPacket})
				with += timeOf(b, j, &planCmd{Paper: "letter"})
			}
			ms := func(d time.Duration) float64 { return float64(d.Microseconds()) / 1000 / float64(b.N) }
			b.ReportMetric(ms(without), "ms/plan")
			b.ReportMetric(ms(with-without), "ms/packet")
			b.ReportMetric(float64(with-without)/float64(without), "packet/plan")
		})
	}
}

// timeOf is how long the files of a plan take.
func timeOf(b *testing.B, j job.Job, c *planCmd) time.Duration {
	b.Helper()
	r := rim{ctx: context.Background()}
	start := time.Now()
	choices := c.choose(j)
	files, err := c.files(r, plan.MakeTold(r.ctx, j, rack.Polishing, nil), choices)
	took := time.Since(start)
	if err != nil {
		b.Fatal(err)
	}
	if has := files[0].name == packetName; has != (c.Paper != noPacket) {
		b.Fatalf("paper %s: files %v", c.Paper, names(files))
	}
	return took
}

func example(b *testing.B, name string) []byte {
	b.Helper()
	data, err := examples.Read(name)
	if err != nil {
		b.Fatal(err)
	}
	return data
}

// The jobs are invented for measuring only.
var wideHall = []byte(`strake: 1
name: wide hall
unit: ft
rooms: {hall: {corners: [A, B, C, D]}}
readings: {A-B: 60', B-C: 40', C-D: 60', D-A: 40', A-C: 72' 1-5/16", B-D: 72' 1-5/16"}
boards: {face: 3-1/4", thickness: 3/4", lengths: {mix: {least: 12", most: 84", mean: 42"}}, carton: {area: 20 sq ft}}
base: 1/2"
shoe: 3/4"
`)

// twelveRooms are a corridor of 120 ft with eleven rooms along it, each behind a doorway.
func twelveRooms() []byte {
	var rooms, readings, doors strings.Builder
	quad := func(a, b, c, d string, long, wide, across string) string {
		return fmt.Sprintf("%s-%s: %s, %s-%s: %s, %s-%s: %s, %s-%s: %s, %s-%s: %s, %s-%s: %s", a, b, long, b, c, wide, c, d, long, d, a, wide, a, c, across, b, d, across)
	}
	readings.WriteString(quad("A", "B", "C", "D", "1440", "60", "1441-4/16"))
	for i := range 11 {
		e, f, g, h := fmt.Sprint("E", i), fmt.Sprint("F", i), fmt.Sprint("G", i), fmt.Sprint("H", i)
		fmt.Fprintf(&rooms, ", room %d: {corners: [%s, %s, %s, %s], walk: counter-clockwise}", i+1, e, f, g, h)
		readings.WriteString(", " + quad(e, f, g, h, "125", "140", "187-11/16"))
		fmt.Fprintf(&doors, "  door %d: {wall: C-D, from: D, at: %d, width: 30, thickness: 5, beyond: {wall: %s-%s, from: %s, at: 40}}\n", i+1, 50+130*i, e, f, e)
	}
	return []byte(fmt.Sprintf(`strake: 1
name: long hall
unit: in
rooms: {hall: {corners: [A, B, C, D], walk: counter-clockwise}%s}
readings: {%s}
doorways:
%sboards: {face: 5, thickness: 3/4, lengths: {mix: {least: 12, most: 84, mean: 42}}, carton: {area: 20 sq ft}}
base: 1/2
shoe: 3/4
`, rooms.String(), readings.String(), doors.String()))
}
