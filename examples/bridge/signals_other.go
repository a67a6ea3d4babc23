//go:build !unix

package main

import (
	"os"
	"syscall"
)

func signals() []os.Signal { return []os.Signal{os.Interrupt, syscall.SIGTERM} }
