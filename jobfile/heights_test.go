package jobfile_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/ready"
	"strake/room"
	"strake/tape"
	"strake/trim"
)

// high is a job with every key of heights.
const high = `strake: 1
unit: in
rooms:
  den: {corners: [A, B, C, D]}
  nook: {corners: [E, F, G, H]}
readings: {A-B: 144, B-C: 120, C-D: 144, D-A: 120, A-C: 187-7/16, E-F: 40, F-G: 30, G-H: 40, H-E: 30, E-G: 50}
doorways:
  hall door: {wall: A-B, from: A, at: 20, width: 30, thickness: 4-1/2, undercut: yes, beyond: transition}
  nook door: {wall: C-D, from: D, at: 6, width: 28, thickness: 4-1/2, beyond: {wall: E-F, from: E, at: 6}}
stays:
  hearth: {kind: hearth, wall: B-C, from: B, at: 40, width: 40, depth: 16}
  vent: {kind: register, wall: D-A, from: D, at: 40, off: 6, width: 10, depth: 4, cover: 1}
boards: {face: 5, thickness: 3/4, side_tongue: 1/4, lengths: {one: 48}}
subfloor: {on: wood, built: 1990, layers: [{what: carpet, thickness: 1/2}, {what: plywood, thickness: 5/8}]}
heights:
  measured_from: now
  panel: 1/4
  sheet: 1/32
  stocked: {boards: [5/8, 3/4], panels: [1/4, 1/2]}
  openings:
    hall door:
      covering: tile
      height: -1/8
      shim: 1/16
      leaf: {of: hollow-core, clear: 3/4, opens_beyond: yes, strip: 1/8, cut_most: 1/2, fire_rated: yes, exterior: yes}
      jambs: {of: wood, fire_rated: yes, exterior: yes}
    nook door:
      track: {of: bifold, clear: 3/4, guide: 3/8, lifts: 1/2}
    hearth:
      covering: stone
      layers: [{what: ceramic tile, thickness: 3/8}, {what: backer, thickness: 1/2}]
  stairs:
    loft stair: {head: yes, risers: [7-1/2, 7-9/16], treads_raised: 5/8, other_end_raised: 3/4, shim: 1/8}
  appliances:
    washer: {opening: 36, height: 34, feet: 1, boards: front, stands_on: 1/2}
  covers: [{wall: C-D, thickness: 7/8}]
  limits:
    risers_apart_most: {is: 1/4, by: code, source: by-law 9}
    leaf_clear: [{is: 3/8, by: maker}, {is: 1/2, by: maker, source: the leaflet}]
`

func TestHeights(t *testing.T) {
	j, _, err := jobfile.ReadJob("high.yaml", []byte(high))
	if err != nil {
		t.Fatal(err)
	}
	want := trim.Job{
		Told: true, From: trim.Now, Panel: in / 4, Sheet: in / 32, SheetTold: true,
		Stocked: trim.Stocked{Boards: []tape.Length{5 * in / 8, 3 * in / 4}, Panels: []tape.Length{in / 4, in / 2}},
		Openings: []trim.Opening{
			{Name: "hall door", Covering: "tile", Known: true, Height: -in / 8, Shim: in / 16,
				Leaf:  trim.Leaf{Told: true, Of: "hollow-core", Clear: 3 * in / 4, Beyond: true, Strip: in / 8, CutMost: in / 2, Rated: true, Exterior: true},
				Jambs: trim.Jambs{Told: true, Of: "wood", Rated: true, Exterior: true}},
			{Name: "nook door", Track: trim.Track{Told: true, Of: "bifold", Clear: 3 * in / 4, Guide: 3 * in / 8, Lifts: in / 2}},
			{Name: "hearth", Covering: "stone", Known: true, Layers: []trim.Layer{{What: "ceramic tile", Thickness: 3 * in / 8}, {What: "backer", Thickness: in / 2}}},
		},
		Stairs:     []trim.Stair{{Name: "loft stair", Head: true, Risers: []tape.Length{15 * in / 2, 121 * in / 16}, Treads: 5 * in / 8, Other: 3 * in / 4, Shim: in / 8}},
		Appliances: []trim.Appliance{{Name: "washer", Opening: 36 * in, Height: 34 * in, Feet: in, Boards: trim.Front, StandsOn: in / 2}},
		Covers:     []trim.Cover{{Wall: room.Wall{"C", "D"}, Thickness: 7 * in / 8}},
		Limits: trim.Limits{
			trim.RiserApart: {{Is: float64(in / 4), By: ready.Code, Source: "by-law 9"}},
			trim.LeafClear:  {{Is: float64(3 * in / 8), By: ready.Maker, Source: "job file"}, {Is: float64(in / 2), By: ready.Maker, Source: "the leaflet"}},
		},
	}
	if !reflect.DeepEqual(j.Trim, want) {
		t.Errorf("read\n%+v\nwant\n%+v", j.Trim, want)
	}
}

// A metric job reads bare numbers in its unit, also in limits.
func TestHeightsInMillimetres(t *testing.T) {
	text := strings.NewReplacer("unit: in", "unit: mm", "A-B: 144, B-C: 120, C-D: 144, D-A: 120, A-C: 187-7/16, E-F: 40, F-G: 30, G-H: 40, H-E: 30, E-G: 50", "A-B: 3600, B-C: 3000, C-D: 3600, D-A: 3000, A-C: 4686, E-F: 800, F-G: 600, G-H: 800, H-E: 600, E-G: 1000").Replace(high[:strings.Index(high, "doorways:")]) +
		"boards: {face: 130, thickness: 20, lengths: {one: 1200}}\nheights: {sheet: 0.8, limits: {riser_most: {is: 190, by: code}}}\n"
	j, _, err := jobfile.ReadJob("mm.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	if j.Trim.Sheet != 8*tape.Millimetre/10 || j.Trim.Limits[trim.RiserMost][0].Is != float64(190*tape.Millimetre) {
		t.Errorf("%+v", j.Trim)
	}
}

func TestMistakesInHeights(t *testing.T) {
	for _, tt := range []struct{ old, new, at, what, accept string }{
		{"measured_from: now", "measured_from: carpet", "carpet", "“carpet” is not known", "one of subfloor, now"},
		{"{what: carpet, thickness: 1/2}", "{what: carpet}", "now", "how thick it is is not told", "measured from the subfloor"},
		{"panel: 1/4\n", "panel: 12 in\n", "12 in", "out of range", "from"},
		{"boards: [5/8, 3/4]", "boards: [thick]", "thick", "", "such as"},
		{"    hall door:\n      cov", "    hal door:\n      cov", "hal door:", "“hal door” is no doorway, and nothing that stays", "did you mean “hall door”"},
		{"covering: tile", "covering: tyle", "tyle", "“tyle” is not known", "tile"},
		{"      track:", "      height: 1/2\n      track:", "1/2", "another room of this floor", "leaf, jambs or track"},
		{"      covering: stone\n", "      covering: stone\n      jambs: {of: masonry}\n", "{of: masonry}", "no doorway, so it has no jambs", "hall door"},
		{"    hearth:\n", "    vent: {height: 1/4}\n    hearth:\n", "1/4}", "its height meets nothing", "flush or by a transition"},
		{"beyond: transition}", "beyond: stair}", "-1/8", "beyond this doorway lies a stair", "under heights, stairs"},
		{"boards: front, stands_on", "boards: under, stands_on", "1/2}", "so it stands on them", "boards: front"},
		{"      covering: stone\n", "      covering: stone\n      height: 1\n", "[{what: ceramic", "say the same thing twice", "one of the two"},
		{"      track:", "      leaf: {of: glass, clear: 1}\n      track:", "{of: bifold", "a leaf or a track", "one of the two"},
		{"of: hollow-core", "of: paper", "paper", "“paper” is not known", "hollow-core"},
		{"clear: 3/4, opens", "opens", "{of: hollow-core", "“clear” is missing", "a length"},
		{"jambs: {of: wood, ", "jambs: {", "{fire_rated", "“of” is missing", "wood, steel, masonry"},
		{"of: bifold", "of: folding", "folding", "is not known", "bifold, sliding"},
		{"{what: backer, thickness: 1/2}", "{what: backer}", "{what: backer}", "“thickness” is missing", "a length"},
		{"risers: [7-1/2, 7-9/16]", "risers: [7-1/2]", "[7-1/2]", "two risers at least", "all risers"},
		{"risers: [7-1/2, 7-9/16]", "risers: [7-1/2, 75]", "75", "out of range", "from"},
		{"risers: [7-1/2, 7-9/16], ", "", "{head: yes", "“risers” is missing", "a list of lengths"},
		{"boards: front", "boards: around", "around", "is not known", "under, front"},
		{"opening: 36, ", "", "{height: 34", "“opening” is missing", "a length"},
		{"covers: [{wall: C-D", "covers: [{wall: C-A", "C-A", "not neighbours", "C-D"},
		{"covers: [{", "covers: [{wall: D-C, thickness: 1}, {", "C-D", "has a cover already", "each wall once"},
		{"{is: 1/4, by: code", "{is: 1/4, by: me", "me,", "is not known", "maker, code"},
		{"{is: 1/4, by: code", "{is: steep, by: code", "steep", "", "such as"},
		{"    risers_apart_most:", "    risers_most:", "risers_most", "is not a key here", "risers_apart_most"},
	} {
		text := strings.Replace(high, tt.old, tt.new, 1)
		if text == high {
			t.Fatalf("%q is not in the job", tt.old)
		}
		_, _, err := jobfile.ReadJob("job.yaml", []byte(text))
		var errs jobfile.Errors
		if !errors.As(err, &errs) {
			t.Errorf("%q: %v", tt.new, err)
			continue
		}
		e := errs[0]
		if tt.at != "" && !strings.HasPrefix(rest(text, e.Line, e.Column), tt.at) {
			t.Errorf("%q: the caret is not at %q\n%v", tt.new, tt.at, e)
		}
		if len(errs) != 1 || !strings.Contains(e.What, tt.what) || !strings.Contains(e.Accept, tt.accept) || e.Accept == "" {
			t.Errorf("%q: want %q and to accept %q\n%v", tt.new, tt.what, tt.accept, errs)
		}
	}
}
