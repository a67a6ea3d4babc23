package main

import (
	"context"
	"fmt"
	"log"

	"example.org/zymase/examples/bridge/loopback"
)

// defaultAddress is where cells ask unless told otherwise.
const defaultAddress = "127.0.0.1:8460"

// serve answers cells until it is told to stop.
func serve(ctx context.Context, p *program) error {
	address := p.flags.String("addr", defaultAddress, "loopback address and `PORT`; port 0 is any free one")
	if err := p.noWords(); err != nil {
		return err
	}
	l, at, err := loopback.Listen(*address)
	if err != nil {
		return err
	}
	h, err := loopback.New(at)
	if err != nil {
		l.Close()
		return err
	}
	fmt.Fprintf(p.stderr, "answering cells on this machine; the functions and their formulas: http://%s/ (stop with Ctrl-C)\n", at)
	return loopback.Serve(ctx, l, loopback.Server(h, log.New(p.stderr, "bridge: ", 0)))
}
