package main

import (
	"fmt"

	"strake/examples"
)

type examplesCmd struct {
	Name string `arg:"" optional:"" help:"Print this example, to save it as a file of your own."`
}

func (c *examplesCmd) Run(r rim) error {
	if c.Name != "" {
		data, err := examples.Read(c.Name)
		if err != nil {
			return err
		}
		_, err = r.out.Write(data)
		return err
	}
	for _, e := range examples.List() {
		fmt.Fprintf(r.out, "%-24s %s\n", e.Name, e.Says)
	}
	fmt.Fprintln(r.out, "\nstrake examples NAME prints one; strake plan FILE plans it.")
	return nil
}
