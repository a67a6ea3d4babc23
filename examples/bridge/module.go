package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"net/netip"

	"example.org/zymase/examples/bridge/basic"
	"example.org/zymase/examples/bridge/catalogue"
	"example.org/zymase/examples/bridge/newfile"
)

// writeModule writes the Basic module that gives cells plain function names.
func writeModule(_ context.Context, p *program) error {
	address := p.flags.String("addr", defaultAddress, "where the bridge will serve")
	name := p.flags.String("o", "", "write to this `FILE` instead of the standard output")
	force := p.flags.Bool("force", false, "replace the file of -o if there is one")
	if err := p.noWords(); err != nil {
		return err
	}
	at, err := servedAddress(*address)
	if err != nil {
		return err
	}
	text, err := basic.Module(at.String(), catalogue.All())
	if err != nil {
		return err
	}
	return p.write(*name, *force, text)
}

// servedAddress reads the address of a bridge that cells are to ask.
func servedAddress(text string) (netip.AddrPort, error) {
	at, err := netip.ParseAddrPort(text)
	if err != nil {
		return at, fmt.Errorf("%.64q is not an address and a port, as in %s", text, defaultAddress)
	}
	if !at.Addr().IsLoopback() || at.Port() == 0 {
		return at, errors.New("the bridge serves on a port of 127.0.0.1 only")
	}
	return at, nil
}

// write writes text to a new file, or to the standard output if it has no name.
func (p *program) write(name string, force bool, text []byte) error {
	if name == "" {
		_, err := p.stdout.Write(text)
		return err
	}
	f, err := newfile.Create(name, force)
	if err != nil {
		return err
	}
	defer f.Abort()
	if _, err := io.Writer(f).Write(text); err != nil {
		return err
	}
	return f.Commit()
}
