package paper

import (
	"io"
	"strings"

	"strake/plan"
)

// Decide is said above the cautions.
const Decide = "What applies where you live is decided by local code and a licensed professional, then by the makers' instructions; this is a reminder and no more. What has to be cleared before the work is begun: strake ready."

// Cautions writes cautions.txt: what to mind with each task of the job.
func Cautions(w io.Writer, p plan.Plan) error {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "what to mind, task by task", false))
	wrap(&b, Decide, "", "")
	task := ""
	for _, c := range p.Cautions() {
		if c.Task != task {
			task = c.Task
			b.WriteString("\n" + strings.ToUpper(task[:1]) + task[1:] + "\n")
		}
		wrap(&b, c.Do, "- ", "  ")
		wrap(&b, "After: "+c.Source, "  ", "  ")
	}
	_, err := io.WriteString(w, b.String())
	return err
}
