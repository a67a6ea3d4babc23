//go:build !kettle

package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"log"
	"net/http"
	"net/netip"
	"os"
	"os/signal"

	"example.org/zymase/examples/bridge/loopback"
	"example.org/zymase/examples/seltzer/plan"
)

// serveKettle serves the page of -page to this machine alone until it is interrupted. The page
// is made once; nothing that is typed comes back.
func serveKettle(address string, own bool, req plan.Request, stderr io.Writer) error {
	l, at, err := loopback.Listen(address)
	if err != nil {
		return fmt.Errorf("-serve: %w", err)
	}
	var page bytes.Buffer
	if err := makeKettle(&page, own, req); err != nil {
		l.Close()
		return &outputError{err}
	}
	h, err := kettleHandler(at, page.Bytes())
	if err != nil {
		l.Close()
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	fmt.Fprintf(stderr, "the page is at http://%s/ on this machine (stop with Ctrl-C)\n", at)
	return loopback.Serve(ctx, l, loopback.Server(h, log.New(stderr, "seltzer: ", 0)))
}

// kettleHandler answers with the page, under the same care as the bridge: to this machine's own
// names alone, to no other page, and to nothing but a read of the one address.
func kettleHandler(at netip.AddrPort, page []byte) (http.Handler, error) {
	guard, err := loopback.NewGuard(at)
	if err != nil {
		return nil, err
	}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if !guard.Admits(w, r) {
			return
		}
		if r.URL.Path != "/" {
			http.Error(w, "there is one page here, at /", http.StatusNotFound)
			return
		}
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		w.Header().Set("Referrer-Policy", "no-referrer")
		w.Header().Set("X-Frame-Options", "DENY")
		w.Header().Set("Cross-Origin-Resource-Policy", "same-origin")
		if r.Method == http.MethodGet {
			w.Write(page) // its policy stands in it
		}
	}), nil
}
