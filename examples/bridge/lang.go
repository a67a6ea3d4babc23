package main

import (
	"context"
	"errors"
	"fmt"

	"example.org/zymase/examples/bridge/lang"
)

// writeLanguage returns the command that writes the library for another language.
func writeLanguage(write func(dir string) error) func(context.Context, *program) error {
	return func(_ context.Context, p *program) error {
		dir := p.flags.String("o", "", "write into this `DIR`, which is made if need be and may hold nothing else")
		if err := p.noWords(); err != nil {
			return err
		}
		if *dir == "" {
			p.flags.Usage()
			return errors.New("-o DIR is needed")
		}
		if err := write(*dir); err != nil {
			return err
		}
		_, err := fmt.Fprintln(p.stdout, "written to", *dir)
		return err
	}
}

var (
	writeJavaScript = writeLanguage(lang.JavaScript)
	writeC          = writeLanguage(lang.C)
	writePython     = writeLanguage(lang.Python)
)
