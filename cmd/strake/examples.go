package main

import (
	"fmt"

	"strake/examples"
)

type examplesCmd struct {
	Name string `arg:"" optional:"" help:"Print this example; .yaml may be left out (default: list all)."`
}

// Help says how to keep one.
func (examplesCmd) Help() string {
	return `Nothing is written to disk. To change an example, save it first:

    strake examples ferry-parlour > parlour.yaml
    strake plan parlour.yaml`
}

func (c *examplesCmd) Run(r rim) error {
	if c.Name != "" {
		data, err := examples.Read(c.Name)
		if err != nil {
			return fmt.Errorf("no example is called %q; strake examples lists them", c.Name)
		}
		r.tell(func(a *answer) { a.Text = string(data) })
		_, err = r.out.Write(data)
		return err
	}
	for _, e := range examples.List() {
		r.tell(func(a *answer) { a.Examples = append(a.Examples, jsonExample{e.Name, e.Says}) })
		fmt.Fprintf(r.out, "%-24s %s\n", e.Name, e.Says)
	}
	fmt.Fprintln(r.out, "\nstrake examples NAME prints one; strake plan FILE plans it.")
	return nil
}
