package main

import (
	"bytes"
	"fmt"
	"io"
	"runtime"

	"strake/finding"
	"strake/job"
	"strake/order"
	"strake/packet"
	"strake/plan"
	"strake/sheet/pdf"
)

const packetName = "packet.pdf"

// packetWriter names the packet among the papers of a plan.
var packetWriter = writer{name: packetName}

// noPacket is the paper of whoever wants none.
const noPacket = "none"

// choose compares the ways the rows could lie, beside the search for boards: the two
// take the longest. Nothing comes where there is to be no packet.
func (c *planCmd) choose(j job.Job) <-chan plan.Choices {
	if c.Paper == noPacket {
		return nil
	}
	out := make(chan plan.Choices, 1) // it waits for nobody
	go func() { out <- plan.Choose(j) }()
	return out
}

// packet is packet.pdf, where there is a layout to take to site.
func (c *planCmd) packet(r rim, p plan.Plan, choices <-chan plan.Choices) ([]file, error) {
	if c.Paper == noPacket || len(p.Lay.Runs) == 0 {
		return nil, nil
	}
	var b bytes.Buffer
	if err := writePacket(&b, r, p, choices, paperOf(p.Job, c.Paper)); err != nil {
		return nil, fmt.Errorf("%s: %w", packetName, err)
	}
	return []file{{packetName, b.Bytes()}}, nil
}

// paperOf is what a job is printed on: what was asked for, else what its file says, else
// what goes with its unit.
func paperOf(j job.Job, asked string) packet.Paper {
	for _, name := range []string{asked, j.Paper} {
		if size, ok := packet.Papers[name]; ok {
			return size
		}
	}
	if j.Unit.Imperial() {
		return packet.Letter
	}
	return packet.A4
}

func writePacket(w io.Writer, r rim, p plan.Plan, choices <-chan plan.Choices, size packet.Paper) error {
	in := packet.In{Plan: p, Workers: runtime.GOMAXPROCS(0)}
	if finding.Worst(p.Findings) == finding.Stop {
		in.Goods = p.Goods()
	} else {
		b := bought{rows: p, full: p, boards: p.Purchases(r.ctx, packetEffort(p))}
		b.rest()
		in.Purchases, in.Goods, in.Calendar = b.boards, b.list, b.days
		in.Choices = <-choices
	}
	return pdf.Write(w, p.Job.Name, packet.Sheets(in, size)...)
}

// ampleBoards is from how many boards on a floor is laid over less often for the packet:
// the ranges printed beside its figures are a little wider then.
const ampleBoards, ampleLays = 1000, 2500

// packetEffort is that of strake order, so that both say the same; lays by a plan, which
// take the longest, only for whom they are the answer.
func packetEffort(p plan.Plan) plan.Effort {
	e := plan.Usual
	e.Workers = runtime.GOMAXPROCS(0)
	if p.Job.Order.Filled().Layer != order.Planned {
		e.Planned = 0
	}
	if len(p.Lay.Pieces) > ampleBoards {
		e.Lays = ampleLays
	}
	return e
}
