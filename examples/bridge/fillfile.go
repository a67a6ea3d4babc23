package main

import (
	"context"
	"fmt"
	"io"

	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/fill"
	"example.org/zymase/examples/bridge/newfile"
)

// fillFile computes a function over the rows of the CSV file at stdin.
func fillFile(ctx context.Context, p *program) error {
	var o fill.Options
	p.flags.BoolVar(&o.Semicolon, "semicolon", false, "cells are parted by ; and not by a comma")
	p.flags.BoolVar(&o.DecimalComma, "decimal-comma", false, "numbers have a decimal comma, in the file and in the results")
	name := p.flags.String("o", "", "write to this `FILE`, whole or not at all, instead of the standard output")
	force := p.flags.Bool("force", false, "replace the file of -o if there is one")
	words, err := p.words()
	if err != nil {
		return err
	}
	r, err := parseRequest(words)
	if err != nil {
		return err
	}
	f, err := catalogue.Find(r.name)
	if err != nil {
		return err
	}
	o.Fixed = map[string]string{}
	for _, in := range r.inputs {
		if i, ok := f.Input(in.name); ok {
			if err := unitless(&f.Inputs[i], in.text); err != nil {
				return err
			}
		}
		o.Fixed[in.name] = in.text
	}
	o.Outputs = r.outputs

	out := p.stdout
	var file *newfile.File
	if *name != "" {
		if file, err = newfile.Create(*name, *force); err != nil {
			return err
		}
		defer file.Abort()
		out = file
	}
	count, err := fillUntil(ctx, out, p.stdin, f, o)
	if err != nil {
		return fmt.Errorf("after %d rows: %w", count.Rows, err)
	}
	if file != nil {
		if err := file.Commit(); err != nil {
			return err
		}
	}
	if count.Failed > 0 {
		return fmt.Errorf("%w in %d of %d rows; their column \"error\" says why", errNoAnswer, count.Failed, count.Rows)
	}
	return nil
}

// fillUntil fills, but gives up when ctx is done even if the input does not
// come to an end.
func fillUntil(ctx context.Context, out io.Writer, in io.Reader, f *catalogue.Function, o fill.Options) (fill.Count, error) {
	type ending struct {
		count fill.Count
		err   error
	}
	done := make(chan ending, 1)
	go func() {
		count, err := fill.Run(out, in, f, o)
		done <- ending{count, err}
	}()
	select {
	case e := <-done:
		return e.count, e.err
	case <-ctx.Done():
		return fill.Count{}, context.Cause(ctx)
	}
}
