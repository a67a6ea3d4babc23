package loopback

import (
	"bufio"
	"fmt"
	"io"
	"net"
	"net/http"
	"strings"
	"sync"
	"testing"
	"time"
)

// BenchmarkServer compares, in one run with 64 connections each: this server,
// and a handler that answers a constant. The two take turns of 6,400 requests.
// "of-constant" is the rate of this server as a share of the other's.
func BenchmarkServer(b *testing.B) {
	const turn = 6_400
	answering := start(b, asIs)
	constant := start(b, func(http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			w.Header()["Content-Type"] = plainText
			io.WriteString(w, "101.325")
		})
	})
	one, other := connect(b, answering), connect(b, constant)
	var own, bare time.Duration
	for b.Loop() {
		own += ask64(b, one, turn)
		bare += ask64(b, other, turn)
	}
	rate := func(d time.Duration) float64 { return float64(b.N) * turn / d.Seconds() }
	b.ReportMetric(rate(own), "requests/s")
	b.ReportMetric(rate(bare), "requests/s-constant")
	b.ReportMetric(bare.Seconds()/own.Seconds(), "of-constant")
}

type client struct {
	conn net.Conn
	in   *bufio.Reader
	send [16][]byte // questions that differ
}

func connect(b *testing.B, address string) []*client {
	var clients []*client
	for range 64 {
		c, err := net.Dial("tcp", address)
		if err != nil {
			b.Fatal(err)
		}
		b.Cleanup(func() { c.Close() })
		one := &client{conn: c, in: bufio.NewReader(c)}
		for i := range one.send {
			one.send[i] = fmt.Appendf(nil, "GET /v1/pressure_gauge_from_absolute?pressure=%d.25&altitude=%d HTTP/1.1\r\nHost: %s\r\n\r\n", 150+i, 40*i, address)
		}
		clients = append(clients, one)
	}
	return clients
}

// ask64 sends n questions over the connections, each waiting for its answer.
func ask64(b *testing.B, clients []*client, n int) time.Duration {
	begin := time.Now()
	var all sync.WaitGroup
	for _, c := range clients {
		all.Go(func() {
			for i := range n / len(clients) {
				if _, err := c.conn.Write(c.send[i%len(c.send)]); err != nil {
					b.Error(err)
					return
				}
				if err := c.read(); err != nil {
					b.Error(err)
					return
				}
			}
		})
	}
	all.Wait()
	return time.Since(begin)
}

// read reads one answer, whose length its header tells.
func (c *client) read() error {
	length := -1
	for {
		line, err := c.in.ReadSlice('\n')
		if err != nil {
			return err
		}
		if rest, ok := strings.CutPrefix(string(line), "Content-Length: "); ok {
			fmt.Sscan(rest, &length)
		}
		if len(line) == 2 {
			break
		}
	}
	if length <= 0 {
		return fmt.Errorf("an answer of length %d", length)
	}
	_, err := c.in.Discard(length)
	return err
}

// discard is a ResponseWriter that keeps nothing.
type discard struct{ header http.Header }

func (d *discard) Header() http.Header         { return d.header }
func (d *discard) Write(b []byte) (int, error) { return len(b), nil }
func (d *discard) WriteHeader(int)             {}

// BenchmarkHandler is an answer without the network.
func BenchmarkHandler(b *testing.B) {
	h := handler(b)
	r, err := http.NewRequest("GET", "http://"+host+"/v1/pressure_gauge_from_absolute?pressure=201.25&altitude=640", nil)
	if err != nil {
		b.Fatal(err)
	}
	w := &discard{http.Header{}}
	b.ReportAllocs()
	for b.Loop() {
		h.ServeHTTP(w, r)
	}
}
