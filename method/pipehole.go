package method

import (
	"fmt"
	"strings"
)

func pipeHole(f facts) Card {
	return Card{Name: "hole-and-plug", Title: "Hole and plug at a pipe",
		Why: "Wood swells and the pipe does not: the hole is larger than the pipe by the gap all round. A slot lets the board in; its plug closes the slot again. " + f.pipeWords(),
		Steps: []string{
			"First find the shut-off of this pipe and try it. Look what is inside the wall behind: detector, drawing, the other side.",
			"Lay the board in line with its row against the pipe: square both sides of the pipe over to it. Then at its end joint, the same across.",
			"The middle of the marks is the hole's centre. Hole: the pipe plus twice the gap of " + f.say.Rip(f.lim.GapLeast.Value) + ". Drill from the face, a scrap below.",
			"Saw from the hole to the edge at the wall, or to the board's end where that is nearer; the cuts spread a little, so that the plug slides in like a wedge. Mark its upper side.",
			"Try the board: it goes round the pipe without touching it.",
			"Fasten the board. Glue on the plug's two cheeks, none at the pipe. Slide it in, faces level, a weight on it: ________ hours by the label.",
			"Gap free all round? The collar (escutcheon) covers it: fixed to the pipe or loose, never nailed to the floor.",
		},
		Caution: f.cautions("safety glasses, hearing protection, dust mask; knee pads",
			[]string{"What has to be loosened (heating, gas, water) is loosened by a licensed trade where local code wants one. A hot pipe is shut off and cold first.",
				"Gap round a hot flue or a gas pipe: local code's and the maker's, not this card's."}, holding),
		Sources: f.sources(false, "gap: "+f.lim.GapLeast.Source, srcHowTo),
		Figures: []Figure{f.holePlan(), f.plugPlan(), f.collarFigure()},
	}
}

// pipeWords are the holes of the job.
func (f facts) pipeWords() string {
	var out []string
	for _, p := range f.pipes {
		if p.wide <= 0 {
			out = append(out, p.name+": measure it")
			continue
		}
		s := fmt.Sprintf("%s, %s wide: hole %s, collar at least %s", p.name, f.say.Of(p.wide), f.say.Of(p.hole), f.say.Of(p.hole+2*f.lim.Lap.Value))
		if p.told {
			s = fmt.Sprintf("%s, %s wide: hole %s, its collar %s", p.name, f.say.Of(p.wide), f.say.Of(p.hole), f.say.Of(p.collar))
		}
		out = append(out, s)
	}
	const most = 3
	if len(out) > most {
		out = append(out[:most], fmt.Sprintf("and %d more on the plan", len(out)-most))
	}
	return "Here: " + strings.Join(out, "; ") + "."
}
