package loopback

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"math/rand/v2"
	"net"
	"net/http"
	"os"
	"strconv"
	"strings"
	"time"
)

// kinds of clients. A visit is one connection; it reports whether it came to
// its end before the time was over. A patient kind may take all the time.
var kinds = []struct {
	name    string
	patient bool
	visit   func(s *soak, r *rand.Rand) bool
}{
	{"good, 10 questions on one connection", false, visitGood},
	{"pipelined, 20 questions at once", false, visitPipelined},
	{"slow, a byte at a time, yet in time", false, visitByByte},
	{"malformed", false, visitMalformed},
	{"wrong method", false, visitWrongMethod},
	{"oversized", false, visitOversized},
	{"noise", false, visitNoise},
	{"cut in the middle of a request", false, visitCut},
	{"gone before the answer", false, visitGone},
	{"never ending, a byte now and then", true, visitNeverEnding},
	{"never reading", true, visitNeverReading},
}

// visitor is a connection whose far end may close at any time.
type visitor struct {
	net.Conn
	*bufio.Reader
}

// dial connects. A client that closes first leaves no port waiting behind,
// since a soak makes more connections than there are ports.
func (s *soak) dial() *visitor {
	conn, err := net.Dial("tcp", s.address)
	if err != nil {
		s.Error(err)
		return nil
	}
	conn.(*net.TCPConn).SetLinger(0)
	conn.SetDeadline(time.Now().Add(3 * patience))
	return &visitor{conn, bufio.NewReaderSize(conn, 1024)}
}

func (c *visitor) Read(b []byte) (int, error) { return c.Reader.Read(b) }

func (c *visitor) send(text string) error {
	_, err := io.WriteString(c.Conn, text)
	return err
}

func (c *visitor) close() { c.Conn.Close() }

// answer reads one answer: its status and body.
func (c *visitor) answer() (int, string, error) {
	r, err := http.ReadResponse(c.Reader, nil)
	if err != nil {
		return 0, "", err
	}
	b, err := io.ReadAll(r.Body)
	return r.StatusCode, string(b), err
}

// rest reads until the server closes, and tells the status line.
func (c *visitor) rest() (string, error) {
	first, err := c.ReadString('\n')
	if err == nil {
		_, err = io.Copy(io.Discard, c.Reader)
	}
	if err == io.EOF {
		err = nil
	}
	return first, err
}

// question asks for a pressure whose answer is known: at sea level the standard
// atmosphere is 101.325 kPa (ISO 2533:1975).
func (s *soak) question(r *rand.Rand) (ask, want string) {
	n := r.IntN(1000)
	return "GET /v1/pressure_gauge_from_absolute?pressure=" + strconv.FormatFloat(101.325+float64(n), 'g', -1, 64) +
		" HTTP/1.1\r\nHost: " + s.address + "\r\n\r\n", strconv.Itoa(n)
}

func (s *soak) expect(c *visitor, want string) bool {
	status, body, err := c.answer()
	if err != nil || status != 200 || body != want {
		s.Errorf("%d %.100q, %v; want %s", status, body, err, want)
		return false
	}
	return true
}

func visitGood(s *soak, r *rand.Rand) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	defer c.close()
	for range 10 {
		start := time.Now()
		ask, want := s.question(r)
		if err := c.send(ask); err != nil {
			s.Error(err)
			return false
		}
		if !s.expect(c, want) {
			return false
		}
		took := int64(time.Since(start))
		for old := s.slowest.Load(); took > old && !s.slowest.CompareAndSwap(old, took); old = s.slowest.Load() {
		}
	}
	return true
}

func visitPipelined(s *soak, r *rand.Rand) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	defer c.close()
	var all strings.Builder
	var wants []string
	for range 20 {
		ask, want := s.question(r)
		all.WriteString(ask)
		wants = append(wants, want)
	}
	if err := c.send(all.String()); err != nil {
		s.Error(err)
	}
	for _, want := range wants {
		if !s.expect(c, want) {
			return false
		}
	}
	return true
}

func visitByByte(s *soak, r *rand.Rand) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	defer c.close()
	ask, want := s.question(r)
	for start := time.Now(); ask != ""; time.Sleep(time.Millisecond) {
		n := 1
		if time.Since(start) > patience/2 { // a busy machine: do not be too late
			n = len(ask)
		}
		if err := c.send(ask[:n]); err != nil {
			s.Error(err)
			return false
		}
		ask = ask[n:]
	}
	return s.expect(c, want)
}

// turnedAway sends what must be refused with one of the statuses, or by cutting
// the connection if it is still sending.
func (s *soak) turnedAway(text string, statuses ...string) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	defer c.close()
	sendErr := c.send(text)
	line, err := c.rest()
	for _, status := range statuses {
		if strings.HasPrefix(line, "HTTP/1.1 "+status) || strings.HasPrefix(line, "HTTP/1.0 "+status) {
			return true
		}
	}
	if line == "" && !errors.Is(err, os.ErrDeadlineExceeded) && (sendErr != nil || len(text) > 4096) {
		return true
	}
	s.Errorf("%.80q is answered %q, %v", text, line, err)
	return false
}

const pathOfQuestion = "/v1/atmosphere_at_altitude?altitude=0"

func visitMalformed(s *soak, r *rand.Rand) bool {
	host := "\r\nHost: " + s.address
	texts := []string{
		"GET " + pathOfQuestion + "\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/9.9" + host + "\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/1.1\r\n\r\n",
		"GET " + pathOfQuestion + "\x00 HTTP/1.1" + host + "\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/1.1" + host + host + "x\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/1.1" + host + "\r\nno colon\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/1.1" + host + "\r\nContent-Length: -1\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/1.1" + host + "\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab",
		"GET " + pathOfQuestion + " HTTP/1.1" + host + "\r\nTransfer-Encoding: nonsense\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/1.1\r\nHost: brewery.example\r\n\r\n",
		"GET " + pathOfQuestion + " HTTP/1.1" + host + "\r\nOrigin: null\r\n\r\n",
		"GET %zz HTTP/1.1" + host + "\r\n\r\n",
		"\x16\x03\x01\x02\x00\x01\x00\x01\xFC\x03\x03\r\n\r\n",
		"\r\n\r\n\r\n\r\n",
	}
	return s.turnedAway(texts[r.IntN(len(texts))], "400", "403", "501", "505")
}

func visitWrongMethod(s *soak, r *rand.Rand) bool {
	methods := []string{"POST", "PUT", "PATCH", "DELETE", "TRACE", "PRI", "get", "X"}
	tails := []string{"\r\n\r\n", "\r\nContent-Length: 5\r\n\r\nhello", "\r\nTransfer-Encoding: chunked\r\n\r\n5\r\nhello\r\n0\r\n\r\n"}
	return s.turnedAway(methods[r.IntN(len(methods))]+" "+pathOfQuestion+" HTTP/1.1\r\nHost: "+s.address+tails[r.IntN(len(tails))], "405", "400")
}

// Long texts, made once.
var (
	kilobytes3  = strings.Repeat("0", 3000)
	kilobytes64 = strings.Repeat("x", 64<<10)
	megabyte    = strings.Repeat("0", 1<<20)
)

func visitOversized(s *soak, r *rand.Rand) bool {
	host := " HTTP/1.1\r\nHost: " + s.address
	switch r.IntN(4) {
	case 0:
		return s.turnedAway("GET "+pathOfQuestion+kilobytes3+host+"\r\n\r\n", "414")
	case 1:
		return s.turnedAway("GET "+pathOfQuestion+host+"\r\nX: "+kilobytes64+"\r\n\r\n", "431")
	case 2:
		return s.turnedAway("GET "+pathOfQuestion+host+"\r\nContent-Length: 1048576\r\n\r\n"+megabyte, "400")
	}
	return s.turnedAway("GET "+pathOfQuestion+megabyte+host+"\r\n\r\n", "431")
}

// visitNoise sends random bytes with an end that lets the server give up.
func visitNoise(s *soak, r *rand.Rand) bool {
	b := make([]byte, 1+r.IntN(200))
	for i := range b {
		b[i] = byte(r.Uint32())
	}
	return s.turnedAway(string(b)+"\r\n\r\n", "400", "403", "405", "505", "501")
}

func visitCut(s *soak, r *rand.Rand) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	ask, _ := s.question(r)
	c.send(ask[:r.IntN(len(ask))])
	if r.IntN(2) == 0 {
		c.Conn.(*net.TCPConn).CloseWrite() // an orderly end: the server closes too
		_, err := c.rest()
		if errors.Is(err, os.ErrDeadlineExceeded) {
			s.Error("half a request that has ended is waited for")
		}
	}
	c.close()
	return true
}

func visitGone(s *soak, r *rand.Rand) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	ask, _ := s.question(r)
	if r.IntN(2) == 0 {
		ask = "GET / HTTP/1.1\r\nHost: " + s.address + "\r\n\r\n"
	}
	c.send(ask)
	c.close()
	return true
}

// untilCut does something now and then until the server cuts the connection,
// which it must; true if it was, false if the time was over first.
func (s *soak) untilCut(c *visitor, each func() error) bool {
	defer c.close()
	start := time.Now()
	for {
		select {
		case <-s.over.Done():
			return false
		case <-time.After(50 * time.Millisecond):
		}
		if each() != nil {
			return true
		}
		if time.Since(start) > 2*patience {
			s.Errorf("not cut off after %v", 2*patience)
			return false
		}
	}
}

func visitNeverEnding(s *soak, r *rand.Rand) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	ask, _ := s.question(r)
	c.send(ask[:len(ask)-2-r.IntN(20)] + "\r\nX: ")
	return s.untilCut(c, func() error { return c.send("x") })
}

// visitNeverReading asks for the long page until there is no more room on the way
// back.
func visitNeverReading(s *soak, r *rand.Rand) bool {
	c := s.dial()
	if c == nil {
		return false
	}
	ask := fmt.Sprintf("GET / HTTP/1.1\r\nHost: %s\r\n\r\n", s.address)
	c.send(strings.Repeat(ask, 100))
	return s.untilCut(c, func() error {
		c.Conn.SetWriteDeadline(time.Now().Add(time.Millisecond))
		if err := c.send(ask); !errors.Is(err, os.ErrDeadlineExceeded) {
			return err
		}
		return nil // no room in this direction either
	})
}
