package moisture

import (
	"fmt"

	"strake/ready"
)

// Told tells whether anything was read.
func (j Job) Told() bool {
	c := j.Climate
	return c.Winter.Told() || c.Summer.Told() || c.Now.Told() || len(j.Boards.Reads) > 0 || len(j.Subfloor.Reads) > 0 ||
		len(j.Log) > 0 || len(j.Slab.Humidity) > 0 || len(j.Slab.Emission) > 0
}

// missing asks for what has not been read yet.
func (j Job) missing(f Floor) []ready.Verdict {
	var out []ready.Verdict
	ask := func(where, do string) {
		out = append(out, ready.Verdict{Say: ready.Wait, Rule: missingRule, Where: where, Do: do, Source: srcCount})
	}
	if len(j.Subfloor.Reads) == 0 && !f.Slab {
		ask(subfloor, fmt.Sprintf("Read the subfloor with a moisture meter in %d places and write them under moisture, subfloor.", wanted(f.SqFt, subfloorReadings)))
	}
	if len(j.Boards.Reads) == 0 {
		ask(theBoards, fmt.Sprintf("Read %d boards of several cartons and write them under moisture, boards.", wanted(f.SqFt, boardReadings)))
	}
	return out
}
