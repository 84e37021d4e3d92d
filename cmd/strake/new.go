package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"

	"strake/jobfile"
)

type newCmd struct {
	File string `arg:"" default:"floor.yaml" help:"Where to write it; an existing file is left alone (default: floor.yaml)."`
}

func (c *newCmd) Run(r rim) error {
	f, err := os.OpenFile(r.path(c.File), os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if errors.Is(err, fs.ErrExist) {
		return fmt.Errorf("%s is there already and was left as it is; name another file", c.File)
	}
	if err != nil {
		return err
	}
	_, err = f.Write(jobfile.Starter())
	if err = errors.Join(err, f.Close()); err != nil {
		return err
	}
	fmt.Fprintf(r.out, "%s is a small job that works as it is. Fill in your own readings, then: strake check %s, strake plan %s\n", c.File, c.File, c.File)
	return nil
}
