package loopback

import (
	"bufio"
	"context"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"strings"
	"sync"
	"testing"
	"time"
)

// start serves on a free port of 127.0.0.1 until the test ends.
func start(t testing.TB, wrap func(http.Handler) http.Handler) string {
	t.Helper()
	l, address, err := Listen("127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	h, err := New(address)
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	done := make(chan error)
	go func() { done <- Serve(ctx, l, Server(wrap(h), log.New(io.Discard, "", 0))) }()
	t.Cleanup(func() {
		stop()
		select {
		case err := <-done:
			if err != nil {
				t.Error(err)
			}
		case <-time.After(2 * patience):
			t.Error("the server does not stop")
		}
	})
	return address.String()
}

func asIs(h http.Handler) http.Handler { return h }

// exchange sends bytes and returns what comes back until the other side closes
// or the time is over.
func exchange(t testing.TB, address, send string, wait time.Duration) string {
	t.Helper()
	c, err := net.Dial("tcp", address)
	if err != nil {
		t.Fatal(err)
	}
	defer c.Close()
	c.SetDeadline(time.Now().Add(wait))
	io.WriteString(c, send) // the other side may close before all is sent
	b, _ := io.ReadAll(io.LimitReader(c, 1<<16))
	return string(b)
}

// good asks one question that has an answer.
func good(t testing.TB, address string) {
	t.Helper()
	got := exchange(t, address, "GET /v1/atmosphere_at_altitude?altitude=0 HTTP/1.1\r\nHost: "+address+"\r\nConnection: close\r\n\r\n", 4*time.Second)
	if !strings.HasPrefix(got, "HTTP/1.1 200 OK") || !strings.HasSuffix(got, "\r\n\r\n101.325") {
		t.Errorf("a good question is answered %q", got)
	}
}

func TestBadClients(t *testing.T) {
	address := start(t, asIs)
	get := "GET /v1/atmosphere_at_altitude?altitude=0"
	for _, c := range []struct{ name, send, want string }{
		{"address of 1 MB", get + strings.Repeat("0", 1<<20) + " HTTP/1.1\r\nHost: " + address + "\r\n\r\n", "HTTP/1.1 431"},
		{"address of 3000 bytes", get + strings.Repeat("0", 3000) + " HTTP/1.1\r\nHost: " + address + "\r\n\r\n", "HTTP/1.1 414"},
		{"headers of 64 KiB", get + " HTTP/1.1\r\nHost: " + address + "\r\nX: " + strings.Repeat("x", 64<<10) + "\r\n\r\n", "HTTP/1.1 431"},
		{"garbage", "\x16\x03\x01\x02\x00\x01\x00\x01\xFC\x03\x03\r\n\r\n", "HTTP/1.1 400"},
		{"NUL in the address", get + "\x00 HTTP/1.1\r\nHost: " + address + "\r\n\r\n", "HTTP/1.1 400"},
		{"no host", get + " HTTP/1.1\r\n\r\n", "HTTP/1.1 400"},
		{"no host in HTTP/1.0", get + " HTTP/1.0\r\n\r\n", "HTTP/1.0 403"},
		{"two hosts", get + " HTTP/1.1\r\nHost: " + address + "\r\nHost: x\r\n\r\n", "HTTP/1.1 400"},
		{"wrong host", get + " HTTP/1.1\r\nHost: brewery.example\r\n\r\n", "HTTP/1.1 403"},
		{"wrong host in the address", "GET http://brewery.example/v1/atmosphere_at_altitude?altitude=0 HTTP/1.1\r\nHost: " + address + "\r\n\r\n", "HTTP/1.1 403"},
		{"a web page", get + " HTTP/1.1\r\nHost: " + address + "\r\nOrigin: https://brewery.example\r\nSec-Fetch-Site: cross-site\r\n\r\n", "HTTP/1.1 403"},
		{"a preflight", "OPTIONS /v1/x HTTP/1.1\r\nHost: " + address + "\r\nOrigin: https://brewery.example\r\nAccess-Control-Request-Method: GET\r\n\r\n",
			"HTTP/1.1 403"},
		{"a body", get + " HTTP/1.1\r\nHost: " + address + "\r\nContent-Length: 5\r\n\r\nhello", "HTTP/1.1 400"},
		{"a body in pieces", get + " HTTP/1.1\r\nHost: " + address + "\r\nTransfer-Encoding: chunked\r\n\r\n5\r\nhello\r\n0\r\n\r\n", "HTTP/1.1 400"},
		{"a proxy", "CONNECT brewery.example:443 HTTP/1.1\r\nHost: brewery.example:443\r\n\r\n", "HTTP/1.1 403"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := exchange(t, address, c.send, 2*patience)
			if got != "" || c.want == "" { // a connection may be cut while 1 MB is on its way
				if !strings.HasPrefix(got, c.want) {
					t.Errorf("answered %.200q, want %s", got, c.want)
				}
			}
			if strings.Contains(got, "Access-Control") {
				t.Errorf("answered with a CORS header: %q", got)
			}
			good(t, address)
		})
	}
}

// Clients that send or read nothing are cut off, and hold nobody up.
func TestSlowClients(t *testing.T) {
	if testing.Short() {
		t.Skip("waits for the server's patience to end")
	}
	address := start(t, asIs)
	var slow []net.Conn
	for i := range 200 {
		c, err := net.Dial("tcp", address)
		if err != nil {
			t.Fatal(err)
		}
		defer c.Close()
		switch i % 3 {
		case 0: // nothing at all
		case 1: // half a line
			io.WriteString(c, "GET /v1/atmosph")
		case 2: // headers without end
			io.WriteString(c, "GET / HTTP/1.1\r\nHost: "+address+"\r\nX: ")
		}
		slow = append(slow, c)
	}
	begin := time.Now()
	good(t, address)
	if d := time.Since(begin); d > 4*time.Second {
		t.Errorf("a good question took %v beside slow ones", d)
	}
	for i, c := range slow {
		c.SetReadDeadline(begin.Add(3 * patience))
		if _, err := io.ReadAll(c); err != nil {
			t.Fatalf("slow client %d is not cut off: %v", i, err)
		}
	}
}

// Many at once, right answers each: for the race detector.
func TestManyAtOnce(t *testing.T) {
	address := start(t, asIs)
	var all sync.WaitGroup
	for i := range 16 {
		all.Go(func() {
			c, err := net.Dial("tcp", address)
			if err != nil {
				t.Error(err)
				return
			}
			defer c.Close()
			c.SetDeadline(time.Now().Add(20 * time.Second))
			r := bufio.NewReader(c)
			for n := range 50 {
				p := 101.325 + float64(i*50+n)
				fmt.Fprintf(c, "GET /v1/pressure_gauge_from_absolute?pressure=%v HTTP/1.1\r\nHost: %s\r\n\r\n", p, address)
				answer, err := http.ReadResponse(r, nil)
				if err != nil {
					t.Error(err)
					return
				}
				b, _ := io.ReadAll(answer.Body)
				if want := fmt.Sprint(i*50 + n); string(b) != want {
					t.Errorf("%v: %s, want %s", p, b, want)
				}
			}
		})
	}
	all.Wait()
}

func TestListen(t *testing.T) {
	for _, address := range []string{"0.0.0.0:0", ":0", "192.0.2.1:0", "brewery.example:0", "[::]:0", "127.0.0.1", "127.0.0.1:99999", ""} {
		if l, _, err := Listen(address); err == nil {
			l.Close()
			t.Errorf("%q is listened on", address)
		}
	}
	l, got, err := Listen("localhost:0")
	if err != nil || !got.Addr().IsLoopback() || got.Port() == 0 {
		t.Fatal(got, err)
	}
	defer l.Close()
	if other, _, err := Listen(got.String()); err == nil {
		other.Close()
		t.Error("a port in use is listened on")
	}
}

// A request that is under way when the server is told to stop is answered.
func TestStop(t *testing.T) {
	l, address, err := Listen("127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	asked, goOn := make(chan struct{}), make(chan struct{})
	s := Server(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		close(asked)
		<-goOn
		io.WriteString(w, "late")
	}), log.New(io.Discard, "", 0))
	ctx, stop := context.WithCancel(context.Background())
	done := make(chan error)
	go func() { done <- Serve(ctx, l, s) }()
	answer := make(chan string)
	go func() {
		answer <- exchange(t, address.String(), "GET / HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n", patience)
	}()
	<-asked
	stop()
	close(goOn)
	if got := <-answer; !strings.HasSuffix(got, "late") {
		t.Errorf("answered %q", got)
	}
	if err := <-done; err != nil {
		t.Error(err)
	}
	if _, err := net.Dial("tcp", address.String()); err == nil {
		t.Error("the port is still open")
	}
}

// The limits that the package promises.
func TestLimits(t *testing.T) {
	s := Server(nil, nil)
	for _, d := range []time.Duration{s.ReadHeaderTimeout, s.ReadTimeout, s.WriteTimeout, s.IdleTimeout} {
		if d != 5*time.Second {
			t.Errorf("a patience of %v", d)
		}
	}
	if s.MaxHeaderBytes != 16384 || MaxAddress != 2048 {
		t.Errorf("%d bytes of headers, %d of address", s.MaxHeaderBytes, MaxAddress)
	}
}
