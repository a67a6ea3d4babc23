package main

import (
	"context"
	"errors"

	"example.org/zymase/examples/bridge/sheet"
)

// writeSheet writes a worked sheet of a batch whose cells ask the bridge.
func writeSheet(_ context.Context, p *program) error {
	address := p.flags.String("addr", defaultAddress, "where the bridge will serve")
	force := p.flags.Bool("force", false, "replace the file if there is one")
	words, err := p.words()
	if err != nil {
		return err
	}
	if len(words) != 1 {
		p.flags.Usage()
		return errors.New("one FILE.fods is needed")
	}
	at, err := servedAddress(*address)
	if err != nil {
		return err
	}
	text, err := sheet.Write(at.String())
	if err != nil {
		return err
	}
	return p.write(words[0], *force, text)
}
