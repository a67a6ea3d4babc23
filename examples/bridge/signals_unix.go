//go:build unix

package main

import (
	"os"
	"os/signal"
	"syscall"
)

// signals are those that end the program in order, with no file left half
// written. A closed terminal is one, unless the program was told to outlive it.
// A pipe without a reader is none, but an error of writing: a server goes on.
func signals() []os.Signal {
	signal.Ignore(syscall.SIGPIPE)
	if signal.Ignored(syscall.SIGHUP) {
		return []os.Signal{os.Interrupt, syscall.SIGTERM}
	}
	return []os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP}
}
