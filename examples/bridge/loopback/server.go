package loopback

import (
	"context"
	"errors"
	"log"
	"net"
	"net/http"
	"net/netip"
	"time"
)

const (
	patience   = 5 * time.Second
	maxHeaders = 16 << 10
)

// Listen opens a port of a loopback address: "127.0.0.1:8460",
// "localhost:8460", "[::1]:0". Another address is an error; port 0 is any free
// one.
func Listen(address string) (net.Listener, netip.AddrPort, error) {
	host, port, err := net.SplitHostPort(address)
	if err != nil {
		return nil, netip.AddrPort{}, err
	}
	if host == "localhost" {
		host = "127.0.0.1"
	}
	ip, err := netip.ParseAddr(host)
	if err != nil || !ip.IsLoopback() {
		return nil, netip.AddrPort{}, errors.New(address + " is not an address of this machine alone; use 127.0.0.1:PORT")
	}
	l, err := net.Listen("tcp", net.JoinHostPort(host, port))
	if err != nil {
		return nil, netip.AddrPort{}, err
	}
	return l, l.Addr().(*net.TCPAddr).AddrPort(), nil
}

// Server returns a server of h with the limits of the package. Its errors go to
// log.
func Server(h http.Handler, log *log.Logger) *http.Server {
	return &http.Server{
		Handler: h, ErrorLog: log,
		ReadHeaderTimeout: patience, ReadTimeout: patience, WriteTimeout: patience, IdleTimeout: patience,
		MaxHeaderBytes:               maxHeaders,
		DisableGeneralOptionsHandler: true, // OPTIONS * is looked at like all else
	}
}

// Serve answers on l until ctx is done, then lets the answers that are under
// way finish, for five seconds at most. A stop that was asked for is no error.
func Serve(ctx context.Context, l net.Listener, s *http.Server) error {
	failed := make(chan error, 1)
	go func() { failed <- s.Serve(l) }()
	select {
	case err := <-failed:
		return err
	case <-ctx.Done():
	}
	wait, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	if err := s.Shutdown(wait); err != nil {
		return s.Close() // someone is slower than that: cut off
	}
	return nil
}
